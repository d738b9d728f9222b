using LureSim.Model;
using LureSim.Model.Landing;
using LureSim.Model.Strike;

namespace LureSim.Studies.Strike;

/// <summary>One strike with what other settings of the drag, other distances, lines and rods make of it.</summary>
/// <param name="Strike">The strike as asked for; of it come force over time and the rod at four moments.</param>
/// <param name="Locked">The same with the drag shut; null when the model cannot finish it.</param>
/// <param name="Loose">The same with a drag that a light pull moves (<see cref="DragStudy.LooseN"/>); null when the model cannot finish it.</param>
/// <param name="Window">Drag settings that set the hook and spare everything.</param>
/// <param name="Remedies">Where no drag sets the hook, what would; else empty.</param>
/// <param name="Landing">Holding and landing with the same tackle and person.</param>
/// <param name="Curves">Pull on the hook against distance, by line and rod.</param>
public sealed record StrikeReport(
    StrikeResult Strike, StrikeResult? Locked, StrikeResult? Loose, DragWindow Window, ValueList<StrikeRemedy> Remedies, LandingResult Landing,
    StrikeCurves Curves)
{
    /// <summary>Pulls that rest on guesses.</summary>
    public StrikeGuesses Guesses { get; init; } = StrikeGuesses.None;
}

/// <summary>What could set a hook that no drag sets, one thing changed and the drag shut.</summary>
public enum RemedyKind
{
    /// <summary>The same stroke with all of the person's strength.</summary>
    FullEffort,

    /// <summary>Arms and back instead of the wrists, at the same effort.</summary>
    Haul,

    /// <summary>Arms and back with all strength.</summary>
    FullHaul,

    /// <summary>A shorter distance.</summary>
    Nearer,

    /// <summary>Another line of the same label.</summary>
    Line,
}

/// <summary>One thing that was tried.</summary>
/// <param name="Kind">What.</param>
/// <param name="Line">With which line.</param>
/// <param name="DistanceM">At what distance, m.</param>
/// <param name="HookForceN">Largest pull on the hook, N.</param>
/// <param name="Sets">Whether all points are set.</param>
public sealed record StrikeRemedy(RemedyKind Kind, CurveLine Line, double DistanceM, double HookForceN, bool Sets);
