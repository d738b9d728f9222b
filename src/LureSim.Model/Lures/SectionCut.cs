namespace LureSim.Model.Lures;

/// <summary>How a section meets the water.</summary>
public enum Wetting
{
    /// <summary>All of it in the air.</summary>
    Dry,

    /// <summary>Cut by the water surface.</summary>
    Partial,

    /// <summary>All of it under water.</summary>
    Wet,
}

/// <summary>The immersed part of one section.</summary>
/// <param name="Wetting">Dry, cut or wet.</param>
/// <param name="AreaM2">Immersed area A, m2.</param>
/// <param name="CentroidYM">y of the centroid of that area, m.</param>
/// <param name="CentroidZM">z of the centroid of that area, m.</param>
/// <param name="ChordM">Length of the water line across the section, m.</param>
/// <param name="ChordMidYM">y of its middle, m.</param>
/// <param name="ChordMidZM">z of its middle, m.</param>
public readonly record struct SectionCut(
    Wetting Wetting,
    double AreaM2,
    double CentroidYM,
    double CentroidZM,
    double ChordM,
    double ChordMidYM,
    double ChordMidZM);
