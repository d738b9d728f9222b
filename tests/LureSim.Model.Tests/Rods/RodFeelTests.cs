using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Reels;
using LureSim.Model.Rods;

namespace LureSim.Model.Tests.Rods;

public sealed class RodFeelTests
{
    private static readonly RodSpec Rod = new(2.13, 0.3, 4.5, 0.054);

    // Thin uniform rod about its end: m L^2/3 and m L/2.
    [Fact]
    public void A_uniform_rod_has_the_closed_form()
    {
        RodFeel feel = RodFeel.Of(Rod with { TipRadiusRatio = 1.0 });
        Assert.Equal(0.054 * 1.83 * 1.83 / 3.0, feel.InertiaKgM2, 1e-12);
        Assert.Equal(0.054 * 1.83 / 2.0, feel.FirstMomentKgM, 1e-12);
        Assert.Equal(9.80665 * feel.FirstMomentKgM * Math.Cos(0.35), feel.TipTorqueNm(-0.35), 1e-12);
    }

    // Mass per length falling in a straight line to a share r: M = m0 L (1 - c/2), S = m0 L^2 (1/2 - c/3), I = m0 L^3 (1/3 - c/4), c = 1 - r.
    [Fact]
    public void A_linear_taper_has_the_closed_form()
    {
        const double c = 0.75, length = 1.83;
        RodFeel feel = RodFeel.Of(Rod with { TipRadiusRatio = 1.0 - c, MassExponent = 1.0 });
        double root = 0.054 / (length * (1.0 - (c / 2.0)));
        Assert.Equal(root * length * length * length * ((1.0 / 3.0) - (c / 4.0)), feel.InertiaKgM2, 1e-12);
        Assert.Equal(root * length * length * (0.5 - (c / 3.0)), feel.FirstMomentKgM, 1e-12);
    }

    [Fact]
    public void A_stiff_rod_stands_as_high_as_geometry_says_and_a_soft_one_sags_more()
    {
        var angler = new AnglerSpec();
        double straight = 1.2 + (1.83 * Math.Sin(-0.35));
        TipClearance stiff = TipClearance.Of(angler, Rod with { ThirdLoadN = 40.0 }, 0.2), soft = TipClearance.Of(angler, Rod with { ThirdLoadN = 2.0 }, 0.2);
        Assert.Equal(straight, stiff.RestM + stiff.SagM, 1e-9);
        Assert.InRange(stiff.SagM, 0.0, 0.02);
        Assert.True(soft.SagM > 5.0 * stiff.SagM, $"{soft.SagM} against {stiff.SagM} m");
        Assert.True(stiff.LowM < stiff.RestM);
    }

    // Square to the line and level, the arc stays level; tip up, the lowest place is that at rest.
    [Theory]
    [InlineData(1.5707963267948966, 0.0)]
    [InlineData(1.05, 0.5)]
    public void Where_the_stroke_does_not_dip_the_lowest_place_is_that_at_rest(double bearing, double elevation)
    {
        TipClearance tip = TipClearance.Of(new AnglerSpec(RodElevationRad: elevation, RodBearingRad: bearing), Rod, 0.3);
        Assert.Equal(tip.RestM, tip.LowM, 1e-9);
    }

    // The squared radius falls by the same for every metre that leaves (volume of the wound line), so squared take-ups stand in even steps.
    [Fact]
    public void A_turn_wins_less_the_more_line_is_out()
    {
        LineSpec line = LineSizing.Resolve(LineMaterial.Braid, null, null, 133.0, SurfaceFilm.Dry).Spec;
        ReelSpec reel = new ReelSpec().With(line);
        Assert.Equal(reel.TakeUpPerTurnM, HandleTurn.TakeUpM(reel, line, 0.0), 1e-12);
        double some = HandleTurn.TakeUpM(reel, line, 20.0), more = HandleTurn.TakeUpM(reel, line, 40.0);
        Assert.True(reel.TakeUpPerTurnM > some && some > more);
        double a = reel.TakeUpPerTurnM * reel.TakeUpPerTurnM, b = some * some, c = more * more;
        Assert.Equal(a - b, b - c, 1e-9);
        Assert.Equal(reel.TakeUpPerTurnM, HandleTurn.TakeUpM(reel with { Kind = ReelKind.Fixed }, line, 40.0));
    }
}
