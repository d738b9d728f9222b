using LureSim.Model.Lures;
using LureSim.Numerics;

namespace LureSim.Model.Tests.Lures;

/// <summary>Attitudes that closed forms give: cylinders on end.</summary>
public sealed class FloatBalanceTests
{
    private const double Rho = 1000.0;

    // A disc, 20 mm thick, 60 mm across, half immersed, is stable on either face: BM = r^2/(4 T) = 22.5 mm, B is 5 mm under the middle.
    // G is 2 mm off the middle; on the face nearer to G, zG - zB is 5 - 2 mm, on the other 5 + 2 mm.
    [Theory]
    [InlineData(-0.002, 0.5 * Math.PI)]
    [InlineData(0.002, -0.5 * Math.PI)]
    public void Of_two_stable_trims_the_one_with_the_weight_low_is_taken(double g, double trim)
    {
        FloatState state = FloatBalance.Solve(Cylinder(0.02, 0.03, 0.03, 0.5, g));
        Assert.Equal(2, state.StableTrims);
        Assert.Equal(trim, state.Attitude.TrimRad, 1e-5);
        Assert.Equal(0.0, state.Attitude.HeelRad);
    }

    // A tail-heavy column of elliptic section, 16 mm by 28 mm, 60 mm deep in the water. G is 0.3 mm over B. Standing, it is stable in the
    // plane of its long axis (BM = 14^2/(4 x 60) = 0.817 mm) but not of its short one (BM = 8^2/(4 x 60) = 0.267 mm): it leans over there, a
    // quarter turn of heel away, until the wall-sided arm sin p (GM + BM tan^2 p / 2) is zero: tan^2 p = 2 (0.3 - 0.2667)/0.2667 = 1/4.
    [Fact]
    public void A_column_on_end_leans_over_in_the_plane_in_which_it_is_unstable()
    {
        FloatingBody body = Cylinder(0.1, 0.008, 0.014, 0.6, -0.02 + 0.0003);
        FloatState state = FloatBalance.Solve(body);
        Assert.Equal(0.5 * Math.PI, state.Attitude.HeelRad, 1e-6);
        Assert.Equal((0.5 * Math.PI) - Math.Atan(0.5), state.Attitude.TrimRad, 1e-5);
        Assert.True(FloatBalance.MetacentricHeightM(body, state, state.Immersion.BmTransM) > 0.0);
        Assert.True(FloatBalance.MetacentricHeightM(body, state, state.Immersion.BmLongM) > 0.0);
    }

    private static FloatingBody Cylinder(double length, double halfBreadth, double halfHeight, double specificGravity, double gX)
    {
        var hull = new StationHull(length, [new(-0.5 * length, halfBreadth, halfHeight), new(0.5 * length, halfBreadth, halfHeight)]);
        return new FloatingBody(hull, specificGravity * Rho * Math.PI * halfBreadth * halfHeight * length, new Vec3(gX, 0.0, 0.0), Rho);
    }
}
