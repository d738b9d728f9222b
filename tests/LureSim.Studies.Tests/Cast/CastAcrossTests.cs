using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Studies.Cast;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Cast;

public sealed class CastAcrossTests
{
    // Distances c e of set-ups c with the same efforts e = 0.6, 0.7 .. 1.6 in each: bands 0.7 c to 1.5 c, gains 0.7 to 1.5 times the difference of c.
    [Fact]
    public void The_same_luck_gives_a_narrower_band_of_the_gain_than_of_the_distances()
    {
        CastVariant[] variants = [Variant("short", 20.0), Variant("long", 22.0)];
        IReadOnlyList<CastCase> one = Run(variants, 11, 2.1, 1), many = Run(variants, 11, 2.1, 2);
        Assert.Equal(one[1].Draws, many[1].Draws);
        Assert.Equal(["short", "long"], one.Select(c => c.Label));
        Band(14.0, 30.0, one[0].GuessesM);
        Band(15.4, 33.0, one[1].GuessesM);
        Assert.Equal(22.0, one[0].MeanM, 1e-12);
        Assert.Equal(2.1, one[0].ScatterM, 1e-12);
        CastPair pair = CastPair.Between(one[0], one[1])!;
        Band(1.4, 3.0, pair.GainsM);
        Assert.Equal(2.2, pair.GainM, 1e-12);

        // Without draws the set-ups as they are: 2 m against a scatter of 2.1 m.
        CastPair plain = CastPair.Between(one[0] with { Draws = [] }, one[1] with { Draws = [] })!;
        Assert.Equal(2.0, plain.GainM, 1e-12);
        Assert.Equal(NoticeRule.Share([2.0 / (2.1 * Math.Sqrt(2.0))]), plain.Share, 1e-12);
    }

    // Two set-ups whose default casts hardly scatter while those of every draw scatter widely, and the other way round.
    [Theory]
    [InlineData(0.1, 12.0, NoticeVerdict.WillNot)]
    [InlineData(12.0, 0.1, NoticeVerdict.Will)]
    public void The_scatter_is_that_of_each_draw_in_both_set_ups_not_that_of_the_default(double plain, double drawn, NoticeVerdict verdict)
    {
        CastCase[] cases = [.. Run([Variant("a", 20.0), Variant("b", 22.0)], 11, (_, t, isDraw) => isDraw ? (t.OverhangM > 21.0 ? drawn : 0.1) : plain)];
        CastPair pair = CastPair.Between(cases[0], cases[1])!;
        Assert.Equal(verdict, pair.Verdict);
        Assert.Equal(Math.Sqrt((0.1 * 0.1) + (drawn * drawn)), 2.0 * 1.1 / pair.Ratios[5], 1e-9);
    }

    [Fact]
    public void All_are_compared_with_the_one_reference_and_every_pair_is_listed_once()
    {
        IReadOnlyList<CastCase> cases = Run([Variant("a", 20.0), Variant("b", 26.0), Variant("c", 23.0)], 11, 1.0, 2);
        var result = new CastAcross("", "", null, cases, 1, true);
        Assert.Null(result.Against(1));
        Assert.Equal([-6.6, -3.3], new[] { 0, 2 }.Select(i => Math.Round(result.Against(i)!.GainM, 9)));
        Assert.Equal([("a", "b", 6.6), ("a", "c", 3.3), ("b", "c", -3.3)], result.Pairs().Select(p => (p.From, p.To, Math.Round(p.GainM, 9))));
    }

    // Losses are told from nothing as gains are; only the side changes.
    [Fact]
    public void The_other_way_round_the_gain_changes_its_sign_and_nothing_else()
    {
        CastCase[] cases = [.. Run([Variant("a", 20.0), Variant("b", 21.3)], 11, 1.0, 1)];
        CastPair there = CastPair.Between(cases[0], cases[1])!, back = CastPair.Between(cases[1], cases[0])!;
        Assert.Equal((there.GainM, there.Share, there.Verdict, there.Casts), (-back.GainM, back.Share, back.Verdict, back.Casts));
        Assert.Equal(there.Ratios, back.Ratios);
    }

    // Ten draws gain 2 m, one loses 46: the mean gain is negative, and still ten draws of eleven show a gain.
    [Fact]
    public void One_wild_draw_turns_the_mean_but_not_the_verdict()
    {
        CastCase first = Run([Variant("a", 20.0)], 11, 0.5, 1)[0];
        CastCase second = first with { Label = "b", Draws = [.. first.Draws.Select((d, i) => new CastDraw(d.MeanM + (i == 3 ? -46.0 : 2.0), d.P10M, d.P90M))] };
        CastPair pair = CastPair.Between(first, second)!;
        Assert.Equal((20.0 - 46.0) / 11.0, pair.GainM, 1e-9);
        Assert.Equal(NoticeVerdict.Will, pair.Verdict);
        Assert.Equal(10.0 / 11.0, pair.Share, 0.01);
    }

    [Fact]
    public void A_failed_cast_or_draw_leaves_a_gap_and_the_others_stand()
    {
        var shares = new System.Collections.Concurrent.ConcurrentBag<double>();
        CastVariant good = Variant("good", 20.0), bad = Variant("bad", 30.0), holes = Variant("holes", 22.0);
        CastVariant[] variants = [good, bad, holes with { Drawn = draw => draw == 1 ? null : holes.Drawn(draw) }];
        IReadOnlyList<CastCase> cases = CastAcrossStudy.Run(
            variants, 3, 1, shares.Add, default, (s, t) => t.OverhangM == 30.0 ? new(null, new("too long", 0.0)) : Cast(1.0)(s, t));
        Assert.Equal("too long", cases[1].Failure);
        Assert.All(cases[1].Draws, d => Assert.False(d.Finished));
        Assert.Null(CastPair.Between(cases[0], cases[1]));
        Assert.Equal([13.2, double.NaN, 17.6], cases[2].Draws.Select(d => Math.Round(d.MeanM, 9)));
        Assert.Equal([0, 3, 1], cases.Select(c => c.FailedDraws));

        // The draw that is missing in one of the two is left out of their gain; a mean that does not fit the gain is not shown.
        Assert.Equal(1.4, CastPair.Between(cases[0], cases[2])!.GainM, 1e-12);
        var result = new CastAcross("", "", null, cases, 0, true);
        Assert.Equal(14.0, result.MeanM(0), 1e-12);
        Assert.True(double.IsNaN(result.MeanM(2)));
        Assert.Single(result.Pairs());
        Assert.Equal([.. Enumerable.Range(1, 12).Select(i => i / 12.0)], shares.Order());
    }

    // Draws that fail in all set-ups alike leave means that can be subtracted; no draw in common leaves no pair.
    [Fact]
    public void Means_stand_where_the_same_draws_finished()
    {
        CastVariant[] variants = [.. new[] { Variant("a", 20.0), Variant("b", 22.0) }.Select(v => v with { Drawn = draw => draw == 1 ? null : v.Drawn(draw) })];
        IReadOnlyList<CastCase> cases = Run(variants, 3, 1.0, 1);
        var result = new CastAcross("", "", null, cases, 0, true);
        Assert.Equal(result.MeanM(1) - result.MeanM(0), result.Against(1)!.GainM, 1e-12);
        CastCase other = cases[0] with { Draws = [CastDraw.Failed, cases[1].Draws[0], CastDraw.Failed] };
        Assert.Null(CastPair.Between(cases[0], other));
    }

    [Fact]
    public void Without_another_cast_the_model_is_run_and_more_overhang_casts_farther()
    {
        Setup spec = MadeUp.Caster();
        CastVariant[] variants = [.. new[] { 0.3, 0.6 }.Select(o => new CastVariant($"{o}", spec, new CastTask(o), _ => null))];
        IReadOnlyList<CastCase> cases = CastAcrossStudy.Run(variants, 0, 0, null, default);
        Assert.Equal(CastRunner.Run(spec, new CastTask(0.6)).Demand().DistanceMeanM, cases[1].Cast!.DistanceMeanM);
        Assert.True(CastPair.Between(cases[0], cases[1])!.GainM > 0.0);
    }

    [Fact]
    public void A_set_up_that_cannot_be_cast_keeps_its_reason()
    {
        Setup spec = MadeUp.Caster(), low = spec with { Angler = spec.Angler with { HandHeightM = 0.3 } };
        CastCase c = Assert.Single(CastAcrossStudy.Run([new("wet", low, new CastTask(3.0), _ => null)], 1, 1, null, default));
        Assert.Null(c.Cast);
        Assert.Contains("hangs in the water", c.Failure, StringComparison.Ordinal);
        Assert.False(c.Draws[0].Finished);
        Assert.Null(CastPair.Between(c, c));
    }

    private static IReadOnlyList<CastCase> Run(IReadOnlyList<CastVariant> variants, int draws, double sigma, int threads) =>
        CastAcrossStudy.Run(variants, draws, threads, null, default, Cast(sigma));

    // The default casts come first, one per set-up.
    private static IReadOnlyList<CastCase> Run(IReadOnlyList<CastVariant> variants, int draws, Func<Setup, CastTask, bool, double> sigma)
    {
        int count = 0;
        return CastAcrossStudy.Run(variants, draws, 1, null, default, (s, t) => Cast(sigma(s, t, ++count > variants.Count))(s, t));
    }

    // The overhang carries the metres that an effort of 1 casts.
    private static Func<Setup, CastTask, Outcome<CastResult>> Cast(double sigma) =>
        (s, t) => new(MadeUpCast.Result(s, t, 99.0, t.OverhangM * s.Hands.Effort, sigma));

    private static CastVariant Variant(string label, double metres)
    {
        Setup spec = MadeUp.Setup() with { Hands = MadeUp.Setup().Hands with { Effort = 1.0 } };
        var task = new CastTask(metres);
        return new(label, spec, task, draw => (spec with { Hands = spec.Hands with { Effort = 0.6 + (0.1 * draw) } }, task));
    }

    private static void Band(double low, double high, Spread actual)
    {
        Assert.Equal(low, actual.Low, 1e-9);
        Assert.Equal(high, actual.High, 1e-9);
    }
}
