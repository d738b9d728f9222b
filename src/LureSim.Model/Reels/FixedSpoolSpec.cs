using LureSim.Model.Lines;

namespace LureSim.Model.Reels;

/// <summary>A fixed spool: tension at the rod tip T = c_g (T_0 + K mu v^2).</summary>
/// <remarks>mu v^2 is line picked up from rest; the rest of K is the whirl of the coils leaving the spool and the first ring
/// (over-end unwinding scales with mu v^2: Padfield, 1950s, from memory).</remarks>
/// <param name="PickUpFactor">K, guess 1.2 for smooth single strands (1 to 2), 2 for braid (1 to 3).</param>
/// <param name="RestTensionN">T_0, N, guess 0.005 (0 to 0.02).</param>
/// <param name="RingFactor">c_g, friction in the rings, guess 1.1 (1.0 to 1.3).</param>
public sealed record FixedSpoolSpec(
    [property: Parameter("K", "", 0.0, 10.0)] double PickUpFactor = 1.2,
    [property: Parameter("T_0", "N", 0.0, 1.0, GuessLow = 0.0, GuessHigh = 0.02)] double RestTensionN = 0.005,
    [property: Parameter("c_g", "", 1.0, 3.0, GuessLow = 1.0, GuessHigh = 1.3)] double RingFactor = 1.1)
{
    /// <summary>K of a line: 2 for braid, 1.2 for single strands.</summary>
    /// <param name="material">Line material.</param>
    public static Ranged UsualPickUp(LineMaterial material) => material == LineMaterial.Braid ? new(2.0, 1.0, 3.0) : new(1.2, 1.0, 2.0);
}
