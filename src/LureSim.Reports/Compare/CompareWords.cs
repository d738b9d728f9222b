using LureSim.Reports.Cast;
using LureSim.Studies.Cast;
using LureSim.Studies.Compare;

namespace LureSim.Reports.Compare;

/// <summary>Words of verdicts, the same in text, table, picture and JSON.</summary>
public static class CompareWords
{
    /// <summary>The verdict.</summary>
    /// <param name="verdict">Verdict.</param>
    public static string Verdict(CompareVerdict verdict) => verdict switch
    {
        CompareVerdict.Will => CastAcrossWords.Verdict(NoticeVerdict.Will),
        CompareVerdict.May => CastAcrossWords.Verdict(NoticeVerdict.May),
        CompareVerdict.WillNot => CastAcrossWords.Verdict(NoticeVerdict.WillNot),
        _ => "cannot be told",
    };

    /// <summary>The rule in one sentence.</summary>
    public static string Rule { get; } =
        $"distance: {CastAcrossWords.Rule}. Other rows: share of the draws in which the difference is larger than what people tell apart and how steady they are; two thirds or more: you will notice; "
        + "one third or less: you will not notice; between them: you may notice; where the draws do not agree which way (sign test at 5 %), or one side has no value: cannot be told";

    /// <summary>The strongest of some verdicts: what is noticed goes before what cannot be told, that before what is not noticed.</summary>
    /// <param name="differences">Differences, at least one.</param>
    internal static CompareVerdict Strongest(IEnumerable<Difference> differences) => differences.Select(d => d.Verdict).MaxBy(v => v switch
    {
        CompareVerdict.Will => 3,
        CompareVerdict.May => 2,
        CompareVerdict.Unknown => 1,
        _ => 0,
    });
}
