namespace LureSim.Model.Reels;

/// <summary>Which way line leaves the spool.</summary>
public enum ReelKind
{
    /// <summary>The spool turns in the cast.</summary>
    Revolving,

    /// <summary>The line lifts over the lip of a spool that stands still.</summary>
    Fixed,
}

/// <summary>A reel as a retrieve needs it.</summary>
/// <param name="Kind">Spool kind.</param>
/// <param name="Ratio">Spool (or rotor) turns per handle turn, 3 to 12.</param>
/// <param name="SpoolDiameterM">Diameter of the wound line when full, m, 0.02 to 0.08.</param>
/// <param name="DragN">Slip force of the clutch at a full spool, N.</param>
public sealed record ReelSpec(ReelKind Kind, double Ratio, double SpoolDiameterM, double DragN)
{
    /// <summary>Line won per handle turn with a full spool, pi D ratio, m.</summary>
    public double TakeUpPerTurnM => Math.PI * SpoolDiameterM * Ratio;
}
