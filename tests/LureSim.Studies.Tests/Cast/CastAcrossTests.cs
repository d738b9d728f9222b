using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Studies.Cast;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Cast;

public sealed class CastAcrossTests
{
    [Theory]
    [InlineData(2.0, 2.0, 16.0, true)]
    [InlineData(1.0, 2.0, 64.0, false)]
    [InlineData(-4.0, 2.0, 4.0, true)]
    public void The_rule_counts_casts(double gain, double sigma, double casts, bool notices)
    {
        Assert.Equal(casts, NoticeRule.Casts(gain, sigma), 1e-12);
        Assert.Equal(notices, NoticeRule.Notices(gain, sigma));
    }

    [Fact]
    public void Sixteen_is_the_normal_sample_size_for_two_means()
    {
        // 2 (z(0.975) + z(0.8))^2 = 15.70: the normal sample size for two means at 5 % and 80 %, exact quantiles.
        double z = MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, 0.975) + MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, 0.8);
        Assert.Equal(2.0 * z * z, NoticeRule.Casts(1.0, 1.0), 0.4);
    }

    // Distances c e of set-ups c with the same efforts e = 0.6, 0.7 .. 1.6 in each: bands 0.7 c to 1.5 c, gains 0.7 to 1.5 times the difference of c.
    [Fact]
    public void The_same_luck_gives_a_narrower_band_of_the_gain_than_of_the_distances()
    {
        CastVariant[] variants = [Variant("short", 20.0), Variant("long", 22.0)];
        IReadOnlyList<CastCase> one = Run(variants, 11, 2.1, 1), many = Run(variants, 11, 2.1, 2);
        Assert.Equal(one[1].DrawsM, many[1].DrawsM);
        Assert.Equal(["short", "long"], one.Select(c => c.Label));
        Band(14.0, 30.0, one[0].GuessesM);
        Band(15.4, 33.0, one[1].GuessesM);
        Assert.Equal(2.1, one[0].SigmaM, 1e-12);
        CastStep step = CastStep.Between(one[0], one[1])!;
        Band(1.4, 3.0, step.GainsM);
        Assert.Equal(2.2, step.GainM, 1e-12);

        // A gain as large as the scatter is noticed: 2 e > 2.1 from e = 1.1 on, six draws of eleven.
        Assert.True(step.Notices);
        Assert.Equal(6.0 / 11.0, step.SameShare, 1e-12);

        // Without draws the set-ups as they are: e = 1, 2 m against a scatter of 2.1 m.
        CastStep plain = CastStep.Between(one[0] with { DrawsM = [] }, one[1] with { DrawsM = [] })!;
        Assert.Equal(2.0, plain.GainM, 1e-12);
        Assert.False(plain.Notices);
        Assert.True(double.IsNaN(plain.SameShare));
    }

    [Fact]
    public void Numbers_are_compared_with_the_one_before_and_words_with_the_first()
    {
        IReadOnlyList<CastCase> cases = Run([Variant("a", 20.0), Variant("b", 26.0), Variant("c", 23.0)], 11, 1.0, 2);
        var numbers = new CastAcross("", "", true, null, cases);
        CastAcross words = numbers with { IsNumeric = false };
        Assert.Null(numbers.Step(0));
        Assert.Equal([6.6, -3.3], new[] { 1, 2 }.Select(i => Math.Round(numbers.Step(i)!.GainM, 9)));
        Assert.Equal([6.6, 3.3], new[] { 1, 2 }.Select(i => Math.Round(words.Step(i)!.GainM, 9)));
    }

    [Fact]
    public void A_failed_cast_or_draw_leaves_a_gap_and_the_others_stand()
    {
        var shares = new System.Collections.Concurrent.ConcurrentBag<double>();
        CastVariant good = Variant("good", 20.0), bad = Variant("bad", 30.0), holes = Variant("holes", 20.0);
        CastVariant[] variants = [good, bad, holes with { Drawn = draw => draw == 1 ? null : holes.Drawn(draw) }];
        IReadOnlyList<CastCase> cases = CastAcrossStudy.Run(
            variants, 3, 1, shares.Add, default, (s, t) => t.OverhangM == 30.0 ? new(null, new("too long", 0.0)) : Cast(1.0)(s, t));
        Assert.Equal("too long", cases[1].Failure);
        Assert.All(cases[1].DrawsM, d => Assert.True(double.IsNaN(d)));
        Assert.Null(CastStep.Between(cases[0], cases[1]));
        Assert.Equal([12.0, double.NaN, 16.0], cases[2].DrawsM.Select(d => Math.Round(d, 9)));

        // The draw that is missing in one of the two is left out of their gains.
        Assert.Equal(0.0, CastStep.Between(cases[0], cases[2])!.GainsM.High, 1e-12);
        Assert.Equal([.. Enumerable.Range(1, 12).Select(i => i / 12.0)], shares.Order());
    }

    [Fact]
    public void Without_another_cast_the_model_is_run_and_more_overhang_casts_farther()
    {
        Setup spec = MadeUp.Caster();
        CastVariant[] variants = [.. new[] { 0.3, 0.6 }.Select(o => new CastVariant($"{o}", o, spec, new CastTask(o), _ => null))];
        IReadOnlyList<CastCase> cases = CastAcrossStudy.Run(variants, 0, 0, null, default);
        Assert.Equal(CastRunner.Run(spec, new CastTask(0.6)).Demand().DistanceMeanM, cases[1].Cast!.DistanceMeanM);
        Assert.True(CastStep.Between(cases[0], cases[1])!.GainM > 0.0);
    }

    [Fact]
    public void A_set_up_that_cannot_be_cast_keeps_its_reason()
    {
        Setup spec = MadeUp.Caster(), low = spec with { Angler = spec.Angler with { HandHeightM = 0.3 } };
        CastCase c = Assert.Single(CastAcrossStudy.Run([new("wet", 1.0, low, new CastTask(3.0), _ => null)], 1, 1, null, default));
        Assert.Null(c.Cast);
        Assert.Contains("hangs in the water", c.Failure, StringComparison.Ordinal);
        Assert.True(double.IsNaN(c.DrawsM[0]));
        Assert.Null(CastStep.Between(c, c));
    }

    private static IReadOnlyList<CastCase> Run(IReadOnlyList<CastVariant> variants, int draws, double sigma, int threads) =>
        CastAcrossStudy.Run(variants, draws, threads, null, default, Cast(sigma));

    // The overhang carries the metres that an effort of 1 casts.
    private static Func<Setup, CastTask, Outcome<CastResult>> Cast(double sigma) =>
        (s, t) => new(MadeUpCast.Result(s, t, 99.0, t.OverhangM * s.Hands.Effort, sigma));

    private static CastVariant Variant(string label, double metres)
    {
        Setup spec = MadeUp.Setup() with { Hands = MadeUp.Setup().Hands with { Effort = 1.0 } };
        var task = new CastTask(metres);
        return new(label, metres, spec, task, draw => (spec with { Hands = spec.Hands with { Effort = 0.6 + (0.1 * draw) } }, task));
    }

    private static void Band(double low, double high, Spread actual)
    {
        Assert.Equal(low, actual.Low, 1e-9);
        Assert.Equal(high, actual.High, 1e-9);
    }
}
