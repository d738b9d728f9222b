using LureSim.Model;
using LureSim.Model.Cast;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Studies.Cadence;
using LureSim.Studies.Cast;
using LureSim.Studies.Figures;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Page;

/// <summary>Computes what a page shows: retrieves, settled walks, other lines, leaders and rods, rhythms, casts.</summary>
public static class PageStudy
{
    // Of the time, where rhythms are searched.
    private const double RhythmShare = 0.8;

    private static readonly RetrieveSource Retrieves = new();

    /// <summary>Runs everything.</summary>
    /// <param name="files">Valid files, 1 to <see cref="PagePlan.MostFiles"/>.</param>
    /// <param name="plan">Plan.</param>
    /// <param name="progress">Gets the share done, from several threads; may be null.</param>
    /// <param name="stop">Stops the runs.</param>
    /// <exception cref="ArgumentException">There are no files, too many, or one with errors.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static PageResult Run(IReadOnlyList<PageFile> files, PagePlan plan, Action<double>? progress, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(plan);
        if (files.Count is < 1 or > PagePlan.MostFiles || files.Any(f => !f.Here.IsValid))
        {
            throw new ArgumentException($"1 to {PagePlan.MostFiles} valid files are due", nameof(files));
        }

        double rest = plan.WithRhythms ? 1.0 - RhythmShare : 1.0;
        Piece[] pieces = [.. files.SelectMany(Pieces), .. files.Count == 1 ? Other(files[0]) : []];
        int done = 0;
        object?[] made = ParallelRuns.Execute(
            pieces, p => p.Make(stop), plan.Threads, () => progress?.Invoke(rest * Interlocked.Increment(ref done) / pieces.Length), stop);
        var parts = pieces.Zip(made).ToLookup(p => p.First.File, p => (p.First, p.Second));
        PageCase[] cases = [.. files.Select((f, i) => Case(f, i, [.. parts[f]], Rhythms(files, i, plan, s => progress?.Invoke(rest + ((1.0 - rest) * (i + s) / files.Count)), stop)))];
        return new(cases, made[^1] is PageRun other && files.Count == 1 && other.Set.Count > 0 ? other : null, plan.WithRhythms);
    }

    // One independent piece of the work: what it makes depends on nothing else.
    private sealed record Piece(PageFile File, Variant? Change, Func<CancellationToken, object?> Make);

    private static IEnumerable<Piece> Pieces(PageFile file)
    {
        yield return new(file, null, stop => Retrieve("as in the file", file, [], stop));
        if (!file.Here.Retrieve!.IsTow)
        {
            yield return new(file, null, stop => Settle(file, stop));
            foreach (Variant v in Variants(file))
            {
                yield return new(file, v, stop => Outcome(file.With(v.Set), stop));
            }
        }

        yield return new(file, null, stop => Cast(file, stop));
    }

    // The comparison of a page of one file: the same with hardly any slack, or where that is what it has, with plenty.
    private static Piece[] Other(PageFile file)
    {
        RetrieveTask task = file.Here.Retrieve!;
        if (task.IsTow)
        {
            return [];
        }

        bool less = task.TakeUp.SlackM > LittleSlackM + 0.02;
        string[] set = [less ? "retrieve.slack=2 cm" : "retrieve.slack=15 cm"];
        return file.With(set).IsValid ? [new(file, null, stop => Retrieve(less ? "the line kept tight" : "more slack", file, set, stop))] : [];
    }

    private const double LittleSlackM = 0.02;

    private static IEnumerable<Variant> Variants(PageFile file) =>
        new[] { ChangeGroup.Line, ChangeGroup.Leader, ChangeGroup.Rod }.SelectMany(g => Ordered(file, g)).Where(v => file.With(v.Set).IsValid);

    // The own thing stands among the others; one that another of the list repeats is left out.
    private static IEnumerable<Variant> Ordered(PageFile file, ChangeGroup group)
    {
        var own = new Variant(group, OwnTackle.Name(group, file), []);
        Variant[] others = [.. (group switch { ChangeGroup.Line => PageVariants.OfLine(), ChangeGroup.Leader => PageVariants.OfLeader(), _ => PageVariants.OfRod(file) }).Where(v => v.Label != own.Label)];
        return group == ChangeGroup.Rod
            ? others.Append(own).OrderBy(v => PageVariants.LengthM(v.Label))
            : [own, .. others];
    }

    private static PageCase Case(PageFile file, int index, (Piece Piece, object? Made)[] parts, CadenceResult? rhythms)
    {
        PageRun own = parts.Select(p => p.Made).OfType<PageRun>().First();
        SettledStretch? settled = parts.Select(p => p.Made).OfType<SettledStretch>().FirstOrDefault();
        CastMade cast = parts.Select(p => p.Made).OfType<CastMade>().First();
        return new()
        {
            File = file,
            Own = own with { File = index },
            Settled = settled,
            SettlesOtherwise = settled is null || own.Result is null || own.Failure is not null ? null
                : SettledWalk.Difference(own.Result.Task, own.Result.Summary.Pattern, new(settled.Result.Summary)),
            Rhythms = rhythms,
            Cast = cast.Report,
            CastFault = cast.Fault,
            Changes = [.. parts.Where(p => p.Piece.Change is not null).Select(p => new PageChange(p.Piece.Change!.Group, p.Piece.Change.Label, p.Piece.Change.Set.Count == 0, (StationaryOutcome)p.Made!))],
            Guesses = [.. file.Own!.Guesses.Where(g => Retrieves.Draws(g.Key, file.Here))],
        };
    }

    private static PageRun Retrieve(string name, PageFile file, IReadOnlyList<string> set, CancellationToken stop)
    {
        ScenarioResult scenario = set.Count == 0 ? file.Here : file.With(set);
        Outcome<RetrieveResult> outcome = RetrieveRun.Run(scenario.Setup!, scenario.Retrieve!, new(null, stop));
        return new(name, 0, set, outcome.Result, outcome.Failure?.Reason);
    }

    private static StationaryOutcome Outcome(ScenarioResult scenario, CancellationToken stop) => SettledWalk.Run(scenario.Setup!, scenario.Retrieve!, stop);

    private static SettledStretch? Settle(PageFile file, CancellationToken stop)
    {
        RetrieveTask task = file.Here.Retrieve!;
        RetrieveTask long_ = StationaryRun.Make(task, task.CadencePerS, new(task.StartHeadingRad, task.StartSidewaysM), new StationaryPlan());
        Outcome<RetrieveResult> outcome = RetrieveRun.Run(file.Here.Setup!, long_, new(null, stop));
        return outcome.IsWhole ? SettledEnd.Of(outcome.Result) : null;
    }

    private static CastMade Cast(PageFile file, CancellationToken stop)
    {
        ScenarioResult scenario = ScenarioSource.Read(file.Source.Name, file.Overrides, Activities.Cast);
        if (scenario.Cast is not CastTask task || scenario.Setup is null)
        {
            return new(null, scenario.Errors.Count > 0 ? scenario.Errors[0].ToString() : "the file says nothing about it");
        }

        try
        {
            Outcome<CastReport> outcome = CastStudy.Run(scenario.Setup, task, 1, new(null, stop));
            return new(outcome.IsWhole ? outcome.Result : null, outcome.Failure?.Reason);
        }
        catch (ArgumentException e)
        {
            // What no single key could tell: the lure in the water at the start.
            return new(null, e.Message.Split('\n')[0]);
        }
    }

    private sealed record CastMade(CastReport? Report, string? Fault);

    private static CadenceResult? Rhythms(IReadOnlyList<PageFile> files, int index, PagePlan plan, Action<double> progress, CancellationToken stop)
    {
        ScenarioResult here = files[index].Here;
        return plan.WithRhythms && !here.Retrieve!.IsTow
            ? CadenceStudy.Run(here.Setup!, here.Retrieve, new CadencePlan(Threads: plan.Threads), SustainedTorque.Of(here), null, progress, stop).Result
            : null;
    }
}
