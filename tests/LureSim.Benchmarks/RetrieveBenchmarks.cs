using System.Runtime.CompilerServices;
using BenchmarkDotNet.Attributes;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Retrieve;
using LureSim.Model.Rods;
using LureSim.Scenarios;

namespace LureSim.Benchmarks;

/// <summary>The parts of a retrieve of the default scenario, in steady state.</summary>
[MemoryDiagnoser]
public class RetrieveBenchmarks
{
    private readonly string _file = Path.GetFullPath(Path.Combine(Folder(), "..", "..", "scenarios", "large-walker.toml"));
    private Scenario _shown = null!;
    private Scenario _planar = null!;
    private Scenario _coarse = null!;

    /// <summary>Reads the scenario.</summary>
    [GlobalSetup]
    public void Setup()
    {
        _shown = ScenarioSource.Read(_file, ["retrieve.duration=10 s", "solver.nodes=40"]).Scenario!;
        _planar = ScenarioSource.Read(_file, ["retrieve.duration=10 s", "solver.nodes=40", "retrieve.hull=planar"]).Scenario!;
        _coarse = ScenarioSource.Read(_file, ["retrieve.duration=10 s", "solver.nodes=20", "solver.step=1 ms"]).Scenario!;
    }

    /// <summary>10 s at 40 segments and 0.5 ms, as shown runs.</summary>
    [Benchmark]
    public RetrieveResult Shown() => RetrieveRun.Run(_shown.Setup, _shown.Retrieve!).Demand();

    /// <summary>The same with the planar hull.</summary>
    [Benchmark]
    public RetrieveResult Planar() => RetrieveRun.Run(_planar.Setup, _planar.Retrieve!).Demand();

    /// <summary>10 s at 20 segments and 1 ms.</summary>
    [Benchmark]
    public RetrieveResult Coarse() => RetrieveRun.Run(_coarse.Setup, _coarse.Retrieve!).Demand();

    /// <summary>Float and reduction of the lure.</summary>
    [Benchmark]
    public WalkHull Hull() => WalkHullBuilder.Build(_shown.Setup.Lure, WaterModel.Evaluate(_shown.Setup.Water));

    /// <summary>Modes of the rod.</summary>
    [Benchmark]
    public RodModeSet Rod() => RodModes.Compute(_shown.Setup.Rod);

    /// <summary>Reading the scenario.</summary>
    [Benchmark]
    public ScenarioResult Read() => ScenarioSource.Read(_file);

    private static string Folder([CallerFilePath] string here = "") => Path.GetDirectoryName(here)!;
}
