using LureSim.Model.Cast;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Retrieve;
using LureSim.Model.Rods;

namespace LureSim.Model.Tests.Cast;

/// <summary>A seven-foot rod, braid and a small cigar of 5/8 oz.</summary>
internal static class CastCases
{
    public static readonly LineSpec Braid = new(
        LineMaterial.Braid, 0.235e-3, 3.33e-5, 970.0, 50e9 * 3.44e-8, 0.002, 0.0, SurfaceFilm.Wetted, 200.0);

    public static readonly LureSpec Cigar = new(
        LureShape.Cigar, 0.100, 0.018, 0.018, 0.0155, 0.05, 0.0, [], [new(0.0011, 0.0, -0.009, 3e-5, 1.4e-7), new(0.0011, -0.05, 0.0, 3e-5, 1.4e-7)]);

    public static CastRunSpec Default(ReelKind kind = ReelKind.Revolving)
    {
        var run = new RunSpec(
            "cast", new WaterSpec(), new AirSpec(), new AnglerSpec(), new RodSpec(2.13, 0.45, 3.0, 0.075), new ReelSpec(kind, 7.1, 0.034, 50.0),
            Braid, null, Cigar, new RetrieveSpec(20.0, 1.0, 0.2, 0.3), new SolverSpec());
        return new(run, CastDefaults.Cast(run));
    }
}
