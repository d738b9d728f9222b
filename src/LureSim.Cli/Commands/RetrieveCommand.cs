using System.CommandLine;
using System.Text;
using LureSim.Cli.Running;
using LureSim.Model.Retrieve;
using LureSim.Reports.Files;
using LureSim.Reports.Text;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;

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
        options.AddTo(command);
        command.SetAction(parsed => Run(options.Read(parsed), terminal, stop));
        return command;
    }

    private static int Run(CommonValues values, Terminal terminal, CancellationToken stop)
    {
        if (ScenarioInput.Read(values, terminal) is not ScenarioResult scenario)
        {
            return ExitCode.BadInput;
        }

        RetrieveResult result;
        using (var progress = new ProgressLine("retrieve", terminal, values.Quiet))
        {
            result = RetrieveRun.Execute(scenario.Spec!, progress.Report, stop);
        }

        EffectiveScenario effective = scenario.Effective();
        string[] warnings = [.. scenario.Notes.Select(n => n.ToString()), .. result.Attitude?.Notes ?? []];
        var notes = new RunNotes(warnings, [.. effective.Guesses.Select(g => g.ToString())]);
        if (values.Folder is not null)
        {
            RetrieveFiles.Write(values.Folder, result, effective.ToToml(), notes, values.Plots);
        }

        Print(values, result, notes, terminal);
        return result.Failure is null ? ExitCode.Done : ExitCode.NotFinished;
    }

    private static void Print(CommonValues values, RetrieveResult result, RunNotes notes, Terminal terminal)
    {
        if (values.Json)
        {
            using var stream = new MemoryStream();
            SummaryJson.Write(stream, result, notes);
            terminal.Out.Write(Encoding.UTF8.GetString(stream.ToArray()));
        }
        else if (!values.Quiet)
        {
            terminal.Out.Write(RetrieveText.Build(result, notes));
            terminal.Out.Write($"Files: {values.Folder}\n");
        }

        if (result.Failure is not null)
        {
            double last = result.Series["time_s"][^1];
            terminal.Error.WriteLine(FormattableString.Invariant($"the model could not finish; last good time {last:F3} s: {result.Failure}"));
        }
    }
}
