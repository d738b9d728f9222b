namespace LureSim.Model.Cover;

/// <summary>
/// Line drawn along over plants, at rest but for sliding: each length ds takes f ds, and each turn about a stem mu T of the pull (Euler and Eytelwein),
/// dT/ds = f + k T with k = mu times the turn per metre; so T(s) = T(0) e^(ks) + f (e^(ks) - 1)/k, counted from the fish.
/// </summary>
public static class PlantLine
{
    /// <summary>Pull at the end toward the rod, N.</summary>
    /// <param name="cover">Plants.</param>
    /// <param name="lengthM">s, line that lies on them, m, not negative.</param>
    /// <param name="fishN">Pull at the end toward the fish, N, not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length or pull is negative or not finite.</exception>
    public static double TipN(CoverSpec cover, double lengthM, double fishN)
    {
        (double growth, double hold) = Along(cover, lengthM);
        return (Require.InRange(fishN, 0.0, double.MaxValue) * growth) + (hold * growth);
    }

    /// <summary>Pull that is left at the fish, N; 0 where plants take it all.</summary>
    /// <param name="cover">Plants.</param>
    /// <param name="lengthM">s, line that lies on them, m, not negative.</param>
    /// <param name="tipN">Pull at the end toward the rod, N, not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length or pull is negative or not finite.</exception>
    public static double FishN(CoverSpec cover, double lengthM, double tipN)
    {
        (double growth, double hold) = Along(cover, lengthM);
        return Math.Max(0.0, (Require.InRange(tipN, 0.0, double.MaxValue) / growth) - hold);
    }

    // e^(ks), and f (1 - e^(-ks))/k: what f alone takes, seen from the fish. With sinh the limit k s -> 0 loses no digits.
    private static (double Growth, double HoldN) Along(CoverSpec cover, double lengthM)
    {
        ArgumentNullException.ThrowIfNull(cover);
        double half = 0.5 * cover.LineFriction * cover.TurnRadM * Require.InRange(lengthM, 0.0, double.MaxValue);
        double mean = half > 0.0 ? Math.Exp(-half) * Math.Sinh(half) / half : 1.0;
        return (Math.Exp(2.0 * half), cover.DragNM * lengthM * mean);
    }
}
