using System.CommandLine;
using System.Text;
using LureSim.Cli.Running;
using LureSim.Reports.Files;
using LureSim.Reports.Files.Cadence;
using LureSim.Reports.Text.Cadence;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Cadence;

namespace LureSim.Cli.Commands;

/// <summary><c>cadence</c>: which rhythms walk.</summary>
public static class CadenceCommand
{
    private const int Starts = 6;

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where to write.</param>
    /// <param name="stop">Set when the person stops the run.</param>
    public static Command Create(Terminal terminal, CancellationToken stop)
    {
        var options = new CommonOptions();
        var search = new CadenceOptions();
        var command = new Command("cadence", "Which rhythms walk, which is best, and whether the wrist keeps up.");
        options.AddTo(command);
        search.AddTo(command);
        command.SetAction(parsed =>
        {
            var faults = new List<ScenarioFault>();
            CadencePlan? plan = search.Read(parsed, Starts, faults);
            CommonValues values = options.Read(parsed);
            return ScenarioInput.Read(values, faults, terminal) is ScenarioResult scenario && plan is not null
                ? Single(values, scenario, plan, terminal, stop)
                : ExitCode.BadInput;
        });
        return command;
    }

    private static int Single(CommonValues values, ScenarioResult scenario, CadencePlan plan, Terminal terminal, CancellationToken stop)
    {
        CadenceResult result;
        using (var progress = new ProgressLine("cadence", terminal, values.Quiet))
        {
            result = CadenceStudy.Run(scenario.Spec!, plan, Torque(scenario), null, progress.Report, stop);
        }

        EffectiveScenario effective = scenario.Effective();
        RunNotes notes = Notes(scenario, effective);
        if (values.Folder is not null)
        {
            CadenceFiles.Write(values.Folder, result, effective.ToToml(), notes, values.Plots);
        }

        if (values.Json)
        {
            using var stream = new MemoryStream();
            CadenceJson.Write(stream, result, notes);
            terminal.Out.Write(Encoding.UTF8.GetString(stream.ToArray()));
        }
        else if (!values.Quiet)
        {
            terminal.Out.Write(CadenceText.Build(result, notes));
            terminal.Out.Write($"Files: {values.Folder}\n");
        }

        return ExitCode.Done;
    }

    /// <summary>What the wrist sustains: the value with the range of its guess, or as measured.</summary>
    internal static SustainedTorque Torque(ScenarioResult scenario)
    {
        double torque = scenario.Spec!.Angler.SustainedTorqueNm;
        return scenario.Values.Has(AnglerKeys.SustainedTorque)
            ? new(torque, torque, torque)
            : new(torque, AnglerKeys.SustainedTorque.GuessLow, AnglerKeys.SustainedTorque.GuessHigh);
    }

    /// <summary>What the reader must know beside the numbers.</summary>
    internal static RunNotes Notes(ScenarioResult scenario, EffectiveScenario effective) =>
        new([.. scenario.Notes.Select(n => n.ToString())], [.. effective.Guesses.Select(g => g.ToString())]);
}
