using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Studies.Cast;
using LureSim.Studies.Sampling;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Cast;

/// <summary>
/// How often a set-up is told from itself. Casts without physics: 40 draws that throw 18 to 34 m, scatter of 7 % from cast to cast, and in each draw of
/// each set-up a jump of its own, as large as a tenth of an inch of rod makes a cast with a revolving spool jump (30 comparisons of 40 draws each: half
/// below 0.1 m, nine of ten below 1 m, 19 of 20 below 2 m, the rest up to 10 m and more).
/// </summary>
public sealed class FalseAlarmTests
{
    private const int Seeds = 200, Draws = 40;
    private const double NearM = 18.0, FarM = 34.0, Scatter = 0.07;

    [Fact]
    public void The_same_set_up_with_the_same_luck_is_the_same_to_the_last_bit()
    {
        CastPair pair = Pair(1, 1, 0.0);
        Assert.Equal((0.0, NoticeVerdict.WillNot), (pair.GainM, pair.Verdict));
        Assert.Equal(0.025, pair.Share, 1e-9);
    }

    [Fact]
    public void Jumps_of_the_casts_alone_are_never_noticed_over_200_seeds()
    {
        NoticeVerdict[] verdicts = [.. Enumerable.Range(0, Seeds).Select(seed => Pair((ulong)seed, (ulong)seed, 1.0).Verdict)];
        Assert.All(verdicts, v => Assert.Equal(NoticeVerdict.WillNot, v));
    }

    // What the program never does: the guesses of both drawn apart. Each draw then compares two anglers with two lures, one of which casts farther in
    // half of the draws, so that the chance comes to about one half: "you may", and never "you will".
    [Fact]
    public void With_other_luck_for_each_none_is_noticed_over_200_seeds()
    {
        NoticeVerdict[] verdicts = [.. Enumerable.Range(0, Seeds).Select(seed => Pair((ulong)seed, (ulong)seed + 1000UL, 1.0).Verdict)];
        Assert.DoesNotContain(NoticeVerdict.Will, verdicts);
    }

    // The tests above can fail: a gain as large as the scatter is seen under the same jumps, in every seed.
    [Fact]
    public void A_real_gain_is_noticed_under_the_same_jumps() =>
        Assert.All(Enumerable.Range(0, Seeds), seed => Assert.Equal(NoticeVerdict.Will, Pair((ulong)seed, (ulong)seed, 1.0, 1.8).Verdict));

    private static CastPair Pair(ulong luckA, ulong luckB, double jumps, double gainM = 0.0)
    {
        CastVariant[] variants = [Variant("a", luckA, 1, jumps, 0.0), Variant("b", luckB, 2, jumps, gainM)];
        IReadOnlyList<CastCase> cases = CastAcrossStudy.Run(
            variants, Draws, 1, null, default, (s, t) => new(MadeUpCast.Result(s, t, t.OverhangM, t.OverhangM, Scatter * t.OverhangM)));
        return CastPair.Between(cases[0], cases[1])!;
    }

    // The overhang carries the metres.
    private static CastVariant Variant(string label, ulong luck, int dimension, double jumps, double gainM)
    {
        Setup setup = MadeUp.Setup();
        LatinHypercube guesses = new(Draws, luck), own = new(Draws, luck ^ 0xABC);
        return new(label, setup, new CastTask(26.0), draw => (setup, new CastTask(NearM + (guesses.Share(draw, 0) * (FarM - NearM)) + gainM + (jumps * Jump(own.Share(draw, dimension))))));
    }

    // Either way; the logarithm of the size straight between the figures above.
    private static double Jump(double share)
    {
        double side = (2.0 * share) - 1.0, size = Math.Abs(side);
        return Math.Sign(side) * (size < 0.5 ? 0.2 * size
            : size < 0.9 ? 0.1 * Math.Pow(10.0, (size - 0.5) / 0.4)
            : size < 0.95 ? Math.Pow(2.0, (size - 0.9) / 0.05)
            : 2.0 * Math.Pow(5.0, (size - 0.95) / 0.05));
    }
}
