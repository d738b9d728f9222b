using LureSim.Model.Retrieve;
using LureSim.Reports.Cadence;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Page;

namespace LureSim.Reports.Page;

/// <summary>The retrieves of a page in numbers, side by side.</summary>
internal static class NumberTable
{
    private static readonly (string Name, ShownQuantity Quantity, Func<RetrieveSummary, double> Value)[] Measured =
    [
        ("width of the path", ShownQuantity.Size, s => s.WidthM),
        ("glide to the side a twitch", ShownQuantity.Size, s => s.GlideWidthM),
        ("nearer a twitch", ShownQuantity.Size, s => s.AdvancePerTwitchM),
        ("slack, mean", ShownQuantity.Size, s => s.MeanSlackM),
        ("travel of the loaded rod tip", ShownQuantity.Size, s => s.LoadedTipTravelM),
        ("pull at the nose, peak", ShownQuantity.Pull, s => s.NoseTensionPeakN),
        ("pull at the rod tip, peak", ShownQuantity.Pull, s => s.TipForcePeakN),
        ("drag on the line, mean", ShownQuantity.Pull, s => s.LineDragMeanN),
        ("wetted line, mean", ShownQuantity.Distance, s => s.WettedLineM),
        ("deepest dip of the nose", ShownQuantity.Size, s => s.NoseDipM),
        ("weight on the wrist, peak", ShownQuantity.Torque, s => s.WristTorquePeakNm),
    ];

    /// <summary>The section.</summary>
    /// <param name="page">Page.</param>
    public static Markup Section(PageContext page)
    {
        PageRun[] runs = [.. page.Result.Runs.Where(r => r.Result is not null)];
        return runs.Length == 0 ? default : StorySections.Section("numbers", runs.Length == 1 ? "The run in numbers" : "The runs in numbers", Table(page, runs));
    }

    private static Markup Table(PageContext page, PageRun[] runs)
    {
        Markup[] heads = ["", .. runs.Select(page.NameOf)];
        Markup table = HtmlTable.Of(heads,
        [
            ["what it does", .. runs.Select(r => HtmlTable.Cell(PatternClasses.Name(r.Result!.Summary.Pattern), Trouble(r)))],
            ["swing from side to side", .. runs.Select(r => HtmlTable.Cell($"{Trade.Fixed(r.Result!.Summary.HeadingSwingDeg, 0)} deg", $"{Trade.Fixed(100.0 * r.Result.Summary.FlipShare, 0)} % of twitches change sides"))],
            ["line slack at the nose", .. runs.Select(r => HtmlTable.Cell($"{Trade.Fixed(100.0 * r.Result!.Summary.SlackShare, 0)} % of the time", ""))],
            ["nose travel over the stroke", .. runs.Select(r => HtmlTable.Cell($"{Trade.Digits(r.Result!.Summary.PullReach)} times", ""))],
            .. Measured.Select(m => (Markup[])[m.Name, .. runs.Select(r => HtmlTable.Cell(page.Shown, m.Quantity, m.Value(r.Result!.Summary)))]),
            ["pitch", .. runs.Select(r => HtmlTable.Cell($"{Trade.Fixed(r.Result!.Summary.PitchLowDeg, 0)} to {Trade.Fixed(r.Result.Summary.PitchHighDeg, 0)} deg", $"at rest {Trade.Fixed(r.Result.Summary.RestTrimDeg, 0)} deg"))],
            ["roll", .. runs.Select(r => HtmlTable.Cell($"up to {Trade.Fixed(r.Result!.Summary.RollPeakDeg, 0)} deg", ""))],
        ]);
        return Markup.Of(table, Markup.Tag("p", "key", "Wetted line: line in the water, counted by the share of it that is wet; line under the surface counts in full, line that floats about half."));
    }

    private static string Trouble(PageRun run) => run.Failure is null ? $"{run.Result!.Summary.TwitchesCounted} twitches counted" : "stopped early";
}
