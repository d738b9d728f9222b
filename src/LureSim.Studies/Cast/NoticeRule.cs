namespace LureSim.Studies.Cast;

/// <summary>Whether a gain in distance will be noticed among casts that scatter.</summary>
/// <remarks>
/// Two means of n casts each differ by a gain g against a scatter s (one sigma) at 5 % two-sided error and 80 % power when
/// n = 2 (1.96 + 0.84)^2 (s/g)^2 = 16 (s/g)^2 (Lehr 1992, Statistics in Medicine 11:1099, from memory). Whoever sees a gain as large as the
/// scatter needs 16 casts with each rod; that is the line drawn here between noticing and not.
/// </remarks>
public static class NoticeRule
{
    /// <summary>Most casts with each of two set-ups after which a difference still counts as noticed.</summary>
    public const double MostCasts = 16.0;

    /// <summary>Casts with each set-up that show a gain; infinite for none.</summary>
    /// <param name="gainM">g, m, either sign.</param>
    /// <param name="sigmaM">s, m, positive.</param>
    public static double Casts(double gainM, double sigmaM) => 16.0 * sigmaM * sigmaM / (gainM * gainM);

    /// <summary>True when it will be noticed.</summary>
    /// <param name="gainM">g, m, either sign.</param>
    /// <param name="sigmaM">s, m, positive.</param>
    public static bool Notices(double gainM, double sigmaM) => Casts(gainM, sigmaM) <= MostCasts;
}
