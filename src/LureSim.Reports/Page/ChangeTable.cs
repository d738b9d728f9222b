using LureSim.Model.Retrieve;
using LureSim.Reports.Cadence;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Page;

namespace LureSim.Reports.Page;

/// <summary>Other lines, leaders or rods beside each other.</summary>
internal static class ChangeTable
{
    /// <summary>The table.</summary>
    /// <param name="changes">Runs of one group.</param>
    /// <param name="shown">Units.</param>
    public static Markup Of(IReadOnlyList<PageChange> changes, Shown shown) => HtmlTable.Of(
        ["", "answer", "swing", "glide a twitch", "nearer a twitch", "wetted line", "pull at the nose, peak"],
        [.. changes.Select(c => (Markup[])[c.IsOwn ? Markup.Of(c.Label, Markup.Tag("em", "own", " this set-up")) : c.Label, .. Cells(c, shown)])]);

    private static Markup[] Cells(PageChange c, Shown shown) => c.Outcome.Summary is not RetrieveSummary s
        ? ["no answer: the model stopped", "-", "-", "-", "-", "-"]
        :
        [
            PatternClasses.Name(s.Pattern), $"{Trade.Fixed(s.HeadingSwingDeg, 0)} deg", HtmlTable.Cell(shown, ShownQuantity.Size, s.GlideWidthM), HtmlTable.Cell(shown, ShownQuantity.Size, s.AdvancePerTwitchM),
            HtmlTable.Cell(shown, ShownQuantity.Distance, s.WettedLineM), HtmlTable.Cell(shown, ShownQuantity.Pull, s.NoseTensionPeakN),
        ];
}
