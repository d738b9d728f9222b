using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;

namespace LureSim.Studies.Compare;

/// <summary>Set-ups compared.</summary>
/// <param name="SetUps">Set-ups, in the order asked for.</param>
/// <param name="Sets">What each set of measures found.</param>
/// <param name="Differences">Every two set-ups, a before b as listed, in every row; rows change fastest.</param>
/// <param name="Plan">How finely.</param>
public sealed record CompareResult(IReadOnlyList<CompareSetUp> SetUps, IReadOnlyList<Measured> Sets, IReadOnlyList<Difference> Differences, ComparePlan Plan)
{
    /// <summary>Two set-ups in every row.</summary>
    /// <param name="a">Place of the first.</param>
    /// <param name="b">Place of the second, after the first.</param>
    public IEnumerable<Difference> Between(int a, int b) => Differences.Where(d => d.A == a && d.B == b);

    /// <summary>What one set of measures found.</summary>
    /// <typeparam name="T">Its kind.</typeparam>
    public T? Of<T>()
        where T : Measured => Sets.OfType<T>().FirstOrDefault();

    /// <summary>A measure of a set-up.</summary>
    /// <param name="measure">Row.</param>
    /// <param name="setUp">Place of the set-up.</param>
    public MeasureColumn Column(CompareMeasure measure, int setUp) => Sets.First(s => s.Measures.Contains(measure)).Column(measure, setUp);

    /// <summary>Band of a difference with both rods known by a bend test over the band as it is; NaN where that was not looked at.</summary>
    /// <param name="difference">Difference.</param>
    public double BendTestShare(Difference difference)
    {
        ArgumentNullException.ThrowIfNull(difference);
        return Sets.First(s => s.Measures.Contains(difference.Measure)).BendTestShare(difference.Measure, difference.A, difference.B);
    }
}

/// <summary>Compares set-ups by every set of measures. No pair sees what else is listed: draws, casting luck and rhythms depend on the set-up alone.</summary>
public static class CompareStudy
{
    /// <summary>Fewest and most set-ups.</summary>
    public const int Fewest = 2, Most = 20;

    /// <summary>Runs it.</summary>
    /// <param name="setUps">Set-ups, valid, all of the plan's seed.</param>
    /// <param name="plan">Plan.</param>
    /// <param name="progress">Gets the share done, from several threads; may be null.</param>
    /// <param name="stop">Stops.</param>
    /// <param name="sets">Sets of measures; null for all.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static CompareResult Run(
        IReadOnlyList<CompareSetUp> setUps, ComparePlan plan, Action<double>? progress, CancellationToken stop, IReadOnlyList<IMeasureSet>? sets = null)
    {
        ArgumentNullException.ThrowIfNull(setUps);
        sets ??= MeasureSets.All;
        double all = sets.Sum(s => s.Work), before = 0.0;
        var found = new List<Measured>();
        foreach (IMeasureSet set in sets)
        {
            double from = before;
            found.Add(set.Run(setUps, plan, share => progress?.Invoke((from + (share * set.Work)) / all), stop));
            before += set.Work;
        }

        Difference[] differences =
        [
            .. from a in Enumerable.Range(0, setUps.Count) from b in Enumerable.Range(a + 1, setUps.Count - a - 1) from s in found from m in s.Measures select s.Between(m, a, b),
        ];
        return new(setUps, found, differences, plan);
    }

    /// <summary>Whether anything about the rods differs, so that a bend test of each could tell.</summary>
    /// <param name="setUps">Set-ups.</param>
    internal static bool RodsDiffer(IReadOnlyList<CompareSetUp> setUps) =>
        setUps.Select(s => string.Join('\n', Rod(s.SetUp.Here.Effective()))).Distinct(StringComparer.Ordinal).Count() > 1;

    private static IEnumerable<string> Rod(EffectiveScenario own) => own.Values.Where(v => v.Key.Table == RodKeys.Length.Table).Select(v => v.Text);
}
