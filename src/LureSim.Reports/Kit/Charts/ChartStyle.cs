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

    /// <summary>Dark red of Tol's scheme "muted": further from the others than the purple of Okabe and Ito, and dark enough for a line.</summary>
    public static readonly OxyColor Wine = OxyColor.FromRgb(136, 34, 85);

    /// <summary>Dark blue of Tol's scheme "muted", for areas.</summary>
    public static readonly OxyColor Indigo = OxyColor.FromRgb(51, 34, 136);

    /// <summary>Sand of Tol's scheme "muted", for areas.</summary>
    public static readonly OxyColor Sand = OxyColor.FromRgb(221, 204, 119);

    /// <summary>Light cyan of Tol's scheme "light", for areas.</summary>
    public static readonly OxyColor Cyan = OxyColor.FromRgb(153, 221, 255);

    /// <summary>Light grey of Tol's scheme "light", for areas.</summary>
    public static readonly OxyColor Light = OxyColor.FromRgb(221, 221, 221);

    /// <summary>Dark grey, for areas.</summary>
    public static readonly OxyColor Dark = OxyColor.FromRgb(80, 80, 80);

    /// <summary>Text and frames.</summary>
    public static readonly OxyColor Ink = OxyColor.FromRgb(30, 30, 30);

    /// <summary>Second-rank text and reference lines.</summary>
    public static readonly OxyColor Grey = OxyColor.FromRgb(110, 110, 110);

    /// <summary>Grid lines.</summary>
    public static readonly OxyColor Grid = OxyColor.FromRgb(222, 222, 222);

    /// <summary>Width of a picture, px.</summary>
    public const int Width = 1600;

    /// <summary>Height of a picture, px: 16 to 10.</summary>
    public const int Height = 1000;

    private const int TitleMargin = 80, TitleLines = 2, NameInTitle = 680;

    /// <summary>Size of the title, px.</summary>
    public const double TitleSize = 38;

    /// <summary>Size of headers inside a picture, px.</summary>
    public const double HeaderSize = 28;

    /// <summary>Size of axis titles and labels, px.</summary>
    public const double TextSize = 26;

    /// <summary>Thickness of a data line, px.</summary>
    public const double LineWidth = 4;

    /// <summary>An empty picture with title and subtitle.</summary>
    /// <param name="title">What the picture says of this run, with its number.</param>
    /// <param name="subtitle">What it is about.</param>
    /// <param name="width">Width of the picture, px.</param>
    public static PlotModel NewModel(string title, string subtitle, int width = Width) => new()
    {
        Title = TextFit.Wrap(title, TitleSize, FontWeights.Bold, width - TitleMargin, TitleLines),
        Subtitle = TextFit.Wrap(subtitle, TextSize, FontWeights.Normal, width - TitleMargin, TitleLines),
        // Over the whole picture: long names of rows push the plot aside.
        TitleHorizontalAlignment = TitleHorizontalAlignment.CenteredWithinView,
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

    /// <summary>A name of the user as a title says it: short enough to leave room for the message.</summary>
    /// <param name="name">Name.</param>
    public static string Name(string name) => TextFit.Wrap(name, TitleSize, FontWeights.Bold, NameInTitle, 1);

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

    /// <summary>The same colour mixed with white, nothing shining through.</summary>
    /// <param name="color">Colour.</param>
    /// <param name="share">Share of the colour, 0 white to 1.</param>
    public static OxyColor Pale(OxyColor color, double share)
    {
        byte Mix(byte part) => (byte)Math.Round((255 * (1 - share)) + (part * share));
        return OxyColor.FromRgb(Mix(color.R), Mix(color.G), Mix(color.B));
    }

    /// <summary>Black or white, whichever reads better on a ground: the larger contrast of WCAG 2.2 (W3C 2023), never under 4.58.</summary>
    /// <param name="ground">Opaque colour behind the words.</param>
    public static OxyColor TextOn(OxyColor ground) => Luminance(ground) > LightGround ? OxyColors.Black : OxyColors.White;

    // At this luminance black and white have the same contrast: (L + 0.05)^2 = 1.05 * 0.05.
    private static readonly double LightGround = Math.Sqrt(1.05 * 0.05) - 0.05;

    /// <summary>Relative luminance, 0 black to 1 white (WCAG 2.2, from IEC 61966-2-1).</summary>
    /// <param name="color">Opaque colour.</param>
    public static double Luminance(OxyColor color)
    {
        static double Linear(byte part)
        {
            double c = part / 255.0;
            return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
        }

        return (0.2126 * Linear(color.R)) + (0.7152 * Linear(color.G)) + (0.0722 * Linear(color.B));
    }
}
