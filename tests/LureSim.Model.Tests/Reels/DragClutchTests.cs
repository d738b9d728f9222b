using LureSim.Model.Lines;
using LureSim.Model.Reels;
using LureSim.Model.Tests.Cast;
using Xunit.Abstractions;

namespace LureSim.Model.Tests.Reels;

public sealed class DragClutchTests(ITestOutputHelper o)
{
    private static readonly LineSpec Line = CastCases.Braid with { AxialStiffnessN = 1500.0, DampingTimeS = 2e-3 };

    [Fact]
    public void Explore()
    {
        foreach (double r in new[] { 1.0, 1.25 })
        foreach (double len in new[] { 0.3, 15.0 })
        foreach (double dt in new[] { 1e-3, 5e-4, 2.5e-4, 1.25e-4, 6.25e-5, 3.125e-5, 1e-5, 5e-6 })
        {
            ReelSpec reel = new ReelSpec { Clutch = new ClutchSpec(StaticRatio: r, RingFriction: 0.1), DragN = 10.0 }.With(Line);
            var rig = ClutchRig.Mass(reel, Line, len, 1.0, 2.0, 1.0);
            int slips = 0; bool was = false;
            rig.Run(0.4, dt, () => { if (rig.Clutch.Slips != was) { was = rig.Clutch.Slips; slips++; } });
            double f = 10.0 * Math.Exp(0.1), k = 1500 / len;
            o.WriteLine($"r {r} len {len} dt {dt:e2} changes {slips} given {rig.Clutch.GivenM:F6} expect {(2.0 - f * f / 2 / k) / f:F6} peak {rig.PeakN:F4}/{f * r:F4} work {rig.WorkJ:F6} loss {rig.Clutch.LossJ:F6} kin {rig.Clutch.KineticJ:F6} open {rig.WorkJ - rig.Clutch.LossJ - rig.Clutch.KineticJ:e2}");
        }
    }
}
