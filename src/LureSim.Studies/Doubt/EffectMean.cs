namespace LureSim.Studies.Doubt;

/// <summary>Averages the effects of guesses over the points of a sweep, one report at a time. A point without a result, or without a
/// guess, counts as no effect.</summary>
public sealed class EffectMean
{
    private IReadOnlyList<IReadOnlyList<GuessEffect>>? _sum;
    private int _count;

    /// <summary>Adds a point.</summary>
    /// <param name="report">Of the same guesses and figures as the others.</param>
    public void Add(DoubtReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        _count++;
        _sum = _sum is null
            ? report.Effects
            : Map((g, f) => new(
                _sum[g][f].Rho + report.Effects[g][f].Rho,
                _sum[g][f].Weight + report.Effects[g][f].Weight,
                _sum[g][f].LowShift + report.Effects[g][f].LowShift,
                _sum[g][f].HighShift + report.Effects[g][f].HighShift));
    }

    /// <summary>The mean, [guess][figure]; empty when nothing was added.</summary>
    public IReadOnlyList<IReadOnlyList<GuessEffect>> Result() => Map((g, f) =>
        new(_sum![g][f].Rho / _count, _sum[g][f].Weight / _count, _sum[g][f].LowShift / _count, _sum[g][f].HighShift / _count));

    private GuessEffect[][] Map(Func<int, int, GuessEffect> value) =>
        [.. (_sum ?? []).Select((row, g) => row.Select((_, f) => value(g, f)).ToArray())];
}
