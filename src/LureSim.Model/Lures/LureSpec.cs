namespace LureSim.Model.Lures;

/// <summary>Named body shapes; radius along the axis is given in <c>docs/lure.md</c>.</summary>
public enum LureShape
{
    /// <summary>Cigar of revolution, blunt power-law ends.</summary>
    Cigar,

    /// <summary>Slim pencil, thickest behind the middle.</summary>
    Pencil,

    /// <summary>Half-and-half teardrop, thick tail.</summary>
    Drop,

    /// <summary>Prolate spheroid (the textbook body).</summary>
    Spheroid,

    /// <summary>Wide hollow weedless body, flat belly.</summary>
    Hollow,

    /// <summary>Stations given one by one.</summary>
    Stations,
}

/// <summary>One cross-section: an ellipse of the given half-axes.</summary>
/// <param name="XM">Distance from the middle of the lure, positive toward the nose, m.</param>
/// <param name="HalfBreadthM">b, m.</param>
/// <param name="HalfHeightM">c, m.</param>
/// <param name="CentreZM">Height of the ellipse's centre over the axis, m.</param>
public sealed record HullStation(
    [property: Parameter("x", "m", -0.2, 0.2)] double XM,
    [property: Parameter("b", "m", 0.0, 0.1)] double HalfBreadthM,
    [property: Parameter("c", "m", 0.0, 0.1)] double HalfHeightM,
    [property: Parameter("centre", "m", -0.1, 0.1)] double CentreZM = 0.0) : ISpec;

/// <summary>A point weight inside or on the lure.</summary>
/// <param name="MassKg">kg.</param>
/// <param name="XM">From the middle, positive toward the nose, m.</param>
/// <param name="ZM">Above the axis, m.</param>
/// <param name="DensityKgM3">Density, kg/m3, which says how much of a solid body it takes the place of; 11340 lead (handbook value).</param>
public sealed record BallastSpec(
    [property: Parameter("m", "kg", 0.0, 0.5)] double MassKg,
    [property: Parameter("x", "m", -0.2, 0.2)] double XM,
    [property: Parameter("z", "m", -0.1, 0.1)] double ZM,
    [property: Parameter("rho", "kg/m3", 500.0, 25000.0)] double DensityKgM3 = 11340.0) : ISpec
{
    /// <summary>Room that it takes, m3.</summary>
    internal double VolumeM3 => MassKg / DensityKgM3;

    /// <summary>Radius of the ball that it makes, m: no form of it is more compact.</summary>
    public double BallRadiusM => Math.Cbrt(0.75 * VolumeM3 / Math.PI);
}

/// <summary>A hook, ring, skirt or feather, with its drag.</summary>
/// <param name="MassKg">Mass in air, kg.</param>
/// <param name="XM">Hanger position from the middle, positive toward the nose, m.</param>
/// <param name="ZM">Hanger height over the axis, m.</param>
/// <param name="DragAreaM2">CdA of hook and feather in water against motion across the hull, m2 (a guess by size: docs/lure.md).</param>
/// <param name="SteelVolumeM3">Displaced volume, m3; mass / 7850 for plain steel.</param>
/// <param name="DragAreaAlongM2">CdA against motion along the hull, m2; null: the same as across.</param>
/// <param name="HasPoints">False for a ring or swivel, which cannot catch the line.</param>
public sealed record HookSpec(
    [property: Parameter("m", "kg", 0.0, 0.2)] double MassKg,
    [property: Parameter("x", "m", -0.25, 0.25)] double XM,
    [property: Parameter("z", "m", -0.1, 0.1)] double ZM,
    [property: Parameter("CdA", "m2", 0.0, 0.02)] double DragAreaM2,
    [property: Parameter("volume", "m3", 0.0, 2e-3)] double SteelVolumeM3,
    [property: Parameter("CdA along", "m2", 0.0, 0.02)] double? DragAreaAlongM2 = null,
    bool HasPoints = true) : ISpec;

/// <summary>A floating lure: hull, weights, line tie, hooks.</summary>
/// <param name="Shape">Named shape or stations.</param>
/// <param name="LengthM">L, m, 0.02 to 0.4.</param>
/// <param name="DiameterM">Largest breadth, m.</param>
/// <param name="HeightM">Largest height, m (equal to the breadth for round bodies).</param>
/// <param name="MassKg">Total mass with ballast, without hooks, kg.</param>
/// <param name="TieXM">Line tie from the middle, positive toward the nose, m.</param>
/// <param name="TieZM">Line tie above the axis, m.</param>
/// <param name="Ballast">Point weights, their mass included in <paramref name="MassKg"/>.</param>
/// <param name="Hooks">Hooks, skirts, feathers.</param>
/// <param name="Stations">Sections from tail to nose when <paramref name="Shape"/> is <see cref="LureShape.Stations"/>.</param>
/// <param name="AddedMassFactor">Surface sway added mass over its rigid-lid value, guess 0.70 (0.405 to 1, A3).</param>
/// <param name="CrossFlowCd">Cd of the infinite cylinder in cross-flow before the finite-length factor, 1.1 (0.7 to 1.5: docs/lure.md).</param>
/// <param name="AxialDragFactor">Factor on friction and form drag along the axis, 1 (0.5 to 2: wave drag bracket).</param>
/// <param name="FormDragCd">Form drag coefficient on the largest immersed section, guess 0.20 (0.1 to 0.35).</param>
/// <param name="SternShedding">chi: share of the stern's side momentum that is shed, 0 ideal flow, guess 0.75 (0.5 to 1.25).</param>
/// <param name="SternPlace">-x0 / L: where shedding begins, from the middle, guess 0.35 (0.25 to 0.42).</param>
/// <param name="NoseDamping">zeta, damping ratio of heave and pitch by their waves, guess 0.2 (0.05 to 0.4; a half-immersed round section makes 0.2 in two dimensions, Ursell 1949, from memory).</param>
/// <param name="FrictionSpeedMS">Speed at which the friction coefficient is taken, m/s, middle of a glide, guess 0.3 (0.1 to 1).</param>
/// <param name="RollDamping">Damping of roll over that of the oscillating skin layer alone, guess 3 (1 to 6: eddies of tie, hangers and rings).</param>
/// <param name="HookReachM">Depth over which a hanging hook goes under: dry with its hanger this high, m, guess 0.01 (0.005 to 0.02).</param>
public sealed record LureSpec(
    LureShape Shape,
    [property: Parameter("L", "m", 0.005, 0.4)] double LengthM,
    [property: Parameter("breadth", "m", 0.001, 0.2)] double DiameterM,
    [property: Parameter("height", "m", 0.0005, 0.2)] double HeightM,
    [property: Parameter("m", "kg", 1e-4, 1.0)] double MassKg,
    [property: Parameter("tie x", "m", -0.2, 0.25)] double TieXM,
    [property: Parameter("tie z", "m", -0.1, 0.1)] double TieZM,
    ValueList<BallastSpec> Ballast,
    ValueList<HookSpec> Hooks,
    [property: MayBeMissing] ValueList<HullStation>? Stations = null,
    [property: Parameter("surface factor", "", 0.0, 1.5, GuessLow = 0.405, GuessHigh = 1.0)] double AddedMassFactor = 0.70,
    [property: Parameter("Cd", "", 0.0, 5.0, GuessLow = 0.7, GuessHigh = 1.5)] double CrossFlowCd = 1.1,
    [property: Parameter("axial factor", "", 0.0, 10.0, GuessLow = 0.5, GuessHigh = 2.0)] double AxialDragFactor = 1.0,
    [property: Parameter("form drag", "", 0.0, 2.0, GuessLow = 0.1, GuessHigh = 0.35)] double FormDragCd = 0.20,
    [property: Parameter("chi", "", 0.0, 3.0, GuessLow = 0.5, GuessHigh = 1.25)] double SternShedding = 0.75,
    [property: Parameter("-x0/L", "", 0.1, 0.49, GuessLow = 0.25, GuessHigh = 0.42)] double SternPlace = 0.35,
    [property: Parameter("zeta", "", 0.0, 2.0, GuessLow = 0.05, GuessHigh = 0.4)] double NoseDamping = 0.2,
    [property: Parameter("friction speed", "m/s", 0.01, 5.0, GuessLow = 0.1, GuessHigh = 1.0)] double FrictionSpeedMS = 0.3,
    [property: Parameter("hook reach", "m", 0.001, 0.1, GuessLow = 0.005, GuessHigh = 0.02)] double HookReachM = 0.010,
    [property: Parameter("roll damping", "", 0.0, 50.0, GuessLow = 1.0, GuessHigh = 6.0)] double RollDamping = 3.0) : ISpec
{
    /// <summary>The lure in the air.</summary>
    public LureFlightSpec Flight { get; init; } = new(LureFlightSpec.UsualTumbling(Shape).Value);

    /// <summary>What its outline has different from its named shape.</summary>
    public LureFormSpec Form { get; init; } = new();

    /// <summary>What its body is made of.</summary>
    public LureBuildSpec Build { get; init; } = new();
}
