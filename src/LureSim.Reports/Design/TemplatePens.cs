using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Plans;

namespace LureSim.Reports.Design;

/// <summary>Lines and letters of a template.</summary>
internal static class TemplatePens
{
    /// <summary>Size of words, mm.</summary>
    public const double Text = 2.8;

    /// <summary>Size of numbers in the drawing, mm.</summary>
    public const double Small = 2.2;

    /// <summary>Size of the names of marks, mm.</summary>
    public const double Name = 2.6;

    /// <summary>From line to line of words, mm.</summary>
    public const double Pitch = 3.9;

    /// <summary>Outline.</summary>
    public static PlanPen Outline { get; } = new(ChartStyle.Ink, 0.25);

    /// <summary>Holes, hangers, bars.</summary>
    public static PlanPen Mark { get; } = new(ChartStyle.Vermilion, 0.2);

    /// <summary>Bars to measure.</summary>
    public static PlanPen Bar { get; } = new(ChartStyle.Ink, 0.2);

    /// <summary>Axis.</summary>
    public static PlanPen Axis { get; } = new(ChartStyle.Grey, 0.12, 3.0);

    /// <summary>Stations.</summary>
    public static PlanPen Station { get; } = new(ChartStyle.Pale(ChartStyle.Grey, 0.5), 0.15);

    /// <summary>The water at rest.</summary>
    public static PlanPen Water { get; } = new(ChartStyle.Blue, 0.25, 1.5);

    /// <summary>Where pages are laid on each other.</summary>
    public static PlanPen Join { get; } = new(ChartStyle.Purple, 0.25, 1.0);

    /// <summary>A line of words.</summary>
    /// <param name="x">Anchor, mm.</param>
    /// <param name="y">Baseline, mm.</param>
    /// <param name="text">Words.</param>
    /// <param name="size">Size, mm.</param>
    /// <param name="anchor">What stands at the anchor.</param>
    /// <param name="bold">Bold.</param>
    public static PlanText Words(double x, double y, string text, double size = Text, PlanAnchor anchor = PlanAnchor.Start, bool bold = false) =>
        new(null, new(x, y), text, size, anchor, bold, ChartStyle.Ink);
}
