using System.Text;
using LureSim.Model.Crawl;
using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Doubt;

namespace LureSim.Reports.Crawl;

/// <summary>A crawl for the terminal.</summary>
public static class CrawlText
{
    private const double SeenShare = 0.005;

    /// <summary>Title, table, sentences, bands, warnings and caution, each line ended by a line feed.</summary>
    /// <param name="crawl">Crawl, whole or stopped.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="doubt">What the guesses may change, or null.</param>
    public static string Build(CrawlResult crawl, RunNotes notes, DoubtStudy? doubt = null)
    {
        ArgumentNullException.ThrowIfNull(crawl);
        ArgumentNullException.ThrowIfNull(notes);
        var text = new StringBuilder();
        text.Append(crawl.Setup.Title).Append("\n\n").Append(AlignedTable.Text([.. Rows(crawl, notes.Shown)])).Append('\n');
        if (crawl.Failure is not null)
        {
            text.AppendWrapped("STOPPED EARLY: " + crawl.Failure);
        }

        foreach (string sentence in (string[])[CrawlWords.End(crawl, notes.Shown) + ".", Starts(crawl, notes.Shown), Plants(crawl, notes.Shown), Hops(crawl.Summary, notes.Shown), Unknown, FliesBack])
        {
            text.AppendWrapped(sentence);
        }

        text.Append('\n');
        text.Append(doubt is null ? "" : DoubtText.Build(doubt, notes.Shown));
        text.AppendNotes(notes, "crawl.json");
        return text.ToString();
    }

    private const string Unknown = "Nobody has published how plants hold a lure or a line: friction, hold, turn and stiffness (cover.*) are guesses, and a hold twice as strong may stop it.";

    private const string FliesBack = "A lure that comes loose from plants under a bent rod flies back, hooks first: keep faces out of its line.";

    private static IEnumerable<TableRow> Rows(CrawlResult c, Shown shown) =>
    [
        shown.Row("way per twitch", ShownQuantity.Size, c.Summary.WayPerTwitchM),
        new("of the stroke", $"{Trade.Fixed(100.0 * c.Summary.StrokeShare, 0)} %", $"stroke {shown.Size(c.Task.StrokeM)}"),
        shown.Row("speed of the crawl", ShownQuantity.Speed, c.Summary.SpeedMS),
        new("twitches lost", $"{c.Summary.LostTwitches} of {c.Summary.Twitches.Count}", "moved by less than a tenth of the stroke"),
        Pull("pull that starts it", c.Statics.PullN, shown),
        Pull("pull while it moves, mean", c.Summary.MovingPullN, shown),
        Pull("lure pull, peak", c.Summary.NosePullPeakN, shown),
        Pull("rod tip pull, peak", c.Summary.TipPullPeakN, shown),
        Pull("plants on the line, peak", c.Summary.PlantsPeakN, shown),
    ];

    private static TableRow Pull(string name, double n, Shown shown) => n > 0.0 ? shown.Row(name, ShownQuantity.Pull, n) : new(name, "none", string.Empty);

    private static string Starts(CrawlResult c, Shown shown)
    {
        CrawlStatics s = c.Statics;
        string angle = $"The line comes in {Trade.Fixed(s.LineAngleRad * 180.0 / Math.PI, 1)} deg over the level: {shown.Pull(s.PullN)} at the lure, {Trade.Fixed(100.0 * s.PullN / s.WeightN, 0)} % of its weight, start it and keep it going.";
        string tip = s.TipPullN > s.PullN * (1.0 + SeenShare) ? $" With all line over the plants lying on them the tip must pull {shown.Pull(s.TipPullN)}; what the rod lifts off costs nothing." : "";
        string eaten = $"{shown.Size(s.StretchM)} of stretch and {shown.Size(s.RodGiveM)} of rod bend";
        return double.IsFinite(s.LeastStrokeM)
            ? $"{angle}{tip} That takes {eaten}, so that a slow stroke of less than {shown.Size(s.LeastStrokeM)} moves nothing even from a tight line; a quick one may, since tip and line swing past."
            : $"{angle}{tip} That takes {eaten}, and the rod points so that its stroke draws no line at all.";
    }

    private static string Plants(CrawlResult c, Shown shown) => c.Summary.PlantsPeakN <= 0.0
        ? "No line lies on plants."
        : $"Plants hold the line with up to {shown.Pull(c.Summary.PlantsPeakN)}; of the pull at the tip {Trade.Fixed(100.0 * c.Summary.PullShare, 0)} % come to the lure (mean of the highest in each twitch).";

    private static string Hops(CrawlSummary s, Shown shown) => s.OffShare < SeenShare
        ? "It stays on the plants."
        : $"Twitches throw it off the plants for {Trade.Fixed(100.0 * s.OffShare, 0)} % of the time, up to {shown.Size(s.HopM)} high.";
}
