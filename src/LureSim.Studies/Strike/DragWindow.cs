using LureSim.Model;
using LureSim.Model.Strike;

namespace LureSim.Studies.Strike;

/// <summary>One strike of the curve over the drag.</summary>
/// <param name="DragN">Slip force of a full spool, line pulled straight off the reel, N.</param>
/// <param name="HookForceN">Largest pull on the hook of the whole strike, N.</param>
/// <param name="TipForceN">Largest pull on line and knot, N.</param>
/// <param name="RodUse">Load on the rod over what it bears.</param>
/// <param name="SlipM">Line that slipped until the hands only hold, m.</param>
public sealed record DragPoint(double DragN, double HookForceN, double TipForceN, double RodUse, double SlipM);

/// <summary>Where a load comes from that sets the high end of the drag.</summary>
public enum DragCase
{
    /// <summary>The strike itself, at its distance.</summary>
    Strike,

    /// <summary>A fish at the boat that pulls as hard as the drag lets it.</summary>
    Boat,
}

/// <summary>Drag settings that set all points and let nothing give, with one reading of the thresholds. All are sliding forces of a full spool, straight off
/// the reel, N.</summary>
/// <param name="LowN">Lowest that sets all points; null when no drag does.</param>
/// <param name="HighN">Highest at which nothing gives, at most the reel's real maximum; null when something gives at any drag.</param>
/// <param name="Gives">What gives first above it; null when nothing gives even with the drag shut.</param>
/// <param name="Case">Whether the strike or the fish at the boat sets the high end.</param>
public sealed record DragRange(double? LowN, double? HighN, WeakPlace? Gives, DragCase Case)
{
    /// <summary>True when no drag both sets the hook and spares everything.</summary>
    public bool IsEmpty => !(LowN <= HighN);
}

/// <summary>Reading of the thresholds that nobody has measured.</summary>
public enum ThresholdCase
{
    /// <summary>Points go in at the low end of their guess.</summary>
    SetsEasily,

    /// <summary>Points need the high end of their guess.</summary>
    SetsHard,

    /// <summary>Points tear out at the low end of their guess.</summary>
    HoldsWeakly,

    /// <summary>Points hold to the high end of their guess.</summary>
    HoldsStrongly,

    /// <summary>One point alone holds the fish.</summary>
    OnePoint,
}

/// <summary>The window with one reading of the thresholds.</summary>
/// <param name="Case">Which reading.</param>
/// <param name="SetN">Force that sets one point, N.</param>
/// <param name="HoldN">Force at which one point tears out, N.</param>
/// <param name="Range">Its window.</param>
public sealed record DragBand(ThresholdCase Case, double SetN, double HoldN, DragRange Range);

/// <summary>Why a drag is recommended.</summary>
public enum DragAdviceReason
{
    /// <summary>As far above the lowest as below the highest, in ratio.</summary>
    Middle,

    /// <summary>Shut for the strike and among the plants: the strike spares everything, and every bit of line that slips lets the fish in deeper. Eased at the boat
    /// where the window says so.</summary>
    Shut,

    /// <summary>As high as the strike allows, less a fifth, for the same reason.</summary>
    HighAmongPlants,

    /// <summary>What sets the hook is too much for the boat: set it with the lowest that does, then ease it.</summary>
    SetThenEase,

    /// <summary>Something gives before the hook is set.</summary>
    TooWeak,

    /// <summary>No drag sets the hook.</summary>
    CannotSet,
}

/// <summary>A drag to use.</summary>
/// <param name="Reason">Why.</param>
/// <param name="At">The strike with it; null where none can be recommended, or the model cannot finish it.</param>
public sealed record DragAdvice(DragAdviceReason Reason, DragPoint? At)
{
    /// <summary>Slip force of a full spool, straight off the reel, N.</summary>
    public double? DragN => At?.DragN;
}

/// <summary>The drag settings of one strike.</summary>
public sealed record DragWindow
{
    /// <summary>Strikes over the drag, rising; from loose to shut.</summary>
    public required ValueList<DragPoint> Points { get; init; }

    /// <summary>The window with the thresholds as they are.</summary>
    public required DragRange Range { get; init; }

    /// <summary>The same without the boat: of the strike alone.</summary>
    public required DragRange InStrike { get; init; }

    /// <summary>The same with other readings of thresholds that are guesses; empty where none is.</summary>
    public required ValueList<DragBand> Bands { get; init; }

    /// <summary>The reel's real maximum: drag shut, N; the scenario's own where that is more.</summary>
    public required double LockedN { get; init; }

    /// <summary>Label of the line, N: given, or what goes with its size.</summary>
    public required double LabelN { get; init; }

    /// <summary>Pull on the hook that sets all points, N.</summary>
    public required double SettingN { get; init; }

    /// <summary>Pull at the boat that starts the drag over its setting: static friction, rings, a spool a little down.</summary>
    public required double BoatFactor { get; init; }

    /// <summary>A drag to use, and why.</summary>
    public required DragAdvice Advice { get; init; }
}
