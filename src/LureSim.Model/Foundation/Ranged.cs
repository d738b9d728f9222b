namespace LureSim.Model;

/// <summary>A value that is not known well: the one used and the range it may take.</summary>
/// <param name="Value">The value used.</param>
/// <param name="Low">Lower end of the range.</param>
/// <param name="High">Upper end of the range.</param>
public readonly record struct Ranged(double Value, double Low, double High)
{
    /// <summary>
    /// A guess by its middle m and its spread f, "right within a factor f": m (1 - a) to m (1 + a) with a = (f^2 - 1)/(f^2 + 1). The ends stand in
    /// the ratio f^2, as those of m/f to m f do, but the middle is their mean: losses add up, and drawn uniformly about the mean they leave the
    /// middle run in the middle, which a range of equal factors does not.
    /// </summary>
    /// <param name="middle">m, any unit; below 0 the range is mirrored.</param>
    /// <param name="spread">f, more than 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The spread is not more than 1, or one of the two is not finite.</exception>
    public static Ranged About(double middle, double spread)
    {
        if (!double.IsFinite(middle))
        {
            throw new ArgumentOutOfRangeException(nameof(middle), middle, "The middle of a guess must be a finite number.");
        }

        if (!(spread > 1.0) || !double.IsFinite(spread))
        {
            throw new ArgumentOutOfRangeException(nameof(spread), spread, "The spread of a guess must be a finite number above 1.");
        }

        double square = spread * spread, half = Math.Abs(middle) * (square - 1.0) / (square + 1.0);
        return new(middle, middle - half, middle + half);
    }
}
