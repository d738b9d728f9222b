using LureSim.Model.Strike;

namespace LureSim.Studies.Strike;

/// <summary>One strike with what other settings of the drag, other distances, lines and rods make of it.</summary>
/// <param name="Strike">The strike as asked for; of it come force over time and the rod at four moments.</param>
/// <param name="Locked">The same with the drag shut; null when the model cannot finish it.</param>
/// <param name="Loose">The same with a drag that a light pull moves (<see cref="DragStudy.LooseN"/>); null when the model cannot finish it.</param>
/// <param name="Window">Drag settings that set the hook and spare everything.</param>
/// <param name="Curves">Pull on the hook against distance, by line and rod.</param>
public sealed record StrikeReport(StrikeResult Strike, StrikeResult? Locked, StrikeResult? Loose, DragWindow Window, StrikeCurves Curves);
