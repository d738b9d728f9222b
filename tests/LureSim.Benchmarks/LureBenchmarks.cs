using System.Runtime.CompilerServices;
using BenchmarkDotNet.Attributes;
using LureSim.Model.Lures;
using LureSim.Model.Margin;
using LureSim.Model.Media;
using LureSim.Model.Pool;
using LureSim.Model.Trim;
using LureSim.Scenarios;

namespace LureSim.Benchmarks;

/// <summary>A lure alone: float, straight tow with its roots, walk margin, pool.</summary>
[MemoryDiagnoser]
public class LureBenchmarks
{
    private readonly MarginTask _task = new();
    private LureSpec _lure = null!;
    private WaterState _water = null!;
    private PoolTask _pool = null!;

    /// <summary>Scenario.</summary>
    [Params("large-walker", "hollow-weedless")]
    public string Name { get; set; } = "";

    /// <summary>Reads the scenario.</summary>
    [GlobalSetup]
    public void Setup()
    {
        ScenarioResult scenario = ScenarioSource.Read(Path.GetFullPath(Path.Combine(Folder(), "..", "..", "scenarios", Name + ".toml")));
        (_lure, _water, _pool) = (scenario.Setup!.Lure, WaterModel.Evaluate(scenario.Setup.Water), scenario.Pool!);
    }

    /// <summary>How it lies.</summary>
    [Benchmark]
    public FloatReport Rest() => Trimming.Rest(_lure, _water);

    /// <summary>How it lies, is towed, and whether it keeps straight: a point of a map.</summary>
    [Benchmark]
    public RestAndTow Towed() => MarginRun.Towed(_lure, _water, _task, criticalHalvings: 3);

    /// <summary>Walk margin.</summary>
    [Benchmark]
    public MarginResult Margin() => MarginRun.Run(_lure, _water, _task).Demand();

    /// <summary>Everything that <c>trim</c> shows.</summary>
    [Benchmark]
    public TrimResult Trim() => Trimming.Run(_lure, _water);

    /// <summary>Everything that <c>pool</c> runs.</summary>
    [Benchmark]
    public PoolResult Pool() => PoolRun.Run(_lure, _water, _pool).Demand();

    private static string Folder([CallerFilePath] string here = "") => Path.GetDirectoryName(here)!;
}
