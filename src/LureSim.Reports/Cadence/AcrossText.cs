using System.Text;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cadence;

namespace LureSim.Reports.Cadence;

/// <summary>What a person reads at the terminal about the rhythms of many set-ups.</summary>
public static class AcrossText
{
    /// <summary>Title, sentences, table, warnings and caution, each line ended by a line feed.</summary>
    /// <param name="result">Rhythms of many set-ups.</param>
    /// <param name="notes">Warnings and guesses.</param>
    public static string Build(AcrossResult result, RunNotes notes)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(notes);
        var text = new StringBuilder();
        text.Append(result.Title).Append("\nacross ").Append(string.Join(" and ", result.Keys.Select(k => k.Title))).Append("\n\n");
        foreach (string sentence in Sentences(result))
        {
            text.AppendWrapped(sentence);
        }

        text.Append('\n').Append(Table(result)).Append('\n');
        string? failures = result.Cases.Select(Failure).FirstOrDefault(f => f is not null);
        text.AppendNotes(notes.After(failures));
        return text.ToString();
    }

    /// <summary>Who walks slowest, who glides widest, who asks most of the wrist.</summary>
    /// <param name="result">Rhythms of many set-ups.</param>
    public static IReadOnlyList<string> Sentences(AcrossResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        AcrossCase[] walking = [.. result.Cases.Where(c => c.Result?.BestPoint is not null)];
        string[] silent = [.. result.Cases.Where(c => c.Result is { BestPoint: null }).Select(c => c.Label)];
        var sentences = new List<string>();
        if (walking.Length > 0)
        {
            sentences.Add("The slowest rhythm that walks is " + Ends(walking, c => c.Result!.Windows[0].FromPerS, CadenceStory.Rate, c => c.Result!.Windows[0].FromIsRangeEnd ? " or less" : "") + " a second.");
            sentences.Add("At its best rhythm a twitch takes the lure " + Ends(walking, c => c.Result!.BestPoint!.Median(o => o.GlideWidthM), Trade.Length) + " across.");
            sentences.Add("The wrist works there with " + Ends(walking, c => c.Result!.BestPoint!.Median(o => o.WristTorqueRmsNm), Trade.Digits) + " newton metres.");
        }

        if (silent.Length > 0)
        {
            sentences.Add($"None of the rhythms tried walks with: {string.Join("; ", silent)}.");
        }

        return sentences;
    }

    private static string? Failure(AcrossCase setUp) =>
        (setUp.Failure ?? setUp.Result!.Failures) is string reason ? $"{setUp.Label}: {reason}" : null;

    private static string Ends(AcrossCase[] cases, Func<AcrossCase, double> value, Func<double, string> write, Func<AcrossCase, string>? remark = null)
    {
        AcrossCase low = cases.MinBy(value)!, high = cases.MaxBy(value)!;
        string least = write(value(low)) + remark?.Invoke(low), most = write(value(high)) + remark?.Invoke(high);
        return least == most ? $"{least} with all of them" : $"{least} ({low.Label}) to {most} ({high.Label})";
    }

    private static string Table(AcrossResult result)
    {
        int label = Math.Max(8, result.Cases.Max(c => c.Label.Length)) + 2;
        string indent = new(' ', label + 2);
        var text = new StringBuilder()
            .Append(indent).Append("walks              best  glide  widest  swing  wrist  nose   dip\n")
            .Append(indent).Append("/s                   /s     cm      cm    deg    N m    mN    mm\n");
        foreach (AcrossCase c in result.Cases)
        {
            text.Append("  ").Append(c.Label.PadRight(label));
            text.Append(c.Result is CadenceResult r ? Row(r) : "failed").Append('\n');
        }

        return text.ToString();
    }

    private static string Row(CadenceResult r)
    {
        string windows = string.Join(", ", r.Windows.Select(Window));
        if (r.BestPoint is not RhythmPoint best)
        {
            return "never";
        }

        return windows.PadRight(16) + CadenceStory.Rate(best.PerS).PadLeft(7) + Cell(100.0 * best.Median(o => o.GlideWidthM), 1, 7)
            + Cell(100.0 * r.Widest!.Median(o => o.GlideWidthM), 1, 8) + Cell(best.Median(o => o.HeadingSwingDeg), 0, 7) + Cell(best.Median(o => o.WristTorqueRmsNm), 2, 7)
            + Cell(1000.0 * best.Median(o => o.NoseDownLoadN), 1, 6) + Cell(1000.0 * best.Median(o => o.NoseDipM), 1, 6);
    }

    private static string Window(CadenceWindow w) =>
        $"{(w.FromIsRangeEnd ? "<=" : "")}{CadenceStory.Rate(w.FromPerS)} to {(w.ToIsRangeEnd ? ">=" : "")}{CadenceStory.Rate(w.ToPerS)}";

    private static string Cell(double value, int places, int width) => Trade.Fixed(value, places).PadLeft(width);
}
