using LureSim.Cli.Running;
using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Retrieve;
using LureSim.Reports.Cadence;
using LureSim.Reports.Kit.Json;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Variation;
using LureSim.Studies.Across;
using LureSim.Studies.Cadence;
using LureSim.Studies.Maps;

namespace LureSim.Cli.Commands;

/// <summary><c>cadence --map</c>: patterns over two keys.</summary>
internal static class CadenceMapCommand
{
    /// <summary>Runs the study.</summary>
    /// <param name="values">Common options.</param>
    /// <param name="axes">Two axes with ranges.</param>
    /// <param name="plan">Search; the range of rhythms does not count.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="stop">Set when the person stops the run.</param>
    public static int Run(CommonValues values, IReadOnlyList<Axis> axes, CadencePlan plan, Terminal terminal, CancellationToken stop)
    {
        ScenarioSource source = ScenarioSource.Load(values.File, Activities.Retrieve);
        ScenarioResult plain = source.Resolve(values.Overrides);
        var map = new MapPlan(Starts: plan.Starts, Run: plan.Runs, Threads: plan.Threads);
        MapGrid grid;
        using (var progress = new ProgressLine("map", terminal, values.Quiet))
        {
            grid = MapStudy.Run(map, Make, null, progress.Report, stop);
        }

        var result = new MapResult(
            plain.Setup!.Title, Key(axes[0]), Key(axes[1]), Numbers(axes[0], grid.Patterns.GetLength(0)), Numbers(axes[1], grid.Patterns.GetLength(1)), grid, map);
        return Tell(values, plain, result, terminal);

        (Setup Setup, RetrieveTask Task)? Make(double x, double y) =>
            source.Resolve([.. values.Overrides, MapAxes.At(axes[0], x), MapAxes.At(axes[1], y)]).Scenario is { Retrieve: RetrieveTask task } here ? (here.Setup, task) : null;
    }

    private static int Tell(CommonValues values, ScenarioResult plain, MapResult result, Terminal terminal)
    {
        EffectiveScenario effective = plain.Effective();
        RunNotes notes = Capabilities.Notes(Capabilities.Cadence, plain, effective);
        if (values.Folder is not null)
        {
            MapFiles.Write(values.Folder, result, effective.ToToml(), notes, values.Plots);
        }

        terminal.Print(values, stream => MapFiles.WriteJson(stream, result, notes), () => MapText.Build(result, notes));
        return result.Grid.Samples.Any(s => s.Point?.Pattern is not null) ? ExitCode.Done : ExitCode.NotFinished;
    }

    private static AcrossKey Key(Axis axis) => new(
        axis.Name,
        axis.Keys[0] == RetrieveKeys.Cadence ? Reports.Cadence.CadenceChart.RhythmTitle : axis.Title,
        axis.Unit,
        true);

    private static ValueList<double> Numbers(Axis axis, int count) =>
        [.. Enumerable.Range(0, count).Select(i => axis.InUnit(axis.LowSi + (i / (count - 1.0) * (axis.HighSi - axis.LowSi))))];
}
