using LureSim.Model.Lures;
using LureSim.Model.Retrieve;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Tests.Lures;

/// <summary>The side force of the stern: its size, its symmetry, and that it only ever takes energy.</summary>
public sealed class SternSheddingTests
{
    /// <summary>A waist where shedding begins and a thick tail behind it: the shape for which the law alone would give energy.</summary>
    private static LureSpec ThickTail() => TestLures.Cigar() with
    {
        Shape = LureShape.Stations,
        Stations =
        [
            new(-0.055, 0.012, 0.012), new(-0.045, 0.012, 0.012), new(-0.0385, 0.003, 0.003), new(-0.02, 0.008, 0.008), new(0.0, 0.011, 0.011),
            new(0.03, 0.011, 0.011), new(0.055, 0.002, 0.002),
        ],
        MassKg = 0.014,
        Ballast = [],
    };

    public static TheoryData<LureSpec> Lures() => [TestLures.Cigar(), TestLures.Pencil(), TestLures.Hollow(), ThickTail()];

    // Strips of the whole hull add up to the coefficient of the Munk moment.
    [Fact]
    public void Strips_add_up_to_the_munk_coefficient()
    {
        FloatingLure f = FloatingLure.Float(TestLures.Cigar(), TestLures.Water);
        WettedForm form = WettedForm.Of(f);
        WalkHull hull = WalkHullBuilder.Build(TestLures.Cigar(), TestLures.Water);
        const int n = 2000;
        double sum = Enumerable.Range(0, n).Sum(i => 0.110 / n * SternShedding.MunkShareKgM(f, form, 0.110 * (((i + 0.5) / n) - 0.5)));
        Assert.Equal(hull.M22 - hull.M11, sum, 2e-4 * sum);
    }

    [Theory]
    [MemberData(nameof(Lures))]
    public void It_never_gives_energy(LureSpec lure)
    {
        // With nothing else that takes any: the power is the stern's alone.
        var bare = new WalkingHull(WalkHullBuilder.Build(lure with { CrossFlowCd = 0.0, AxialDragFactor = 0.0, Hooks = [] }, TestLures.Water));
        var random = new Random(11);
        for (int i = 0; i < 20000; i++)
        {
            (double u, double v, double r) = (Wide(random, 2.0), Wide(random, 2.0), Wide(random, 40.0));
            Assert.True(bare.Power(u, v, r) >= 0.0, $"{bare.Power(u, v, r)} W at u {u}, v {v}, r {r}");
        }
    }

    // To the trim that the float leaves on an even keel, about 1e-9 of everything.
    [Fact]
    public void A_hull_alike_at_both_ends_sheds_alike_both_ways()
    {
        WalkHull h = WalkHullBuilder.Build(TestLures.Cigar() with { Ballast = [] }, TestLures.Water);
        Assert.Equal(-0.35 * 0.110, h.ShedAhead.XM, 1e-9);
        Assert.Equal(-h.ShedAhead.XM, h.ShedAstern.XM, 1e-9);
        Assert.Equal(h.ShedAhead.AtKgM, h.ShedAstern.AtKgM, 1e-9);
        Assert.Equal(h.ShedAhead.BehindKg, h.ShedAstern.BehindKg, 1e-10);
        Assert.Equal(-h.ShedAhead.BehindKgM, h.ShedAstern.BehindKgM, 1e-11);

        // Seen from the other end the same motion: nose and tail change places, so do the signs of surge and yaw.
        HullState ahead = OneStep(h, 0.4, 0.1, 1.5), astern = OneStep(h, -0.4, 0.1, -1.5);
        Assert.Equal(ahead.U, -astern.U, 1e-8);
        Assert.Equal(ahead.V, astern.V, 1e-8);
        Assert.Equal(ahead.R, -astern.R, 1e-6);
    }

    [Fact]
    public void It_is_proportional_to_the_share_that_is_shed_and_nothing_without_it()
    {
        LureSpec lure = TestLures.Pencil();
        WalkHull one = WalkHullBuilder.Build(lure with { SternShedding = 1.0 }, TestLures.Water);
        WalkHull half = WalkHullBuilder.Build(lure with { SternShedding = 0.5 }, TestLures.Water);
        Assert.Equal(one.ShedAhead.AtKgM, 2.0 * half.ShedAhead.AtKgM, 1e-12);
        Assert.Equal(one.ShedAhead.BehindKgM, 2.0 * half.ShedAhead.BehindKgM, 1e-15);
        WalkHull none = WalkHullBuilder.Build(lure with { SternShedding = 0.0 }, TestLures.Water);
        HullState with = OneStep(none, 0.5, -0.2, 3.0), without = OneStep(none with { ShedAhead = SternShedding.None, ShedAstern = SternShedding.None }, 0.5, -0.2, 3.0);
        Assert.Equal(without, with);
        Assert.NotEqual(without, OneStep(one, 0.5, -0.2, 3.0));
    }

    // A hook that trails holds the hull back less, and holds it against drift as before.
    [Fact]
    public void Hooks_drag_along_and_across_by_their_own_areas()
    {
        LureSpec lure = TestLures.Pencil();
        var round = new WalkingHull(WalkHullBuilder.Build(lure, TestLures.Water));
        var trailing = new WalkingHull(WalkHullBuilder.Build(lure with { Hooks = [.. lure.Hooks.Select(h => h with { DragAreaAlongM2 = 0.0 })] }, TestLures.Water));
        Assert.Equal(round.Drag(0.5, 0.3, 1.0).Sway, trailing.Drag(0.5, 0.3, 1.0).Sway);
        double hooks = round.Drag(0.5, 0.0, 0.0).Surge - trailing.Drag(0.5, 0.0, 0.0).Surge;
        Assert.Equal(WalkHullBuilder.Build(lure, TestLures.Water).HookDragKgM.Sum() * 0.5, hooks, 1e-12);
    }

    private static HullState OneStep(WalkHull hull, double u, double v, double r)
    {
        var step = new WalkingHull(hull);
        var now = new HullState(0.0, 0.0, 0.0, u, v, r, 0.0, 0.0);
        Bdf2 euler = Bdf2.BackwardEuler(1e-3);
        step.Begin(euler, now, now, now, Vec3.Zero, 0.0);
        return step.Finish(euler, Vec3.Zero);
    }

    private static double Wide(Random random, double size) => size * ((2.0 * random.NextDouble()) - 1.0);
}
