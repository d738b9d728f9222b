namespace LureSim.Model.Rods;

/// <summary>
/// Bending stiffness, mass and diameter along the free length of a rod whose radius falls in a straight line from the
/// hand to the tip: r(s)/r_0 = 1 - (1 - rho) s/L, EI = EI_0 (r/r_0)^p, m = m_0 (r/r_0)^q, d = d_0 r/r_0.
/// </summary>
/// <remarks>A solid cone or a tube of constant diameter ratio has p = 4, q = 2; a thin tube of constant wall p = 3, q = 1.</remarks>
/// <param name="FreeLengthM">L, from the hand's turning point to the tip, m, positive.</param>
/// <param name="RootStiffnessNm2">EI_0 at the hand, N m2, positive.</param>
/// <param name="RootMassKgM">m_0 at the hand, kg/m, positive.</param>
/// <param name="TipRadiusRatio">rho, tip radius over radius at the hand, above 0, up to 1.</param>
/// <param name="StiffnessExponent">p, 0 to 6.</param>
/// <param name="MassExponent">q, 0 to 6.</param>
/// <param name="RootDiameterM">d_0, outer diameter at the hand for air drag, m, not negative.</param>
public sealed record RodTaper(
    double FreeLengthM,
    double RootStiffnessNm2,
    double RootMassKgM,
    double TipRadiusRatio,
    double StiffnessExponent,
    double MassExponent,
    double RootDiameterM)
{
    /// <summary>The taper of a rod; its stiffness is found so that the power load drops the tip by a third (<see cref="RodPower"/>).</summary>
    /// <param name="spec">The rod; every number finite and in the range its own comment states.</param>
    /// <exception cref="ArgumentException">A number of the rod is out of range.</exception>
    /// <exception cref="ModelException">No stiffness fulfils the bend test, the rod being too heavy for its power.</exception>
    public static RodTaper FromSpec(RodSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        double length = Require(spec.FreeLengthM, nameof(spec.FreeLengthM), 0.05, 10.0);
        Require(spec.MassKg, nameof(spec.MassKg), 1e-4, 10.0);
        var unit = new RodTaper(
            length, 1.0, 1.0, spec.TipRadiusRatio, spec.StiffnessExponent, spec.MassExponent, spec.ButtDiameterM);
        unit.Check();
        var taper = unit with { RootMassKgM = spec.MassKg / unit.MassMoment(0.0, length, 0, 0.0) };
        return taper with { RootStiffnessNm2 = RodPower.RootStiffness(taper, spec.ThirdLoadN, spec.Links) };
    }

    /// <summary>r(s)/r_0, the radius over the radius at the hand.</summary>
    /// <param name="s">Distance from the hand, m, 0 to L.</param>
    public double RadiusRatio(double s) => 1.0 - ((1.0 - TipRadiusRatio) * s / FreeLengthM);

    /// <summary>EI(s), bending stiffness, N m2.</summary>
    /// <param name="s">Distance from the hand, m, 0 to L.</param>
    public double StiffnessNm2(double s) => RootStiffnessNm2 * Math.Pow(RadiusRatio(s), StiffnessExponent);

    /// <summary>m(s), mass per length, kg/m.</summary>
    /// <param name="s">Distance from the hand, m, 0 to L.</param>
    public double MassKgM(double s) => RootMassKgM * Math.Pow(RadiusRatio(s), MassExponent);

    /// <summary>d(s), outer diameter, m.</summary>
    /// <param name="s">Distance from the hand, m, 0 to L.</param>
    public double DiameterM(double s) => RootDiameterM * RadiusRatio(s);

    /// <summary>Integral of (s - origin)^k m(s) ds from a to b, kg m^k.</summary>
    internal double MassMoment(double a, double b, int k, double origin) =>
        GaussLegendre.Integrate(s => MassKgM(s) * Math.Pow(s - origin, k), a, b);

    /// <summary>Integral of (L - s)^k / EI(s) ds from a to b: what this piece adds to the tip's rotation (k = 1, 1/N) and
    /// deflection (k = 2, m/N) per tip load.</summary>
    internal double TipLoadMoment(double a, double b, int k) =>
        GaussLegendre.Integrate(s => Math.Pow(FreeLengthM - s, k) / StiffnessNm2(s), a, b);

    /// <summary>Throws unless every number is finite and in range.</summary>
    internal void Check()
    {
        Require(FreeLengthM, nameof(FreeLengthM), 1e-3, 1e3);
        Require(RootStiffnessNm2, nameof(RootStiffnessNm2), double.Epsilon, 1e12);
        Require(RootMassKgM, nameof(RootMassKgM), double.Epsilon, 1e6);
        Require(TipRadiusRatio, nameof(TipRadiusRatio), 1e-3, 1.0);
        Require(StiffnessExponent, nameof(StiffnessExponent), 0.0, 6.0);
        Require(MassExponent, nameof(MassExponent), 0.0, 6.0);
        Require(RootDiameterM, nameof(RootDiameterM), 0.0, 10.0);
    }

    private static double Require(double value, string name, double least, double most) =>
        value >= least && value <= most
            ? value
            : throw new ArgumentOutOfRangeException(name, value, $"must be from {least:G3} to {most:G3}");
}
