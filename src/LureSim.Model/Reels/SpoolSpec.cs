using LureSim.Model.Lines;

namespace LureSim.Model.Reels;

/// <summary>A revolving spool in the cast.</summary>
/// <param name="InertiaKgM2">I_b, bare spool without line, kg m2, guess 0.8e-6 (0.4e-6 to 1.5e-6): 6 to 16 g at a radius of gyration of 8 to 10 mm.</param>
/// <param name="LineM">Line on the spool at the start, m; at its end the cast is held.</param>
/// <param name="WidthM">W, width of the wound line, m.</param>
/// <param name="Packing">Share of line in the wound volume, guess 0.75 (0.6 to 0.9).</param>
/// <param name="Brake">How the torque of the brake grows with speed.</param>
/// <param name="BrakeStrength">s, torque of the brake at the launch over the one with which spool and lure slow together; 0 = open, 1 = set for the lure.</param>
/// <param name="MagneticNms">c_m, further torque c_m w, for a brake that is known in numbers, N m s; of interest 0 to 2e-6.</param>
/// <param name="CentrifugalNms2">c_c, further torque c_c w^2, N m s2.</param>
/// <param name="FrictionNm">Bearings, cap and line friction, N m, guess 4e-4 (1.1e-4 to 6.9e-4): between "no side play", 1e-4 to 2e-4, and "the lure just falls", m g R.</param>
/// <param name="RingDragN">F_0, friction of the line in the rings, N, guess 0.01 (0.002 to 0.018).</param>
/// <param name="ThumbPressN">Press of the thumb on the line while it lies loose, N, guess 0.5 (0.1 to 0.9).</param>
/// <param name="ThumbFriction">mu of the thumb on wet line, guess 0.25 (0.15 to 0.35).</param>
/// <param name="ThumbDelayS">Lag of the thumb, s, guess 0.15 (0.09 to 0.21): a simple reaction to touch.</param>
/// <param name="ThumbFullM">Loose line at which the thumb presses fully, m, about one loop, guess 0.1 (0.05 to 0.15).</param>
public sealed record SpoolSpec(
    [property: Parameter("I_b", "kg m2", 1e-7, 1e-4, Spread = 1.8)] double InertiaKgM2 = 8e-7,
    [property: Parameter("L", "m", 1.0, 1000.0)] double LineM = 75.0,
    [property: Parameter("W", "m", 0.005, 0.06)] double WidthM = 0.022,
    [property: Parameter("packing", "", 0.4, 1.0, GuessLow = 0.6, GuessHigh = 0.9)] double Packing = 0.75,
    BrakeLaw Brake = BrakeLaw.Quadratic,
    [property: Parameter("s", "", 0.0, 50.0)] double BrakeStrength = 1.0,
    [property: Parameter("c_m", "N m s", 0.0, 1e-4)] double MagneticNms = 0.0,
    [property: Parameter("c_c", "N m s2", 0.0, 1e-6)] double CentrifugalNms2 = 0.0,
    [property: Parameter("M_0", "N m", 0.0, 0.05, Spread = 2.5)] double FrictionNm = 4e-4,
    [property: Parameter("F_0", "N", 0.0, 1.0, Spread = 3.0)] double RingDragN = 0.01,
    [property: Parameter("N", "N", 0.0, 20.0, Spread = 3.0)] double ThumbPressN = 0.5,
    [property: Parameter("mu", "", 0.0, 2.0, Spread = 1.5)] double ThumbFriction = 0.25,
    [property: Parameter("lag of the thumb", "s", 0.0, 2.0, Spread = 1.5)] double ThumbDelayS = 0.15,
    [property: Parameter("thumb full", "m", 0.01, 1.0, GuessLow = 0.05, GuessHigh = 0.15)] double ThumbFullM = 0.1) : ISpec
{
    // Low end of the guess of packing; what fits then fits always.
    private const double LoosestPacking = 0.6;

    /// <summary>Line that people wind on: 75 m (50 to 100), or less where less fits beside a third of the radius.</summary>
    /// <param name="line">Line.</param>
    /// <param name="radiusM">R_0, radius of the wound line, m.</param>
    public Ranged UsualLine(LineSpec line, double radiusM)
    {
        ArgumentNullException.ThrowIfNull(line);
        double holds = 0.9 * WoundLine.Capacity(0.0, radiusM, WidthM, Math.Min(LoosestPacking, Packing), line.DiameterM);
        return new(Math.Min(75.0, 0.8 * holds), Math.Min(50.0, 0.6 * holds), Math.Min(100.0, holds));
    }

    /// <summary>Most line that it takes, m: 95 % of what fills it down to its axle.</summary>
    /// <param name="line">Line.</param>
    /// <param name="radiusM">R_0, radius of the wound line, m.</param>
    public double MostLineM(LineSpec line, double radiusM)
    {
        ArgumentNullException.ThrowIfNull(line);
        return 0.95 * WoundLine.Capacity(0.0, radiusM, WidthM, Packing, line.DiameterM);
    }
}
