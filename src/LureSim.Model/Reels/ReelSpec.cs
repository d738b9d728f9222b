using LureSim.Model.Lines;

namespace LureSim.Model.Reels;

/// <summary>Which way line leaves the spool.</summary>
public enum ReelKind
{
    /// <summary>The spool turns in the cast.</summary>
    Revolving,

    /// <summary>The line lifts over the lip of a spool that stands still.</summary>
    Fixed,
}

/// <summary>A reel.</summary>
/// <param name="Kind">Spool kind.</param>
/// <param name="Ratio">Spool (or rotor) turns per handle turn.</param>
/// <param name="SpoolDiameterM">Diameter of the wound line when full, m, guess 0.034 (0.032 to 0.038).</param>
/// <param name="DragN">Slip force of the clutch at a full spool, N, guess 35 (20 to 50).</param>
public sealed record ReelSpec(
    ReelKind Kind = ReelKind.Revolving,
    [property: Parameter("i", "", 3.0, 12.0)] double Ratio = 7.1,
    [property: Parameter("D", "m", 0.02, 0.08, GuessLow = 0.032, GuessHigh = 0.038)] double SpoolDiameterM = 0.034,
    [property: Parameter("drag", "N", 0.0, 300.0, GuessLow = 20.0, GuessHigh = 50.0)] double DragN = 35.0) : ISpec
{
    /// <summary>Revolving spool; read in a cast when the reel has one.</summary>
    public SpoolSpec Spool { get; init; } = new();

    /// <summary>Fixed spool; read in a cast when the reel has one.</summary>
    public FixedSpoolSpec FixedSpool { get; init; } = new();

    /// <summary>How the drag slips.</summary>
    public ClutchSpec Clutch { get; init; } = new();

    /// <summary>Line won per handle turn with a full spool, pi D ratio, m.</summary>
    public double TakeUpPerTurnM => Math.PI * SpoolDiameterM * Ratio;

    /// <summary>The reel with as much of a line on it as people wind on, leaving it as that line does.</summary>
    /// <param name="line">Line.</param>
    public ReelSpec With(LineSpec line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return this with
        {
            Spool = Spool with { LineM = Spool.UsualLine(line, 0.5 * SpoolDiameterM).Value },
            FixedSpool = FixedSpool with { PickUpFactor = FixedSpoolSpec.UsualPickUp(line.Material).Value, RestTensionN = FixedSpoolSpec.UsualRest(line.DiameterM).Value },
        };
    }
}
