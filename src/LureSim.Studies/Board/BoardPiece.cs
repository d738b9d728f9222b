using LureSim.Scenarios.Quantities;

namespace LureSim.Studies.Board;

/// <summary>A piece of wood, foam or plastic that was measured and weighed. Every value in SI, with the unit that it was written in.</summary>
/// <param name="Length">Length, m, above 0.</param>
/// <param name="Width">Width, m, above 0.</param>
/// <param name="Thickness">Thickness, m, above 0.</param>
/// <param name="Mass">Mass, kg, above 0.</param>
public sealed record BoardPiece(QuantityValue Length, QuantityValue Width, QuantityValue Thickness, QuantityValue Mass)
{
    /// <summary>Its three measures.</summary>
    internal IEnumerable<QuantityValue> Measures => [Length, Width, Thickness];

    /// <summary>Volume, m3.</summary>
    public double VolumeM3 => Length.Si * Width.Si * Thickness.Si;

    /// <summary>Density, kg/m3.</summary>
    public double DensityKgM3 => Mass.Si / VolumeM3;
}
