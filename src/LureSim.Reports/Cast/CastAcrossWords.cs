using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cast;

namespace LureSim.Reports.Cast;

/// <summary>Words of a comparison of casts, the same in text, table, picture and JSON.</summary>
public static class CastAcrossWords
{
    /// <summary>The rule of the verdict in one sentence.</summary>
    public static string Rule { get; } =
        $"how likely {NoticeRule.FewestCasts} to {NoticeRule.MostCasts} casts with each (common practice, no source) show the gain against the scatter from cast to cast, in a test of the two means at 5 %, over all draws; "
        + "two thirds or more: you will notice; one third or less: you will not notice; between them: you may notice";

    /// <summary>The verdict.</summary>
    /// <param name="verdict">Verdict.</param>
    public static string Verdict(NoticeVerdict verdict) => verdict switch
    {
        NoticeVerdict.Will => "you will notice",
        NoticeVerdict.May => "you may notice",
        _ => "you will not notice",
    };

    /// <summary>What the reference is.</summary>
    /// <param name="result">Casts of several set-ups.</param>
    public static string Reference(CastAcross result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result.ReferenceIsOwn ? "the scenario's own" : "as asked for";
    }

    /// <summary>A gain with its sign, one decimal; no sign where it rounds to nothing.</summary>
    /// <param name="gain">Gain, in the unit of its column.</param>
    public static string Gain(double gain)
    {
        string text = Trade.Fixed(gain, 1);
        return gain > 0.0 && text != "0.0" ? "+" + text : text;
    }

    /// <summary>A chance in per cent.</summary>
    /// <param name="share">0 to 1.</param>
    public static string Chance(double share) => $"{Trade.Fixed(100.0 * share, 0)} %";

    /// <summary>Casts with each that show a gain.</summary>
    /// <param name="casts">Number, infinite when no number does.</param>
    public static string Casts(double casts) => double.IsFinite(casts) ? Trade.Fixed(casts, 0) : $">{NoticeRule.LastCasts}";
}
