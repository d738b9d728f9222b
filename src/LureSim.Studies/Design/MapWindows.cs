using LureSim.Model.Retrieve;

namespace LureSim.Studies.Design;

/// <summary>Rhythms that walk at one cell of a map, one start each: an answer as coarse as the rhythms tried.</summary>
/// <param name="Column">Column of the map.</param>
/// <param name="Row">Row of the map.</param>
/// <param name="FromPerS">Slowest rhythm of its widest window, twitches per second; NaN where nothing walks.</param>
/// <param name="ToPerS">Fastest.</param>
/// <param name="WidestM">Largest glide per twitch of the rhythms that walk, m; NaN where nothing walks.</param>
/// <param name="Patterns">Pattern at each rhythm tried, slow to fast; null where the run failed.</param>
/// <param name="Reason">Why it was not tried; null where it was.</param>
public sealed record WindowCell(int Column, int Row, double FromPerS, double ToPerS, double WidestM, IReadOnlyList<WalkPattern?> Patterns, string? Reason = null)
{
    /// <summary>Share of the rhythms tried that walk.</summary>
    public double WalkShare => Patterns.Count == 0 ? 0.0 : Patterns.Count(p => p == WalkPattern.Alternating) / (double)Patterns.Count;
}

/// <summary>Walk windows on a coarser grid of a map.</summary>
/// <param name="ColumnStep">Every which column was tried.</param>
/// <param name="RowStep">Every which row.</param>
/// <param name="RhythmsPerS">Rhythms tried, slow to fast, twitches per second: an edge is known to half the way to the next.</param>
/// <param name="Cells">Cells that were tried, row by row.</param>
public sealed record MapWindows(int ColumnStep, int RowStep, IReadOnlyList<double> RhythmsPerS, IReadOnlyList<WindowCell> Cells);
