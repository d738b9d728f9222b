namespace LureSim.Studies.Page;

/// <summary>What a slider of a page moves.</summary>
public enum ControlKind
{
    /// <summary>Twitches per second.</summary>
    Rhythm,

    /// <summary>Slack that the hand keeps.</summary>
    Slack,

    /// <summary>Rigid tip travel of a twitch.</summary>
    Stroke,

    /// <summary>Main line.</summary>
    Line,

    /// <summary>Leader.</summary>
    Leader,

    /// <summary>Rod length, its mass going with it.</summary>
    Rod,

    /// <summary>Place of the heaviest weight along the lure, from the middle toward the nose.</summary>
    Ballast,

    /// <summary>Height of the line tie over the axis of the lure.</summary>
    Tie,
}

/// <summary>One stop of a slider.</summary>
/// <param name="Text">Words; empty where the number says all.</param>
/// <param name="Si">Number, SI; NaN for words.</param>
/// <param name="Set">Overrides that make it; none for the file's own value.</param>
public sealed record PageStop(string Text, double Si, IReadOnlyList<string> Set)
{
    /// <summary>True for the file's own value.</summary>
    public bool IsOwn => Set.Count == 0;
}

/// <summary>A slider: its stops in order, the file's own among them. Every stop is a scenario that reads without a fault.</summary>
/// <param name="Kind">What it moves.</param>
/// <param name="Stops">Stops, at least two.</param>
public sealed record PageControl(ControlKind Kind, IReadOnlyList<PageStop> Stops)
{
    /// <summary>Place of the file's own value.</summary>
    public int Own => Stops.ToList().FindIndex(s => s.IsOwn);
}
