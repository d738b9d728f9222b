using System.Text;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Measured;
using LureSim.Studies.Fit;

namespace LureSim.Reports.Fit;

/// <summary>A fit for the terminal.</summary>
public static class FitText
{
    private const string Caution =
        "Care: hooks off or covered, no lure pulled or pushed toward a face, nobody alone beside deep water, no mains electricity near it. This is a model; measure before you trust it.";

    private const int MostOdd = 5;

    /// <summary>Title, tables, sentences and caution, each line ended by a line feed.</summary>
    /// <param name="report">Fit.</param>
    /// <param name="shown">How quantities are told.</param>
    /// <param name="parts">Overrides that use the parts that were written; none where none were.</param>
    public static string Build(FitReport report, Shown shown, IReadOnlyList<string> parts)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(shown);
        var text = new StringBuilder();
        text.Append(report.File.Title).Append(", measured; lure: ").Append(report.Scenario.Setup!.Title).Append("\n\n");
        text.Append(ColumnTable.Text(
            ["number", "before, 80 of 100", "best", "now, 80 of 100", "your data"],
            [.. report.Values.Select(v => Row(v, shown))])).Append('\n');
        text.Append(ColumnTable.Text(["test", "hooks", "readings", "off by, in their errors", "farthest"], [.. Tests(report)])).Append('\n');
        foreach (string sentence in (string[])[Whole(report), .. Notes(report, shown), .. Walks(report), .. Together(report), .. Open(report, shown)])
        {
            text.AppendWrapped(sentence);
        }

        if (parts.Count > 0)
        {
            string tables = string.Join(" and ", parts.Select(p => $"base = \"{p[(p.IndexOf('=', StringComparison.Ordinal) + 1)..]}\" in table [{p[..p.IndexOf('=', StringComparison.Ordinal)]}]"));
            text.AppendWrapped($"To use it: {string.Join(" ", parts.Select(p => $"--set {p}"))}, or {tables} of a scenario. It holds only what your data tell, with ranges, so --doubt and comparisons draw from them.");
        }

        text.Append('\n');
        text.AppendWrapped(Caution);
        return text.ToString();
    }

    /// <summary>Why there is no result: nothing was told, and what would be, in one line.</summary>
    /// <param name="report">Fit that told nothing.</param>
    public static string Nothing(FitReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        FitAdvice[] tests = [.. report.Next.Select(n => n.Test).OfType<FitAdvice>().Distinct()];
        string would = tests.Length > 0 ? $"; what would: {string.Join("; ", tests.Select(FitWording.Order))}" : "";
        return $"its {report.Rows.Count} readings tell nothing of this lure that was not known before{would}";
    }

    /// <summary>What does not fit or scatters more than said, a sentence each; also the warnings of the JSON.</summary>
    /// <param name="report">Fit.</param>
    /// <param name="shown">How quantities are told.</param>
    public static IEnumerable<string> Notes(FitReport report, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(shown);
        if (report.ErrorScale > 1.0)
        {
            yield return $"Note: the readings scatter {Trade.Digits(report.ErrorScale, 2)} times as much as their errors say, beyond chance; every band is that much wider.";
        }

        FitRowResult[] odd = [.. report.Odd];
        foreach (FitRowResult row in odd.Take(MostOdd))
        {
            yield return $"Note: {row.Reading.Place}: {FitWording.Name(row.Reading.Quantity)} {FitWording.Show(row.Reading, row.Reading.Measured, shown)} does not fit the others, which make it about "
                + $"{FitWording.Show(row.Reading, row.Computed, shown)} ({Trade.Fixed(row.Surprise, 0)} of its errors off): read or typed wrong? It is left in.";
        }

        if (odd.Length > MostOdd)
        {
            yield return $"Note: {odd.Length - MostOdd} more readings do not fit; fit_measured.csv holds them all.";
        }

        if (report.Held.Count > 0)
        {
            yield return $"Held at their value, since in your data they look just like lure.axial_drag_factor or not at all: {Trade.And([.. report.Held.Select(h => h.Name)])}. The axial factor stands for all of them.";
        }

        foreach (FitEstimate value in report.Values.Where(v => v.IsTold && !v.Unknown.IsOfHand && v.Unknown.Key is { } key && (v.Value < key.Low || v.Value > key.High)))
        {
            yield return $"Note: {FitWording.Name(value.Unknown)} comes out at {FitWording.Show(value.Unknown, value.Value, shown)}, outside of the range that was guessed. Worth a second look at the tests, and at the scenario: length, mass, places of ballast and hooks.";
        }
    }

    private static string[] Row(FitEstimate v, Shown shown) =>
    [
        v.Unknown.Name, FitWording.Range(v.Unknown, v.BeforeLow, v.BeforeHigh, shown), v.IsTold ? FitWording.Show(v.Unknown, v.Value, shown) : "",
        v.IsTold ? FitWording.Range(v.Unknown, v.Low, v.High, shown) : "", FitWording.Verdict(v),
    ];

    private static IEnumerable<string[]> Tests(FitReport report) => report.Rows.GroupBy(r => (r.Reading.Test, r.Reading.HooksOn)).Select(g => (string[])
    [
        FitWording.Tests(g.Key.Test), g.Key.Test == FitKind.Bowl ? "" : g.Key.HooksOn ? "on" : "off", Trade.Fixed(g.Count(), 0), Trade.Fixed(Math.Sqrt(g.Average(r => r.Miss * r.Miss)), 2),
        $"{Trade.Fixed(g.Max(r => r.Surprise), 1)} at {Place(g.MaxBy(r => r.Surprise)!.Reading.Place)}",
    ]);

    private static string Place(string place) => Path.GetFileName(place);

    private static string Whole(FitReport report) =>
        $"{report.Rows.Count} readings, of which {report.Counted} say something of the lure. Squares of their misses, in errors, sum to {Trade.Fixed(report.Square, 0)}; about {Trade.Fixed(report.Free, 0)} "
        + $"(give or take {Trade.Fixed(Math.Sqrt(2.0 * report.Free), 0)}) are due by chance.";

    private static IEnumerable<string> Walks(FitReport report)
    {
        if (report.Walks is not FitWalks walks)
        {
            yield break;
        }

        if (walks.Films.Count > 0)
        {
            yield return $"Walks on film: {Trade.And([.. walks.Films.Select(f => $"{Trade.Fixed(f.RhythmPerS, 2)} twitches a second over {Trade.Fixed(f.Pairs, 1)} pairs ({Place(f.Place)})")])}.";
        }

        yield return $"Stroke and slack are what the hand must do with this rod and line so that the lure walks like that. They rest on guesses that stay at their value here: {Trade.And([.. walks.RestsOn])}.";
    }

    private static IEnumerable<string> Together(FitReport report)
    {
        foreach (FitPair pair in report.Pairs.Where(p => IsTold(report, p.One) || IsTold(report, p.Other)))
        {
            string with = pair.Correlation > 0.0 ? "more" : "less";
            yield return $"Told together rather than each alone: more {pair.One.Name} with {with} {pair.Other.Name} fits nearly as well.";
        }
    }

    private static bool IsTold(FitReport report, FitUnknown unknown) => report.Values.Any(v => v.Unknown == unknown && v.IsTold);

    private static IEnumerable<string> Open(FitReport report, Shown shown)
    {
        foreach (IGrouping<FitAdvice, FitNext> next in report.Next.Where(n => n.Test is not null).GroupBy(n => n.Test!.Value))
        {
            string[] what = [.. next.Select(n => $"{n.Unknown.Name} (then about {FitWording.Range(n.Unknown, n.Low, n.High, shown)})")];
            yield return $"Your data cannot tell {Trade.And(what)}; {FitWording.Order(next.Key)} would.";
        }

        string[] hopeless = [.. report.Next.Where(n => n.Test is null).Select(n => n.Unknown.Name)];
        if (hopeless.Length > 0)
        {
            yield return $"Your data cannot tell {Trade.And(hopeless)}, and no test of the protocol that is missing here would.";
        }
    }
}
