using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Strike;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Strike;

/// <summary>Everything that <c>strike</c> tells of a scenario.</summary>
public static class StrikeStudy
{
    // Strikes of most reports: only progress depends on it.
    private const int UsualRuns = 95;

    /// <summary>Runs all strikes; fails when the strike as asked for does.</summary>
    /// <param name="scenario">Valid scenario.</param>
    /// <param name="threads">Most threads; 0 = all cores. The result does not depend on it.</param>
    /// <param name="progress">Gets the share done, from several threads; may be null.</param>
    /// <param name="stop">Stops the runs.</param>
    /// <param name="withCurves">False leaves out the curves over the distance, which take most of the time: they are empty then.</param>
    /// <exception cref="ArgumentException">A value makes no sense beside the others.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<StrikeReport> Run(ScenarioResult scenario, int threads, Action<double>? progress, CancellationToken stop, bool withCurves = true)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        (Setup setup, StrikeTask task) = (scenario.Setup!, scenario.Strike!);
        int done = 0;
        double label = scenario.Values.Optional(LineKeys.Set.Label) ?? LineLabels.LabelOf(setup.Line);
        Outcome<DragOutcome> drag = DragStudy.Run(setup, task, label, [.. Readings(setup.Hook, scenario.Effective())], threads, stop, Counted);
        if (!drag.IsWhole)
        {
            return new(null, drag.Failure);
        }

        DragOutcome found = drag.Result;
        ValueList<StrikeRemedy> remedies = found.Window.Range.LowN is null ? [.. Remedies(setup, task, label, found.Window.LockedN, threads, Counted, stop)] : [];
        StrikeCurves curves = withCurves ? StrikeCurveStudy.Run(setup, task, label, threads, stop, Counted) : new([], [], label, setup.Hook.SettingN);
        return new(new StrikeReport(found.Own, found.Locked, found.Loose, found.Window, remedies, found.Landing, curves) { Guesses = StrikeGuesses.Of(setup, scenario.Effective()) });

        Outcome<StrikeResult> Counted(Setup s, StrikeTask t)
        {
            Outcome<StrikeResult> outcome = StrikeRun.Run(s, t, new(null, stop));
            progress?.Invoke(Math.Min(1.0, (double)Interlocked.Increment(ref done) / UsualRuns));
            return outcome;
        }
    }

    // Thresholds that the reader gave stay as they are.
    private static IEnumerable<ThresholdReading> Readings(HookHold hook, EffectiveScenario effective)
    {
        foreach (GuessedKey guess in effective.Guesses.Where(g => g.Key == StrikeKeys.SetForce))
        {
            yield return new(ThresholdCase.SetsEasily, hook with { SetN = guess.Low });
            yield return new(ThresholdCase.SetsHard, hook with { SetN = guess.High });
        }

        foreach (GuessedKey guess in effective.Guesses.Where(g => g.Key == StrikeKeys.TearForce))
        {
            yield return new(ThresholdCase.HoldsWeakly, hook with { HoldN = guess.Low });
            yield return new(ThresholdCase.HoldsStrongly, hook with { HoldN = guess.High });
        }

        if (hook.Points > 1)
        {
            yield return new(ThresholdCase.OnePoint, hook with { Points = 1 });
        }
    }

    private static IEnumerable<StrikeRemedy> Remedies(Setup own, StrikeTask task, double labelN, double lockedN, int threads, Func<Setup, StrikeTask, Outcome<StrikeResult>> run, CancellationToken stop)
    {
        Setup setup = own with { Reel = own.Reel with { DragN = lockedN } };
        StrikeTask coarse = StrikeVariants.Coarse(task);
        (RemedyKind Kind, CurveLine Line, Setup Setup, StrikeTask Task)[] tries =
        [
            .. Strokes(task.Stroke).Select(s => (s.Kind, CurveLine.Own, setup, coarse with { Stroke = s.Stroke })),
            .. StrikeCurveStudy.DistancesM.Where(d => d < task.DistanceM).Select(d => (RemedyKind.Nearer, CurveLine.Own, setup, coarse with { DistanceM = d })),
            .. StrikeVariants.Lines(setup, labelN).Skip(1).Select(l => (RemedyKind.Line, l.Kind, l.Setup, coarse)),
        ];
        StrikeResult?[] results = ParallelRuns.Execute(tries, t => StrikeTrial.Try(t.Setup, t.Task, run), threads, null, stop);
        return tries.Zip(results).Where(t => t.Second is not null)
            .Select(t => new StrikeRemedy(t.First.Kind, t.First.Line, t.First.Task.DistanceM, t.Second!.Summary.HookForcePeakN, t.Second.Summary.Sets));
    }

    private static IEnumerable<(RemedyKind Kind, StrikeStroke Stroke)> Strokes(StrikeStroke stroke)
    {
        const double full = 1.0;
        if (stroke.Effort < full)
        {
            yield return (RemedyKind.FullEffort, stroke with { Effort = full });
        }

        if (stroke.Style != StrikeStyle.Haul)
        {
            StrikeStroke haul = StrikeStroke.Of(StrikeStyle.Haul);
            yield return (RemedyKind.Haul, haul with { Effort = stroke.Effort });
            if (stroke.Effort < full)
            {
                yield return (RemedyKind.FullHaul, haul with { Effort = full });
            }
        }
    }
}
