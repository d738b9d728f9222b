using System.CommandLine;
using LureSim.Cli.Commands;
using LureSim.Cli.Running;
using LureSim.Model.Margin;
using LureSim.Reports.Design;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Studies.Cadence;
using LureSim.Studies.Design;

namespace LureSim.Cli.Design;

/// <summary><c>design</c>: a lure before wood is cut.</summary>
internal static class DesignCommand
{
    private const string Name = "design";

    /// <summary>The capability: command and summary.</summary>
    public static Capability Capability { get; } = new(Create, new DesignSource());

    private static Command Create(Terminal terminal, CancellationToken stop)
    {
        var options = new CommonOptions();
        var design = new DesignOptions();
        var command = new Command(Name, "Design a lure: where its weight goes, hooks that it carries, what errors and changes do, maps, a search for a walk.");
        options.AddTo(command);
        design.AddTo(command);
        command.SetAction(parsed =>
        {
            bool map = parsed.GetResult(design.Map) is not null;
            CommonValues values = options.Read(parsed, map ? "design-map" : Name);
            return ScenarioInput.Guarded(values, terminal, () => map ? DesignMapCommand.Run(values, design, parsed, terminal, stop) : Run(values, design, parsed, terminal, stop));
        });
        return command;
    }

    private static int Run(CommonValues values, DesignOptions options, ParseResult parsed, Terminal terminal, CancellationToken stop)
    {
        var faults = new List<ScenarioFault>();
        DesignWish? wish = options.WantsWalk(parsed) ? null : options.Wish(parsed, faults);
        bool runs = options.WantsWalk(parsed) || parsed.GetValue(options.Rhythms);
        _ = options.Walk(parsed, 1.0, 1, faults);
        ScenarioResult? read = runs ? ScenarioInput.ReadTwitched(values, faults, terminal) : ScenarioInput.Read(values, faults, terminal, Capability.Figures!.Asks);
        if (read is not ScenarioResult scenario)
        {
            return ExitCode.BadInput;
        }

        using OutputFolder? folder = values.Open(stop);
        DesignReport report = DesignStudy.Run(scenario, wish, new MarginTask(), 0, stop);
        if (parsed.GetValue(options.Rhythms))
        {
            using var progress = new ProgressLine("rhythms", terminal, values.Quiet);
            report = report with { Rhythms = CadenceStudy.Run(scenario.Setup!, scenario.Retrieve!, new CadencePlan(), SustainedTorque.Of(scenario), null, new(progress.Report), stop).Demand() };
        }

        if (options.WantsWalk(parsed))
        {
            report = Sought(report, values, scenario, options, parsed, terminal, stop);
        }

        EffectiveScenario effective = scenario.Effective();
        RunNotes notes = Capabilities.Notes(runs ? Capabilities.Retrieve : Capability.Figures!, scenario, effective, values);
        notes = notes with { Warnings = [.. notes.Warnings, .. report.Own.Trim?.Rest.Notes ?? []] };
        bool stopped = report.Walk?.IsStopped == true;
        if (folder is not null && !stopped)
        {
            DesignFiles.Write(folder, report, effective.ToToml(), notes, values.Plots);
        }

        terminal.Print(stopped ? values with { Folder = "none, since it was stopped" } : values, stream => DesignJson.Write(stream, report, notes), () => DesignText.Build(report, notes));
        return stopped ? ExitCode.Stopped : ExitCode.Done;
    }

    private static DesignReport Sought(
        DesignReport report, CommonValues values, ScenarioResult scenario, DesignOptions options, ParseResult parsed, Terminal terminal, CancellationToken stop)
    {
        (WalkWish wish, WalkPlan plan) = options.Walk(parsed, scenario.Retrieve!.CadencePerS, scenario.Setup!.Seed, [])!.Value;
        Func<int, ScenarioResult>? draw = WalkDraws.Of(ScenarioSource.Load(values.File, Activities.Retrieve), values.Overrides, Capabilities.Retrieve, plan.Draws);
        WalkAnswer walk;
        using (var progress = new ProgressLine("walk", terminal, values.Quiet))
        {
            walk = WalkStudy.Run(scenario, wish, plan, report.Task, draw, null, progress.Report, stop);
        }

        // What was found before a wish to stop is told, with the float of the best.
        return DesignStudy.Built(report with { Walk = walk }, walk.Candidates.Count == 0 ? null : walk.Candidates[0].Point.Lure, CancellationToken.None);
    }
}
