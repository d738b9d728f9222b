namespace LureSim.Model.Lines;

/// <summary>What a line is made of.</summary>
public enum LineMaterial
{
    /// <summary>Braided polyethylene fibre.</summary>
    Braid,

    /// <summary>Single-strand nylon.</summary>
    Nylon,

    /// <summary>Single-strand fluorocarbon (PVDF).</summary>
    Fluorocarbon,
}

/// <summary>State of the line's skin where it meets the water surface.</summary>
public enum SurfaceFilm
{
    /// <summary>Unwetted: the surface film carries the line until it is drawn through.</summary>
    Dry,

    /// <summary>Soaked: no film force, the line follows its density.</summary>
    Wetted,
}

/// <summary>One kind of line, every number resolved to SI. Main line and leader are both of this type.</summary>
/// <param name="Material">What it is made of.</param>
/// <param name="DiameterM">d, outer diameter that the fluid sees, m.</param>
/// <param name="LinearDensityKgM">mu, mass per unstretched length, kg/m.</param>
/// <param name="DensityKgM3">rho_s, density of the solid; mu / rho_s is the displaced area, kg/m3.</param>
/// <param name="AxialStiffnessN">EA, N: effective modulus times solid area.</param>
/// <param name="DampingTimeS">eta, s: Kelvin-Voigt time, BA = eta EA.</param>
/// <param name="BendingStiffnessNm2">EI, N m2: E pi d^4/64 for a single strand, 0 for braid.</param>
/// <param name="Film">Surface film state.</param>
/// <param name="BreakN">Breaking load of the unknotted, wet line, N.</param>
/// <param name="NormalDragFactor">Factor on the cylinder's Cd(Re), 1 by default.</param>
/// <param name="TangentialDragCoefficient">Ct on the wetted area pi d, guess 0.01 (0.004 to 0.02).</param>
public sealed record LineSpec(
    LineMaterial Material,
    [property: Parameter("d", "m", 5e-5, 2e-3)] double DiameterM,
    [property: Parameter("mu", "kg/m", 1e-7, 1e-2)] double LinearDensityKgM,
    [property: Parameter("rho_s", "kg/m3", 500.0, 3000.0)] double DensityKgM3,
    [property: Parameter("EA", "N", 1e-3, 1e7)] double AxialStiffnessN,
    [property: Parameter("eta", "s", 0.0, 0.1)] double DampingTimeS,
    [property: Parameter("EI", "N m2", 0.0, 1.0)] double BendingStiffnessNm2,
    SurfaceFilm Film,
    [property: Parameter("break", "N", 0.1, 1e5)] double BreakN,
    [property: Parameter("drag factor", "", 0.0, 5.0)] double NormalDragFactor = 1.0,
    [property: Parameter("Ct", "", 0.0, 0.1)] double TangentialDragCoefficient = 0.01) : ISpec
{
    /// <summary>The line as it runs out through the air.</summary>
    public LineFlightSpec Flight { get; init; } = LineFlightSpec.Usual(Material);
}

/// <summary>How the leader is joined to the line tie.</summary>
public enum TieKnot
{
    /// <summary>Loop knot, ring or snap: free to turn.</summary>
    Loop,

    /// <summary>Tight knot: the leader's bending stiffness turns the lure.</summary>
    Fixed,
}

/// <summary>The last piece of line before the lure.</summary>
/// <param name="Line">Its material and size.</param>
/// <param name="LengthM">Length, m, 0.05 to 5.</param>
/// <param name="Knot">Joint to the line tie.</param>
public sealed record LeaderSpec(
    LineSpec Line,
    [property: Parameter("length", "m", 0.05, 5.0)] double LengthM,
    TieKnot Knot = TieKnot.Loop) : ISpec;
