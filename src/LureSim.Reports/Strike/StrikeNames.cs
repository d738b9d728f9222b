using LureSim.Model.Hands;
using LureSim.Model.Strike;

namespace LureSim.Reports.Strike;

/// <summary>What things of a strike are called in pictures.</summary>
internal static class StrikeNames
{
    /// <summary>A moment.</summary>
    /// <param name="name">Moment.</param>
    public static string Of(StrikeMomentName name) => name switch
    {
        StrikeMomentName.Start => "start",
        StrikeMomentName.Tight => "line tight",
        StrikeMomentName.Peak => "hardest pull",
        _ => "only held",
    };

    /// <summary>A style, with its article.</summary>
    /// <param name="style">Style.</param>
    public static string Of(StrikeStyle style) => style switch
    {
        StrikeStyle.Snap => "a snap of the wrists",
        StrikeStyle.Haul => "a haul with arms and back",
        _ => "a sweep to the side",
    };

    /// <summary>A place that can give, with its article.</summary>
    /// <param name="place">Place.</param>
    public static string Of(WeakPlace place) => place switch
    {
        WeakPlace.Knot => "the knot",
        WeakPlace.Line => "the line",
        WeakPlace.Leader => "the leader's knot",
        WeakPlace.HookWire => "the hook's wire",
        WeakPlace.HookHold => "the hold in the fish",
        _ => "the rod",
    };

    /// <summary>What a place does when it gives.</summary>
    /// <param name="place">Place.</param>
    public static string Gives(WeakPlace place) => place switch
    {
        WeakPlace.HookWire => "bends open",
        WeakPlace.HookHold => "tears out",
        _ => "breaks",
    };

    /// <summary>Points of the hook as a sentence says them: "the point", "both points", "all 3 points".</summary>
    /// <param name="points">Number, at least 1.</param>
    public static string Points(int points) => points switch
    {
        1 => "the point",
        2 => "both points",
        _ => $"all {points} points",
    };
}
