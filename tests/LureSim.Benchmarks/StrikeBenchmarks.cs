using System.Runtime.CompilerServices;
using BenchmarkDotNet.Attributes;
using LureSim.Model.Landing;
using LureSim.Model.Strike;
using LureSim.Scenarios;
using LureSim.Studies.Strike;

namespace LureSim.Benchmarks;

/// <summary>Strikes of the two scenarios that are shipped for them.</summary>
[MemoryDiagnoser]
public class StrikeBenchmarks
{
    private ScenarioResult _scenario = null!;

    /// <summary>Scenario.</summary>
    [Params("treble-edge", "hollow-mat")]
    public string Name { get; set; } = "";

    /// <summary>Reads the scenario.</summary>
    [GlobalSetup]
    public void Setup() => _scenario = ScenarioSource.Read(Path.GetFullPath(Path.Combine(Folder(), "..", "..", "scenarios", Name + ".toml")));

    /// <summary>One strike.</summary>
    [Benchmark]
    public StrikeResult Strike() => StrikeRun.Run(_scenario.Setup!, _scenario.Strike!).Demand();

    /// <summary>Holding and landing.</summary>
    [Benchmark]
    public LandingResult Landing() => LandingOfStrike.Run(_scenario.Setup!, _scenario.Strike!).Demand();

    /// <summary>All that the command runs: strike, drag window, pull over distance by line and rod, landing.</summary>
    [Benchmark]
    public StrikeReport Report() => StrikeStudy.Run(_scenario, 0, null, default).Demand();

    private static string Folder([CallerFilePath] string here = "") => Path.GetDirectoryName(here)!;
}
