using System.CommandLine;
using LureSim.Cli.Running;
using LureSim.Cli.Sweeps;
using LureSim.Reports.Cadence;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Variation;
using LureSim.Studies.Across;
using LureSim.Studies.Batches;
using LureSim.Studies.Cadence;
using LureSim.Studies.Doubt;
using LureSim.Studies.Figures;
using LureSim.Studies.Maps;

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
        var resume = new ResumeOptions("map");
        var command = new Command("cadence", "Which rhythms walk, which is best, and whether the wrist keeps up.");
        Option<string[]> across = Comparing.Option();
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
        resume.AddTo(command);
        command.SetAction(parsed => parsed.GetResult(map) is null
            ? Run(options.Read(parsed, parsed.GetValue(across) is { Length: > 0 } ? "cadence-across" : "cadence"), search, doubt, across, parsed, terminal, stop)
            : Map(options.Read(parsed, "cadence-map"), search, parsed.GetValue(map) ?? MapAxes.Default, resume, parsed, terminal, stop));
        command.Validators.Add(result =>
        {
            if (result.GetResult(map) is not null && result.GetResult(across) is not null)
            {
                result.AddError("--map and --across exclude each other");
            }

            if (result.GetResult(map) is null && (result.GetValue(resume.Resume) || result.GetValue(resume.Mix)))
            {
                result.AddError("--resume and --mix-machines go with --map alone");
            }

            if (result.GetResult(doubt.Runs) is not null && (result.GetResult(map) is not null || result.GetResult(across) is not null))
            {
                result.AddError("--doubt goes with neither --map nor --across; sweep --command cadence --doubt varies keys too");
            }
        });
        return command;
    }

    private static int Map(
        CommonValues values, CadenceOptions search, string keys, ResumeOptions resume, ParseResult parsed, Terminal terminal, CancellationToken stop)
    {
        var faults = new List<ScenarioFault>();
        CadencePlan? plan = search.Read(parsed, MapStarts, faults);
        ResumeValues wanted = resume.Read(parsed);
        if (wanted.Resume && values.Folder is null)
        {
            faults.Add(new("--resume", "", "--json writes no files to go on with: name the folder with --out"));
        }

        Scenario? scenario = ScenarioSource.Read(values.File, values.Overrides, Activities.Retrieve).Scenario;
        IReadOnlyList<Axis> axes = MapAxes.Read(keys, (plan?.FromPerS ?? 1.0, plan?.ToPerS ?? 2.0), scenario, faults);
        return ScenarioInput.ReadTwitched(values, faults, terminal) is null || plan is null
            ? ExitCode.BadInput
            : CadenceMapCommand.Run(values, axes, plan, wanted, terminal, stop);
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
        IReadOnlyList<AcrossAxis> axes = Comparing.Read(across, Capabilities.Cadence, values, parsed, faults);
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
        using OutputFolder? folder = values.Open(stop);
        CadenceResult result;
        using (var progress = new ProgressLine("cadence", terminal, values.Quiet))
        {
            result = CadenceStudy.Run(scenario.Setup!, scenario.Retrieve!, plan, SustainedTorque.Of(scenario), null, new(progress.Report), stop).Demand();
        }

        DoubtStudy? doubt = null;
        if (runs > 0)
        {
            using var progress = new ProgressLine("doubt", terminal, values.Quiet);
            doubt = DoubtRuns.Run(
                ScenarioSource.Load(values.File, Activities.Retrieve), values.Overrides, new CadenceSource(plan), runs, Batch.Cores(plan.Threads), progress.Report, stop);
        }

        EffectiveScenario effective = scenario.Effective();
        RunNotes notes = Capabilities.Notes(Capabilities.Cadence, scenario, effective, values);
        if (folder is not null)
        {
            CadenceFiles.Write(folder, result, effective.ToToml(), notes, values.Plots, doubt);
        }

        terminal.Print(values, stream => CadenceJson.Write(stream, result, notes, doubt), () => CadenceText.Build(result, notes, doubt));
        return ExitCode.Done;
    }
}
