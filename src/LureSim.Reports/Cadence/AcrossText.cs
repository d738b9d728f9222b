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
        text.Append(result.Title).Append("\nacross ").Append(string.Join(" and ", result.Keys.Select(k => k.Title.Split(',')[0]))).Append("\n\n");
        foreach (string sentence in Sentences(result, notes.Shown))
        {
            text.AppendWrapped(sentence);
        }

        text.Append('\n').Append(Table(result, notes.Shown)).Append('\n');
        text.AppendWrapped("Wrist: percent of what it is guessed to keep up. Nose: load down on it by line and leader.");
        string? failures = result.Cases.Select(Failure).FirstOrDefault(f => f is not null);
        text.AppendNotes(notes.After(failures));
        return text.ToString();
    }

    /// <summary>Who walks slowest, who glides widest, who asks most of the wrist.</summary>
    /// <param name="result">Rhythms of many set-ups.</param>
    /// <param name="shown">Units.</param>
    public static IReadOnlyList<string> Sentences(AcrossResult result, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(shown);
        AcrossCase[] walking = [.. result.Cases.Where(c => c.Result?.BestPoint is not null)];
        string[] silent = [.. result.Cases.Where(c => c.Result is { BestPoint: null }).Select(c => c.Label)];
        var sentences = new List<string>();
        if (walking.Length > 0)
        {
            sentences.Add("The slowest rhythm that walks is " + Ends(walking, c => c.Result!.Windows[0].FromPerS, CadenceStory.Rate, c => c.Result!.Windows[0].FromIsRangeEnd ? " or less" : "") + " a second.");
            sentences.Add("At its best rhythm a twitch takes the lure " + Ends(walking, c => c.Result!.BestPoint!.Median(o => o.GlideWidthM), shown.Size) + " across.");
            sentences.Add("There the wrist works at " + Ends(walking, WristShare, share => $"{Trade.Fixed(100.0 * share, 0)} %") + " of what it is guessed to keep up.");
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

    private static double WristShare(AcrossCase c) => c.Result!.BestPoint!.Median(o => o.WristTorqueRmsNm) / c.Result.Torque.Nm;

    private static string Table(AcrossResult result, Shown shown)
    {
        RhythmPoint[] best = [.. result.Cases.Select(c => c.Result?.BestPoint).OfType<RhythmPoint>()];
        double Largest(Func<Model.Retrieve.RetrieveSummary, double> of) => best.Select(p => Math.Abs(p.Median(of))).DefaultIfEmpty(0.0).Max();
        double widest = result.Cases.Select(c => c.Result?.Widest?.Median(o => o.GlideWidthM) ?? 0.0).Max();
        ShownUnit glide = shown.Unit(ShownQuantity.Size, widest), load = shown.Unit(ShownQuantity.Pull, Largest(o => o.NoseDownLoadN)), dip = shown.Unit(ShownQuantity.Size, Largest(o => o.NoseDipM));
        string Size(double m, ShownUnit unit, double largest) => Trade.Fixed(unit.Of(m), unit.Places(largest));
        string Load(double n) => load.Digits(n) is "0" ? "none" : load.Digits(n);
        string[] Row(AcrossCase c) => c.Result is not CadenceResult r ? [c.Label, "failed"] : r.BestPoint is not RhythmPoint point ? [c.Label, "never"] :
        [
            c.Label, CadenceStory.Rate(point.PerS), Size(point.Median(o => o.GlideWidthM), glide, widest), Size(r.Widest!.Median(o => o.GlideWidthM), glide, widest),
            Trade.Fixed(point.Median(o => o.HeadingSwingDeg), 0), CadenceStory.WristShare(r, point), Load(point.Median(o => o.NoseDownLoadN)),
            Size(point.Median(o => o.NoseDipM), dip, Largest(o => o.NoseDipM)), string.Join(", ", r.Windows.Select(Window)),
        ];
        return ColumnTable.Text(
            ["", "best, /s", $"glide, {glide.Name}", $"widest, {glide.Name}", "swing, deg", "wrist", $"nose, {load.Name}", $"dip, {dip.Name}", "walks, /s"], [.. result.Cases.Select(Row)]);
    }

    private static string Window(CadenceWindow w) =>
        $"{(w.FromIsRangeEnd ? "<=" : "")}{CadenceStory.Rate(w.FromPerS)}..{(w.ToIsRangeEnd ? ">=" : "")}{CadenceStory.Rate(w.ToPerS)}";
}
