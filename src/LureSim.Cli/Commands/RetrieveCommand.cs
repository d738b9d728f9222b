using System.CommandLine;
using LureSim.Cli.Running;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Retrieve;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Studies.Doubt;
using LureSim.Studies.Runs;

namespace LureSim.Cli.Commands;

/// <summary><c>retrieve</c>: one twitched retrieve, from scenario to summary, channels and pictures.</summary>
public static class RetrieveCommand
{
    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where to write.</param>
    /// <param name="stop">Set when the person stops the run.</param>
    public static Command Create(Terminal terminal, CancellationToken stop)
    {
        var options = new CommonOptions();
        var command = new Command("retrieve", "Twitch a lure home: its path, the line's drag and slack, and why.");
        var doubt = new DoubtOptions();
        options.AddTo(command);
        doubt.AddTo(command);
        command.SetAction(parsed =>
        {
            var faults = new List<ScenarioFault>();
            (int runs, int threads) = doubt.Read(parsed, faults);
            CommonValues values = options.Read(parsed, "retrieve");
            return ScenarioInput.Read(values, faults, terminal, Activities.Retrieve) is ScenarioResult scenario
                ? Run(values, scenario, runs, threads, terminal, stop)
                : ExitCode.BadInput;
        });
        return command;
    }

    private static int Run(CommonValues values, ScenarioResult scenario, int runs, int threads, Terminal terminal, CancellationToken stop)
    {
        using OutputFolder? folder = values.Open(stop);
        RetrieveTask task = scenario.Retrieve!;
        Task<StationaryOutcome>? settling = task.IsTow ? null : Task.Run(() => SettledWalk.Run(scenario.Setup!, task, stop), stop);
        RetrieveResult result;
        using (var progress = new ProgressLine("retrieve", terminal, values.Quiet))
        {
            result = RetrieveRun.Run(scenario.Setup!, task, new(progress.Report, stop)).DemandAny();
        }

        DoubtStudy? doubt = runs > 0 ? Doubt(values, runs, threads, terminal, stop) : null;
        EffectiveScenario effective = scenario.Effective();
        RunNotes notes = Capabilities.Notes(Capabilities.Retrieve, scenario, effective, values);
        notes = notes with { Warnings = [.. notes.Warnings, .. result.Attitude?.Notes ?? []] };
        if (result.Failure is null && settling is not null && SettledWalk.Difference(task, result.Summary.Pattern, settling.GetAwaiter().GetResult()) is string difference)
        {
            notes = notes with { Warnings = [.. notes.Warnings, difference] };
        }

        if (folder is not null)
        {
            RetrieveFiles.Write(folder, result, effective.ToToml(), notes, values.Plots, doubt);
        }

        terminal.Print(values, stream => SummaryJson.Write(stream, result, notes, doubt), () => RetrieveText.Build(result, notes, doubt));
        if (result.Failure is not null)
        {
            double last = result.Series["time_s"][^1];
            terminal.Error.WriteLine(FormattableString.Invariant($"the model could not finish; last good time {last:F3} s: {result.Failure}"));
        }

        return result.Failure is null ? ExitCode.Done : ExitCode.NotFinished;
    }

    private static DoubtStudy Doubt(CommonValues values, int runs, int threads, Terminal terminal, CancellationToken stop)
    {
        using var progress = new ProgressLine("doubt", terminal, values.Quiet);
        return DoubtRuns.Run(ScenarioSource.Load(values.File, Activities.Retrieve), values.Overrides, Capabilities.Retrieve, runs, threads, progress.Report, stop);
    }
}
