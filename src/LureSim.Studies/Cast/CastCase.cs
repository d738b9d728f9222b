using LureSim.Model.Cast;
using MathNet.Numerics.Statistics;

namespace LureSim.Studies.Cast;

/// <summary>Band in which eight of ten values lie.</summary>
/// <param name="Low">P10.</param>
/// <param name="High">P90.</param>
public readonly record struct Spread(double Low, double High)
{
    /// <summary>P10 and P90 of values, not-a-numbers left out (linear between ranks: Hyndman and Fan 1996, type 7, from memory).</summary>
    /// <param name="values">Values; NaN for both ends when fewer than two are numbers.</param>
    public static Spread Of(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Where(double.IsFinite).Order()];
        return sorted.Length < 2
            ? new(double.NaN, double.NaN)
            : new(SortedArrayStatistics.QuantileCustom(sorted, 0.1, QuantileDefinition.R7), SortedArrayStatistics.QuantileCustom(sorted, 0.9, QuantileDefinition.R7));
    }
}

/// <summary>Many casts with one draw of the guesses.</summary>
/// <param name="MeanM">Mean distance, m; NaN where the draw failed.</param>
/// <param name="P10M">Ten casts out of a hundred fall shorter, m.</param>
/// <param name="P90M">Ten casts out of a hundred go farther, m.</param>
public readonly record struct CastDraw(double MeanM, double P10M, double P90M)
{
    // Half width of a normal distribution from P10 to P90, in sigmas.
    private const double TenthSigmas = 1.2815515655446004;

    /// <summary>A draw that failed.</summary>
    public static CastDraw Failed { get; } = new(double.NaN, double.NaN, double.NaN);

    /// <summary>False where the draw failed.</summary>
    public bool Finished => double.IsFinite(MeanM);

    /// <summary>One sigma of the distance from cast to cast, m: release error and scatter, with the guesses of this draw.</summary>
    public double SigmaM => (P90M - P10M) / (2.0 * TenthSigmas);

    /// <summary>Of a cast.</summary>
    /// <param name="cast">Cast.</param>
    public static CastDraw Of(CastResult cast)
    {
        ArgumentNullException.ThrowIfNull(cast);
        return new(cast.DistanceMeanM, cast.DistanceP10M, cast.DistanceP90M);
    }
}

/// <summary>One set-up of a comparison of casts.</summary>
/// <param name="Label">Value as people read it.</param>
/// <param name="Cast">The cast with every guess as it stands, or null.</param>
/// <param name="Failure">Why there is none, or null.</param>
/// <param name="Draws">Casts of each draw of the guesses, the same luck in every set-up.</param>
public sealed record CastCase(string Label, CastResult? Cast, string? Failure, IReadOnlyList<CastDraw> Draws)
{
    /// <summary>The draws; without any, the guesses as they stand.</summary>
    public IReadOnlyList<CastDraw> Known => Draws.Count > 0 || Cast is null ? Draws : [CastDraw.Of(Cast)];

    /// <summary>Mean distance over the draws that finished, m; NaN when none did.</summary>
    public double MeanM => Mean(d => d.MeanM);

    /// <summary>Mean of the draws' P10 from cast to cast, m.</summary>
    public double P10M => Mean(d => d.P10M);

    /// <summary>Mean of the draws' P90 from cast to cast, m.</summary>
    public double P90M => Mean(d => d.P90M);

    /// <summary>Scatter from cast to cast, one sigma, m: root mean square over the draws.</summary>
    public double ScatterM => Math.Sqrt(Mean(d => d.SigmaM * d.SigmaM));

    /// <summary>Draws that failed.</summary>
    public int FailedDraws => Draws.Count(d => !d.Finished);

    /// <summary>Band of the guesses, m.</summary>
    public Spread GuessesM => Spread.Of(Draws.Select(d => d.MeanM));

    /// <summary>True when the same draws finished in both, so that means can be subtracted.</summary>
    /// <param name="other">Another set-up.</param>
    public bool HasDrawsOf(CastCase other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Known.Select(d => d.Finished).SequenceEqual(other.Known.Select(d => d.Finished));
    }

    private double Mean(Func<CastDraw, double> value) => Known.Where(d => d.Finished).Select(value).DefaultIfEmpty(double.NaN).Average();
}
