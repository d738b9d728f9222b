using LureSim.Model.Hands;
using LureSim.Model.Lines;

namespace LureSim.Studies.Cover;

/// <summary>One thing that can be changed.</summary>
public enum ChangeKind
{
    /// <summary>The drag set to what the drag window recommends.</summary>
    Drag,

    /// <summary>The drag shut.</summary>
    Shut,

    /// <summary>The drag eased once the fish is at the boat, to what the weakest reading of the guesses bears.</summary>
    Ease,

    /// <summary>Another style of strike, by the same person.</summary>
    Style,

    /// <summary>Half of the distance.</summary>
    Nearer,

    /// <summary>Line of the same material, heavier.</summary>
    Line,

    /// <summary>Braid of the same label.</summary>
    Braid,

    /// <summary>A rod of the next heavier power.</summary>
    Rod,

    /// <summary>The same hook in wire a tenth thicker.</summary>
    Wire,

    /// <summary>A double of the same wire that lies against the body, for a treble.</summary>
    Weedless,
}

/// <summary>A change with its number.</summary>
/// <param name="Kind">What.</param>
/// <param name="Si">Drag, N; distance, m; label of the line, N; power load of the rod, N; else 0.</param>
/// <param name="Style">Which style, for <see cref="ChangeKind.Style"/>.</param>
/// <param name="Material">Of the line.</param>
public sealed record CoverChange(ChangeKind Kind, double Si = 0.0, StrikeStyle Style = StrikeStyle.Snap, LineMaterial Material = LineMaterial.Braid)
{
    /// <summary>True for what is changed on the water, with the same tackle.</summary>
    public bool IsOnTheSpot => Kind <= ChangeKind.Nearer;
}

/// <summary>A change that betters a criterion and spoils none.</summary>
/// <param name="Change">What.</param>
/// <param name="After">What becomes of everything with it.</param>
/// <param name="Bettered">Criteria that come into a better state: before and after.</param>
public sealed record CoverHelp(CoverChange Change, CoverTrial After, IReadOnlyList<(CoverCheck Before, CoverCheck After)> Bettered);
