using OxyPlot;

namespace LureSim.Reports.Kit.Charts;

/// <summary>How a quantity is drawn: by colour, and again by dashes and marker for readers and projectors that lose the colour.</summary>
/// <param name="Color">Colour.</param>
/// <param name="Style">Dashes of its line.</param>
/// <param name="Marker">Marker of its points.</param>
public sealed record Look(OxyColor Color, LineStyle Style = LineStyle.Solid, MarkerType Marker = MarkerType.Circle)
{
    /// <summary>Dashes and gaps in thicknesses of the line; null = solid.</summary>
    public double[]? Dashes => Of(Style);

    /// <summary>The dashes of a style, wide enough to be seen from the back of a room.</summary>
    /// <param name="style">Style.</param>
    public static double[]? Of(LineStyle style) => style switch
    {
        LineStyle.Dash => [3.5, 2],
        LineStyle.Dot => [1, 1.4],
        LineStyle.DashDot => [4, 1.5, 1, 1.5],
        LineStyle.LongDash => [7, 2.5],
        _ => null,
    };

    /// <summary>The same look with a solid line: for shapes, a rod or a line in the air, which dashes would break.</summary>
    public Look Solid => this with { Style = LineStyle.Solid };

    /// <summary>The same look in a colour mixed with white.</summary>
    /// <param name="share">Share of the colour, 0 white to 1.</param>
    public Look Pale(double share) => this with { Color = ChartStyle.Pale(Color, share) };
}
