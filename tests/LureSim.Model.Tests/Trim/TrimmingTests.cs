using LureSim.Model.Lures;
using LureSim.Model.Tests.Lures;
using LureSim.Model.Trim;

namespace LureSim.Model.Tests.Trim;

/// <summary>A lure at rest, against geometry and against the float solution with a real weight.</summary>
public sealed class TrimmingTests
{
    // A spheroid of half the water's density floats to its axis: draft and freeboard are its radius, the nose lies on the water.
    [Fact]
    public void A_half_immersed_spheroid_floats_to_its_axis()
    {
        double volume = Math.PI * 0.1 * 0.02 * 0.02 / 6.0;
        var lure = new LureSpec(LureShape.Spheroid, 0.1, 0.02, 0.02, 500.0 * volume, 0.05, 0.0, [new BallastSpec(100.0 * volume, 0.0, -0.005)], []);
        TrimResult t = Trimming.Run(lure, TestLures.Water);
        Assert.Equal(0.010, t.DraftM, 1e-8);
        Assert.Equal(0.010, t.FreeboardM, 1e-8);
        Assert.Equal(0.0, t.Rest.TrimRad, 1e-9);

        // B of a half spheroid lies 3/8 R under its axis (H2); G of 1 part at 5 mm among 5 lies 1 mm under it; BM = I/V = R 3/8.
        Assert.Equal(0.001, t.Rest.GmTransverseM, 2e-6);
        Assert.Equal(180.0, t.RightsItselfToDeg);
    }

    [Fact]
    public void The_dipping_load_hung_on_the_tie_brings_the_nose_to_the_water()
    {
        LureSpec lure = TestLures.Hollow() with { TieZM = 0.0 };
        TrimResult t = Trimming.Run(lure, TestLures.Water);
        double load = t.DippingLoadN!.Value;
        LureSpec loaded = lure with { Hooks = [.. lure.Hooks, new HookSpec(load / Physics.GravityMS2, lure.TieXM, lure.TieZM, 0.0, 0.0)] };
        Assert.True(t.Rest.NoseHeightM > 1e-4 && load > 0.0);
        Assert.Equal(0.0, FloatSolver.Solve(loaded, TestLures.Water).NoseHeightM, 1e-7);
    }

    [Fact]
    public void Stiffness_at_the_tie_is_that_of_the_nose_bob() =>
        Assert.Equal(WalkHullBuilder.Build(TestLures.Cigar(), TestLures.Water).NoseStiffnessNM, Trimming.Run(TestLures.Cigar(), TestLures.Water).TieStiffnessNM, 1e-12);

    [Fact]
    public void A_nose_in_the_water_has_no_dipping_load()
    {
        LureSpec nosed = TestLures.Cigar() with { Ballast = [new BallastSpec(0.006, 0.02, -0.006)] };
        TrimResult t = Trimming.Run(nosed, TestLures.Water);
        Assert.True(t.Rest.NoseHeightM < 0.0);
        Assert.Null(t.DippingLoadN);
    }

    [Fact]
    public void The_profile_holds_the_marks_at_their_heights()
    {
        TrimResult t = Trimming.Run(TestLures.Pencil(), TestLures.Water);
        Assert.Equal(t.Rest.TieHeightM, t.Profile.Marks.Single(m => m.Name == "line tie").ZM, 1e-12);
        Assert.Equal(t.Rest.NoseHeightM, t.Profile.BackZM[^1], 1e-4);
        Assert.Equal(2, t.Profile.Marks.Count(m => m.Name == "hook"));

        // Balance: buoyancy acts in the vertical through the common centre of hull and hooks' own weight in water; without hooks under G.
        TrimResult bare = Trimming.Run(TestLures.Cigar(), TestLures.Water);
        double g = bare.Profile.Marks.Single(m => m.Name == "centre of gravity").XM, b = bare.Profile.Marks.Single(m => m.Name == "centre of buoyancy").XM;
        Assert.Equal(g, b, 1e-7);
    }

    [Fact]
    public void Weight_on_the_back_leaves_no_upright_position()
    {
        TrimResult t = Trimming.Run(TestLures.Cigar() with { Ballast = [new BallastSpec(0.006, -0.0099, 0.0066)] }, TestLures.Water);
        Assert.False(t.IsUpright);
        Assert.False(t.IsWithinWalk);
    }

    [Theory]
    [InlineData(new[] { 0.0, 1.0, 1.0, 1.0, 0.0 }, 180.0)]
    [InlineData(new[] { 0.0, 1.0, 0.5, -0.5, 0.0 }, 112.5)]
    [InlineData(new[] { 0.0, -1.0, -1.0, -1.0, 0.0 }, 0.0)]
    public void Vanishing_stability_is_where_the_arm_crosses_zero(double[] arm, double deg)
    {
        TrimResult t = Trimming.Run(TestLures.Cigar(), TestLures.Water);
        double[] heel = [0.0, 0.25 * Math.PI, 0.5 * Math.PI, 0.75 * Math.PI, Math.PI];
        Assert.Equal(deg, (t with { Righting = new RightingCurve(heel, arm) }).RightsItselfToDeg, 1e-9);
    }
}
