namespace LureSim.Studies.Doubt;

/// <summary>What the guesses do to one figure.</summary>
/// <param name="Figure">Name of the figure.</param>
/// <param name="P10">One run in ten lies below.</param>
/// <param name="P50">Median.</param>
/// <param name="P90">One run in ten lies above.</param>
/// <param name="Count">Runs that have the figure; with none the percentiles are NaN.</param>
public sealed record Band(string Figure, double P10, double P50, double P90, int Count);

/// <summary>What one guess does to one figure.</summary>
/// <param name="Rho">Spearman's rank correlation, -1 to 1; 0 when either side never changed.</param>
/// <param name="Weight">Its magnitude; of several points the mean magnitude, which no change of sign can hide.</param>
/// <param name="LowShift">Mean of the figure over the runs with the guess in its lower third, minus the mean over all.</param>
/// <param name="HighShift">The same for the upper third.</param>
public sealed record GuessEffect(double Rho, double Weight, double LowShift, double HighShift);

/// <summary>A study of doubt, read out.</summary>
/// <param name="Runs">Number of runs.</param>
/// <param name="Failed">Of these, without result.</param>
/// <param name="Shares">Share of each class among the runs with a result, largest first.</param>
/// <param name="Bands">One band per figure; empty when every run failed.</param>
/// <param name="Guesses">Names of the guesses.</param>
/// <param name="Effects">[guess][figure].</param>
public sealed record DoubtReport(
    int Runs,
    int Failed,
    IReadOnlyList<KeyValuePair<string, double>> Shares,
    IReadOnlyList<Band> Bands,
    IReadOnlyList<string> Guesses,
    IReadOnlyList<IReadOnlyList<GuessEffect>> Effects)
{
    /// <summary>Magnitude of a rank correlation that pure chance passes once in twenty: 1.96 / sqrt(n - 1)
    /// (Kendall and Stuart, large n; from memory).</summary>
    public double ChanceRho => ChanceOf(Runs - Failed);

    /// <summary><see cref="ChanceRho"/> of a number of runs.</summary>
    /// <param name="runs">n.</param>
    public static double ChanceOf(int runs) => runs < 2 ? 1.0 : Math.Min(1.0, 1.96 / Math.Sqrt(runs - 1.0));

    /// <summary>Guesses from the one that moves a figure most to the least.</summary>
    /// <param name="figure">Name of the figure.</param>
    /// <exception cref="ArgumentException">There is no such figure.</exception>
    public IReadOnlyList<(string Guess, GuessEffect Effect)> Ranking(string figure)
    {
        int f = IndexOf(figure);
        return [.. Guesses.Select((g, i) => (g, Effects[i][f])).OrderByDescending(e => e.Item2.Weight)];
    }

    /// <summary>The band of a figure.</summary>
    /// <param name="figure">Name.</param>
    /// <exception cref="ArgumentException">There is no such figure.</exception>
    public Band this[string figure] => Bands[IndexOf(figure)];

    private int IndexOf(string figure)
    {
        for (int f = 0; f < Bands.Count; f++)
        {
            if (Bands[f].Figure == figure)
            {
                return f;
            }
        }

        throw new ArgumentException($"no figure '{figure}'", nameof(figure));
    }
}
