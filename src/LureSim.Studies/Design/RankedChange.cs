namespace LureSim.Studies.Design;

/// <summary>A change and what it does.</summary>
/// <param name="Change">Change.</param>
/// <param name="After">The lure with it.</param>
/// <param name="MarginMove">By how much the side force over critical moves; null where either has none.</param>
public sealed record RankedChange(DesignChange Change, DesignPoint After, double? MarginMove);

/// <summary>An error of building, either way.</summary>
/// <param name="Less">The error downward, backward, or a size smaller.</param>
/// <param name="LessPoint">The lure with it; null where it cannot be made.</param>
/// <param name="More">The error upward, forward, or a size larger.</param>
/// <param name="MorePoint">The lure with it; null where it cannot be made.</param>
public sealed record ToleranceRow(DesignChange Less, DesignPoint? LessPoint, DesignChange More, DesignPoint? MorePoint);

/// <summary>All errors at once, each the way that moves a figure most.</summary>
/// <param name="Key">Figure (<see cref="DesignFigures"/>).</param>
/// <param name="Low">The lure with every error the way that lowers it.</param>
/// <param name="High">The lure with every error the way that raises it.</param>
public sealed record WorstCase(string Key, DesignPoint Low, DesignPoint High);

/// <summary>What errors of building do.</summary>
/// <param name="Rows">One error each.</param>
/// <param name="Worst">All at once, one row per figure.</param>
public sealed record ToleranceTable(IReadOnlyList<ToleranceRow> Rows, IReadOnlyList<WorstCase> Worst);

/// <summary>A pair of hook sizes that a lure could carry.</summary>
/// <param name="Front">Size of its front hook; null: as it is.</param>
/// <param name="Rear">Size of its rear hook; null: as it is.</param>
/// <param name="HooksKg">Mass of all hooks, kg.</param>
/// <param name="Point">The lure with them.</param>
/// <param name="IsOwn">True for the sizes that it has.</param>
public sealed record HookRow(int? Front, int? Rear, double HooksKg, DesignPoint Point, bool IsOwn);
