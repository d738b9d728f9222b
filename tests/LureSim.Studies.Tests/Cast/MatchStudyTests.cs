using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Studies.Cast;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Cast;

/// <summary>A distance that the model itself made must give back the effort that made it.</summary>
public sealed class MatchStudyTests
{
    private static readonly CastTask Cast = new();

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

    [Fact]
    public void Several_casts_give_mean_error_and_scatter()
    {
        Setup spec = MadeUp.Caster();
        double far = CastMatch.Distance(spec, Cast, 0.8, mean: true).Demand();
        MeasuredCast[] casts = [.. new[] { 0.95, 1.0, 1.05 }.Select(share => new MeasuredCast($"{share}", spec, Cast, share * far))];
        MatchFit one = MatchStudy.Fit(casts, 1, null, default), many = MatchStudy.Fit(casts, 2, null, default);
        Assert.Equal(one.Effort, many.Effort);
        Assert.Equal(one.Rows.Average(r => r.Effort), one.Effort, 1e-12);

        // All three are computed alike, so their ratios to it scatter as the made-up shares do: 0.05 far/computed.
        Assert.Equal(0.05 * far / one.Rows[0].ComputedM, one.ScatterShare, 1e-12);
        Assert.Equal(one.EffortScatter / Math.Sqrt(3.0), one.EffortError, 1e-12);
        Assert.InRange(one.Effort, 0.72, 0.92);

        // Casts with release errors fall short of the best one, so the same distance as a mean needs more effort.
        Assert.True(CastMatch.Effort(spec, Cast, far, mean: true).Demand() > CastMatch.Effort(spec, Cast, far).Demand());
        Assert.True(MatchStudy.GainM(casts, one.Effort) > 0.0);
    }

    // Gain of a tenth more effort: the difference itself, or what the rest of the range gives, made into a tenth.
    [Theory]
    [InlineData(1.0, 1.1, 1.0)]
    [InlineData(2.9, 3.0, 2.9)]
    public void The_gain_is_that_of_a_tenth_more_effort(double effort, double more, double factor)
    {
        Setup setup = MadeUp.Caster();
        double gain = CastMatch.Distance(setup, Cast, more).Demand() - CastMatch.Distance(setup, Cast, effort).Demand();
        Assert.Equal(factor * gain, MatchStudy.GainM([new("a", setup, Cast, 25.0)], effort), 1e-6);
    }

    [Fact]
    public void One_cast_has_no_scatter_and_none_is_refused()
    {
        Setup spec = MadeUp.Caster();
        Assert.True(double.IsNaN(MatchStudy.Fit([new("a", spec, Cast, 25.0)], 1, null, default).ScatterShare));
        Assert.Throws<ArgumentException>(() => MatchStudy.Fit([], 1, null, default));
        Assert.IsType<ModelException>(Assert.Throws<AggregateException>(() => MatchStudy.Fit([new("a", spec, Cast, 400.0)], 1, null, default)).InnerException);
    }
}
