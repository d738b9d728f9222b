using LureSim.Model.Lures;

namespace LureSim.Model.Tests.Lures;

public sealed class WalkHullBuilderTests
{
    [Fact]
    public void Mass_matrix_is_positive_and_everything_finite()
    {
        foreach (LureSpec lure in new[] { TestLures.Cigar(), TestLures.Pencil(), TestLures.Hollow() })
        {
            WalkHull h = WalkHullBuilder.Build(lure, TestLures.Water);
            Assert.True(h.M11 > h.MassKg && h.M22 > h.M11);
            Assert.True(h.M22 * h.M33 > h.M23 * h.M23);
            double[] all =
            [
                h.TieArmM, h.TieHeightM, h.AxialDragKgM, h.NoseMassKg, h.NoseStiffnessNM, h.NoseDampingNsM, .. h.StripXM,
                .. h.StripDragKgM, .. h.HookXM, .. h.HookDragKgM, .. h.OutlineXM, .. h.OutlineHalfBreadthM,
            ];
            Assert.All(all, v => Assert.True(double.IsFinite(v)));
            Assert.All(h.StripDragKgM, v => Assert.True(v >= 0.0));
            Assert.Equal(21, h.StripXM.Length);
            Assert.Equal(lure.Hooks.Count, h.HookXM.Length);
        }
    }

    [Fact]
    public void Same_lure_gives_the_same_bits()
    {
        WalkHull a = WalkHullBuilder.Build(TestLures.Pencil(), TestLures.Water);
        WalkHull b = WalkHullBuilder.Build(TestLures.Pencil(), TestLures.Water);
        Assert.Equal(BitConverter.DoubleToInt64Bits(a.M33), BitConverter.DoubleToInt64Bits(b.M33));
        Assert.Equal(a.StripDragKgM, b.StripDragKgM);
    }

    [Fact]
    public void Factors_act_on_their_own_terms_only()
    {
        LureSpec lure = TestLures.Cigar();
        WalkHull h = WalkHullBuilder.Build(lure, TestLures.Water);
        WalkHull lid = WalkHullBuilder.Build(lure with { AddedMassFactor = 1.4 }, TestLures.Water);
        Assert.Equal(2.0 * (h.M22 - h.MassKg), lid.M22 - h.MassKg, 1e-12);
        Assert.Equal(2.0 * h.M23, lid.M23, 1e-12);
        Assert.Equal(h.M11, lid.M11);
        WalkHull rough = WalkHullBuilder.Build(lure with { CrossFlowCd = 2.2, AxialDragFactor = 2.0 }, TestLures.Water);
        Assert.Equal(2.0 * h.StripDragKgM[10], rough.StripDragKgM[10], 1e-12);
        Assert.Equal(2.0 * h.AxialDragKgM, rough.AxialDragKgM, 1e-12);
    }

    // A fore-and-aft symmetric body on an even keel has no sway-yaw coupling.
    [Fact]
    public void Symmetric_body_has_no_coupling()
    {
        WalkHull h = WalkHullBuilder.Build(TestLures.Cigar() with { Ballast = [] }, TestLures.Water);
        Assert.Equal(0.0, h.M23, 1e-12);
        Assert.Equal(0.0506, h.TieArmM, 1e-9);
    }

    [Fact]
    public void A_gram_force_on_the_nose_sinks_the_cigar_by_two_and_a_half_millimetres()
    {
        WalkHull h = WalkHullBuilder.Build(TestLures.Cigar(), TestLures.Water);
        Assert.Equal(2.5e-3, 9.80665e-3 / h.NoseStiffnessNM, 0.1e-3);
    }

    // The spring at the tie against the full float solution with a real weight there.
    [Fact]
    public void Nose_stiffness_agrees_with_a_weight_hung_on_the_tie()
    {
        LureSpec lure = TestLures.Cigar();
        WalkHull h = WalkHullBuilder.Build(lure, TestLures.Water);
        const double load = 2e-5;
        LureSpec loaded = lure with { Hooks = [new HookSpec(load, lure.TieXM, lure.TieZM, 0.0, 0.0)] };
        double sink = h.TieHeightM - WalkHullBuilder.Build(loaded, TestLures.Water).TieHeightM;
        Assert.Equal(h.NoseStiffnessNM, load * 9.80665 / sink, 0.005 * h.NoseStiffnessNM);
    }
}
