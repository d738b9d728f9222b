using LureSim.Model.Cast;
using LureSim.Model.Rods;
using LureSim.Scenarios.Keys;

namespace LureSim.Studies.Cast;

/// <summary>A class of rods.</summary>
/// <param name="Name">Word of <c>rod.power</c>.</param>
/// <param name="LoadN">Tip load that drops the tip by a third of the free length, N (guess, <see cref="RodKeys.Power"/>).</param>
/// <param name="RatedLowKg">Lightest lure of usual ratings, kg (common practice, no source).</param>
/// <param name="RatedHighKg">Heaviest lure of usual ratings, kg (common practice, no source).</param>
public sealed record RodClass(string Name, double LoadN, double RatedLowKg, double RatedHighKg)
{
    /// <summary>All, softest first.</summary>
    public static IReadOnlyList<RodClass> All { get; } =
    [
        Of("ultralight", 1, 5), Of("light", 2, 9), Of("medium-light", 4, 12), Of("medium", 7, 18), Of("medium-heavy", 10, 28), Of("heavy", 14, 42), Of("extra-heavy", 28, 85),
    ];

    /// <summary>Whether a lure lies in the usual rating.</summary>
    /// <param name="lureKg">Mass, kg.</param>
    public bool IsRatedFor(double lureKg) => lureKg >= RatedLowKg && lureKg <= RatedHighKg;

    /// <summary>A rod of another power and the same length: mass ~ load^0.35, thickness ~ load^0.2.</summary>
    /// <param name="rod">Rod.</param>
    /// <param name="loadN">Tip load that drops the tip by a third, N.</param>
    public static RodSpec WithLoad(RodSpec rod, double loadN)
    {
        ArgumentNullException.ThrowIfNull(rod);
        double ratio = loadN / rod.ThirdLoadN;
        return rod with { ThirdLoadN = loadN, MassKg = rod.MassKg * Math.Pow(ratio, MassByPower), ButtDiameterM = rod.ButtDiameterM * Math.Pow(ratio, ThicknessByPower) };
    }

    /// <summary>The load of the class next to a rod's, N; null beyond the last.</summary>
    /// <param name="loadN">Load of the rod, N.</param>
    /// <param name="step">1 for the next heavier class, -1 for the next lighter one.</param>
    public static double? Beside(double loadN, int step)
    {
        int own = All.ToList().FindLastIndex(c => RodKeys.Power.Choices.First(p => p.Name == c.Name).Low <= loadN), next = Math.Max(0, own) + step;
        return next >= 0 && next < All.Count ? All[next].LoadN : null;
    }

    // Rods of more power are thicker and heavier (guesses; rods that keep both have the same best power, soft ones bend farther by their own mass).
    private const double MassByPower = 0.35, ThicknessByPower = 0.2;

    private static RodClass Of(string name, double lowG, double highG) => new(name, RodKeys.Power.Choices.First(c => c.Name == name).Value, 1e-3 * lowG, 1e-3 * highG);
}

/// <summary>One lure on one class of rods.</summary>
/// <param name="DistanceMeanM">Mean of many casts, m; NaN without a cast.</param>
/// <param name="LaunchSpeedMS">Launch speed, m/s.</param>
/// <param name="BendShare">Largest bend over the length of the rod.</param>
/// <param name="BendsTooFar">True where the rod bends more than a rod of its power is made for.</param>
/// <param name="Failure">Why there is no cast, or null.</param>
public sealed record PowerCell(double DistanceMeanM, double LaunchSpeedMS, double BendShare, bool BendsTooFar, string? Failure)
{
    /// <summary>Of a cast.</summary>
    /// <param name="cast">Cast.</param>
    public static PowerCell Of(CastResult cast)
    {
        ArgumentNullException.ThrowIfNull(cast);
        return new(cast.DistanceMeanM, cast.LaunchSpeedMS, cast.PeakBendShare, cast.Remarks.HasFlag(CastRemarks.BendBeyondRod), null);
    }

    /// <summary>Without a cast.</summary>
    /// <param name="reason">Why.</param>
    public static PowerCell Failed(string reason) => new(double.NaN, double.NaN, double.NaN, false, reason);
}

/// <summary>Lures of several masses on rods of all classes.</summary>
/// <param name="Title">What they have in common.</param>
/// <param name="LureKg">Masses with hooks, kg.</param>
/// <param name="Cells">A row for each mass, a cell for each of <see cref="RodClass.All"/>.</param>
public sealed record PowerTable(string Title, IReadOnlyList<double> LureKg, IReadOnlyList<IReadOnlyList<PowerCell>> Cells)
{
    /// <summary>Distances within this share of the best are as good: the top is flat, and the guesses move it by more.</summary>
    public const double AsGood = 0.02;

    /// <summary>The class that casts a mass farthest without bending farther than it is made for; null when none does.</summary>
    /// <param name="row">Which mass.</param>
    public int? Best(int row)
    {
        IReadOnlyList<PowerCell> cells = Cells[row];
        int[] sound = [.. Enumerable.Range(0, cells.Count).Where(i => Sound(cells[i]))];
        return sound.Length == 0 ? null : sound.MaxBy(i => cells[i].DistanceMeanM);
    }

    /// <summary>The classes that cast a mass as good as the best, those that bend too far left out.</summary>
    /// <param name="row">Which mass.</param>
    public IReadOnlyList<int> Good(int row) => Best(row) is int best
        ? [.. Enumerable.Range(0, Cells[row].Count).Where(i => Sound(Cells[row][i]) && Cells[row][i].DistanceMeanM >= (1.0 - AsGood) * Cells[row][best].DistanceMeanM)]
        : [];

    private static bool Sound(PowerCell cell) => double.IsFinite(cell.DistanceMeanM) && !cell.BendsTooFar;
}
