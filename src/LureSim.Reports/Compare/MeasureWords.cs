using LureSim.Reports.Kit.Text;
using LureSim.Studies.Compare;

namespace LureSim.Reports.Compare;

/// <summary>Words of a measure; its numbers are told by <see cref="CompareNumbers"/>.</summary>
/// <param name="Measure">Measure.</param>
/// <param name="Row">Name of its row.</param>
/// <param name="Family">Rows that say the same thing share this name.</param>
/// <param name="Noun">In a sentence.</param>
/// <param name="For">What one takes a set-up for that is better in it.</param>
/// <param name="Quantity">What its numbers are; null for one with a unit of its own.</param>
/// <param name="Own">That unit.</param>
internal sealed record MeasureWords(CompareMeasure Measure, string Row, string Family, string Noun, string For, ShownQuantity? Quantity, ShownUnit? Own = null)
{
    private static readonly ShownUnit RateUnit = new("/s", 1.0, 2);

    /// <summary>Every measure; a test demands that none of <see cref="MeasureSets"/> is missing.</summary>
    public static IReadOnlyList<MeasureWords> All { get; } =
    [
        new(CastMeasures.Distance, "distance as you cast", "distance", "the distance", "distance", ShownQuantity.Distance),
        new(RodMeasures.SwingWeight, "swing weight", "how the rod feels", "the swing weight", "a lighter swing", ShownQuantity.Inertia),
        new(RodMeasures.TipHeaviness, "tip-heaviness", "how the rod feels", "the tip-heaviness", "a lighter tip", ShownQuantity.Torque),
        new(RodMeasures.Clearance, "tip over the water, at rest", "the height of the tip over the water", "the height of the tip at rest", "a tip that stays clear of the water", ShownQuantity.Size),
        new(RodMeasures.LowClearance, "the same, lowest of the stroke", "the height of the tip over the water", "the height of the tip in the stroke", "a tip that stays clear of the water", ShownQuantity.Size),
        new(RetrieveMeasures.Slowest, "walks from", "the rhythms that walk", "the slowest rhythm that walks", "slow rhythms", null, RateUnit),
        new(RetrieveMeasures.Fastest, "walks up to", "the rhythms that walk", "the fastest rhythm that walks", "fast rhythms", null, RateUnit),
        new(RetrieveMeasures.KeptUp, "and your wrist keeps up to", "the rhythms that walk", "the fastest rhythm that your wrist keeps up", "fast rhythms", null, RateUnit),
        new(RetrieveMeasures.Width, "width of the walk", "the width of the walk", "the width of the walk", "a wider walk", ShownQuantity.Size),
        new(RetrieveMeasures.Pull, "pull at the rod tip, peak", "the pull at the rod tip", "the pull at the rod tip", "a lighter pull", ShownQuantity.Pull),
        new(RetrieveMeasures.Wrist, "work of the wrist", "the work of the wrist", "the work of the wrist", "less work of the wrist", ShownQuantity.Torque),
        new(RetrieveMeasures.LineDrag, "drag on the line", "the drag on the line", "the drag on the line", "less drag on the line", ShownQuantity.Pull),
        new(RetrieveMeasures.NoseLoad, "load down on the nose", "the load on the nose", "the load on the nose", "a nose that stays up", ShownQuantity.Pull),
        new(RetrieveMeasures.TakeUp, "line won per turn", "the work of the handle", "the line won per turn", "line won per turn", ShownQuantity.Size),
        new(RetrieveMeasures.Turns, "turns of the handle needed", "the work of the handle", "the turns of the handle", "fewer turns", null, RateUnit),
        new(RetrieveMeasures.SlackBudget, "room for slack, per twitch", "the work of the handle", "the room for slack", "no slack that piles up", ShownQuantity.Size),
    ];

    /// <summary>Words of a measure; plain ones for a measure that has none of its own.</summary>
    /// <param name="measure">Measure.</param>
    public static MeasureWords Of(CompareMeasure measure) =>
        All.FirstOrDefault(w => w.Measure == measure) ?? new(measure, measure.Key, measure.Key, measure.Key, measure.Key, null, new(measure.Unit, 1.0, 2));
}
