using System.CommandLine;
using LureSim.Cli.Commands;
using LureSim.Cli.Running;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Strike;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Studies.Doubt;
using LureSim.Studies.Strike;

namespace LureSim.Cli.Strike;

/// <summary><c>strike</c>: one hook-set, the drag that suits it, and what holds and lands the fish.</summary>
internal static class StrikeCommand
{
    /// <summary>The capability: command and summary.</summary>
    public static Capability Capability { get; } = new(Create, new StrikeSource());

    private static Command Create(Terminal terminal, CancellationToken stop)
    {
        var options = new CommonOptions();
        var doubt = new DoubtOptions();
        var command = new Command("strike", "Set the hook: pull on it over time, what limits it, what gives first, which drag suits, what holds and lifts the fish.");
        options.AddTo(command);
        doubt.AddTo(command);
        command.SetAction(parsed =>
        {
            var faults = new List<ScenarioFault>();
            (int runs, int threads) = doubt.Read(parsed, faults);
            CommonValues values = options.Read(parsed, "strike");
            return ScenarioInput.Read(values, faults, terminal, Capability.Figures!.Asks) is ScenarioResult scenario
                ? ScenarioInput.Guarded(values, terminal, () => Run(values, scenario, runs, threads, terminal, stop))
                : ExitCode.BadInput;
        });
        return command;
    }

    private static int Run(CommonValues values, ScenarioResult scenario, int runs, int threads, Terminal terminal, CancellationToken stop)
    {
        using OutputFolder? folder = values.Open(stop);
        StrikeReport report;
        using (var progress = new ProgressLine("strike", terminal, values.Quiet))
        {
            report = StrikeStudy.Run(scenario, threads, progress.Report, stop).Demand();
        }

        DoubtStudy? doubt = runs > 0 ? Doubt(values, runs, threads, terminal, stop) : null;
        EffectiveScenario effective = scenario.Effective();
        RunNotes notes = Capabilities.Notes(Capability.Figures!, scenario, effective, values);
        if (folder is not null)
        {
            StrikeFiles.Write(folder, report, effective.ToToml(), notes, values.Plots, doubt);
        }

        terminal.Print(values, stream => StrikeJson.Write(stream, report, notes, doubt), () => StrikeText.Build(report, notes, doubt));
        return ExitCode.Done;
    }

    private static DoubtStudy Doubt(CommonValues values, int runs, int threads, Terminal terminal, CancellationToken stop)
    {
        using var progress = new ProgressLine("doubt", terminal, values.Quiet);
        return DoubtRuns.Run(ScenarioSource.Load(values.File, Activities.Strike), values.Overrides, Capability.Figures!, runs, threads, progress.Report, stop);
    }
}
