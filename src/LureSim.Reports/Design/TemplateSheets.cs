using LureSim.Model.Trim;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Plans;
using LureSim.Reports.Kit.Text;
using static LureSim.Reports.Design.TemplatePens;

namespace LureSim.Reports.Design;

/// <summary>
/// Templates to lay on a blank: both views of a lure at true scale with its holes, hangers and tie, and two bars that tell whether a printer kept
/// the scale. One sheet as large as it must be, or pages of a paper that are laid on each other where the lure is longer.
/// </summary>
public static class TemplateSheets
{
    private const double Margin = 10.0, Header = 15.0, Footer = 19.0, Overlap = 10.0, LeastWidth = 190.0;

    /// <summary>One sheet as large as the lure asks for.</summary>
    /// <param name="title">Title of the scenario; any text.</param>
    /// <param name="trim">Lure at rest.</param>
    /// <param name="shown">Units of the draft; lengths and masses of the workshop are metric and in inches and ounces always.</param>
    public static PlanSheet Whole(string title, TrimResult trim, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(shown);
        var template = new Parts(title, trim);
        double width = Math.Max(LeastWidth, template.Views.WidthMm);
        PlanBlock keys = TemplateWords.Keys(trim, template.Marks, width, shown);
        double end = Margin + Header + template.Views.HeightMm + keys.HeightMm;
        return new(
            width + (2.0 * Margin), end + Footer + Margin,
            [.. Frame(template, width, end, null), .. template.Views.At(Margin, Margin + Header), .. keys.At(Margin, Margin + Header + template.Views.HeightMm)]);
    }

    /// <summary>Pages of a paper.</summary>
    /// <param name="title">Title of the scenario; any text.</param>
    /// <param name="trim">Lure at rest.</param>
    /// <param name="paper">Paper.</param>
    /// <param name="shown">Units of the draft; lengths and masses of the workshop are metric and in inches and ounces always.</param>
    public static IReadOnlyList<PlanSheet> Pages(string title, TrimResult trim, PaperSize paper, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(paper);
        ArgumentNullException.ThrowIfNull(shown);
        var template = new Parts(title, trim);
        double width = paper.WidthMm - (2.0 * Margin), height = paper.HeightMm - (2.0 * Margin) - Header - Footer;
        PlanBlock keys = TemplateWords.Keys(trim, template.Marks, width, shown);
        int across = Count(template.Views.WidthMm, width), down = Count(template.Views.HeightMm, height);
        bool beside = down == 1 && template.Views.HeightMm + keys.HeightMm <= height;
        int pages = (across * down) + (beside ? 0 : 1);
        var sheets = new List<PlanSheet>();
        for (int i = 0; i < across * down; i++)
        {
            int column = i % across, row = i / across;
            var from = new PlanPoint(column * (width - Overlap), row * (height - Overlap));
            double seen = Math.Min(height, template.Views.HeightMm - from.Y);
            List<PlanItem> items = [.. Frame(template, width, Margin + Header + height, (i + 1, pages)), template.Views.Part(new(Margin, Margin + Header), width, seen, from)];
            items.AddRange(Joins(column, across, row, down, width, height, seen));
            if (i == 0 && beside)
            {
                items.AddRange(keys.At(Margin, Margin + Header + template.Views.HeightMm));
            }

            sheets.Add(new(paper.WidthMm, paper.HeightMm, items));
        }

        if (!beside)
        {
            sheets.Add(new(paper.WidthMm, paper.HeightMm, [.. Frame(template, width, Margin + Header + height, (pages, pages)), .. keys.At(Margin, Margin + Header)]));
        }

        return sheets;
    }

    private static int Count(double all, double one) => all <= one ? 1 : (int)Math.Ceiling((all - Overlap) / (one - Overlap));

    // Title, what it is, bars.
    private static List<PlanItem> Frame(Parts t, double width, double footer, (int Number, int Of)? page)
    {
        string number = page is (int n, int of) && of > 1 ? $"page {n} of {of}: lay the dashed joins on each other" : "";
        double room = width - (FontMetrics.For(0.0).Width(number) * Text) - 4.0;
        return
        [
            Words(Margin, Margin + 4.0, TextFit.Wrap(t.Title, 4.6, FontFile.BoldFrom, room, 1), 4.6, bold: true),
            Words(Margin + width, Margin + 4.0, number, anchor: PlanAnchor.End),
            Words(Margin, Margin + 4.0 + (1.4 * Pitch), TextFit.Wrap(TemplateWords.About(t.Trim, t.Body), Text, 0.0, width, 1)),
            .. TemplateBars.Build(Margin, footer),
        ];
    }

    private static IEnumerable<PlanItem> Joins(int column, int across, int row, int down, double width, double height, double seen)
    {
        const double left = Margin, top = Margin + Header, half = 0.5 * Overlap;
        if (column > 0)
        {
            yield return PlanPath.Line("join-before", left + half, top, left + half, top + seen, Join);
        }

        if (column < across - 1)
        {
            yield return PlanPath.Line("join-after", left + width - half, top, left + width - half, top + seen, Join);
        }

        if (row > 0)
        {
            yield return PlanPath.Line("join-over", left, top + half, left + width, top + half, Join);
        }

        if (row < down - 1)
        {
            yield return PlanPath.Line("join-under", left, top + height - half, left + width, top + height - half, Join);
        }
    }

    private sealed class Parts
    {
        public Parts(string title, TrimResult trim)
        {
            ArgumentNullException.ThrowIfNull(trim);
            (Title, Trim, Body) = (title, trim, new(trim.Lure));
            Marks = TemplateMark.Of(trim.Lure, Body);
            Views = TemplateViews.Build(trim, Body, Marks);
        }

        public string Title { get; }

        public TrimResult Trim { get; }

        public TemplateBody Body { get; }

        public IReadOnlyList<TemplateMark> Marks { get; }

        public PlanBlock Views { get; }
    }
}
