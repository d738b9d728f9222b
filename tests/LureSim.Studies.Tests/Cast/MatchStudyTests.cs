using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Studies.Cast;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Cast;

/// <summary>A distance that the model itself made must give back the effort that made it.</summary>
public sealed class MatchStudyTests
{
    // Of the search for an effort: CastMatch stops at 5e-4 of it.
    private const double SearchError = 5e-4;

    private static readonly CastTask Cast = new();

    // One cast goes 30 e, many go 25 e.
    private static readonly Func<Setup, CastTask, Outcome<CastResult>> Linear = MadeUpCast.OfEffort(e => 30.0 * e);

    [Theory]
    [InlineData(0.4)]
    [InlineData(0.8)]
    [InlineData(1.6)]
    public void A_computed_distance_gives_back_its_effort(double effort)
    {
        Setup spec = MadeUp.Caster();
        double far = CastMatch.Distance(spec, Cast, effort).Demand(), found = CastMatch.Effort(spec, Cast, far).Demand();
        Assert.InRange(CastMatch.Distance(spec, Cast, found).Demand() / far, 0.995, 1.005);

        // Releases are 1 ms apart, so distances are rough by some 0.3 %; where the speed of the hands is the limit that is ten times as much effort.
        Assert.InRange(found / effort, 0.95, 1.05);
    }

    [Fact]
    public void More_distance_needs_more_effort()
    {
        Setup spec = MadeUp.Caster();
        double[] efforts = [.. new[] { 20.0, 25.0, 30.0 }.Select(d => CastMatch.Effort(spec, Cast, d).Demand())];
        Assert.True(efforts[0] < efforts[1] && efforts[1] < efforts[2], string.Join(' ', efforts));
    }

    // Means of 25 e: 20, 25 and 30 m need 0.8, 1.0 and 1.2; all three are computed as 25 m and missed by -5, 0 and 5 m.
    [Fact]
    public void Several_casts_give_mean_error_and_scatter()
    {
        MeasuredCast[] casts = [.. new[] { 20.0, 25.0, 30.0 }.Select(d => new MeasuredCast($"{d}", MadeUp.Setup(), Cast, d))];
        int done = 0;
        MatchFit one = MatchStudy.Fit(casts, 1, () => done++, default, Linear).Demand(), many = MatchStudy.Fit(casts, 2, null, default, Linear).Demand();
        Assert.Equal(6, done);
        Assert.Equal(one.Effort, many.Effort);
        Assert.Equal([0.8, 1.0, 1.2], one.Rows.Select(r => Math.Round(r.Effort, 3)));
        Assert.Equal(one.Rows.Average(r => r.Effort), one.Effort, 1e-12);
        Assert.Equal(1.0, one.Effort, SearchError);
        Assert.Equal(0.2, one.EffortScatter, SearchError);
        Assert.Equal(one.EffortScatter / Math.Sqrt(3.0), one.EffortError, 1e-12);
        Assert.Equal(5.0 / one.Rows[0].ComputedM, one.ScatterShare, 1e-12);
        Assert.Equal([-0.2, 0.0, 0.2], one.Rows.Select(r => Math.Round(r.ResidualShare, 3) + 0.0));
        Assert.Equal(2.5, MatchStudy.GainM(casts, 1.0, Linear), 1e-9);
    }

    [Fact]
    public void Several_casts_of_the_model_need_more_effort_than_one()
    {
        Setup spec = MadeUp.Caster();
        double far = CastMatch.Distance(spec, Cast, 0.8, mean: true).Demand();
        MeasuredCast[] casts = [.. new[] { 0.95, 1.05 }.Select(share => new MeasuredCast($"{share}", spec, Cast, share * far))];
        MatchFit fit = MatchStudy.Fit(casts, 0, null, default).Demand();
        Assert.InRange(fit.Effort, 0.72, 0.92);

        // Casts with release errors fall short of the best one, so the same distance as a mean needs more effort.
        Assert.True(fit.Rows[1].Effort > CastMatch.Effort(spec, Cast, 1.05 * far).Demand());
        Assert.True(MatchStudy.GainM(casts, fit.Effort) > 0.0);
    }

    // Gain of a tenth more effort where distance is 10 e^2: the difference itself, 12.1 - 10, or what the rest of the range gives, 90 - 84.1,
    // made into a tenth of 2.9.
    [Theory]
    [InlineData(1.0, 2.1)]
    [InlineData(2.9, 2.9 * 5.9)]
    public void The_gain_is_that_of_a_tenth_more_effort(double effort, double gain) => Assert.Equal(
        gain, MatchStudy.GainM([new("a", MadeUp.Setup(), Cast, 25.0)], effort, MadeUpCast.OfEffort(e => 10.0 * e * e)), 1e-9);

    // A mean of 25 e of casts that scatter by 1 m: 20 m need 0.8, a metre is 1/25 of effort, and 16 casts know their mean four times better.
    [Theory]
    [InlineData(1)]
    [InlineData(16)]
    public void A_mean_is_set_against_the_mean_of_the_model_and_its_error_uses_the_number(int number)
    {
        MeasuredCast mean = new("a", MadeUp.Setup(), Cast, 20.0, number);
        MatchFit fit = MatchStudy.Fit([mean], 1, null, default, Linear).Demand();
        Assert.Equal(0.8, fit.Effort, SearchError);
        Assert.Equal(1.0 / 25.0, fit.EffortScatter, 1e-9);
        Assert.Equal(1.0 / 25.0 / Math.Sqrt(number), fit.EffortError, 1e-9);
        Assert.Equal(number, fit.Casts);
        Assert.True(double.IsNaN(fit.ScatterShare));
        Assert.Equal(2.0, MatchStudy.GainM([mean], 0.8, Linear), 1e-9);
    }

    // 20 m as a mean of 9 and 30 m once: efforts 0.8 and 1.2 with weights 9 and 1 give 0.84. The square of a single cast's scatter is
    // 9 0.04^2 + 0.36^2 = 0.144, shared out over ten casts.
    [Fact]
    public void Means_count_by_their_casts()
    {
        MatchFit fit = MatchStudy.Fit([new("a", MadeUp.Setup(), Cast, 20.0, 9), new("b", MadeUp.Setup(), Cast, 30.0)], 1, null, default, Linear).Demand();
        Assert.Equal(0.84, fit.Effort, SearchError);
        Assert.Equal(Math.Sqrt(0.144), fit.EffortScatter, 2e-3);
        Assert.Equal(fit.EffortScatter / Math.Sqrt(10.0), fit.EffortError, 1e-12);
        Assert.Equal([9, null], fit.Rows.Select(r => r.MeanOf));
    }

    [Fact]
    public void The_mean_of_the_model_gives_back_its_effort()
    {
        Setup spec = MadeUp.Caster();
        double far = CastMatch.Distance(spec, Cast, 0.8, mean: true).Demand();
        MatchFit fit = MatchStudy.Fit([new("a", spec, Cast, far, 12)], 0, null, default).Demand();
        Assert.Equal(far, fit.Rows[0].ComputedM, 0.005 * far);
        Assert.InRange(fit.Effort, 0.76, 0.84);
        Assert.InRange(fit.EffortError, 1e-3, 0.2);
    }

    [Fact]
    public void One_cast_is_the_best_one_and_has_no_scatter_and_none_is_refused()
    {
        MeasuredCast one = new("a", MadeUp.Setup(), Cast, 27.0);
        MatchFit fit = MatchStudy.Fit([one], 1, null, default, Linear).Demand();
        Assert.Equal(0.9, fit.Effort, SearchError);
        Assert.True(double.IsNaN(fit.ScatterShare));
        Assert.True(double.IsNaN(fit.EffortError));
        Assert.Throws<ArgumentException>(() => MatchStudy.Fit([], 1, null, default, Linear));
        Failure? far = MatchStudy.Fit([one with { DistanceM = 400.0 }], 1, null, default, Linear).Failure;
        Assert.Contains("it reaches 1.5 m with effort 0.05 and 90.0 m with effort 3", far!.Reason, StringComparison.Ordinal);
    }
}
