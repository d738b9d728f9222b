using LureSim.Reports.Cadence;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Compare;

namespace LureSim.Reports.Compare;

/// <summary>The recommendation in sentences: which and why; what it costs; what will not be noticed; and a bend test where it would help.</summary>
public static class AdviceText
{
    // More rows than these in a sentence are no sentence.
    private const int MostRows = 3;

    /// <summary>Three sentences, a fourth where a bend test would help.</summary>
    /// <param name="result">Set-ups compared.</param>
    /// <param name="advice">Advice.</param>
    /// <param name="shown">Whose units.</param>
    public static IReadOnlyList<string> Sentences(CompareResult result, Advice advice, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(shown);
        ArgumentNullException.ThrowIfNull(advice);
        if (advice.Kind == AdviceKind.NoneWalks)
        {
            return
            [
                $"None of these walks the lure at any rhythm that was tried ({Trade.And([.. advice.Fallen.Select(i => $"{Label(result, i)}: {Answer(result, i)}")])}), so none can be recommended for it.",
                "Change the lure, the line or the stroke first.", "What else differs is in the table.",
            ];
        }

        string[] three = [$"{Fallen(result, advice)}{Which(result, advice, new(result, shown))}", GivesUp(result, advice, new(result, shown)), Unnoticed(advice)];
        return advice.BendTest is not Difference bend ? three
            :
            [
                .. three,
                $"A bend test of both rods (luresim bend) would cut the band of the difference in {Words(bend).Noun} to {Trade.Fixed(100.0 * advice.BendTestShare, 0)} % of its width.",
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
            AdviceKind.Nothing => $"{(advice.Taste.Count == 0 ? "You will not notice a difference" : "Different, but none is better")}: take the cheaper one",
            AdviceKind.Clear => $"Take {The(result, advice.Leader)}",
            _ => string.Join("; ", advice.Takes.Take(2).Select((t, i) => $"{(i == 0 ? "Take" : "take")} {The(result, t.SetUp)} for {Words(t.For[0]).For}")),
        };
    }

    private static string Fallen(CompareResult result, Advice advice) => advice.Fallen.Count == 0 ? ""
        : $"{Trade.Capital(Trade.And([.. advice.Fallen.Select(i => $"{The(result, i)} does not walk the lure at any rhythm that was tried ({Answer(result, i)})")]))}, so ";

    private static string Which(CompareResult result, Advice advice, CompareNumbers numbers)
    {
        string take = advice.Fallen.Count == 0 ? "Take" : "take";
        return advice.Kind switch
        {
            AdviceKind.Nothing => $"{take} the cheaper one: {Equal(result, advice, numbers)}{(Lighter(result) ? $"; at the same price {The(result, advice.Leader)}, the lighter to swing" : "")}.",
            AdviceKind.Clear when advice.Takes[0].For.Count == 0 => $"{take} {The(result, advice.Leader)}.",
            _ => $"{take} {The(result, advice.Leader)} for {Trade.And([.. Families(advice.Takes[0].For).Take(MostRows).Select(d => Won(result, d, numbers))])}.",
        };
    }

    private static string Equal(CompareResult result, Advice advice, CompareNumbers numbers) => advice.Taste.Count == 0
        ? "no difference here is one that you will notice"
        : $"what you will notice is different, not better or worse ({string.Join("; ", advice.Taste.Take(MostRows).Select(d => $"{Words(d).Row}: {numbers.Value(d.Measure, d.AValue)} with {The(result, d.A)}, {numbers.Value(d.Measure, d.BValue)} with {The(result, d.B)}"))})";

    private static string GivesUp(CompareResult result, Advice advice, CompareNumbers numbers) =>
        advice.Kind == AdviceKind.Nothing ? "You give up nothing that you will miss."
        : advice.GivenUp.Count == 0 ? $"With {The(result, advice.Leader)} you give up nothing that you will notice."
        : $"You pay for it with {string.Join("; ", Families(advice.GivenUp).Take(MostRows).GroupBy(d => d.Winner).Select(g => $"{Trade.And([.. g.Select(d => Lost(d, numbers))])} than with {The(result, g.Key)}"))}"
            + $"{string.Concat(advice.Takes.Skip(1).Select(t => $"; take {The(result, t.SetUp)} if you care more for {Trade.And([.. Families(t.For).Take(MostRows).Select(d => Words(d).For)])}"))}.";

    private static string Unnoticed(Advice advice)
    {
        string[] not = Nouns(advice.Unnoticed), open = Nouns(advice.Unknown);
        string told = not.Length == 0 ? "There is nothing here that you will surely not notice" : $"You will not notice {Few(not)}";
        return open.Length == 0 ? told + "." : $"{told}; what happens to {Few(open)} cannot be told.";
    }

    private static string Few(string[] nouns) => nouns.Length <= MostRows + 1
        ? Trade.And(nouns)
        : $"{string.Join(", ", nouns.Take(MostRows))} and {nouns.Length - MostRows} things more";

    // Rows that say the same thing come once, where all of them are there.
    private static string[] Nouns(IReadOnlyList<CompareMeasure> rows) =>
    [
        .. rows.Select(MeasureWords.Of).Select(w => MeasureWords.All.Where(o => o.Family == w.Family).All(o => rows.Contains(o.Measure)) ? w.Family : w.Noun).Distinct(StringComparer.Ordinal),
    ];

    private static IEnumerable<Difference> Families(IEnumerable<Difference> differences) => differences.DistinctBy(d => Words(d).Family);

    private static string Won(CompareResult result, Difference d, CompareNumbers numbers)
    {
        (double own, double other, int rest) = d.Winner == d.A ? (d.AValue, d.BValue, d.B) : (d.BValue, d.AValue, d.A);
        return $"{Words(d).For} ({numbers.Number(d.Measure, own)} against {numbers.Value(d.Measure, other)} with {The(result, rest)})";
    }

    // "58 % more swing weight"; of a number that has no such share, or is a rhythm, the value.
    private static string Lost(Difference d, CompareNumbers numbers)
    {
        (double best, double own) = d.Winner == d.A ? (d.AValue, d.BValue) : (d.BValue, d.AValue);
        double change = 100.0 * Math.Abs(own - best) / Math.Abs(best);
        string more = own > best ? "more" : "less", noun = Words(d).Noun;
        return change < 1000.0 && Words(d).Quantity is not null
            ? $"{Trade.Fixed(change, 0)} % {more} {noun[(noun.IndexOf(' ', StringComparison.Ordinal) + 1)..]}"
            : $"{numbers.Value(d.Measure, Math.Abs(own - best))} {more} for {noun}";
    }

    private static bool Lighter(CompareResult result) =>
        result.Sets.Any(s => s.Measures.Contains(RodMeasures.SwingWeight)) && result.SetUps.Select((_, i) => result.Column(RodMeasures.SwingWeight, i).AsItStands.Value).Distinct().Count() > 1;

    private static string Answer(CompareResult result, int setUp) => CadenceStory.Answer(result.Of<RetrieveMeasured>()?.Cases[setUp].Pattern);

    private static MeasureWords Words(Difference d) => MeasureWords.Of(d.Measure);

    // "the 7 ft 4 in", but "rod power heavy".
    private static string The(CompareResult result, int setUp) => char.IsAsciiDigit(Label(result, setUp)[0]) ? $"the {Label(result, setUp)}" : Label(result, setUp);

    private static string Label(CompareResult result, int setUp) => result.SetUps[setUp].Label;
}
