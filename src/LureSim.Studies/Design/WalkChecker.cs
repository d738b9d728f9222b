using LureSim.Model.Assembly;
using LureSim.Model.Lures;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Cadence;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Design;

/// <summary>Checks candidates in full: all starts as the scenario stands, then one start for each draw of the guesses.</summary>
internal sealed class WalkChecker(ScenarioResult scenario, WalkWish wish, WalkPlan plan, Func<int, ScenarioResult>? draw, Func<Setup, RetrieveTask, StationaryOutcome> run)
{
    private const double TenthShare = 0.1;
    private static readonly double Lock = new CadencePlan().LockShare;

    /// <summary>Checks one.</summary>
    /// <param name="move">Candidate.</param>
    /// <param name="stop">Stops between runs.</param>
    public WalkCheck Of(WalkMove move, CancellationToken stop)
    {
        WalkStart[] starts = WalkStart.Spread(plan.Starts);
        var point = new RhythmPoint(wish.RhythmPerS, Array.ConvertAll(starts, s => One(scenario, move, s, stop)), Lock);
        int draws = draw is null ? 0 : plan.Draws;
        StationaryOutcome[] drawn = [.. Enumerable.Range(0, draws).Select(i => Drawn(i, move, starts[i % starts.Length], stop))];
        double[] glides = [.. drawn.Where(o => o.Pattern == WalkPattern.Alternating).Select(o => o.Summary!.GlideWidthM).Order()];
        double At(double share) => glides.Length == 0 ? double.NaN : MathNet.Numerics.Statistics.SortedArrayStatistics.Quantile(glides, share);
        return new(
            point.LockShare,
            point.Walks,
            point.LockShare > 0.0 ? point.Median(s => s.GlideWidthM) : double.NaN,
            At(TenthShare),
            At(1.0 - TenthShare),
            draws == 0 ? double.NaN : glides.Length / (double)draws,
            draws);
    }

    private StationaryOutcome Drawn(int index, WalkMove move, WalkStart start, CancellationToken stop)
    {
        ScenarioResult drawn = draw!(index);
        return drawn.IsValid ? One(drawn, move, start, stop) : StationaryOutcome.Failed("a draw contradicts what was given");
    }

    private StationaryOutcome One(ScenarioResult from, WalkMove move, WalkStart start, CancellationToken stop)
    {
        stop.ThrowIfCancellationRequested();
        LureSpec lure = move.Of(from.Setup!.Lure, HookSizes.Of(from));
        return run(from.Setup with { Lure = lure }, StationaryRun.Make(from.Retrieve!, wish.RhythmPerS, start, new StationaryPlan()));
    }
}
