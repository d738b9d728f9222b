using LureSim.Model.Trim;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Plans;
using LureSim.Reports.Kit.Text;

namespace LureSim.Reports.Design;

/// <summary>Templates as files: one SVG, and a PDF for either paper. The PDF is drawn by Skia, as pixel pictures are, and comes where those are wanted.</summary>
public static class TemplateFiles
{
    /// <summary>Stages the templates.</summary>
    /// <param name="folder">Receives the files.</param>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="trim">Lure at rest.</param>
    /// <param name="plots">Which kinds of pictures are wanted.</param>
    /// <param name="shown">Units of the draft.</param>
    public static void Add(OutputFolder folder, string title, TrimResult trim, PlotFormat plots, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(folder);
        if (plots is PlotFormat.Svg or PlotFormat.Both)
        {
            folder.Add("template.svg", PlanSvg.Write(TemplateSheets.Whole(title, trim, shown), title));
        }

        if (plots is PlotFormat.Png or PlotFormat.Both)
        {
            foreach (PaperSize paper in (PaperSize[])[PaperSize.A4, PaperSize.Letter])
            {
                folder.Add($"template_{paper.Name}.pdf", PlanPdf.Write(TemplateSheets.Pages(title, trim, paper, shown), title));
            }
        }
    }
}
