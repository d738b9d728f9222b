namespace LureSim.Model.Lines;

/// <summary>
/// Drag of a long smooth circular cylinder across the flow: F = 1/2 rho Cd d l v^2 with Cd(Re), Re = v d/nu.
/// </summary>
/// <remarks>
/// Sucker and Brauer 1975 in the form given by White, Viscous Fluid Flow: Cd = 1.18 + 6.8/Re^0.89 + 1.96/Re^0.5 -
/// 0.0004 Re/(1 + 3.64e-7 Re^2) for 1e-4 &lt; Re &lt; 2e5; it lies within -5.3 to +7.8 % of Wieselsberger's data (1922).
/// Below 1e-4 the creeping-flow law of Lamb (1911), scaled by 1.11 to join it. Above 2e5 the formula goes on at 1.18: the drag
/// crisis is left out, no line or lure gets there.
/// </remarks>
internal static class CylinderDrag
{
    private const double CreepingRe = 1e-4;
    private const double EulerGamma = 0.57721566490153286;

    private static readonly double Join = CreepingRe * Correlation(CreepingRe) / LambReCd(CreepingRe);

    /// <summary>Cd(Re).</summary>
    /// <param name="re">Re, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Re is not a finite number above 0.</exception>
    public static double Cd(double re) => Require.Positive(re) >= CreepingRe ? Correlation(re) : Join * LambReCd(re) / re;

    /// <summary>Lamb's creeping-flow drag, Cd = 8 pi/(Re (1/2 - gamma - ln(Re/8))), good to 5 % below Re 0.5.</summary>
    /// <param name="re">Re, above 0 and below 7.4 (where the bracket vanishes).</param>
    /// <exception cref="ArgumentOutOfRangeException">Re outside its range.</exception>
    public static double LambCd(double re) => LambReCd(Require.InRange(Require.Positive(re), 0.0, 7.4)) / re;

    private static double Correlation(double re) =>
        1.18 + 6.8 / Math.Pow(re, 0.89) + 1.96 / Math.Sqrt(re) - 0.0004 * re / (1.0 + 3.64e-7 * re * re);

    private static double LambReCd(double re) => 8.0 * Math.PI / (0.5 - EulerGamma - Math.Log(re / 8.0));
}
