using System.Globalization;
using LureSim.Reports.Kit.Drawing;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Kit.Charts;

/// <summary>
/// The one look of all pictures: colours told apart by colour-blind readers (Okabe and Ito 2008, "Color universal
/// design"), text that reads from the back row of a room at 1600 pixels width, light grid.
/// </summary>
public static class ChartStyle
{
    /// <summary>First colour: what is asked about.</summary>
    public static readonly OxyColor Blue = OxyColor.FromRgb(0, 114, 178);

    /// <summary>Second colour: what drives it.</summary>
    public static readonly OxyColor Vermilion = OxyColor.FromRgb(213, 94, 0);

    /// <summary>Third colour.</summary>
    public static readonly OxyColor Green = OxyColor.FromRgb(0, 158, 115);

    /// <summary>Fourth colour.</summary>
    public static readonly OxyColor Purple = OxyColor.FromRgb(204, 121, 167);

    /// <summary>Pulls and other drives, for areas.</summary>
    public static readonly OxyColor Orange = OxyColor.FromRgb(230, 159, 0);

    /// <summary>Ground of a span in which the hand pulls.</summary>
    public static readonly OxyColor Pull = Faint(Orange, 0.30);

    /// <summary>Water and slack, for areas.</summary>
    public static readonly OxyColor Sky = OxyColor.FromRgb(86, 180, 233);

    /// <summary>Seventh colour, for areas only: too light for a line.</summary>
    public static readonly OxyColor Yellow = OxyColor.FromRgb(240, 228, 66);

    /// <summary>Text and frames.</summary>
    public static readonly OxyColor Ink = OxyColor.FromRgb(30, 30, 30);

    /// <summary>Second-rank text and reference lines.</summary>
    public static readonly OxyColor Grey = OxyColor.FromRgb(110, 110, 110);

    /// <summary>Grid lines.</summary>
    public static readonly OxyColor Grid = OxyColor.FromRgb(222, 222, 222);

    /// <summary>Size of the title, px.</summary>
    public const double TitleSize = 38;

    /// <summary>Size of headers inside a picture, px.</summary>
    public const double HeaderSize = 28;

    /// <summary>Size of axis titles and labels, px.</summary>
    public const double TextSize = 26;

    /// <summary>Thickness of a data line, px.</summary>
    public const double LineWidth = 4;

    /// <summary>Colours of lines in the order of use.</summary>
    public static IReadOnlyList<OxyColor> Lines { get; } = [Blue, Vermilion, Green, Purple, Ink, Orange];

    /// <summary>An empty picture with title and subtitle.</summary>
    /// <param name="title">What is shown.</param>
    /// <param name="subtitle">The one sentence to take home.</param>
    public static PlotModel NewModel(string title, string subtitle) => new()
    {
        Title = title,
        Subtitle = subtitle,
        Culture = CultureInfo.InvariantCulture,
        Background = OxyColors.White,
        TextColor = Ink,
        DefaultFont = FontFile.Family,
        DefaultFontSize = TextSize,
        TitleFontSize = TitleSize,
        TitleFontWeight = FontWeights.Bold,
        SubtitleFontSize = TextSize,
        SubtitleColor = Ink,
        TitlePadding = 14,
        Padding = new OxyThickness(16, 14, 40, 14),
        PlotAreaBorderThickness = new OxyThickness(0),
        EdgeRenderingMode = EdgeRenderingMode.PreferGeometricAccuracy,
    };

    /// <summary>An axis with its unit in the title.</summary>
    /// <param name="position">Bottom or left.</param>
    /// <param name="title">Quantity and unit.</param>
    /// <param name="min">Lower end; NaN = from the data.</param>
    /// <param name="max">Upper end; NaN = from the data.</param>
    public static LinearAxis NewAxis(AxisPosition position, string title, double min = double.NaN, double max = double.NaN) =>
        new()
        {
            Position = position,
            Title = title,
            Minimum = min,
            Maximum = max,
            AxisTitleDistance = 12,
            MajorGridlineStyle = LineStyle.Solid,
            MajorGridlineColor = Grid,
            MajorGridlineThickness = 1.5,
            CropGridlines = true,
            MinorTickSize = 0,
            MajorTickSize = 8,
            TicklineColor = Grey,
            AxislineStyle = LineStyle.Solid,
            AxislineColor = Grey,
            AxislineThickness = 1.5,
            IntervalLength = position == AxisPosition.Bottom ? 150 : 45,
            StringFormat = "0.####",
        };

    /// <summary>The same colour, see-through.</summary>
    /// <param name="color">Colour.</param>
    /// <param name="share">0 clear to 1 solid.</param>
    public static OxyColor Faint(OxyColor color, double share) =>
        OxyColor.FromAColor((byte)Math.Round(255 * share), color);
}
