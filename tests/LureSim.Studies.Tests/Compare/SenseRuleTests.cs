using LureSim.Studies.Compare;

namespace LureSim.Studies.Tests.Compare;

public sealed class SenseRuleTests
{
    private static readonly CompareMeasure Measure = new("length_m", "m", Better.More, Humans.Eye);

    [Fact]
    public void A_set_up_against_itself_differs_by_nothing_and_is_not_noticed()
    {
        MeasureSample[] draws = Draws(16, i => 1.0 + (0.1 * i));
        Difference d = Between(draws, draws);
        Assert.Equal((0.0, 0.0, CompareVerdict.WillNot), (d.Value, d.Share, d.Verdict));
        Assert.Equal(-1, d.Winner);
    }

    [Theory]
    [InlineData(0.02, CompareVerdict.WillNot)]
    [InlineData(0.20, CompareVerdict.Will)]
    public void A_difference_is_noticed_above_what_people_tell_apart(double more, CompareVerdict expected)
    {
        Difference d = Between(Draws(16, i => 1.0), Draws(16, i => 1.0 + more));
        Assert.Equal(expected, d.Verdict);
        Assert.Equal(more, d.Value, 1e-12);
    }

    [Fact]
    public void Scatter_in_use_hides_what_the_eye_would_see() =>
        Assert.Equal(CompareVerdict.WillNot, Between(Draws(16, i => 1.0, 0.3), Draws(16, i => 1.2, 0.3)).Verdict);

    [Fact]
    public void Half_of_the_draws_make_it_a_perhaps() =>
        Assert.Equal(CompareVerdict.May, Between(Draws(16, i => 1.0), Draws(16, i => i < 8 ? 1.3 : 1.001)).Verdict);

    [Fact]
    public void Draws_that_do_not_agree_which_way_tell_nothing()
    {
        Difference d = Between(Draws(16, i => 1.0), Draws(16, i => i % 2 == 0 ? 1.3 : 0.7));
        Assert.Equal(CompareVerdict.Unknown, d.Verdict);
        Assert.Equal(0.5, d.Share);
    }

    // Six of eight large differences one way are chance once in seven (binomial tail 0.29, two-sided).
    [Fact]
    public void Six_of_eight_are_not_enough_and_eight_of_eight_are()
    {
        Assert.False(SenseRule.IsSettled([1, 1, 1, 1, 1, 1, -1, -1]));
        Assert.True(SenseRule.IsSettled([1, 1, 1, 1, 1, 1, 1, 1]));
        Assert.False(SenseRule.IsSettled([0, 0, 0]));
    }

    [Fact]
    public void A_side_that_misses_more_than_a_third_of_its_draws_tells_nothing()
    {
        MeasureSample[] all = Draws(9, i => 1.0);
        MeasureSample[] five = [.. Draws(9, i => 2.0).Select((s, i) => i < 5 ? s : MeasureSample.None)], six = [.. Draws(9, i => 2.0).Select((s, i) => i < 6 ? s : MeasureSample.None)];
        Assert.Equal(CompareVerdict.Unknown, Between(all, five).Verdict);
        Assert.Equal(CompareVerdict.Will, Between(all, six).Verdict);
    }

    [Fact]
    public void The_other_way_round_signs_change_and_nothing_else()
    {
        MeasureSample[] a = Draws(13, i => 1.0 + (0.013 * i * i % 0.4), 0.01), b = Draws(13, i => 1.05 + (0.017 * i * i % 0.3), 0.02);
        Difference there = Between(a, b), back = Between(b, a);
        Assert.Equal((there.Value, there.Share, there.Verdict, there.Threshold), (-back.Value, back.Share, back.Verdict, back.Threshold));
        Assert.Equal(there.Band.Low, -back.Band.High, 1e-12);
    }

    // Draws of one law for both, independent: the sign test holds false alarms down however small the threshold.
    [Theory]
    [InlineData(40)]
    [InlineData(16)]
    [InlineData(8)]
    public void False_alarms_of_independent_draws_stay_under_one_in_twenty(int draws)
    {
        const int seeds = 2000;
        int will = 0;
        for (int seed = 0; seed < seeds; seed++)
        {
            var luck = new Random(seed);
            MeasureSample[] Law() => Draws(draws, i => 1.0 + luck.NextDouble(), 0.001);
            will += Between(Law(), Law(), 0.0).Verdict == CompareVerdict.Will ? 1 : 0;
        }

        Assert.InRange(will / (double)seeds, 0.0, 0.05);
    }

    private static Difference Between(MeasureSample[] a, MeasureSample[] b, double weber = 0.05) => SenseRule.Between(Measure, 0, 1, a, b, _ => weber);

    private static MeasureSample[] Draws(int count, Func<int, double> value, double scatter = 0.0) => [.. Enumerable.Range(0, count).Select(i => MeasureSample.Of(value(i), scatter))];
}
