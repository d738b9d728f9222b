using LureSim.Reports.Cadence;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Compare;

namespace LureSim.Reports.Compare;

/// <summary>The recommendation in sentences: which and why; what it costs; what will not be noticed; and a bend test where it would help.</summary>
public static class AdviceText
{
    // More rows than these in a sentence are no sentence.
    private const int MostRows = 4;

    /// <summary>Three sentences, a fourth where a bend test would help.</summary>
    /// <param name="result">Set-ups compared.</param>
    /// <param name="advice">Advice.</param>
    public static IReadOnlyList<string> Sentences(CompareResult result, Advice advice)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(advice);
        if (advice.Kind == AdviceKind.NoneWalks)
        {
            return
            [
                $"None of these walks the lure at any rhythm that was tried ({CompareWords.And([.. advice.Fallen.Select(i => $"{Label(result, i)}: {Answer(result, i)}")])}), so none can be recommended for it.",
                "Change the lure, the line or the stroke first.", "What else differs is in the table.",
            ];
        }

        string[] three = [$"{Fallen(result, advice)}{Which(result, advice)}", GivesUp(result, advice), Unnoticed(advice)];
        return advice.BendTest is not Difference bend ? three
            :
            [
                .. three,
                $"A bend test of both rods (luresim bend) would cut the band of {Words(bend).Noun} to {Trade.Fixed(100.0 * advice.BendTestShare, 0)} % of its width.",
            ];
    }

    /// <summary>The first words, short enough for a heading.</summary>
    /// <param name="result">Set-ups compared.</param>
    /// <param name="advice">Advice.</param>
    public static string Heading(CompareResult result, Advice advice)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(advice);
        return advice.Kind switch
        {
            AdviceKind.NoneWalks => "None of these walks the lure",
            AdviceKind.Nothing => "You will not notice a difference: take the cheaper one",
            AdviceKind.Clear => $"Take {The(result, advice.Leader)}",
            _ => string.Join("; ", advice.Takes.Take(2).Select((t, i) => $"{(i == 0 ? "Take" : "take")} {The(result, t.SetUp)} for {Words(t.For[0]).For}")),
        };
    }

    private static string Fallen(CompareResult result, Advice advice) => advice.Fallen.Count == 0 ? ""
        : $"{Trade.Capital(CompareWords.And([.. advice.Fallen.Select(i => $"{Label(result, i)} does not walk the lure at any rhythm that was tried ({Answer(result, i)})")]))}, so ";

    private static string Which(CompareResult result, Advice advice)
    {
        string take = advice.Fallen.Count == 0 ? "Take" : "take";
        return advice.Kind switch
        {
            AdviceKind.Nothing => $"{take} the cheaper one: no difference here is one that you will notice{(Lighter(result) ? $"; at the same price {The(result, advice.Leader)}, the lighter to swing" : "")}.",
            AdviceKind.Clear when advice.Takes[0].For.Count == 0 => $"{take} {The(result, advice.Leader)}.",
            AdviceKind.Clear => $"{take} {The(result, advice.Leader)}: {Wins(result, advice.Takes[0])}.",
            _ => $"{string.Join("; ", advice.Takes.Select((t, i) => $"{(i == 0 ? take : "take")} {The(result, t.SetUp)} for {Reasons(t)} ({Wins(result, t)})"))}.",
        };
    }

    private static string GivesUp(CompareResult result, Advice advice) => advice.GivenUp.Count == 0
        ? advice.Kind == AdviceKind.Nothing ? "You give up nothing that you will notice." : $"With {The(result, advice.Leader)} you give up nothing that you will notice."
        : $"With {The(result, advice.Leader)} you give up {CompareWords.And([.. advice.GivenUp.Take(MostRows).Select(d => Against(result, d, advice.Leader))])}.";

    private static string Unnoticed(Advice advice)
    {
        string[] not = [.. advice.Unnoticed.Select(m => MeasureWords.Of(m).Noun)], open = [.. advice.Unknown.Select(m => MeasureWords.Of(m).Noun)];
        string told = not.Length == 0 ? "There is no row in which you will surely not notice anything" : $"You will not notice {CompareWords.And(not)}";
        return open.Length == 0 ? told + "." : $"{told}; nothing can be told about {CompareWords.And(open)}.";
    }

    private static string Reasons(AdviceFor take) => CompareWords.And([.. take.For.Take(2).Select(d => Words(d).For)]);

    private static string Wins(CompareResult result, AdviceFor take) => CompareWords.And([.. take.For.Take(MostRows).Select(d => Against(result, d, take.SetUp))]);

    // Seen from one of the two.
    private static string Against(CompareResult result, Difference d, int from)
    {
        MeasureWords words = Words(d);
        (double own, double other, int rest) = d.A == from ? (d.AValue, d.BValue, d.B) : (d.BValue, d.AValue, d.A);
        return $"{words.Noun}, {words.Number(own)} against {words.Value(other)} with {The(result, rest)}";
    }

    private static bool Lighter(CompareResult result) =>
        result.Sets.Any(s => s.Measures.Contains(RodMeasures.SwingWeight)) && result.SetUps.Select((_, i) => result.Column(RodMeasures.SwingWeight, i).AsItStands.Value).Distinct().Count() > 1;

    private static string Answer(CompareResult result, int setUp) => CadenceStory.Answer(result.Of<RetrieveMeasured>()?.Cases[setUp].Pattern);

    private static MeasureWords Words(Difference d) => MeasureWords.Of(d.Measure);

    private static string The(CompareResult result, int setUp) => $"\"{Label(result, setUp)}\"";

    private static string Label(CompareResult result, int setUp) => result.SetUps[setUp].Label;
}
