using System.Runtime.CompilerServices;
using LureSim.Scenarios;
using LureSim.Studies.Compare;

namespace LureSim.Reports.Tests.Support;

/// <summary>A comparison without a run: a shipped set-up with rods, and round numbers in every row.</summary>
internal static class MadeUpCompare
{
    private static readonly double[] Base = [22.0, 0.6, 0.55, 0.03, 0.3, 1.0, 2.5, 2.2, 0.08, 0.5, 0.6, 0.02, 0.001, 0.7, 0.6, 0.25];

    /// <summary>Rods of some lengths; each row falls or rises by an eighth from one to the next, the last ones not at all.</summary>
    public static CompareResult Result(int count = 3)
    {
        var faults = new List<ScenarioFault>();
        string[] lengths = ["6 ft 6 in", "7 ft", "7 ft 4 in", "7 ft 8 in", "8 ft", "8 ft 4 in", "8 ft 8 in", "9 ft", "9 ft 4 in", "9 ft 8 in"];
        IReadOnlyList<CompareSetUp> setUps = new SetUpReader([], faults).Read([File()], [], string.Join(',', lengths.Take(count)));
        Assert.Empty(faults);
        Measured[] sets = [.. MeasureSets.All.Select(s => new Measured(s.Measures, [.. s.Measures.Select(m => Columns(m, count))], _ => new People(8, 1)))];
        Difference[] all =
        [
            .. from a in Enumerable.Range(0, count) from b in Enumerable.Range(a + 1, count - a - 1) from s in sets from m in s.Measures select s.Between(m, a, b),
        ];
        return new(setUps, sets, all, new ComparePlan());
    }

    private static IReadOnlyList<MeasureColumn> Columns(CompareMeasure measure, int count)
    {
        int row = MeasureSets.Measures.ToList().IndexOf(measure);
        double step = row < 5 ? 0.125 : 0.0;
        return [.. Enumerable.Range(0, count).Select(i => Base[row] * (1.0 + (i * step))).Select(v => new MeasureColumn(MeasureSample.Of(v), [.. Enumerable.Range(0, 8).Select(d => MeasureSample.Of(v * (0.96 + (0.01 * d))))]))];
    }

    private static string File([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "scenarios", "small-walker.toml"));
}
