using LureSim.Studies.Runs;

namespace LureSim.Studies.Cadence;

/// <summary>How rhythms are searched.</summary>
/// <param name="FromPerS">Slowest rhythm, twitches per second.</param>
/// <param name="ToPerS">Fastest rhythm, twitches per second.</param>
/// <param name="ScanPoints">Rhythms of the first pass, evenly spaced in ratio, 3 to 200. A window between two of them is missed.</param>
/// <param name="Starts">Most starts per rhythm; from four on, a scanned rhythm far from any change of the pattern has one, and others as many as it takes to decide.</param>
/// <param name="EdgePerS">An edge of a window is bisected down to this bracket, 1/s; changes between patterns that do not walk are left as coarse as the scan.</param>
/// <param name="LockShare">A rhythm walks when at least this share of its starts alternates.</param>
/// <param name="Room">A best rhythm must hold when it is missed by this share, guess 0.10 (0.04 to 0.2; people's timing).</param>
/// <param name="Run">Length and mesh of each run.</param>
/// <param name="Threads">Most threads; 0 = all cores. No result depends on it.</param>
public sealed record CadencePlan(
    double FromPerS = 0.6,
    double ToPerS = 4.0,
    int ScanPoints = 15,
    int Starts = 6,
    double EdgePerS = 0.02,
    double LockShare = 0.8,
    double Room = 0.10,
    StationaryPlan? Run = null,
    int Threads = 0)
{
    /// <summary>Warm-up of a run that begins with the hand of a neighbour, s; one that has to find its own needs longer (docs/cadence.md).</summary>
    public const double WarmUpS = 10.0;

    /// <summary>Length and mesh of each run.</summary>
    public StationaryPlan Runs => Run ?? new StationaryPlan(WarmUpS);

    /// <summary>Throws <see cref="ArgumentOutOfRangeException"/> when a number makes no sense.</summary>
    public void Check()
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(FromPerS);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(ToPerS, FromPerS);
        ArgumentOutOfRangeException.ThrowIfLessThan(ScanPoints, 3);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(ScanPoints, 200);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(EdgePerS);
    }

    /// <summary>Rhythms of the first pass: even ratios, rounded to 0.01 /s.</summary>
    public double[] Scan()
    {
        double ratio = Math.Pow(ToPerS / FromPerS, 1.0 / (ScanPoints - 1));
        IEnumerable<double> inner = Enumerable.Range(1, ScanPoints - 2).Select(i => Math.Round(FromPerS * Math.Pow(ratio, i), 2));
        return [FromPerS, .. inner.Where(f => f > FromPerS && f < ToPerS).Distinct(), ToPerS];
    }
}
