using LureSim.Reports.Kit.Text;
using LureSim.Studies.Compare;

namespace LureSim.Reports.Compare;

/// <summary>How a measure is told. All numbers of a comparison go to people through here.</summary>
/// <param name="Measure">Measure.</param>
/// <param name="Row">Name of its row.</param>
/// <param name="Family">Rows that say the same thing share this name.</param>
/// <param name="Noun">In a sentence.</param>
/// <param name="For">What one takes a set-up for that is better in it.</param>
/// <param name="Unit">Unit for people.</param>
/// <param name="Scale">From SI to that unit.</param>
/// <param name="Places">Decimals.</param>
internal sealed record MeasureWords(CompareMeasure Measure, string Row, string Family, string Noun, string For, string Unit, double Scale, int Places)
{
    /// <summary>Every measure; a test demands that none of <see cref="MeasureSets"/> is missing.</summary>
    public static IReadOnlyList<MeasureWords> All { get; } =
    [
        new(CastMeasures.Distance, "distance as you cast", "distance", "the distance", "distance", "m", 1.0, 1),
        new(RodMeasures.SwingWeight, "swing weight", "how the rod feels", "the swing weight", "a lighter swing", "kg cm2", 1e4, 0),
        new(RodMeasures.TipHeaviness, "tip-heaviness", "how the rod feels", "the tip-heaviness", "a lighter tip", "N m", 1.0, 2),
        new(RodMeasures.Clearance, "tip over the water, at rest", "the height of the tip over the water", "the height of the tip at rest", "a tip that stays clear of the water", "cm", 100.0, 0),
        new(RodMeasures.LowClearance, "the same, lowest of the stroke", "the height of the tip over the water", "the height of the tip in the stroke", "a tip that stays clear of the water", "cm", 100.0, 0),
        new(RetrieveMeasures.Slowest, "walks from", "the rhythms that walk", "the slowest rhythm that walks", "slow rhythms", "/s", 1.0, 2),
        new(RetrieveMeasures.Fastest, "walks up to", "the rhythms that walk", "the fastest rhythm that walks", "fast rhythms", "/s", 1.0, 2),
        new(RetrieveMeasures.KeptUp, "and your wrist keeps up to", "the rhythms that walk", "the fastest rhythm that your wrist keeps up", "fast rhythms", "/s", 1.0, 2),
        new(RetrieveMeasures.Width, "width of the walk", "the width of the walk", "the width of the walk", "a wider walk", "cm", 100.0, 1),
        new(RetrieveMeasures.Pull, "pull at the rod tip, peak", "the pull at the rod tip", "the pull at the rod tip", "a lighter pull", "N", 1.0, 2),
        new(RetrieveMeasures.Wrist, "work of the wrist", "the work of the wrist", "the work of the wrist", "less work of the wrist", "N m", 1.0, 2),
        new(RetrieveMeasures.LineDrag, "drag on the line", "the drag on the line", "the drag on the line", "less drag on the line", "N", 1.0, 2),
        new(RetrieveMeasures.NoseLoad, "load down on the nose", "the load on the nose", "the load on the nose", "a nose that stays up", "mN", 1000.0, 1),
        new(RetrieveMeasures.TakeUp, "line won per turn", "the work of the handle", "the line won per turn", "line won per turn", "cm", 100.0, 0),
        new(RetrieveMeasures.Turns, "turns of the handle needed", "the work of the handle", "the turns of the handle", "fewer turns", "/s", 1.0, 2),
        new(RetrieveMeasures.SlackBudget, "room for slack, per twitch", "the work of the handle", "the room for slack", "no slack that piles up", "cm", 100.0, 0),
    ];

    /// <summary>Words of a measure; plain ones for a measure that has none of its own.</summary>
    /// <param name="measure">Measure.</param>
    public static MeasureWords Of(CompareMeasure measure) =>
        All.FirstOrDefault(w => w.Measure == measure) ?? new(measure, measure.Key, measure.Key, measure.Key, measure.Key, measure.Unit, 1.0, 2);

    /// <summary>A value without its unit; a dash where there is none.</summary>
    /// <param name="si">Value, SI.</param>
    public string Number(double si) => double.IsFinite(si) ? Trade.Fixed(Scale * si, Places) : "-";

    /// <summary>A value with its unit.</summary>
    /// <param name="si">Value, SI.</param>
    public string Value(double si) => double.IsFinite(si) ? $"{Number(si)} {Unit}" : "none";

    /// <summary>A change with its sign, without its unit.</summary>
    /// <param name="si">Change, SI.</param>
    public string Change(double si)
    {
        string text = Number(si);
        return si > 0.0 && text.AsSpan().IndexOfAnyInRange('1', '9') >= 0 ? "+" + text : text;
    }

    /// <summary>A change with its unit and its band.</summary>
    /// <param name="d">Difference.</param>
    public string Change(Difference d) =>
        !double.IsFinite(d.Value) ? "no value" : !double.IsFinite(d.Band.Low) ? $"{Change(d.Value)} {Unit}" : $"{Change(d.Value)} {Unit} ({Change(d.Band.Low)} to {Change(d.Band.High)})";
}
