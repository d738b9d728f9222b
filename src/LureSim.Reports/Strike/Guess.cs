using LureSim.Model;
using LureSim.Model.Lures;
using LureSim.Model.Strike;

namespace LureSim.Reports.Strike;

/// <summary>How far the guessed forces of a strike may be off: the range of the guess moved to the value in use, in the same ratio.</summary>
internal static class Guess
{
    /// <summary>Force that sets a point.</summary>
    public static readonly Parameter SetForce = Parameter.Of<HookHold>(nameof(HookHold.SetN));

    private static readonly Parameter Hold = Parameter.Of<HookHold>(nameof(HookHold.HoldN)), Wire = Parameter.Of<HookHold>(nameof(HookHold.WireN)),
        Knot = Parameter.Of<StrikeTask>(nameof(StrikeTask.KnotShare)), Rod = Parameter.Of<StrikeTask>(nameof(StrikeTask.RodFactor));

    /// <summary>A value with its range.</summary>
    /// <param name="value">Value in use.</param>
    /// <param name="of">What is guessed.</param>
    public static Ranged Around(double value, Parameter of) => new(value, value * of.GuessLow / of.Default, value * of.GuessHigh / of.Default);

    /// <summary>What a place bears, with its range; a line's own strength is no guess here.</summary>
    /// <param name="margin">Place.</param>
    public static Ranged Strength(Margin margin) => margin.Place switch
    {
        WeakPlace.Knot or WeakPlace.Leader => Around(margin.StrengthN, Knot),
        WeakPlace.HookHold => Around(margin.StrengthN, Hold),
        WeakPlace.HookWire => Around(margin.StrengthN, Wire),
        WeakPlace.Rod => Around(margin.StrengthN, Rod),
        _ => new(margin.StrengthN, margin.StrengthN, margin.StrengthN),
    };
}
