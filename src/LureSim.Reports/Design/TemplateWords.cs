using LureSim.Model.Trim;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Plans;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Trim;
using static LureSim.Reports.Design.TemplatePens;

namespace LureSim.Reports.Design;

/// <summary>What a template says beside its drawing.</summary>
internal static class TemplateWords
{
    private const double Indent = 8.0;
    private const int MostLines = 3;

    /// <summary>Scale, size, mass and how it floats, in one line.</summary>
    /// <param name="trim">Lure at rest.</param>
    /// <param name="body">Its outlines.</param>
    public static string About(TrimResult trim, TemplateBody body) =>
        $"Scale 1:1. Body {Mm(body.LengthMm)} x {Mm(body.BreadthMm)} x {Mm(body.HeightMm)} mm (long, wide, high), {TemplateMark.Mass(trim.Lure.MassKg)} with ballast, without hooks.";

    /// <summary>Marks, water and caution, wrapped to a width.</summary>
    /// <param name="trim">Lure at rest.</param>
    /// <param name="marks">Marks.</param>
    /// <param name="width">Width, mm.</param>
    /// <param name="shown">Units.</param>
    public static PlanBlock Keys(TrimResult trim, IReadOnlyList<TemplateMark> marks, double width, Shown shown)
    {
        var items = new List<PlanItem>();
        double y = Pitch;
        foreach (TemplateMark mark in marks)
        {
            items.Add(Words(0.0, y, mark.Name, bold: true));
            Lines(mark.Words, Indent);
        }

        Lines(Rest(trim, shown), 0.0);
        return new(width, y, items);

        void Lines(string text, double from)
        {
            foreach (string line in TextFit.Wrap(text, Text, 0.0, width - from, MostLines).Split('\n'))
            {
                items.Add(Words(from, y, line));
                y += Pitch;
            }
        }
    }

    private static string Rest(TrimResult trim, Shown shown)
    {
        string water = trim.IsUpright ? "dashed blue: the water at rest" : "no water is drawn";
        double coat = 1000.0 * trim.Lure.Build.CoatThicknessM;
        string blank = coat > 0.0 ? $" The outline is that of the finished lure: the blank is smaller all round by its coat, {Trade.Fixed(coat, 2)} mm." : "";
        return $"{TrimText.Headline(trim, shown)}; {water}.{blank} Computed, not measured: float it in a bowl before a hole is closed for good.";
    }

    private static string Mm(double mm) => Trade.Fixed(mm, 1);
}
