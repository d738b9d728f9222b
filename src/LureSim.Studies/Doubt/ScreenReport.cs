namespace LureSim.Studies.Doubt;

/// <summary>What one guess does to one figure, by runs made for the question; NaN where such a run failed or has no such figure.</summary>
/// <param name="LowShift">Figure with the guess at the 10 % end of its draws, all else as it stands, minus the figure of the set-up as it stands.</param>
/// <param name="HighShift">The same at the 90 % end.</param>
/// <param name="MeanEffect">Mean magnitude of the elementary effects: change of the figure for a move from the 10 % to the 90 % end at drawn places
/// of all other guesses (mu* of Campolongo, Cariboni and Saltelli 2007, from memory).</param>
/// <param name="EffectSpread">Standard deviation of those effects with their signs: large beside the mean where the guess acts in a curve or
/// together with others.</param>
public sealed record GuessEffect(double LowShift, double HighShift, double MeanEffect, double EffectSpread)
{
    /// <summary>From the lowest to the highest of the figure at the two ends and as it stands: what the guess does alone.</summary>
    public double Alone
    {
        get
        {
            double low = double.IsNaN(LowShift) ? 0.0 : LowShift, high = double.IsNaN(HighShift) ? 0.0 : HighShift;
            return Math.Max(0.0, Math.Max(low, high)) - Math.Min(0.0, Math.Min(low, high));
        }
    }

    /// <summary>The larger of what it does alone and, on the mean, together with the others: the guesses are ranked by it.</summary>
    public double Size => MeanEffect > Alone ? MeanEffect : Alone;
}

/// <summary>Which guess matters.</summary>
/// <param name="Runs">Runs made for it.</param>
/// <param name="Failed">Of these, without result.</param>
/// <param name="Figures">Names of the figures.</param>
/// <param name="Noise">Per figure the size that changes of no account reach: see <see cref="GuessScreen"/>.</param>
/// <param name="Effects">[guess][figure].</param>
public sealed record ScreenReport(
    int Runs, int Failed, IReadOnlyList<string> Figures, IReadOnlyList<double> Noise, IReadOnlyList<IReadOnlyList<GuessEffect>> Effects)
{
    /// <summary>Guesses from the one that moves a figure most to the least.</summary>
    /// <param name="figure">Name of the figure.</param>
    /// <exception cref="ArgumentException">There is no such figure.</exception>
    public IReadOnlyList<RankedGuess> Ranking(string figure)
    {
        int f = Figures.ToList().IndexOf(figure);
        return f < 0
            ? throw new ArgumentException($"no figure '{figure}'", nameof(figure))
            : [.. Effects.Select((e, i) => new RankedGuess(i, e[f], Noise[f])).OrderByDescending(r => r.Effect.Size)];
    }
}

/// <summary>A guess in the order of what it does to a figure.</summary>
/// <param name="Index">Which guess.</param>
/// <param name="Effect">What it does.</param>
/// <param name="Noise">Size that is no more than noise.</param>
public sealed record RankedGuess(int Index, GuessEffect Effect, double Noise)
{
    /// <summary>True when jitter alone does as much.</summary>
    public bool IsNoise => !(Effect.Size > Noise);

    /// <summary>True when it does nothing alone, but something at other places of the other guesses.</summary>
    public bool OnlyTogether => !IsNoise && !(Effect.Alone > Noise);
}
