using OxyPlot;

namespace LureSim.Reports.Kit.Charts;

/// <summary>How a legend entry looks.</summary>
public enum Swatch
{
    /// <summary>A line.</summary>
    Line,

    /// <summary>A dashed line.</summary>
    Dash,

    /// <summary>A filled box: a shaded span.</summary>
    Box,

    /// <summary>A dot.</summary>
    Dot,

    /// <summary>A dot with a white heart.</summary>
    Ring,

    /// <summary>A line with the marker of its points.</summary>
    Marked,
}

/// <summary>One legend entry.</summary>
/// <param name="Label">Text.</param>
/// <param name="Color">Colour.</param>
/// <param name="Kind">Look.</param>
public sealed record HeaderEntry(string Label, OxyColor Color, Swatch Kind = Swatch.Line)
{
    /// <summary>A line of a quantity, with its own dashes.</summary>
    /// <param name="label">Text.</param>
    /// <param name="look">Look of the quantity.</param>
    /// <param name="marked">With the marker of its points.</param>
    public HeaderEntry(string label, Look look, bool marked = false)
        : this(label, (look ?? throw new ArgumentNullException(nameof(look))).Color, marked ? Swatch.Marked : Swatch.Line)
    {
        Style = look.Style;
        Marker = look.Marker;
    }

    /// <summary>Dashes of the line.</summary>
    public LineStyle Style { get; } = Kind == Swatch.Dash ? LineStyle.Dash : LineStyle.Solid;

    /// <summary>Marker on the line.</summary>
    public MarkerType Marker { get; } = MarkerType.Circle;
}
