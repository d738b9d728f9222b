using LureSim.Model;
using LureSim.Model.Retrieve;
using LureSim.Scenarios.Measured;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Fit;

/// <summary>
/// Walks under the same twitches. What a lure, a stroke and a slack make of them is a settled retrieve as <c>cadence</c> counts one (distance held), reduced like
/// a film. One that does not alternate has the figures that it has: little recurs with every second twitch, so it misses a walk by many errors, and by fewer
/// the nearer it comes to one.
/// </summary>
internal sealed class WalkTest(bool hooksOn, double cadencePerS, double? distanceM) : FitTest(FitKind.Walk, hooksOn)
{
    /// <summary>Share of a figure by which settled runs of one walk differ from other starts, one standard deviation: they end while still settling a little. 0.9 % on
    /// the mean of three rhythms of the large walker, up to 1.4 (a test measures it). Part of every error, or a film of many pairs would have the search follow it.</summary>
    public const double RunShare = 0.015;

    /// <summary>Runs as long as those of <c>cadence</c>, whose hands begin at what they come to.</summary>
    public static readonly StationaryPlan Plan = new(WarmUpS: 10.0);

    // Steps of a tenth would show little else than that scatter.
    private const double WideStep = 0.4;

    /// <inheritdoc/>
    public override double? Step => WideStep;

    /// <inheritdoc/>
    public override bool IsOfHand => true;

    /// <inheritdoc/>
    public override double[]? Compute(FitCandidate candidate, double[] own, CancellationToken stop)
    {
        Outcome<RetrieveResult> outcome = StationaryOutcome.Whole(candidate.Setup(HooksOn), Task(candidate.Retrieve!, Plan), stop);
        if (!outcome.IsWhole)
        {
            return null;
        }

        WalkFigures figures = WalkFigures.Of(Seen(outcome.Result, candidate), 1.0 / cadencePerS);
        return
        [
            .. Readings.Select(r => r.Quantity switch
            {
                FitQuantity.Advance => figures.AdvanceM,
                FitQuantity.PathWidth => figures.WidthM,
                _ => figures.SwingRad,
            }),
        ];
    }

    /// <summary>The settled retrieve.</summary>
    /// <param name="task">Retrieve of the scenario.</param>
    /// <param name="plan">How long it runs.</param>
    /// <param name="start">Which of the starts of a study.</param>
    public RetrieveTask Task(RetrieveTask task, StationaryPlan plan, int start = 0) =>
        StationaryRun.Make(task with { DistanceM = distanceM ?? task.DistanceM }, cadencePerS, WalkStart.Spread(start + 1)[start], plan, TakeUpMS(task));

    // A hand comes to take up what the lure advances, and that was measured; finding it takes a run longer than all else. Null where only other figures were seen.
    private double? TakeUpMS(RetrieveTask task)
    {
        double[] advances = [.. Readings.Where(r => r.Quantity == FitQuantity.Advance).Select(r => r.Measured)];
        return advances.Length == 0 ? null : Math.Clamp(cadencePerS * advances.Average(), 0.0, task.TakeUp.FastestMS);
    }

    /// <summary>The twitches that a run counts, seen from above.</summary>
    /// <param name="run">Run.</param>
    /// <param name="candidate">Whose it is.</param>
    public WalkSamples Seen(RetrieveResult run, FitCandidate candidate)
    {
        Model.Pool.RestResult rest = candidate.Trial(HooksOn).Rest();
        double end = run.Series["time_s"][^1], from = run.Twitches.Count > run.WarmUpTwitches ? run.Twitches[run.WarmUpTwitches].StartS : 0.5 * end;
        return WalkSamples.Of(run.Series, from, end, 0.5 * (rest.NoseAheadM + rest.TailAheadM));
    }
}
