using LureSim.Studies.Cast;

namespace LureSim.Studies.Compare;

/// <summary>What a set of measures found.</summary>
/// <param name="measures">Its rows.</param>
/// <param name="columns">By row, then by set-up.</param>
/// <param name="people">Who noticed.</param>
/// <param name="tested">The same with the rods known by a bend test; null where that was not looked at.</param>
public class Measured(
    IReadOnlyList<CompareMeasure> measures, IReadOnlyList<IReadOnlyList<MeasureColumn>> columns, Func<CompareMeasure, People> people,
    IReadOnlyDictionary<CompareMeasure, IReadOnlyList<IReadOnlyList<MeasureSample>>>? tested = null)
{
    /// <summary>Rows.</summary>
    public IReadOnlyList<CompareMeasure> Measures => measures;

    /// <summary>A measure of a set-up.</summary>
    /// <param name="measure">Row.</param>
    /// <param name="setUp">Place of the set-up.</param>
    public MeasureColumn Column(CompareMeasure measure, int setUp) => columns[measures.ToList().IndexOf(measure)][setUp];

    /// <summary>Two set-ups in one row.</summary>
    /// <param name="measure">Row.</param>
    /// <param name="a">Place of the first.</param>
    /// <param name="b">Place of the second.</param>
    public virtual Difference Between(CompareMeasure measure, int a, int b)
    {
        ArgumentNullException.ThrowIfNull(measure);
        People who = people(measure);
        return SenseRule.Between(measure, a, b, Column(measure, a).Draws, Column(measure, b).Draws, d => measure.Weber is null ? 0.0 : who.Of(measure.Weber, d));
    }

    /// <summary>Band of a difference with both rods known by a bend test over the band as it is; NaN where that was not looked at.</summary>
    /// <param name="measure">Row.</param>
    /// <param name="a">Place of the first.</param>
    /// <param name="b">Place of the second.</param>
    public double BendTestShare(CompareMeasure measure, int a, int b)
    {
        if (tested is null || !tested.TryGetValue(measure, out IReadOnlyList<IReadOnlyList<MeasureSample>>? known))
        {
            return double.NaN;
        }

        double now = Between(measure, a, b).BandWidth;
        Spread then = Spread.Of(known[a].Zip(known[b]).Select(p => p.Second.Value - p.First.Value));
        return now > 0.0 ? (then.High - then.Low) / now : double.NaN;
    }
}
