using LureSim.Cli.Running;
using LureSim.Reports.Cast;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
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
    /// <param name="asked">What differs, and against what.</param>
    /// <param name="draws">Draws of the guesses.</param>
    /// <param name="threads">Most threads, at least 1.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="stop">Set when the person stops the run.</param>
    public static int Run(
        CommonValues values, ScenarioResult scenario, Comparison asked, int draws, int threads, Terminal terminal, CancellationToken stop)
    {
        var faults = new List<ScenarioFault>();
        var variants = new CastVariants(ScenarioSource.Load(values.File, Activities.Cast), values.Overrides, scenario, draws);
        CastVariantList casts = variants.Make(asked.Axes, asked.Against, faults);
        if (faults.Count > 0)
        {
            terminal.Tell(faults);
            return ExitCode.BadInput;
        }

        using OutputFolder? folder = values.Open(stop);
        IReadOnlyList<CastCase> cases;
        using (var progress = new ProgressLine("cast", terminal, values.Quiet))
        {
            cases = CastAcrossStudy.Run(casts.All, draws, threads, progress.Report, stop);
        }

        var result = new CastAcross(
            scenario.Setup!.Title, string.Join(" and ", asked.Axes.Select(a => a.Key.Title)), asked.Axes.FirstOrDefault(a => a.IsLadder)?.Law, cases, casts.Reference, asked.Against is null);
        EffectiveScenario own = scenario.Effective();
        RunNotes notes = Capabilities.Notes(Capabilities.Cast, scenario, own, values);
        if (folder is not null)
        {
            CastAcrossFiles.Write(folder, result, own.ToToml(), notes, values.Plots);
        }

        terminal.Print(values, stream => CastAcrossJson.Write(stream, result, notes), () => CastAcrossText.Build(result, notes, asked.Pairs));
        return cases.All(c => c.Cast is null) ? ExitCode.NotFinished : ExitCode.Done;
    }
}
