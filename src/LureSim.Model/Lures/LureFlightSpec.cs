namespace LureSim.Model.Lures;

/// <summary>Drag of a lure in the air.</summary>
/// <param name="TumblingShare">x, share of the flight in which the lure tumbles, guess 0.1 tail-weighted, 0.5 general, 0.7 soft and bulky.</param>
/// <param name="FrontCd">Cd on the frontal area when it flies straight, guess 0.3 (0.18 to 0.42).</param>
/// <param name="SideFactor">f, finite length of the body across the flow, guess 0.7 (0.55 to 0.85).</param>
/// <param name="KnownCdAM2">Drag area of the lure, m2, when it is known, guess +- 20 %; else it follows from the shape.</param>
public sealed record LureFlightSpec(
    [property: Parameter("x", "", 0.0, 1.0)] double TumblingShare = 0.5,
    [property: Parameter("Cd_a", "", 0.0, 2.0, Spread = 1.5)] double FrontCd = 0.3,
    [property: Parameter("f", "", 0.0, 2.0, Spread = 1.25)] double SideFactor = 0.7,
    [property: Parameter("CdA", "m2", 0.0, 1.0)] double? KnownCdAM2 = null) : ISpec
{
    /// <summary>x of a shape: a drop tumbles little, a hollow body much.</summary>
    /// <param name="shape">Shape.</param>
    public static Ranged UsualTumbling(LureShape shape) => shape switch
    {
        LureShape.Drop => new(0.1, 0.03, 0.31),
        LureShape.Hollow => new(0.7, 0.37, 0.9),
        _ => new(0.5, 0.2, 0.8),
    };

    /// <summary>A known drag area with its doubt: no lure flies twice alike. Guess, +- 22 %.</summary>
    /// <param name="areaM2">CdA, m2.</param>
    public static Ranged AboutKnown(double areaM2) => Ranged.About(areaM2, 1.25);
}
