using LureSim.Model;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Annotations;

namespace LureSim.Reports.Strike;

/// <summary>The pull that sets all points, as a level with the range of that guess around it.</summary>
internal static class SetLevel
{
    private static readonly OxyColor Range = ChartStyle.Faint(ChartStyle.Orange, 0.22);

    /// <summary>Draws it.</summary>
    /// <param name="panels">Picture.</param>
    /// <param name="panel">Panel from the top.</param>
    /// <param name="sets">Pull that sets all points, N.</param>
    /// <param name="pull">Unit of the y axis.</param>
    /// <param name="left">Left end of the x axis.</param>
    /// <param name="right">Right end of the x axis.</param>
    public static void Draw(Panels panels, int panel, Ranged sets, ShownUnit pull, double left, double right)
    {
        panels.Model.Annotations.Add(new RectangleAnnotation
        {
            YAxisKey = Panels.Key(panel),
            MinimumY = pull.Of(sets.Low),
            MaximumY = pull.Of(sets.High),
            Fill = Range,
            Layer = AnnotationLayer.BelowSeries,
        });
        Line(panels, panel, sets.Value, pull, left, right);
    }

    /// <summary>Draws the level alone.</summary>
    /// <param name="panels">Picture.</param>
    /// <param name="panel">Panel from the top.</param>
    /// <param name="setsN">Pull that sets all points, N.</param>
    /// <param name="pull">Unit of the y axis.</param>
    /// <param name="left">Left end of the x axis.</param>
    /// <param name="right">Right end of the x axis.</param>
    public static void Line(Panels panels, int panel, double setsN, ShownUnit pull, double left, double right) =>
        panels.Line(panel, [left, right], [pull.Of(setsN), pull.Of(setsN)], Looks.Reference, 3);

    /// <summary>Its legend.</summary>
    /// <param name="points">Points of the hook that share the load.</param>
    public static HeaderEntry[] Legend(int points) => [new($"sets {StrikeNames.Points(points)}", Looks.Reference), new("range of that guess", Range, Swatch.Box)];
}
