using LureSim.Scenarios.Sayings;
using LureSim.Studies.Cast;

namespace LureSim.Studies.Sayings;

/// <summary>Why a place's word was looked at again.</summary>
public enum Again
{
    /// <summary>Twice the nodes of the line.</summary>
    Mesh,

    /// <summary>Half the step.</summary>
    Step,

    /// <summary>Another seed.</summary>
    Seed,
}

/// <summary>A second look at a word.</summary>
/// <param name="What">What was changed.</param>
/// <param name="Draws">Draws that were run; 0 where the command has no such key.</param>
/// <param name="Chance">Chance that the claim is true then; NaN where it was not looked at.</param>
/// <param name="Stands">Whether the word stands.</param>
public sealed record SecondLook(Again What, int Draws, double Chance, bool Stands);

/// <summary>A figure beside the one asked about that moved with the sides.</summary>
/// <param name="Figure">Key.</param>
/// <param name="From">Median at the first side.</param>
/// <param name="To">Median at the last.</param>
public sealed record MovedFigure(string Figure, double From, double To);

/// <summary>A guess that the difference goes with.</summary>
/// <param name="Key">Key of the guess.</param>
/// <param name="Rho">Spearman's rank correlation with the number told, over the draws.</param>
public sealed record LeadingGuess(string Key, double Rho);

/// <summary>What a test gave in a place.</summary>
/// <param name="Trial">Test and place.</param>
/// <param name="Values">Value of each draw and side; NaN for none.</param>
/// <param name="Chance">Share of the draws in which the claim is true.</param>
/// <param name="Word">What is said, after the second looks.</param>
/// <param name="First">What the draws alone said.</param>
/// <param name="Looks">Second looks.</param>
/// <param name="OppositeChance">Share of the draws in which the opposite is true; NaN where a claim has none.</param>
/// <param name="SameChance">Share of the draws in which nobody would notice a difference; NaN with one side.</param>
/// <param name="Missing">Draws without value.</param>
/// <param name="WhyMissing">Why most of them have none; empty where all have.</param>
/// <param name="Moved">Of the figures that people ask for first those that moved most, the largest move first.</param>
/// <param name="Guess">Guess that the number goes with; null where none stands out.</param>
public sealed record TrialResult(
    ReadyTrial Trial, IReadOnlyList<IReadOnlyList<double>> Values, double Chance, PlaceWord Word, PlaceWord First, IReadOnlyList<SecondLook> Looks, double OppositeChance,
    double SameChance, int Missing, string WhyMissing, IReadOnlyList<MovedFigure> Moved, LeadingGuess? Guess)
{
    /// <summary>The number told of each draw: last side less first, or the value nearest to its limit; draws without value are left out.</summary>
    public IReadOnlyList<double> Numbers => [.. Values.Where(v => !v.Any(double.IsNaN)).Select(Told)];

    /// <summary>Whether the number told is a difference of two sides, not a value.</summary>
    public bool IsDifference => Trial.Test.Sides.Count > 1 && !Trial.Test.Claim.IsLimit;

    /// <summary>Median of <see cref="Numbers"/>, their mean where each is a share of few runs; NaN where there is none.</summary>
    public double Number => Middle(Numbers);

    /// <summary>Eight of ten of <see cref="Numbers"/>.</summary>
    public Spread Band => Spread.Of(Numbers);

    /// <summary>Median of a side over the draws that have a value on every side, the mean of shares.</summary>
    /// <param name="side">Side.</param>
    public double Side(int side) => Middle([.. Values.Where(v => !v.Any(double.IsNaN)).Select(v => v[side])]);

    /// <summary>The number told of one draw.</summary>
    /// <param name="values">Value of each side.</param>
    internal double Told(IReadOnlyList<double> values) => Trial.Test.Claim.Kind switch
    {
        ClaimKind.AtLeast => values.Min(),
        ClaimKind.AtMost => values.Max(),
        _ => values[^1] - values[0],
    };

    /// <summary>The middle of values of this test: the median; of runs that show a word or do not, and shares of three of them, their mean, since their median is all or nothing.</summary>
    /// <param name="values">Values.</param>
    public double Middle(IReadOnlyList<double> values) => values.Count == 0 ? double.NaN : Trial.Test.IsOfWords ? values.Average() : MathNet.Numerics.Statistics.Statistics.Median(values);
}

/// <summary>What came out for a saying.</summary>
/// <param name="Saying">Saying.</param>
/// <param name="Trials">Every test in every place; places change fastest.</param>
public sealed record SayingResult(Saying Saying, IReadOnlyList<TrialResult> Trials)
{
    /// <summary>The verdict.</summary>
    public SayingVerdict Verdict { get; } = SayingRule.Verdict([.. Trials.Select(t => t.Word)]);
}

/// <summary>What came out for all sayings that were finished.</summary>
/// <param name="Results">Results, in the order asked for.</param>
/// <param name="Asked">How many were asked for; more than there are results where the person stopped.</param>
/// <param name="Plan">How many draws.</param>
public sealed record SayingsReport(IReadOnlyList<SayingResult> Results, int Asked, SayingPlan Plan)
{
    /// <summary>Whether all that was asked for is there.</summary>
    public bool IsWhole => Results.Count == Asked;
}
