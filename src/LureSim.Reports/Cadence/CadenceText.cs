using System.Text;
using LureSim.Model.Retrieve;
using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cadence;
using LureSim.Studies.Doubt;

namespace LureSim.Reports.Cadence;

/// <summary>What a person reads at the terminal about rhythms.</summary>
public static class CadenceText
{
    /// <summary>Title, sentences, table, warnings and caution, each line ended by a line feed.</summary>
    /// <param name="result">Rhythms of one set-up.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="doubt">What the guesses may change, or null.</param>
    public static string Build(CadenceResult result, RunNotes notes, DoubtStudy? doubt = null)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(notes);
        var text = new StringBuilder();
        text.Append(result.Setup.Title).Append("\n\n");
        foreach (string sentence in CadenceStory.Sentences(result, notes.Shown))
        {
            text.AppendWrapped(sentence);
        }

        text.Append('\n').Append(Table(result, notes.Shown)).Append('\n');
        if (result.Points.Any(p => p.DependsOnStart))
        {
            text.AppendWrapped("* depends on how it starts: some starts alternate, others do not.");
        }

        if (result.Points.Any(p => IsLasting(result, p)))
        {
            string best = result.BestPoint is RhythmPoint b && result.MayHangOnHand(b) ? " The best rhythm is one of those: a little faster is surer." : "";
            text.AppendWrapped($"+ close above a slow edge: it may hang on how fast the hand reeled before whether a walk sets in, and one may be lost later than the runs end.{best}");
        }

        text.AppendWrapped("Wrist: what the rhythm asks of it, as a share of what it is guessed to keep up (angler.sustained_torque).");
        text.AppendWrapped($"The free rod tip swings {Trade.Digits(result.TipFrequencyHz)} times a second, which helps some rhythms and fights others (docs/cadence.md).");
        text.Append(doubt is null ? "" : "\n" + DoubtText.Build(doubt, notes.Shown));
        text.AppendNotes(notes.After(result.Failures));
        return text.ToString();
    }

    private static string Table(CadenceResult result, Shown shown)
    {
        double widest = result.Points.Select(p => p.Median(o => o.GlideWidthM)).Where(double.IsFinite).DefaultIfEmpty(0.0).Max();
        ShownUnit[] glide = shown.Units(ShownQuantity.Size, widest);
        var text = new StringBuilder("  twitches/s  pattern      starts");
        Array.ForEach(glide, u => text.Append($"glide {u.Name}".PadLeft(10)));
        text.Append("  swing deg  regular  reach  wrist\n");
        foreach (RhythmPoint p in result.Points)
        {
            text.Append("  ").Append(CadenceStory.Rate(p.PerS).PadLeft(10)).Append("  ");
            text.Append((p.Pattern is null ? "failed" : RetrieveFigures.Name(p.Pattern.Value) + Mark(result, p)).PadRight(12));
            text.Append((Trade.Fixed(100.0 * p.LockShare, 0) + " %").PadLeft(7));
            Array.ForEach(glide, u => text.Append(Number(u.Of(p.Median(o => o.GlideWidthM)), u.Places(widest), 10)));
            text.Append(Number(p.Median(o => o.HeadingSwingDeg), 0, 11)).Append(Number(p.Median(o => o.Regularity), 2, 9)).Append(Number(p.Median(o => o.PullReach), 2, 7));
            text.Append(CadenceStory.WristShare(result, p).PadLeft(7)).Append('\n');
        }

        return text.ToString();
    }

    private static string Mark(CadenceResult result, RhythmPoint point) => point.DependsOnStart ? "*" : IsLasting(result, point) ? "+" : "";

    private static bool IsLasting(CadenceResult result, RhythmPoint point) => result.MayHangOnHand(point) && !point.DependsOnStart;

    private static string Number(double value, int places, int width) =>
        (double.IsNaN(value) ? "-" : Trade.Fixed(value, places)).PadLeft(width);
}
