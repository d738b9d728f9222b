using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Trim;
using LureSim.Studies.Design;

namespace LureSim.Studies.Tests.Design;

/// <summary>Where a weight goes: answers floated again, a closed form, and why a wish cannot be had.</summary>
public sealed class BallastSolverTests
{
    private const double Degree = Math.PI / 180.0;
    private static readonly WaterState Fresh = WaterModel.Evaluate(new WaterSpec(20.0));

    private static LureSpec Cigar { get; } = new(
        LureShape.Cigar, 0.09, 0.0175, 0.0175, 0.010, 0.045, 0.0, [new(0.0015, -0.009, -0.005)], [new(0.00064, 0.020, -0.008, 1e-4, 8e-8), new(0.00064, -0.043, 0.0, 1e-4, 8e-8)]);

    [Theory]
    [InlineData(8.0, BallastHeight.Kept, KeptMass.Total)]
    [InlineData(20.0, BallastHeight.Kept, KeptMass.Body)]
    [InlineData(-6.0, BallastHeight.Lowest, KeptMass.Total)]
    [InlineData(60.0, BallastHeight.Kept, KeptMass.Total)]
    public void Every_way_found_floats_at_the_wanted_angle(double deg, BallastHeight height, KeptMass keeps)
    {
        BallastAnswer answer = Solve(Cigar, new(deg * Degree, Keeps: keeps, Height: height));
        Assert.NotNull(answer.Chosen);
        Assert.NotEmpty(answer.Places);
        foreach (BallastPlace place in answer.Places)
        {
            // Floated by itself, not by what the answer carries.
            TrimResult again = Trimming.Run(place.Point.Lure, Fresh);
            Assert.InRange(again.Rest.TrimRad / Degree, deg - 0.05, deg + 0.05);
            Assert.True(again.IsUpright);
            Assert.Equal(keeps == KeptMass.Total, Math.Abs(place.Point.Lure.MassKg - Cigar.MassKg) < 1e-12);
            Assert.Contains(place.Weight, place.Point.Lure.Ballast);
        }
    }

    [Theory]
    [InlineData(5.0, 4.0)]
    [InlineData(0.0, 3.0)]
    [InlineData(12.0, 1.0)]
    public void A_freeboard_and_an_angle_have_one_answer_while_the_body_stays(double deg, double freeboardMm)
    {
        BallastAnswer answer = Solve(Cigar, new(deg * Degree, 1e-3 * freeboardMm));
        BallastPlace place = Assert.Single(answer.Places);
        TrimResult again = Trimming.Run(place.Point.Lure, Fresh);
        Assert.True(answer.IsMet);
        Assert.InRange(again.Rest.TrimRad / Degree, deg - 0.05, deg + 0.05);
        Assert.InRange(1e3 * again.FreeboardM, freeboardMm - 0.05, freeboardMm + 0.05);
        Assert.Equal(Cigar.MassKg - 0.0015, place.Point.Lure.MassKg - place.Weight.MassKg, 1e-12);
    }

    [Fact]
    public void In_wood_of_known_density_a_heavier_weight_takes_the_place_of_wood()
    {
        var wood = LureWeight.Weighed(Cigar with { Build = new(LureBuild.Solid, 400.0) });
        BallastAnswer answer = Solve(wood, new(5.0 * Degree, 0.0035));
        BallastPlace place = Assert.Single(answer.Places);
        TrimResult again = Trimming.Run(LureWeight.Weighed(place.Point.Lure), Fresh);
        Assert.InRange(again.Rest.TrimRad / Degree, 4.95, 5.05);
        Assert.InRange(1e3 * again.FreeboardM, 3.45, 3.55);
    }

    // A half-immersed spheroid is a box to no one, yet its metacentres are known: BM lengthwise = I/V with I = pi a^3 b/4, V = 2 pi a b^2/3, so
    // 3 a^2/(8 b) from B, which lies 3 b/8 under the water (textbook of ship statics; the product's check H2). For small angles the couple m_w g d of a
    // weight moved by d meets m g GM tan theta.
    [Theory]
    [InlineData(0.5)]
    [InlineData(1.0)]
    public void A_half_immersed_spheroid_turns_as_moment_balance_says(double deg)
    {
        const double a = 0.05, b = 0.01, height = -0.004, weight = 0.002;
        double mass = 0.5 * Fresh.DensityKgM3 * 4.0 / 3.0 * Math.PI * a * b * b;
        var lure = new LureSpec(LureShape.Spheroid, 2.0 * a, 2.0 * b, 2.0 * b, mass, a, 0.0, [new(weight, 0.0, height)], []);
        double centreOfGravity = weight * height / mass;
        double gm = (3.0 * a * a / (8.0 * b)) - (3.0 * b / 8.0) - centreOfGravity;

        BallastAnswer answer = Solve(lure, new(deg * Degree));

        // The weight goes behind for the nose to rise; the second part is the lean of the height of the weight, inside GM already.
        double expected = -mass * gm * Math.Tan(deg * Degree) / weight;
        Assert.Equal(expected, answer.Chosen!.Weight.XM, 0.01 * Math.Abs(expected));
    }

    [Fact]
    public void A_weight_that_is_too_light_would_lie_out_of_the_body_and_the_lightest_that_does_it_is_told()
    {
        BallastAnswer answer = Solve(Cigar, new(20.0 * Degree));
        DeadEnd end = Assert.Single(answer.DeadEnds);
        Assert.Equal(DeadEndKind.OutOfBody, end.Kind);
        Assert.Equal(0.0015, end.MassKg);
        Assert.True(end.XM < end.LimitM && end.LimitM < 0.0 && end.XM < -0.045);
        Assert.True(answer.LeastKg > 0.0015 && answer.Places.Min(p => p.Weight.MassKg) == answer.LeastKg);

        // None of these balls has room at its height: the one that sticks out least is taken.
        Assert.Equal(answer.Places.Max(p => p.SpareM), answer.Chosen!.SpareM);
    }

    [Fact]
    public void The_mass_sets_the_freeboard()
    {
        double total = Trimming.Rest(Cigar, Fresh).MassKg;
        BallastAnswer answer = Solve(Cigar, new(5.0 * Degree, 0.002, total));
        DeadEnd end = answer.DeadEnds.First(d => d.Kind == DeadEndKind.FreeboardSetByMass);
        Assert.False(answer.IsMet);
        Assert.Equal(0.002, end.LimitM);
        Assert.True(end.XM > 0.005 && end.MassKg > total);

        // What the dead end says that it would take does take it.
        Assert.True(Solve(Cigar, new(5.0 * Degree, 0.002, end.MassKg)).IsMet);
    }

    [Theory]
    [InlineData(0.018, null, DeadEndKind.Sinks)]
    [InlineData(null, 12.0, DeadEndKind.TooHeavy)]
    [InlineData(0.001, null, DeadEndKind.TooHeavy)]
    public void Nonsense_is_refused_with_the_reason(double? totalKg, double? freeboardMm, DeadEndKind kind)
    {
        BallastAnswer answer = Solve(Cigar, new(5.0 * Degree, 1e-3 * freeboardMm, totalKg));
        Assert.Null(answer.Chosen);
        Assert.Equal(kind, Assert.Single(answer.DeadEnds).Kind);
    }

    [Fact]
    public void A_weight_over_the_axis_balances_but_does_not_stand()
    {
        LureSpec high = Cigar with { Ballast = [new(0.004, -0.009, 0.006)], Hooks = [] };
        LureSpec low = high with { Ballast = [new(0.004, -0.009, -0.004)] };
        Assert.Equal(FloatWord.LiesOver, DesignPoint.Of(high, Fresh).Word);
        BallastAnswer answer = BallastSolver.Run(DesignPoint.Of(high, Fresh), Fresh, new(4.0 * Degree), default);
        Assert.Contains(answer.DeadEnds, d => d.Kind == DeadEndKind.LiesOver && d.XM < 0.0);
        Assert.DoesNotContain(Solve(low, new(4.0 * Degree)).DeadEnds, d => d.Kind == DeadEndKind.LiesOver);
    }

    [Fact]
    public void A_lure_that_sinks_has_no_answer_at_all() => Assert.Throws<ArgumentException>(
        () => BallastSolver.Run(DesignPoint.Of(Cigar with { MassKg = 0.05 }, Fresh), Fresh, new(0.0), default));

    private static BallastAnswer Solve(LureSpec lure, DesignWish wish) => BallastSolver.Run(DesignPoint.Of(lure, Fresh), Fresh, wish, default);
}
