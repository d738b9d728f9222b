namespace LureSim.Studies.Doubt;

/// <summary>Averages the ranks of guesses over the points of a sweep, one point at a time. A point without a result, or without a
/// guess, counts as no effect.</summary>
public sealed class RankMean
{
    private GuessRank[][]? _sum;
    private int _count;

    /// <summary>Adds a point.</summary>
    /// <param name="ranks">[guess][figure], of the same guesses and figures as the others.</param>
    public void Add(IReadOnlyList<IReadOnlyList<GuessRank>> ranks)
    {
        ArgumentNullException.ThrowIfNull(ranks);
        _count++;
        _sum = _sum is null
            ? [.. ranks.Select(r => r.ToArray())]
            : Map((g, f) => new(
                _sum[g][f].Rho + ranks[g][f].Rho,
                _sum[g][f].Weight + ranks[g][f].Weight,
                _sum[g][f].LowShift + ranks[g][f].LowShift,
                _sum[g][f].HighShift + ranks[g][f].HighShift));
    }

    /// <summary>The mean, [guess][figure]; empty when nothing was added.</summary>
    public IReadOnlyList<IReadOnlyList<GuessRank>> Result() => Map((g, f) =>
        new(_sum![g][f].Rho / _count, _sum[g][f].Weight / _count, _sum[g][f].LowShift / _count, _sum[g][f].HighShift / _count));

    private GuessRank[][] Map(Func<int, int, GuessRank> value) =>
        [.. (_sum ?? []).Select((row, g) => row.Select((_, f) => value(g, f)).ToArray())];
}
