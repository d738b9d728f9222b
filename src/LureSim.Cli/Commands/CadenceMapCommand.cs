using LureSim.Cli.Running;
using LureSim.Cli.Sweeps;
using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Retrieve;
using LureSim.Reports.Cadence;
using LureSim.Reports.Kit.Files;
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
    /// <param name="resume">Whether to go on with a map that was stopped.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="stop">Set when the person stops the run.</param>
    public static int Run(CommonValues values, IReadOnlyList<Axis> axes, CadencePlan plan, ResumeValues resume, Terminal terminal, CancellationToken stop)
    {
        ScenarioSource source = ScenarioSource.Load(values.File, Activities.Retrieve);
        ScenarioResult plain = source.Resolve(values.Overrides);
        EffectiveScenario effective = plain.Effective();
        var map = new MapPlan(Starts: plan.Starts, Run: plan.Runs, Threads: plan.Threads);
        using OutputFolder? folder = values.Open(stop);
        using var memory = new MapMemory(values, effective.ToToml(), axes, map, resume, terminal);
        using var progress = new ProgressLine("map", terminal, values.Quiet);
        try
        {
            MapGrid grid = MapStudy.Run(map, Make, null, new(progress.Report, memory.Find, memory.Keep), stop);
            progress.Dispose();
            var result = new MapResult(plain.Setup!.Title, Key(axes[0]), Key(axes[1]), Numbers(axes[0], map.Width), Numbers(axes[1], map.Height), grid, map);
            int exit = Tell(values, folder, plain, effective, result, terminal);
            memory.Forget();
            return exit;
        }
        catch (OperationCanceledException) when (memory.Told is not null)
        {
            progress.Dispose();
            memory.Force();
            terminal.Error.WriteLine("stopped: " + memory.Told);
            return ExitCode.Stopped;
        }

        (Setup Setup, RetrieveTask Task)? Make(double x, double y) =>
            source.Resolve([.. values.Overrides, MapAxes.At(axes[0], x), MapAxes.At(axes[1], y)]).Scenario is { Retrieve: RetrieveTask task } here ? (here.Setup, task) : null;
    }

    private static int Tell(CommonValues values, OutputFolder? folder, ScenarioResult plain, EffectiveScenario effective, MapResult result, Terminal terminal)
    {
        RunNotes notes = Capabilities.Notes(Capabilities.Cadence, plain, effective, values);
        if (folder is not null)
        {
            MapFiles.Write(folder, result, effective.ToToml(), notes, values.Plots);
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
