using LureSim.Scenarios.Sayings;
using LureSim.Studies.Cast;

namespace LureSim.Studies.Sayings;

/// <summary>What is said of a claim in one place.</summary>
public enum PlaceWord
{
    /// <summary>It is true there: in two thirds of the draws or more.</summary>
    True,

    /// <summary>It is false there: true in one third of the draws or less.</summary>
    False,

    /// <summary>It cannot be told there.</summary>
    Unknown,
}

/// <summary>What is said of a saying.</summary>
public enum SayingVerdict
{
    /// <summary>True in every test and place.</summary>
    Holds,

    /// <summary>True in some, false in others.</summary>
    HoldsOnlyWhen,

    /// <summary>False in every test and place.</summary>
    DoesNotHold,

    /// <summary>Anything else.</summary>
    CannotBeTold,
}

/// <summary>The rule of sayings: from the values of one draw to a word for a place, and from places to a verdict. It looks at no name.</summary>
public static class SayingRule
{
    // As in a comparison: of more draws without value, what is left would be a choice.
    private const double MostMissing = 1.0 / 3.0;

    /// <summary>Whether a claim is true in one draw; null where a side has no value.</summary>
    /// <param name="kind">Claim.</param>
    /// <param name="claim">Its limit and what is noticed.</param>
    /// <param name="values">Value of each side, in order.</param>
    public static bool? IsTrue(ClaimKind kind, Claim claim, IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(claim);
        ArgumentNullException.ThrowIfNull(values);
        if (values.Any(double.IsNaN))
        {
            return null;
        }

        double notice = claim.Notice(values[0]), way = values[^1] - values[0];
        return kind switch
        {
            ClaimKind.Higher => way > notice,
            ClaimKind.Lower => way < -notice,
            ClaimKind.Rises => way > notice && Steps(values).All(s => s >= -notice),
            ClaimKind.Falls => way < -notice && Steps(values).All(s => s <= notice),
            ClaimKind.NoDifference => values.Max() - values.Min() <= notice,
            ClaimKind.AtLeast => values.All(v => v >= claim.Limit),
            _ => values.All(v => v <= claim.Limit),
        };
    }

    /// <summary>Share of the draws in which a claim is true, of those that have a value; NaN where none has.</summary>
    /// <param name="truths">Truth of each draw.</param>
    public static double Chance(IEnumerable<bool?> truths) => truths.Where(t => t is not null).Select(t => t == true ? 1.0 : 0.0).DefaultIfEmpty(double.NaN).Average();

    /// <summary>The word of a chance.</summary>
    /// <param name="chance">0 to 1; NaN cannot be told.</param>
    public static PlaceWord Word(double chance) => double.IsNaN(chance) ? PlaceWord.Unknown : NoticeRule.Verdict(chance) switch
    {
        NoticeVerdict.Will => PlaceWord.True,
        NoticeVerdict.WillNot => PlaceWord.False,
        _ => PlaceWord.Unknown,
    };

    /// <summary>Whether too many draws have no value for anything to be told.</summary>
    /// <param name="truths">Truth of each draw.</param>
    public static bool MissesTooMany(IReadOnlyCollection<bool?> truths)
    {
        ArgumentNullException.ThrowIfNull(truths);
        return truths.Count(t => t is null) > MostMissing * truths.Count;
    }

    /// <summary>The chance that the same draws would have on a finer mesh or with finer steps: moved by the mean change of those that were run again (a
    /// difference of two levels; Giles 2008, Operations Research 56, 607, from memory).</summary>
    /// <param name="chance">Chance over all draws.</param>
    /// <param name="before">Truth of the draws that were run again, as they were; in the order of <paramref name="after"/>.</param>
    /// <param name="after">Their truth then.</param>
    public static double Moved(double chance, IEnumerable<bool?> before, IEnumerable<bool?> after)
    {
        double[] changes = [.. before.Zip(after).Where(p => p.First is not null && p.Second is not null).Select(p => (p.Second == true ? 1.0 : 0.0) - (p.First == true ? 1.0 : 0.0))];
        return changes.Length == 0 ? double.NaN : Math.Clamp(chance + changes.Average(), 0.0, 1.0);
    }

    /// <summary>Whether a word stands beside draws of another seed: they must not say the opposite alone, and all draws together must say the same.</summary>
    /// <param name="word">Word of the draws.</param>
    /// <param name="own">Their truths.</param>
    /// <param name="other">Truths of the other seed.</param>
    public static bool Stands(PlaceWord word, IReadOnlyCollection<bool?> own, IReadOnlyCollection<bool?> other)
    {
        PlaceWord alone = Word(Chance(other));
        return Word(Chance([.. own, .. other])) == word && (alone == word || alone == PlaceWord.Unknown);
    }

    /// <summary>The claim that would be true where the other way round is; null where there is none.</summary>
    /// <param name="kind">Claim.</param>
    public static ClaimKind? Opposite(ClaimKind kind) => kind switch
    {
        ClaimKind.Higher => ClaimKind.Lower,
        ClaimKind.Lower => ClaimKind.Higher,
        ClaimKind.Rises => ClaimKind.Falls,
        ClaimKind.Falls => ClaimKind.Rises,
        _ => null,
    };

    /// <summary>The verdict of the words of all tests and places.</summary>
    /// <param name="words">Words, at least one.</param>
    public static SayingVerdict Verdict(IReadOnlyCollection<PlaceWord> words)
    {
        ArgumentNullException.ThrowIfNull(words);
        bool some = words.Contains(PlaceWord.True), none = words.Contains(PlaceWord.False);
        return some && none ? SayingVerdict.HoldsOnlyWhen
            : words.Contains(PlaceWord.Unknown) || words.Count == 0 ? SayingVerdict.CannotBeTold
            : some ? SayingVerdict.Holds : SayingVerdict.DoesNotHold;
    }

    private static IEnumerable<double> Steps(IReadOnlyList<double> values) => values.Zip(values.Skip(1), (a, b) => b - a);
}
