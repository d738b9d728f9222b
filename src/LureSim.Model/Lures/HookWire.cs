namespace LureSim.Model.Lures;

/// <summary>What the wire of a hook bears, and how its thickness goes into what flesh bears, per point.</summary>
/// <remarks>Nobody has published either for such hooks; the equation is that of a textbook, its numbers are guesses from memory.</remarks>
public static class HookWire
{
    // sigma_y of drawn high-carbon wire, Pa, and the lever of the pull about the middle of the bend over the gap; both from memory.
    private static readonly Ranged YieldPa = new(1.7e9, 1.3e9, 2.0e9), LeverShare = new(0.7, 0.5, 0.9);

    /// <summary>
    /// Pull on one point at which its bend opens for good: F = M_p/(k g) with M_p = sigma_y d^3/6, the plastic moment of a round section (textbook),
    /// sigma_y = 1.7 GPa (1.3 to 2.0) and k = 0.7 (0.5 to 0.9), N. It bends lastingly from 3 pi/16 = 0.59 of that on, where the outermost fibre yields.
    /// </summary>
    /// <param name="wireM">d, m, more than 0.</param>
    /// <param name="gapM">g, from point to shank, m, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A measure is not finite and above 0.</exception>
    public static Ranged OpeningN(double wireM, double gapM)
    {
        Require.Positive(wireM);
        Require.Positive(gapM);
        double modulus = wireM * wireM * wireM / 6.0;
        return new(
            YieldPa.Value * modulus / (LeverShare.Value * gapM), YieldPa.Low * modulus / (LeverShare.High * gapM), YieldPa.High * modulus / (LeverShare.Low * gapM));
    }

    /// <summary>
    /// Force in flesh over that of a wire of 1.0 mm: d/(1 mm). What holds is flesh that the wire bears on, over its thickness times the depth of the bite:
    /// at the pressure that flesh bears, the force goes with d. What must be overcome on the way in is a crack as wide as the wire and friction
    /// on flanks of that girth: d again; a force that went with the section, d^2, would need a pressure that does not fall as the pin grows, and it
    /// does fall (Shergold and Fleck 2004, sharp pins in soft solids). A guess all the same.
    /// </summary>
    /// <param name="wireM">d, m, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The measure is not finite and above 0.</exception>
    public static double FleshFactor(double wireM)
    {
        Require.Positive(wireM);
        return wireM / 1e-3;
    }
}
