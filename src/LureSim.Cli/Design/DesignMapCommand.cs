using System.CommandLine;
using LureSim.Cli.Commands;
using LureSim.Cli.Running;
using LureSim.Model.Lures;
using LureSim.Model.Margin;
using LureSim.Model.Media;
using LureSim.Reports.Design;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Design;
using LureSim.Studies.Figures;

namespace LureSim.Cli.Design;

/// <summary><c>design --map</c>.</summary>
internal static class DesignMapCommand
{
    /// <summary>Runs it.</summary>
    /// <param name="values">Common options.</param>
    /// <param name="options">Own options.</param>
    /// <param name="parsed">Parsed arguments.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="stop">Set when the person stops the run.</param>
    public static int Run(CommonValues values, DesignOptions options, ParseResult parsed, Terminal terminal, CancellationToken stop)
    {
        var faults = new List<ScenarioFault>();
        (ChangeKind columns, ChangeKind rows, KeptMass? keeps, BallastHeight height, int step) = options.MapOf(parsed, faults);
        bool windows = parsed.GetValue(options.Windows);
        IFigureSource figures = windows ? Capabilities.Retrieve : DesignCommand.Capability.Figures!;
        ScenarioResult? read = windows ? ScenarioInput.ReadTwitched(values, faults, terminal) : ScenarioInput.Read(values, faults, terminal, figures.Asks);
        if (read is not ScenarioResult scenario)
        {
            return ExitCode.BadInput;
        }

        LureSpec lure = scenario.Setup!.Lure;
        var task = MapTask.Of(lure, HookSizes.Of(scenario), columns, rows, keeps ?? new DesignWish(null).Kept(lure), height);
        using OutputFolder? folder = values.Open(stop);
        DesignMap map;
        using (var progress = new ProgressLine("map", terminal, values.Quiet))
        {
            map = DesignMapStudy.Run(lure, WaterModel.Evaluate(scenario.Setup.Water), task, new MarginTask(), progress.Report, stop);
        }

        if (windows)
        {
            using var progress = new ProgressLine("windows", terminal, values.Quiet);
            map = DesignMapStudy.WithWindows(map, scenario.Setup, scenario.Retrieve!, step, null, progress.Report, stop);
        }

        EffectiveScenario effective = scenario.Effective();
        RunNotes notes = Capabilities.Notes(figures, scenario, effective, values);
        if (folder is not null)
        {
            DesignMapFiles.Write(folder, scenario.Setup.Title, map, effective.ToToml(), notes, values.Plots);
        }

        terminal.Print(values, stream => DesignMapFiles.WriteJson(stream, scenario.Setup.Title, map, notes), () => DesignMapFiles.Text(scenario.Setup.Title, map, notes));
        return ExitCode.Done;
    }
}
