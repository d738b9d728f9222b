using System.Globalization;
using OxyPlot;

namespace LureSim.Reports.Page;

/// <summary>Pieces of the drawings of a page: SVG whose colours come from the style sheet.</summary>
internal static class PageSvg
{
    /// <summary>A drawing that scales.</summary>
    /// <param name="class">Class.</param>
    /// <param name="width">Width, px.</param>
    /// <param name="height">Height, px.</param>
    /// <param name="words">What it says, for those who do not see it.</param>
    /// <param name="inside">Pieces.</param>
    public static Markup Drawing(string @class, double width, double height, string words, params IEnumerable<Markup> inside) =>
        Markup.Tag("svg", [("class", @class), ("viewBox", $"0 0 {N(width)} {N(height)}"), ("role", "img"), ("aria-label", words)], inside);

    /// <summary>A straight line.</summary>
    /// <param name="x1">From, px.</param>
    /// <param name="y1">From, px.</param>
    /// <param name="x2">To, px.</param>
    /// <param name="y2">To, px.</param>
    /// <param name="class">Class.</param>
    public static Markup Line(double x1, double y1, double x2, double y2, string @class) =>
        Markup.Tag("line", [("class", @class), ("x1", N(x1)), ("y1", N(y1)), ("x2", N(x2)), ("y2", N(y2))]);

    /// <summary>A line with corners.</summary>
    /// <param name="points">Corners, px.</param>
    /// <param name="class">Class.</param>
    public static Markup Path(IEnumerable<ScreenPoint> points, string @class) =>
        Markup.Tag("polyline", [("class", @class), ("points", string.Join(' ', points.Select(p => $"{N(p.X)},{N(p.Y)}")))]);

    /// <summary>A box; one that is turned round is none.</summary>
    /// <param name="left">Left, px.</param>
    /// <param name="top">Top, px.</param>
    /// <param name="width">Width, px.</param>
    /// <param name="height">Height, px.</param>
    /// <param name="class">Class.</param>
    public static Markup Box(double left, double top, double width, double height, string @class) => width <= 0.0 || height <= 0.0
        ? default
        : Markup.Tag("rect", [("class", @class), ("x", N(left)), ("y", N(top)), ("width", N(width)), ("height", N(height))]);

    /// <summary>Words.</summary>
    /// <param name="x">Anchor, px.</param>
    /// <param name="y">Foot of the letters, px.</param>
    /// <param name="anchor">start, middle or end.</param>
    /// <param name="text">Words.</param>
    /// <param name="class">Class beside "label"; may be empty.</param>
    public static Markup Text(double x, double y, string anchor, string text, string @class) =>
        Markup.Tag("text", [("class", $"label {@class}".TrimEnd()), ("x", N(x)), ("y", N(y)), ("text-anchor", anchor)], text);

    /// <summary>A number to a tenth of a pixel.</summary>
    /// <param name="v">Number.</param>
    public static string N(double v) => v.ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>The least step of 1, 2 or 5 times a power of ten that is not under a length.</summary>
    /// <param name="least">Length, more than 0.</param>
    public static double Step(double least)
    {
        double power = Math.Pow(10.0, Math.Floor(Math.Log10(least))), share = least / power;
        return power * (share <= 1.0 ? 1.0 : share <= 2.0 ? 2.0 : share <= 5.0 ? 5.0 : 10.0);
    }
}
