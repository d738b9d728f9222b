using LureSim.Model.Retrieve;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Cadence;

/// <summary>All starts at one rhythm.</summary>
public sealed class RhythmPoint
{
    private readonly StationaryOutcome[] _locked;
    private readonly StationaryOutcome[] _finished;

    /// <summary>Gathers the starts.</summary>
    /// <param name="perS">Rhythm, twitches per second.</param>
    /// <param name="outcomes">One per start, at least one.</param>
    /// <param name="lockShare">Share of starts from which a rhythm counts as walking.</param>
    public RhythmPoint(double perS, IReadOnlyList<StationaryOutcome> outcomes, double lockShare)
    {
        ArgumentNullException.ThrowIfNull(outcomes);
        ArgumentOutOfRangeException.ThrowIfZero(outcomes.Count);
        (PerS, Outcomes) = (perS, outcomes);
        _finished = [.. outcomes.Where(o => o.Pattern is not null)];
        _locked = [.. _finished.Where(o => o.Pattern == WalkPattern.Alternating)];
        LockShare = _locked.Length / (double)outcomes.Count;
        Walks = LockShare >= lockShare - 1e-12;
        Pattern = Walks ? WalkPattern.Alternating : Commonest(_finished.Where(o => o.Pattern != WalkPattern.Alternating), _locked.Length);
    }

    /// <summary>Rhythm, twitches per second.</summary>
    public double PerS { get; }

    /// <summary>One per start.</summary>
    public IReadOnlyList<StationaryOutcome> Outcomes { get; }

    /// <summary>Share of starts that alternate, 0 to 1.</summary>
    public double LockShare { get; }

    /// <summary>Whether enough starts alternate.</summary>
    public bool Walks { get; }

    /// <summary>True where some starts alternate and others do not: the answer depends on how it starts.</summary>
    public bool DependsOnStart => _locked.Length > 0 && _locked.Length < Outcomes.Count;

    /// <summary>Alternating where it walks; else the commonest pattern that is not (of equals the first in the list of
    /// patterns), irregular where only luck decides between walking and nothing; null when every start failed.</summary>
    public WalkPattern? Pattern { get; }

    /// <summary>Why a start failed, or null.</summary>
    public string? Failure => Outcomes.FirstOrDefault(o => o.Failure is not null)?.Failure;

    /// <summary>Whether it hangs on starts that are still to come whether enough of all walk.</summary>
    /// <param name="starts">How many there may be.</param>
    /// <param name="lockShare">Share of them from which it walks.</param>
    public bool IsOpen(int starts, double lockShare)
    {
        int left = starts - Outcomes.Count;
        bool Enough(int count) => count >= (lockShare * starts) - 1e-9;
        return left > 0 && Enough(_locked.Length + left) && !Enough(_locked.Length);
    }

    /// <summary>Median of a figure over the starts that alternate, or over all that finished when none does; NaN when none did.</summary>
    /// <param name="figure">Figure.</param>
    public double Median(Func<RetrieveSummary, double> figure) => Told.Length == 0 ? double.NaN : PatternFinder.Median(Told.Select(o => figure(o.Summary!)));

    /// <summary>Smallest and largest of a figure over the same starts.</summary>
    /// <param name="figure">Figure.</param>
    public (double Low, double High) Spread(Func<RetrieveSummary, double> figure) =>
        Told.Length == 0 ? (double.NaN, double.NaN) : (Told.Min(o => figure(o.Summary!)), Told.Max(o => figure(o.Summary!)));

    private StationaryOutcome[] Told => _locked.Length > 0 ? _locked : _finished;

    private static WalkPattern? Commonest(IEnumerable<StationaryOutcome> others, int alternating)
    {
        WalkPattern[] patterns = [.. others.Select(o => o.Pattern!.Value)];
        return patterns.Length > 0
            ? patterns.GroupBy(p => p).OrderByDescending(g => g.Count()).ThenBy(g => g.Key).First().Key
            : alternating > 0 ? WalkPattern.Irregular : null;
    }
}
