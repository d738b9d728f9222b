namespace LureSim.Model.Cast;

/// <summary>Line wound on a spool as a hollow cylinder.</summary>
/// <param name="InnerRadiusM">R_1, radius of the bare spool, m.</param>
/// <param name="OuterRadiusM">R_2, radius of the wound line, m, above R_1.</param>
/// <param name="WidthM">W, m.</param>
/// <param name="SolidDensityKgM3">Density of the line's solid, kg/m3.</param>
/// <param name="Packing">Share of solid in the wound volume, 0 to 1.</param>
public sealed record WoundLine(double InnerRadiusM, double OuterRadiusM, double WidthM, double SolidDensityKgM3, double Packing)
{
    /// <summary>m = pi (R_2^2 - R_1^2) W rho packing, kg.</summary>
    public double MassKg => Math.PI * ((OuterRadiusM * OuterRadiusM) - (InnerRadiusM * InnerRadiusM)) * WidthM * SolidDensityKgM3 * Packing;

    /// <summary>I = m (R_1^2 + R_2^2)/2, kg m2.</summary>
    public double InertiaKgM2 => 0.5 * MassKg * ((InnerRadiusM * InnerRadiusM) + (OuterRadiusM * OuterRadiusM));

    /// <summary>Length of the line, m.</summary>
    /// <param name="linearDensityKgM">mu of the dry line, kg/m, positive.</param>
    public double LengthM(double linearDensityKgM) => MassKg / Require.Positive(linearDensityKgM);
}
