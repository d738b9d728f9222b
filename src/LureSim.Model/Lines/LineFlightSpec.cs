namespace LureSim.Model.Lines;

/// <summary>A line that runs out through the air.</summary>
/// <param name="FrictionFactor">Share of the thread-drawing skin friction, guess 0.5 smooth strand (0.2 to 0.8), 0.8 braid (0.3 to 1.3).</param>
/// <param name="WetFactor">Mass of the wet line over dry, guess 1.03 single strand (1.0 to 1.06), 1.3 braid (1.0 to 1.6).</param>
public sealed record LineFlightSpec(
    [property: Parameter("friction", "", 0.0, 5.0)] double FrictionFactor = 0.5,
    [property: Parameter("wet over dry", "", 1.0, 3.0)] double WetFactor = 1.03) : ISpec
{
    /// <summary>What is usual for a material.</summary>
    /// <param name="material">Line material.</param>
    public static LineFlightSpec Usual(LineMaterial material) => new(UsualFriction(material).Value, UsualWet(material).Value);

    /// <summary>Share of the thread-drawing skin friction.</summary>
    /// <param name="material">Line material.</param>
    public static Ranged UsualFriction(LineMaterial material) => Ranged.About(material == LineMaterial.Braid ? 0.8 : 0.5, 2.0);

    /// <summary>Mass of the wet line over dry; single strands carry little water.</summary>
    /// <param name="material">Line material.</param>
    public static Ranged UsualWet(LineMaterial material) => material == LineMaterial.Braid ? new(1.3, 1.0, 1.6) : new(1.03, 1.0, 1.06);
}
