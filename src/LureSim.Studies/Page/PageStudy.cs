using LureSim.Model;
using LureSim.Model.Cast;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Studies.Cadence;
using LureSim.Studies.Cast;
using LureSim.Studies.Figures;
using LureSim.Studies.Runs;
using LureSim.Wire;

namespace LureSim.Studies.Page;

/// <summary>Computes what a page shows: retrieves, settled walks, other lines, leaders and rods, rhythms, casts, strikes, floats.</summary>
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
        Piece[] pieces = [.. files.SelectMany(f => Pieces(f, plan)), .. files.Count == 1 ? Others(files[0]) : []];
        int done = 0;
        object[] made = ParallelRuns.Execute(
            pieces, p => p.Make(stop), plan.Threads, () => progress?.Invoke(rest * Interlocked.Increment(ref done) / pieces.Length), stop);
        var parts = pieces.Zip(made).ToLookup(p => p.First.File, p => (p.First.Change, p.Second));
        PageCase[] cases = [.. files.Select((f, i) => Case(f, i, [.. parts[f]], Rhythms(files, i, plan, s => progress?.Invoke(rest + ((1.0 - rest) * (i + s) / files.Count)), stop)))];
        return new(cases, [.. made.OfType<PageRun>().Where(r => r.Set.Count > 0)], plan.WithRhythms);
    }

    // One independent piece of the work: what it makes depends on nothing else.
    private sealed record Piece(PageFile File, Variant? Change, Func<CancellationToken, object> Make);

    // The longest first.
    private static IEnumerable<Piece> Pieces(PageFile file, PagePlan plan)
    {
        if (plan.WithStrike)
        {
            yield return new(file, null, stop => PageStrike.Of(file, stop));
        }

        yield return new(file, null, stop => PageFloat.Of(file, plan.WithBuilding, stop));
        yield return new(file, null, stop => Retrieve("own", "as in the file", file, [], stop));
        if (!file.Here.Retrieve!.IsTow)
        {
            yield return new(file, null, stop => new Settled(Outcome(file.Here, stop)));
            foreach (Variant v in Variants(file))
            {
                yield return new(file, v, stop => Outcome(file.With(v.Set), stop));
            }
        }

        yield return new(file, null, stop => Cast(file, stop));
    }

    // Beside the own run of a single file: slow rhythms need slack, fast ones little (docs/cadence.md), so the same slow rhythm with and without.
    private static Piece[] Others(PageFile file)
    {
        RetrieveTask task = file.Here.Retrieve!;
        string[] slow = task.CadencePerS >= FastPerS ? ["retrieve.cadence=1 /s"] : [];
        string rhythm = slow.Length > 0 ? "1 twitch a second" : "the same rhythm";
        (string Id, string Name, string[] Set)[] all =
        [
            ("slow", rhythm, slow),
            ("tight", $"{rhythm}, hardly any slack", [.. slow, "retrieve.slack=2 cm"]),
        ];
        return task.IsTow ? [] : [.. all.Where(o => o.Set.Length > 0 && file.With(o.Set).IsValid).Select(o => new Piece(file, null, stop => Retrieve(o.Id, o.Name, file, o.Set, stop)))];
    }

    // From this rhythm on, twitches per second, 1 a second is another walk.
    private const double FastPerS = 1.25;

    private static IEnumerable<Variant> Variants(PageFile file) =>
        Enum.GetValues<ChangeGroup>().SelectMany(g => Ordered(file, g)).Where(v => file.With(v.Set).IsValid);

    // The own thing stands in the place of the one that says the same, else first; rods by their length.
    private static IEnumerable<Variant> Ordered(PageFile file, ChangeGroup group)
    {
        var own = new Variant(group, OwnTackle.Name(group, file), []);
        return group switch
        {
            ChangeGroup.Line => PageVariants.With(own, PageVariants.OfLine()),
            ChangeGroup.Leader => PageVariants.With(own, PageVariants.OfLeader()),
            _ => PageVariants.OfRod(file).Append(own).OrderBy(v => PageVariants.LengthM(v.Label)),
        };
    }

    private static PageCase Case(PageFile file, int index, (Variant? Change, object Made)[] parts, CadenceResult? rhythms)
    {
        PageRun own = parts.Select(p => p.Made).OfType<PageRun>().First();
        StationaryOutcome? settled = parts.Select(p => p.Made).OfType<Settled>().FirstOrDefault()?.Outcome;
        CastMade cast = parts.Select(p => p.Made).OfType<CastMade>().First();
        PageStrike? strike = parts.Select(p => p.Made).OfType<PageStrike>().FirstOrDefault();
        PageFloat afloat = parts.Select(p => p.Made).OfType<PageFloat>().First();
        return new()
        {
            File = file,
            Own = index == 0 ? own : own with { Id = $"own{index + 1}", File = index },
            SettlesOtherwise = settled is null || own.Result is null || own.Failure is not null ? null : SettledWalk.Difference(own.Result.Task, own.Result.Summary.Pattern, settled),
            Rhythms = rhythms,
            Cast = cast.Report,
            CastFault = cast.Fault,
            Strike = strike?.Report,
            StrikeFault = strike?.Fault,
            Design = afloat.Report,
            DesignFault = afloat.Fault,
            Changes = [.. parts.Where(p => p.Change is not null).Select(p => new PageChange(p.Change!.Group, p.Change.Label, p.Change.Set.Count == 0, (StationaryOutcome)p.Made))],
            Guesses = [.. file.Own!.Guesses.Where(g => Retrieves.Draws(g.Key, file.Here))],
        };
    }

    private static PageRun Retrieve(string id, string name, PageFile file, string[] set, CancellationToken stop)
    {
        ScenarioResult scenario = set.Length == 0 ? file.Here : file.With(set);
        var line = new LineKeeper(scenario.Retrieve!.Solver.OutputStepS);
        Outcome<RetrieveResult> outcome = RetrieveRun.Run(scenario.Setup!, scenario.Retrieve, new(null, stop), line.See);
        return new(id, name, 0, set, outcome.Result, outcome.Result is RetrieveResult result ? Film.Of(result, line) : null, outcome.Failure?.Reason);
    }

    private sealed record Settled(StationaryOutcome Outcome);

    private static StationaryOutcome Outcome(ScenarioResult scenario, CancellationToken stop) => SettledWalk.Run(scenario.Setup!, scenario.Retrieve!, stop);

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
            ? CadenceStudy.Run(here.Setup!, here.Retrieve, new CadencePlan(Threads: plan.Threads), SustainedTorque.Of(here), null, new(progress), stop).Result
            : null;
    }
}
