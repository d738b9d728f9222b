namespace LureSim.Model.Bend;

/// <summary>One number of the fit in units of its own doubt: z = 0 is the middle of what is known before, z = 1 one standard deviation off.</summary>
/// <param name="Middle">Middle, of the number or of its logarithm.</param>
/// <param name="Sigma">Standard deviation of the same.</param>
/// <param name="IsLog">True where the logarithm is meant: numbers that must be positive and are known to a factor.</param>
/// <param name="Least">Least value of the number.</param>
/// <param name="Most">Largest value.</param>
/// <param name="IsFree">True where nothing is known before: z has no weight of its own.</param>
internal sealed record Coordinate(double Middle, double Sigma, bool IsLog, double Least, double Most, bool IsFree = false)
{
    // An even spread between two ends has this share of their distance as its standard deviation.
    private static readonly double Even = 1.0 / Math.Sqrt(12.0);

    /// <summary>A number that is drawn evenly before.</summary>
    public static Coordinate Of(BendGuess guess, bool isLog)
    {
        double low = isLog ? Math.Log(guess.Low) : guess.Low, high = isLog ? Math.Log(guess.High) : guess.High;
        return new(0.5 * (low + high), Even * (high - low), isLog, guess.Least, guess.Most);
    }

    /// <summary>Least z.</summary>
    public double LeastZ => ((IsLog ? Math.Log(Least) : Least) - Middle) / Sigma;

    /// <summary>Largest z.</summary>
    public double MostZ => ((IsLog ? Math.Log(Most) : Most) - Middle) / Sigma;

    /// <summary>The number, held inside its ends.</summary>
    public double At(double z)
    {
        double value = Middle + (Sigma * z);
        return Math.Clamp(IsLog ? Math.Exp(value) : value, Least, Most);
    }
}
