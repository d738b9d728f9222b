using System.CommandLine;
using LureSim.Cli.Commands;
using LureSim.Cli.Running;
using LureSim.Model.Pool;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Pool;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Studies.Doubt;
using LureSim.Studies.Pool;

namespace LureSim.Cli.Pool;

/// <summary><c>pool</c>: what a tow, a push and letting go tell of the lure.</summary>
internal static class PoolCommand
{
    /// <summary>The capability: command and summary.</summary>
    public static Capability Capability { get; } = new(Create, new PoolSource());

    private static Command Create(Terminal terminal, CancellationToken stop)
    {
        var options = new CommonOptions();
        var doubt = new DoubtOptions();
        var command = new Command("pool", "Take the lure to a pool: tow it, push it, let it coast, roll and bob, as you could to measure it.");
        options.AddTo(command);
        doubt.AddTo(command);
        command.SetAction(parsed =>
        {
            var faults = new List<ScenarioFault>();
            (int runs, int threads) = doubt.Read(parsed, faults);
            CommonValues values = options.Read(parsed, "pool");
            return ScenarioInput.Read(values, faults, terminal, Capability.Figures!.Asks) is ScenarioResult scenario
                ? Run(values, scenario, runs, threads, terminal, stop)
                : ExitCode.BadInput;
        });
        return command;
    }

    private static int Run(CommonValues values, ScenarioResult scenario, int runs, int threads, Terminal terminal, CancellationToken stop)
    {
        using OutputFolder? folder = values.Open(stop);
        PoolResult pool = PoolSource.InPool(scenario, stop).Demand();
        DoubtStudy? doubt = runs > 0 ? Doubt(values, runs, threads, terminal, stop) : null;
        string title = scenario.Setup!.Title;
        EffectiveScenario effective = scenario.Effective();
        RunNotes notes = Capabilities.Notes(Capability.Figures!, scenario, effective, values);
        if (folder is not null)
        {
            PoolFiles.Write(folder, title, pool, effective.ToToml(), notes, values.Plots, doubt);
        }

        terminal.Print(values, stream => PoolFiles.WriteJson(stream, title, pool, notes, doubt), () => PoolText.Build(title, pool, notes, doubt));
        return ExitCode.Done;
    }

    private static DoubtStudy Doubt(CommonValues values, int runs, int threads, Terminal terminal, CancellationToken stop)
    {
        using var progress = new ProgressLine("doubt", terminal, values.Quiet);
        return DoubtRuns.Run(ScenarioSource.Load(values.File, Activities.Pool), values.Overrides, Capability.Figures!, runs, threads, progress.Report, stop);
    }
}
