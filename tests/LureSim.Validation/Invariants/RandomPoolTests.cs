using LureSim.Model;
using LureSim.Model.Pool;
using LureSim.Scenarios;
using LureSim.Studies.Pool;
using Xunit.Abstractions;

namespace LureSim.Validation.Invariants;

/// <summary>
/// Random lures in the pool: faults in words, or results all finite and in their bounds, or a reason why the model stops. LURESIM_RANDOM_POOLS sets
/// the number.
/// </summary>
public sealed class RandomPoolTests(ITestOutputHelper output)
{
    private int _valid, _stopped, _refused;

    [Fact]
    public void Every_random_lure_ends_in_numbers_or_in_words()
    {
        RandomScenario.Sample(RandomScenario.AnyPool, "LURESIM_RANDOM_POOLS", 30, () => _valid + _stopped, Check);
        output.WriteLine($"{_valid} measured, {_stopped} stopped with a reason, {_refused} refused with faults");
    }

    private void Check(RandomScenario scenario)
    {
        ScenarioResult result = scenario.Resolve();
        if (result.Pool is null)
        {
            Interlocked.Increment(ref _refused);
            Assert.NotEmpty(result.Errors);
            return;
        }

        Outcome<PoolResult> outcome;
        try
        {
            outcome = PoolSource.InPool(result, CancellationToken.None);
        }
        catch (ModelException e)
        {
            Stopped(e.Message);
            return;
        }

        if (!outcome.IsWhole)
        {
            Stopped(outcome.Failure.Reason);
            return;
        }

        Interlocked.Increment(ref _valid);
        PoolResult p = outcome.Result;
        IEnumerable<double> numbers =
        [
            .. PoolFigures.All.Select(f => f.Value(p)).OfType<double>(), p.RestTrimDeg, p.RestHeelDeg, .. p.Push.XM, .. p.Push.YM, .. p.Push.HeadingDeg,
            .. p.Roll.Trace, .. p.Heave.Trace, .. p.Pitch.Trace,
            .. p.Tow.SelectMany(t => new[] { t.SheerDeg, t.SideDeg, t.SwingDeg, t.OffsetM, t.TrimDeg, t.RollDeg, t.NoseHeightM, t.PullN }),
        ];
        Assert.True(numbers.All(double.IsFinite), scenario.ToString());
        Assert.All(p.Tow, t => Assert.True(t.SheerDeg is >= 0.0 and <= 180.0 && t.PullN >= 0.0 && Math.Abs(t.TrimDeg) <= 90.0, scenario.ToString()));
        Assert.True(p.Push.TurnM is null or > 0.0, scenario.ToString());
        Assert.True(p.Coast.PerM is null or > 0.0, scenario.ToString());
    }

    private void Stopped(string reason)
    {
        Interlocked.Increment(ref _stopped);
        Assert.NotEmpty(reason);
    }
}
