using LureSim.Scenarios;
using LureSim.Scenarios.Measured;

namespace LureSim.Studies.Fit;

/// <summary>How much measurements tell of a number.</summary>
public enum FitVerdict
{
    /// <summary>The band is less than half as wide as before.</summary>
    Told,

    /// <summary>The band is narrower than before, not by half.</summary>
    Hardly,

    /// <summary>Nothing worth the name: what was known before stays.</summary>
    Not,

    /// <summary>One reading alone says something of it: what was known before stays.</summary>
    OneReading,
}

/// <summary>A number after the fit.</summary>
/// <param name="Unknown">What it is, and what was known before.</param>
/// <param name="Z">Best value in z.</param>
/// <param name="LowZ">10 % end of its band.</param>
/// <param name="HighZ">90 % end.</param>
/// <param name="LeftShare">Width of the band over that of before.</param>
/// <param name="Verdict">What was told.</param>
public sealed record FitEstimate(FitUnknown Unknown, double Z, double LowZ, double HighZ, double LeftShare, FitVerdict Verdict)
{
    /// <summary>True where the number is one of the fit; false where what was known before stays.</summary>
    public bool IsTold => Verdict is FitVerdict.Told or FitVerdict.Hardly;

    /// <summary>Best value, SI.</summary>
    public double Value => Unknown.At(Z);

    /// <summary>10 % end, SI.</summary>
    public double Low => Unknown.At(LowZ);

    /// <summary>90 % end, SI.</summary>
    public double High => Unknown.At(HighZ);

    /// <summary>Middle before, SI.</summary>
    public double Before => Unknown.At(0.0);

    /// <summary>10 % end before, SI.</summary>
    public double BeforeLow => Unknown.At(-FitUnknown.Band);

    /// <summary>90 % end before, SI.</summary>
    public double BeforeHigh => Unknown.At(FitUnknown.Band);

    /// <summary>Ends of the even range that scatters as much as the band, SI, for files that draw evenly.</summary>
    public (double Low, double High) Even => (
        Unknown.At(Z - ((Z - LowZ) * FitUnknown.Even / FitUnknown.Band)), Unknown.At(Z + ((HighZ - Z) * FitUnknown.Even / FitUnknown.Band)));
}

/// <summary>A reading against the fitted lure.</summary>
/// <param name="Reading">Reading.</param>
/// <param name="Before">Computed with the guesses as they were, SI.</param>
/// <param name="Computed">Computed with the fit, SI.</param>
/// <param name="Surprise">How far off it stands for what the others say, in standard deviations.</param>
/// <param name="Test">Which test of the fit it belongs to.</param>
public sealed record FitRowResult(FitReading Reading, double Before, double Computed, double Surprise, int Test)
{
    /// <summary>Off by, in standard deviations of the reading.</summary>
    public double Miss => Reading.Miss(Computed);
}

/// <summary>Two numbers that the data tell together better than each.</summary>
/// <param name="One">One.</param>
/// <param name="Other">The other.</param>
/// <param name="Correlation">-1 to 1.</param>
public sealed record FitPair(FitUnknown One, FitUnknown Other, double Correlation);

/// <summary>The test that would tell most of a number that stays open.</summary>
/// <param name="Unknown">The number.</param>
/// <param name="Test">The test; null where none of the protocol would.</param>
/// <param name="LeftShare">Width of its band after it, over that of before any.</param>
/// <param name="Low">10 % end after it, about the present value.</param>
/// <param name="High">90 % end.</param>
public sealed record FitNext(FitUnknown Unknown, FitAdvice? Test, double LeftShare, double Low, double High);

/// <summary>Measurements of a lure, fitted.</summary>
/// <param name="File">Measurements as written.</param>
/// <param name="Scenario">The lure as it was before.</param>
/// <param name="Values">Numbers of the lure.</param>
/// <param name="Held">Guesses that cannot be told apart from the drag along the axis, and stay at their value.</param>
/// <param name="Rows">Readings against the fit.</param>
/// <param name="Counted">Readings less what they had to tell of their own runs.</param>
/// <param name="Square">Sum of squared misses, errors as said.</param>
/// <param name="Free">Readings less all numbers that they told: what the sum should be, about.</param>
/// <param name="ErrorScale">Factor on all errors, at least 1: more where the readings scatter more than said.</param>
/// <param name="Pairs">Numbers that hang together.</param>
/// <param name="Next">What would tell what stays open.</param>
public sealed record FitReport(
    FitFile File,
    ScenarioResult Scenario,
    IReadOnlyList<FitEstimate> Values,
    IReadOnlyList<FitUnknown> Held,
    IReadOnlyList<FitRowResult> Rows,
    int Counted,
    double Square,
    double Free,
    double ErrorScale,
    IReadOnlyList<FitPair> Pairs,
    IReadOnlyList<FitNext> Next)
{
    // Among a hundred readings one stands off by this much in a hundred tests or so, by chance.
    private const double Startling = 4.0;

    /// <summary>Names of the two numbers that are no keys: how far the ballast sits from where the scenario has it.</summary>
    public const string BallastAlong = "ballast along", BallastUp = "ballast up";

    /// <summary>How far the ballast is moved, m; 0 where it was not told.</summary>
    /// <param name="name">Which way.</param>
    public double Shift(string name) => Values.FirstOrDefault(v => v.Unknown.Name == name) is { IsTold: true } told ? told.Value : 0.0;

    /// <summary>What was seen of walks; null where there are none.</summary>
    public FitWalks? Walks { get; init; }

    /// <summary>Readings that do not fit the others, the worst first.</summary>
    public IEnumerable<FitRowResult> Odd => Rows.Where(r => r.Surprise > Startling).OrderByDescending(r => r.Surprise);
}
