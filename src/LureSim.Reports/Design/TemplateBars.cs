using LureSim.Reports.Kit.Plans;
using static LureSim.Reports.Design.TemplatePens;

namespace LureSim.Reports.Design;

/// <summary>Bars of known length, to measure on the print before anything is cut.</summary>
internal static class TemplateBars
{
    /// <summary>Length of the metric bar, mm.</summary>
    public const double MetricMm = 50.0;

    /// <summary>Length of the other, mm: 2 in.</summary>
    public const double InchesMm = 50.8;

    private const double Between = 86.0, Tick = 2.5, Down = 6.5;

    /// <summary>The bars and what to do with them.</summary>
    /// <param name="x">Left end, mm.</param>
    /// <param name="y">Upper edge, mm.</param>
    public static IEnumerable<PlanItem> Build(double x, double y) =>
    [
        .. Bar("bar-50-mm", x + 1.0, y + Down, MetricMm, "50 mm (5 cm)", 5),
        .. Bar("bar-2-in", x + 1.0 + Between, y + Down, InchesMm, "2 in", 2),
        Words(x, y + Down + Tick + Pitch + 0.5, "Measure these bars first. If they are not 50 mm and 2 in long, print again at 100 % (actual size), without fitting to the page."),
    ];

    // A tick at each end and at each centimetre or inch.
    private static IEnumerable<PlanItem> Bar(string name, double x, double y, double length, string words, int parts)
    {
        yield return PlanPath.Line(name, x, y, x + length, y, TemplatePens.Bar);
        for (int i = 0; i <= parts; i++)
        {
            double at = x + (length * i / parts), half = i == 0 || i == parts ? Tick : 0.6 * Tick;
            yield return PlanPath.Line(null, at, y - half, at, y + half, TemplatePens.Bar);
        }

        yield return Words(x + length + 2.0, y + 1.0, words, bold: true);
    }
}
