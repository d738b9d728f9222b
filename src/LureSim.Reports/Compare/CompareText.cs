using System.Text;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Compare;

namespace LureSim.Reports.Compare;

/// <summary>A comparison for the terminal: the recommendation, a table of values, then each two set-ups.</summary>
public static class CompareText
{
    // Up to here every two set-ups are told; beyond, each against the first.
    private const int FewSetUps = 3;
    private const string Indent = "  ";

    /// <summary>Builds it.</summary>
    /// <param name="result">Set-ups compared.</param>
    /// <param name="notes">Warnings and guesses.</param>
    public static string Build(CompareResult result, RunNotes notes)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(notes);
        var text = new StringBuilder();
        var numbers = new CompareNumbers(result, notes.Shown);
        text.Append(string.Join(" | ", result.SetUps.Select(s => s.Label))).Append("\n\n");
        text.AppendWrapped(string.Join(" ", AdviceText.Sentences(result, Advice.Of(result), notes.Shown)));
        text.Append('\n').Append(Table(result, numbers));
        (int A, int B)[] pairs = [.. result.Differences.Select(d => (d.A, d.B)).Distinct()];
        foreach ((int a, int b) in result.SetUps.Count <= FewSetUps ? pairs : pairs.Where(p => p.A == 0))
        {
            AppendPair(text, result, a, b, numbers);
        }

        if (result.SetUps.Count > FewSetUps)
        {
            text.Append('\n').AppendWrapped("Each against the first; every two set-ups are in compare.csv.");
        }

        text.Append('\n');
        Explain(text, result);
        text.AppendNotes(notes, "compare.json");
        return text.ToString();
    }

    private static string Table(CompareResult result, CompareNumbers numbers)
    {
        string[][] rows =
        [
            .. result.Sets.SelectMany(s => s.Measures).Select(m => (string[])
            [
                $"{MeasureWords.Of(m).Row}, {numbers.Unit(m).Name}", .. result.SetUps.Select((_, i) => numbers.Number(m, result.Column(m, i).Mean)), Most(result, m),
            ]),
        ];

        // Names of many set-ups would not fit; numbers do.
        bool fits = result.SetUps.Sum(s => s.Label.Length + 2) <= 46;
        string names = fits ? "" : string.Join("\n", result.SetUps.Select((s, i) => $"  ({i + 1}) {s.Label}")) + "\n\n";
        return names + ColumnTable.Text(["", .. result.SetUps.Select((s, i) => fits ? s.Label : $"({i + 1})"), "the largest difference"], rows);
    }

    private static string Most(CompareResult result, CompareMeasure measure) => CompareWords.Verdict(CompareWords.Strongest(result.Differences.Where(d => d.Measure == measure)));

    private static void AppendPair(StringBuilder text, CompareResult result, int a, int b, CompareNumbers numbers)
    {
        text.Append('\n').Append("From ").Append(result.SetUps[a].Label).Append(" to ").Append(result.SetUps[b].Label).Append('\n');
        Difference[] all = [.. result.Between(a, b)];
        foreach (CompareVerdict verdict in (CompareVerdict[])[CompareVerdict.Will, CompareVerdict.May, CompareVerdict.Unknown])
        {
            foreach (Difference d in all.Where(d => d.Verdict == verdict))
            {
                text.AppendWrapped($"{CompareWords.Verdict(verdict)}: {MeasureWords.Of(d.Measure).Row} {numbers.Change(d)}: {CompareReasons.Of(result, d, numbers)}", Indent);
            }
        }

        Difference[] same = [.. all.Where(CompareReasons.IsSame)], not = [.. all.Where(d => d.Verdict == CompareVerdict.WillNot).Except(same)];
        if (not.Length > 0)
        {
            text.AppendWrapped($"{CompareWords.Verdict(CompareVerdict.WillNot)}: {string.Join("; ", not.Select(d => $"{MeasureWords.Of(d.Measure).Row} {numbers.Change(d)}"))}", Indent);
        }

        if (same.Length > 0)
        {
            text.AppendWrapped($"the same in both: {string.Join("; ", same.Select(d => MeasureWords.Of(d.Measure).Row))}", Indent);
        }
    }

    private static void Explain(StringBuilder text, CompareResult result)
    {
        ComparePlan plan = result.Plan;
        text.AppendWrapped(
            $"Values are means over draws of the guesses, the same luck for all: {plan.CastDraws} of the casts and the rod, {plan.WalkDraws} retrieves at each one's own rhythm, {plan.WindowDraws} searches for rhythms. "
            + "In brackets: eight of ten draws. Two rods are taken as made alike, so a guess about one is the same guess about the other; rods of different make may differ by more.");
        text.AppendWrapped("What people tell apart is a table of guesses with sources, in docs/compare.md; reasons for what you will not notice are in compare.csv.");
    }
}
