using System.Runtime.CompilerServices;
using BenchmarkDotNet.Attributes;
using LureSim.Scenarios.Measured;
using LureSim.Studies.Bend;

namespace LureSim.Benchmarks;

/// <summary>The bend test that is shipped.</summary>
[MemoryDiagnoser]
public class BendBenchmarks
{
    private BendFile _file = null!;

    /// <summary>Reads the test.</summary>
    [GlobalSetup]
    public void Setup() => _file = BendFile.Read(Path.GetFullPath(Path.Combine(Folder(), "..", "..", "scenarios", "bend-test.csv")), [])!;

    /// <summary>Fit with bands, curve and words.</summary>
    [Benchmark]
    public BendReport Fit() => BendStudy.Run(_file, default).Demand();

    private static string Folder([CallerFilePath] string here = "") => Path.GetDirectoryName(here)!;
}
