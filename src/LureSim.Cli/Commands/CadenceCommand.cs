using System.CommandLine;
using System.Text;
using LureSim.Cli.Running;
using LureSim.Cli.Sweeps;
using LureSim.Reports.Cadence;
using LureSim.Reports.Doubt;
using LureSim.Reports.Retrieve;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Variation;
using LureSim.Studies.Cadence;

namespace LureSim.Cli.Commands;

/// <summary><c>cadence</c>: which rhythms walk.</summary>
public static class CadenceCommand
{
    private const int Starts = 6, MapStarts = 3;

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where to write.</param>
    /// <param name="stop">Set when the person stops the run.</param>
    public static Command Create(Terminal terminal, CancellationToken stop)
    {
        var options = new CommonOptions();
        var search = new CadenceOptions();
        var doubt = new DoubtOptions();
        var command = new Command("cadence", "Which rhythms walk, which is best, and whether the wrist keeps up.");
        var across = new Option<string[]>("--across")
        {
            Description = "Compare set-ups: KEY=list or range, or a ready-made comparison ("
                + string.Join(", ", ReadyComparison.All.Select(r => r.Name)) + "); once or twice.",
            HelpName = "what",
            DefaultValueFactory = _ => [],
        };
        var map = new Option<string?>("--map")
        {
            Description = "Map the pattern over two keys, each with a range or without; rhythm and stroke unless named.",
            HelpName = "KEY,KEY",
            Arity = ArgumentArity.ZeroOrOne,
        };
        options.AddTo(command);
        search.AddTo(command);
        doubt.AddRunsTo(command);
        command.Add(across);
        command.Add(map);
        command.SetAction(parsed => parsed.GetResult(map) is null
            ? Run(options.Read(parsed), search, doubt, across, parsed, terminal, stop)
            : Map(options.Read(parsed), search, parsed.GetValue(map) ?? MapAxes.Default, parsed, terminal, stop));
        command.Validators.Add(result =>
        {
            if (result.GetResult(map) is not null && result.GetResult(across) is not null)
            {
                result.AddError("--map and --across exclude each other");
            }

            if (result.GetResult(doubt.Runs) is not null && (result.GetResult(map) is not null || result.GetResult(across) is not null))
            {
                result.AddError("--doubt goes with neither --map nor --across; sweep --command cadence --doubt varies keys too");
            }
        });
        return command;
    }

    private static int Map(
        CommonValues values, CadenceOptions search, string keys, ParseResult parsed, Terminal terminal, CancellationToken stop)
    {
        var faults = new List<ScenarioFault>();
        CadencePlan? plan = search.Read(parsed, MapStarts, faults);
        Scenario? scenario = ScenarioSource.Read(values.File, values.Overrides, Activities.Retrieve).Scenario;
        IReadOnlyList<Axis> axes = MapAxes.Read(keys, (plan?.FromPerS ?? 1.0, plan?.ToPerS ?? 2.0), scenario, faults);
        return ScenarioInput.ReadTwitched(values, faults, terminal) is null || plan is null
            ? ExitCode.BadInput
            : CadenceMapCommand.Run(values, axes, plan, terminal, stop);
    }

    private static int Run(
        CommonValues values,
        CadenceOptions search,
        DoubtOptions doubt,
        Option<string[]> across,
        ParseResult parsed,
        Terminal terminal,
        CancellationToken stop)
    {
        var faults = new List<ScenarioFault>();
        CadencePlan? plan = search.Read(parsed, Starts, faults);
        int runs = doubt.ReadRuns(parsed, faults);
        IReadOnlyList<AcrossAxis> axes = AcrossAxes.Read(parsed.GetValue(across) ?? [], faults);
        if (ScenarioInput.ReadTwitched(values, faults, terminal) is not ScenarioResult scenario || plan is null)
        {
            return ExitCode.BadInput;
        }

        return axes.Count > 0
            ? CadenceAcross.Run(values, axes, plan, terminal, stop)
            : Single(values, scenario, plan, runs, terminal, stop);
    }

    private static int Single(CommonValues values, ScenarioResult scenario, CadencePlan plan, int runs, Terminal terminal, CancellationToken stop)
    {
        CadenceResult result;
        using (var progress = new ProgressLine("cadence", terminal, values.Quiet))
        {
            result = CadenceStudy.Run(scenario.Setup!, scenario.Retrieve!, plan, Torque(scenario), null, progress.Report, stop);
        }

        DoubtStudy? doubt = null;
        if (runs > 0)
        {
            using var progress = new ProgressLine("doubt", terminal, values.Quiet);
            doubt = DoubtRuns.Run(
                ScenarioSource.Load(values.File, Activities.Retrieve), values.Overrides, new CadenceFigures(plan), runs, DoubtOptions.Cores(plan.Threads), progress.Report, stop);
        }

        EffectiveScenario effective = scenario.Effective();
        RunNotes notes = Notes(scenario, effective);
        if (values.Folder is not null)
        {
            CadenceFiles.Write(values.Folder, result, effective.ToToml(), notes, values.Plots, doubt);
        }

        Print(values, stream => CadenceJson.Write(stream, result, notes, doubt), () => CadenceText.Build(result, notes, doubt), terminal);
        return ExitCode.Done;
    }

    /// <summary>Prints JSON or text, as asked for.</summary>
    internal static void Print(CommonValues values, Action<Stream> json, Func<string> text, Terminal terminal)
    {
        if (values.Json)
        {
            using var stream = new MemoryStream();
            json(stream);
            terminal.Out.Write(Encoding.UTF8.GetString(stream.ToArray()));
        }
        else if (!values.Quiet)
        {
            terminal.Out.Write(text());
            terminal.Out.Write($"Files: {values.Folder}\n");
        }
    }

    /// <summary>What the wrist sustains: the value with the range of its guess, or as measured.</summary>
    internal static SustainedTorque Torque(ScenarioResult scenario)
    {
        double torque = scenario.Setup!.Angler.SustainedTorqueNm;
        return scenario.Values.Has(AnglerKeys.SustainedTorque)
            ? new(torque, torque, torque)
            : new(torque, AnglerKeys.SustainedTorque.GuessLow, AnglerKeys.SustainedTorque.GuessHigh);
    }

    /// <summary>What the reader must know beside the numbers.</summary>
    internal static RunNotes Notes(ScenarioResult scenario, EffectiveScenario effective) =>
        new([.. scenario.Notes.Select(n => n.ToString())], [.. effective.Guesses.Where(g => !g.Key.IsCastOnly).Select(g => g.ToString())]);
}
