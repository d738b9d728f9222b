using LureSim.Cli.Running;
using LureSim.Cli.Sweeps;
using LureSim.Model.Cast;
using LureSim.Reports.Cast;
using LureSim.Reports.Retrieve;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Studies.Cast;

namespace LureSim.Cli.Commands;

/// <summary><c>cast --across</c>: distance against one thing that differs, with bands and a verdict.</summary>
internal static class CastAcrossCommand
{
    /// <summary>Draws of the guesses without <c>--doubt</c>.</summary>
    public const int Draws = 40;

    /// <summary>Runs the comparison.</summary>
    /// <param name="values">Common options.</param>
    /// <param name="scenario">The scenario, valid.</param>
    /// <param name="axis">What differs.</param>
    /// <param name="draws">Draws of the guesses.</param>
    /// <param name="threads">Most threads, at least 1.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="stop">Set when the person stops the run.</param>
    public static int Run(
        CommonValues values, ScenarioResult scenario, CastAcrossAxis axis, int draws, int threads, Terminal terminal, CancellationToken stop)
    {
        ScenarioSource source = ScenarioSource.Load(values.File, Activities.Cast);
        EffectiveScenario own = scenario.Effective();
        CastVariant?[] variants = [.. axis.Values.Select(v => Variant(values, source, scenario, own, axis, v, draws, terminal))];
        if (variants.Any(v => v is null))
        {
            return ExitCode.BadInput;
        }

        IReadOnlyList<CastCase> cases;
        using (var progress = new ProgressLine("cast", terminal, values.Quiet))
        {
            cases = CastAcrossStudy.Run(variants!, draws, threads, progress.Report, stop);
        }

        var result = new CastAcross(scenario.Setup!.Title, axis.Title, axis.IsNumeric, axis.IsLadder ? RodLadder.Law : null, cases);
        RunNotes notes = CastCommand.Notes(scenario, own);
        if (values.Folder is not null)
        {
            CastAcrossFiles.Write(values.Folder, result, own.ToToml(), notes, values.Plots);
        }

        CadenceCommand.Print(values, stream => CastAcrossJson.Write(stream, result, notes), () => CastAcrossText.Build(result, notes), terminal);
        return cases.All(c => c.Cast is null) ? ExitCode.NotFinished : ExitCode.Done;
    }

    private static CastVariant? Variant(
        CommonValues values, ScenarioSource source, ScenarioResult scenario, EffectiveScenario own, CastAcrossAxis axis,
        (string Label, double Number, IReadOnlyList<string> Overrides) value, int draws, Terminal terminal)
    {
        IReadOnlyList<string> overrides = axis.IsLadder ? RodLadder.Overrides(value.Label, own) : value.Overrides;
        ScenarioResult here = source.Resolve([.. values.Overrides, .. overrides]);
        foreach (ScenarioFault fault in here.Errors)
        {
            terminal.Error.WriteLine($"--across {value.Label}: {fault}");
        }

        if (here.Scenario is not { Cast: CastTask task } spec)
        {
            return null;
        }

        var figures = new CastFigures();
        ulong seed = scenario.Setup!.Seed;
        var design = new GuessDesign(Math.Max(1, draws), seed);
        GuessedKey[] guesses = GuessDesign.Of(axis.IsLadder ? scenario : here, figures);
        return new(
            value.Label, value.Number, spec.Setup, task,
            draw => source.Resolve([.. values.Overrides, .. Drawn(draw)]).Scenario is { Cast: CastTask drawn } other ? (other.Setup, drawn) : null);

        IEnumerable<string> Drawn(int draw) => axis.IsLadder
            ? RodLadder.Overrides(value.Label, own, guesses, design, seed, draw)
            : value.Overrides.Concat(design.Overrides(guesses, draw));
    }
}
