using LureSim.Model.Lines;

namespace LureSim.Model.Reels;

/// <summary>A fixed spool: tension at the rod tip T = c_g (T_0 + K mu v^2).</summary>
/// <remarks>mu v^2 is line picked up from rest; the rest of K is the whirl of the coils leaving the spool and the first ring
/// (over-end unwinding scales with mu v^2: Padfield, 1950s, from memory).</remarks>
/// <param name="PickUpFactor">K, guess 1.4 for smooth single strands (1 to 2), 2 for braid (1.1 to 2.9).</param>
/// <param name="RestTensionN">T_0, N, guess 0.003 for a line of 0.30 mm, growing with its square: between adhesion, ~ d, and the bending of coils,
/// E pi d^4/(128 R^2), 1 mN for 0.30 mm nylon on R = 22 mm.</param>
/// <param name="RingFactor">c_g, friction in the rings, guess 1.1 (1.03 to 1.17): exp(mu theta), mu 0.05 to 0.2, theta 0.5 to 1.5.</param>
public sealed record FixedSpoolSpec(
    [property: Parameter("K", "", 0.0, 10.0)] double PickUpFactor = 1.4,
    [property: Parameter("T_0", "N", 0.0, 1.0)] double RestTensionN = 0.003,
    [property: Parameter("c_g", "", 1.0, 3.0, GuessLow = 1.03, GuessHigh = 1.17)] double RingFactor = 1.1) : ISpec
{
    private const double RestN = 0.003, RestDiameterM = 0.30e-3;

    /// <summary>K of a line: 2 for braid, 1.4 for single strands.</summary>
    /// <param name="material">Line material.</param>
    public static Ranged UsualPickUp(LineMaterial material) => Ranged.About(material == LineMaterial.Braid ? 2.0 : 1.4, 1.6);

    /// <summary>T_0 of a line, N: 3 mN (d/0.30 mm)^2, a factor of three either way.</summary>
    /// <param name="diameterM">d, m.</param>
    public static Ranged UsualRest(double diameterM) => Ranged.About(RestN * diameterM * diameterM / (RestDiameterM * RestDiameterM), 3.0);
}
