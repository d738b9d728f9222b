namespace LureSim.Model.Lures;

/// <summary>Mean friction coefficient of a plate or hull of length Reynolds number Re = U L / nu.</summary>
internal static class SkinFriction
{
    /// <summary>Re at which the plate's layer turns turbulent: 5e5 (flat plate, smooth water; guess 1e5 to 1e6 for a lure).</summary>
    public const double TransitionRe = 5e5;

    /// <summary>Blasius 1908, laminar: 1.328 / sqrt(Re).</summary>
    /// <param name="re">Re, above 0.</param>
    public static double Laminar(double re) => 1.328 / Math.Sqrt(Require.Positive(re));

    /// <summary>ITTC 1957 line, turbulent: 0.075 / (log10 Re - 2)^2.</summary>
    /// <param name="re">Re, above 1000.</param>
    public static double Ittc57(double re) => 0.075 / Math.Pow(Math.Log10(Require.InRange(re, 1e3, 1e12)) - 2.0, 2);

    /// <summary>
    /// The law used for lures: laminar up to <see cref="TransitionRe"/>, then the ITTC line less the share saved by the
    /// laminar front part (Prandtl's way, Schlichting, Boundary-Layer Theory, ch. XXI, from memory). At the Re of a
    /// twitched lure, 1e4 to 1e5, it is the laminar value; the turbulent line would be 41 to 98 % higher.
    /// </summary>
    /// <param name="re">Re, above 0.</param>
    public static double Coefficient(double re) => re <= TransitionRe
        ? Laminar(re)
        : Ittc57(re) - (TransitionRe / re * (Ittc57(TransitionRe) - Laminar(TransitionRe)));

    /// <summary>
    /// Drag over friction of a streamlined body of revolution: 1 + 1.5 (D/L)^1.5 + 7 (D/L)^3 (Hoerner, Fluid-Dynamic
    /// Drag, ch. VI, from memory; attached turbulent flow).
    /// </summary>
    /// <param name="f">L/D, 1 or more.</param>
    public static double FormFactor(double f)
    {
        double slim = 1.0 / Require.InRange(f, 1.0, 1e6);
        return 1.0 + (1.5 * Math.Pow(slim, 1.5)) + (7.0 * slim * slim * slim);
    }
}
