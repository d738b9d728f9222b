using LureSim.Model.Retrieve;

namespace LureSim.Studies.Design;

/// <summary>A walk that is wanted.</summary>
/// <param name="GlideM">Glide per twitch: mean sideways travel, m.</param>
/// <param name="RhythmPerS">Rhythm, twitches per second.</param>
/// <param name="TrimRad">Float angle, nose up positive, rad; null: whatever follows.</param>
public sealed record WalkWish(double GlideM, double RhythmPerS, double? TrimRad = null);

/// <summary>How it is sought.</summary>
/// <param name="Evaluations">Lures tried before the best are checked, at least 8.</param>
/// <param name="Descents">Simplices that start from the best of the first lures.</param>
/// <param name="Starts">Starts of the full check.</param>
/// <param name="Draws">Draws of the guesses for each candidate's bands; 0: none.</param>
/// <param name="Seed">Seed of the first lures.</param>
/// <param name="Threads">Most threads; 0 = all cores. No result depends on it.</param>
public sealed record WalkPlan(int Evaluations = 90, int Descents = 3, int Starts = 6, int Draws = 12, ulong Seed = 1, int Threads = 0);

/// <summary>Walks of lures that were tried in vain, counted by what became of them.</summary>
/// <param name="Word">What became of the lure on the water.</param>
/// <param name="Pattern">Pattern of its answer; null where it was not twitched, or the run failed.</param>
/// <param name="Count">How many lures.</param>
public sealed record DeadWalk(FloatWord Word, WalkPattern? Pattern, int Count);

/// <summary>One lure with the walk that it came to.</summary>
/// <param name="Move">What was changed.</param>
/// <param name="Point">How it floats, and its margin.</param>
/// <param name="GlideM">Glide per twitch, m, of the start tried; median of the starts that walk once checked.</param>
/// <param name="Pattern">Pattern; null where the run failed.</param>
/// <param name="Miss">Sum of squared misses: glide in tenths of the wanted one, angle in degrees, and what a lure that does not walk is charged.</param>
/// <param name="Check">Full check; null where the search was stopped before it.</param>
public sealed record WalkCandidate(WalkMove Move, DesignPoint Point, double GlideM, WalkPattern? Pattern, double Miss, WalkCheck? Check = null)
{
    /// <summary>True when it walks, by the check where there is one.</summary>
    public bool Walks => Check?.Walks ?? Pattern == WalkPattern.Alternating;
}

/// <summary>Full check of a candidate.</summary>
/// <param name="LockShare">Share of the starts that alternate.</param>
/// <param name="Walks">Whether enough do.</param>
/// <param name="GlideM">Median glide per twitch over the starts that alternate, m; NaN where none did.</param>
/// <param name="LowM">Glide below which a tenth of the draws that walk lie, m; NaN without draws that walk.</param>
/// <param name="HighM">Glide above which a tenth of them lie, m.</param>
/// <param name="WalkShare">Share of the draws of the guesses that walk; NaN without draws.</param>
/// <param name="Draws">Draws.</param>
public sealed record WalkCheck(double LockShare, bool Walks, double GlideM, double LowM, double HighM, double WalkShare, int Draws);

/// <summary>What a search for a walk came to.</summary>
/// <param name="Wish">Wish.</param>
/// <param name="Plan">How it was sought.</param>
/// <param name="Own">The lure as it is.</param>
/// <param name="Candidates">Best first; never more than there were descents.</param>
/// <param name="DeadEnds">Lures that do not walk, by what became of them, most first.</param>
/// <param name="Tried">Lures tried.</param>
/// <param name="IsStopped">True where it was stopped before its end.</param>
public sealed record WalkAnswer(
    WalkWish Wish, WalkPlan Plan, WalkCandidate Own, IReadOnlyList<WalkCandidate> Candidates, IReadOnlyList<DeadWalk> DeadEnds, int Tried, bool IsStopped)
{
    /// <summary>Within this share of the wanted glide a candidate has it.</summary>
    public const double NearShare = 0.1;

    /// <summary>True when a candidate that was checked walks as wide as wanted, within a tenth.</summary>
    public bool IsMet => Candidates.Any(c => c.Check is { Walks: true } k && Math.Abs(k.GlideM - Wish.GlideM) <= NearShare * Wish.GlideM);
}
