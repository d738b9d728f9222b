using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Cover;
using LureSim.Model.Crawl;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Strike;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Runs;
using LureSim.Studies.Strike;

namespace LureSim.Studies.Cover;

/// <summary>Which cover wants which rig: one person's tackle at an open edge, among sparse plants and over a thick mat.</summary>
public static class CoverStudy
{
    // Twitches that tell how a lure crawls.
    private const int Twitches = 6;

    /// <summary>Runs all; fails when a strike with the tackle as it is cannot be finished.</summary>
    /// <param name="scenario">Valid scenario.</param>
    /// <param name="threads">Most threads; 0 = all cores. The result does not depend on it.</param>
    /// <param name="progress">Gets the share done; may be null.</param>
    /// <param name="stop">Stops the runs.</param>
    /// <exception cref="ArgumentException">A value makes no sense beside the others.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<CoverReport> Run(ScenarioResult scenario, int threads, Action<double>? progress, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var bands = CoverBands.Of(scenario);
        double label = scenario.Values.Optional(LineKeys.Set.Label) ?? LineLabels.LabelOf(scenario.Setup!.Line);
        CoverKind[] kinds = Enum.GetValues<CoverKind>();
        var cases = new List<CoverCase>();
        foreach (CoverKind kind in kinds)
        {
            CoverTry own = Own(scenario, kind);
            Outcome<CoverCase> outcome = Case(own, label, bands, threads, stop);
            if (!outcome.IsWhole)
            {
                return new(null, outcome.Failure);
            }

            cases.Add(outcome.Result with { Crawl = Crawl(own.Setup, scenario.Crawl, stop) });
            progress?.Invoke((double)cases.Count / kinds.Length);
        }

        return new(new CoverReport(scenario.Setup!.Title, label, cases));
    }

    /// <summary>The scenario's tackle in a cover, numbers as for many strikes at once: its own plants where it is of that kind, else usual ones; its own style where it is given, else the
    /// one that people use there.</summary>
    /// <param name="scenario">Valid scenario.</param>
    /// <param name="kind">Cover.</param>
    public static CoverTry Own(ScenarioResult scenario, CoverKind kind)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        (Setup setup, StrikeTask task) = (scenario.Setup!, scenario.Strike!);
        CoverSpec plants = setup.Cover;
        if (plants.Kind != kind)
        {
            plants = CoverSpec.Of(kind) with { LineFriction = plants.LineFriction, HeightM = plants.HeightM, LureFriction = plants.LureFriction };
        }

        StrikeStyle style = scenario.Values.Has(StrikeKeys.Style) ? task.Stroke.Style : StrikeKeys.UsualStyle(kind);
        return new(setup with { Cover = plants }, StrikeVariants.Coarse(PersonStroke.With(task, style)), setup.Reel.DragN);
    }

    private static Outcome<CoverCase> Case(CoverTry own, double labelN, CoverBands bands, int threads, CancellationToken stop)
    {
        Outcome<DragOutcome> drag = DragStudy.Run(own.Setup, own.Task, labelN, [], threads, stop);
        if (!drag.IsWhole)
        {
            return new(null, drag.Failure);
        }

        if (CoverCriteria.Weigh(own, bands, stop) is not CoverTrial plain)
        {
            return new(null, new("Holding and landing with this rod cannot be worked out.", 0.0));
        }

        DragWindow window = drag.Result.Window;
        IReadOnlyList<(CoverChange Change, CoverTry Try)> tries = CoverChanges.Of(own, labelN, window, plain.EasedN);
        CoverTrial?[] trials = ParallelRuns.Execute(tries, t => CoverCriteria.Weigh(t.Try, bands, stop), threads, null, stop);
        IEnumerable<CoverHelp> helps = tries.Zip(trials).Where(t => t.Second is not null).Select(t => Help(t.First.Change, plain, t.Second!)).OfType<CoverHelp>();
        return new(new CoverCase(plain, window, [.. helps.OrderBy(h => h.After.Count(CoverState.Fails)).ThenBy(h => h.After.Count(CoverState.May))]));
    }

    // A lure without trebles over a mat; null elsewhere, and where the model cannot finish it or the file's crawl has faults.
    private static CrawlResult? Crawl(Setup setup, CrawlTask? task, CancellationToken stop)
    {
        if (task is null || setup.Cover.Kind != CoverKind.Mat || setup.Hook.Kind == HookKind.ThreePoint)
        {
            return null;
        }

        Outcome<CrawlResult> outcome = CrawlRun.Run(setup, task with { DurationS = Math.Min(task.DurationS, Twitches / task.CadencePerS) }, new(null, stop));
        return outcome.IsWhole ? outcome.Result : null;
    }

    // A change helps when a criterion comes into a better state, none into a worse one, and none from enough to too little by its middle value.
    private static CoverHelp? Help(CoverChange change, CoverTrial own, CoverTrial after)
    {
        (CoverCheck Before, CoverCheck After)[] pairs = [.. own.Checks.Zip(after.Checks)], bettered = [.. pairs.Where(p => p.After.State < p.Before.State)];
        bool spoils = Array.Exists(pairs, p => p.After.State > p.Before.State || (p.Before.Reserve >= 1.0 && p.After.Reserve < 1.0));
        return bettered.Length > 0 && !spoils ? new(change, after, bettered) : null;
    }
}
