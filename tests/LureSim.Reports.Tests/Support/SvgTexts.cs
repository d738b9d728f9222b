using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using LureSim.Reports.Kit.Drawing;

namespace LureSim.Reports.Tests.Support;

/// <summary>A text of a picture and the box of its letters, px from the upper left corner of the picture.</summary>
internal sealed record PlacedText(string Text, double Left, double Top, double Right, double Bottom, double Size)
{
    public bool Overlaps(PlacedText other) =>
        Math.Min(Right, other.Right) - Math.Max(Left, other.Left) > 1 && Math.Min(Bottom, other.Bottom) - Math.Max(Top, other.Top) > 1;

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"'{Text}' at {Left:F0} to {Right:F0} across, {Top:F0} to {Bottom:F0} down");
}

/// <summary>Reads an SVG picture for its words and for what is drawn as a swatch, measured by the font that travels with it.</summary>
internal static partial class SvgTexts
{
    // Capitals and tails of DejaVu Sans over the size: its line height holds more, which no letter fills.
    private const double Capital = 0.76, Tail = 0.24;

    /// <summary>Texts, and faults: those outside the picture or outside the part of it that shows them.</summary>
    public static (IReadOnlyList<PlacedText> Texts, IReadOnlyList<string> CutOff) Read(byte[] svg)
    {
        XElement root = XDocument.Load(new MemoryStream(svg)).Root!;
        double[] view = [.. root.Attribute("viewBox")!.Value.Split(' ').Select(Number)];
        Dictionary<string, double[]> clips = root.Descendants().Where(e => e.Name.LocalName == "clipPath").ToDictionary(
            e => (string)e.Attribute("id")!, e => Box(e.Elements().Single()));
        var texts = new List<PlacedText>();
        var cut = new List<string>();
        foreach (XElement element in root.Descendants().Where(e => e.Name.LocalName == "text"))
        {
            PlacedText text = Place(element);
            texts.Add(text);
            double[][] frames =
            [
                [0, 0, view[2], view[3]],
                .. element.Ancestors().Select(a => (string?)a.Attribute("clip-path")).OfType<string>().Select(c => clips[ClipName().Match(c).Groups[1].Value]),
            ];
            if (frames.Any(f => text.Left < f[0] - 1 || text.Top < f[1] - 1 || text.Right > f[2] + 1 || text.Bottom > f[3] + 1))
            {
                cut.Add(text.ToString());
            }
        }

        return (texts, cut);
    }

    private static PlacedText Place(XElement e)
    {
        double size = Number(Style(e, "font-size").Replace("px", "", StringComparison.Ordinal)), weight = Number(Style(e, "font-weight"));
        double width = size * FontMetrics.For(weight).Width(e.Value);
        (double x, double y, double turn) = Anchor(e);
        double from = (string?)e.Attribute("text-anchor") switch { "middle" => -0.5 * width, "end" => -width, _ => 0 };
        (double sin, double cos) = Math.SinCos(turn * Math.PI / 180);
        (double X, double Y)[] corners = [.. new[] { from, from + width }.SelectMany(dx => new[] { -Capital * size, Tail * size }.Select(
            dy => (x + (cos * dx) - (sin * dy), y + (sin * dx) + (cos * dy))))];
        return new(e.Value, corners.Min(c => c.X), corners.Min(c => c.Y), corners.Max(c => c.X), corners.Max(c => c.Y), size);
    }

    private static (double X, double Y, double Turn) Anchor(XElement e)
    {
        double x = Number((string?)e.Attribute("x") ?? "0"), y = Number((string?)e.Attribute("y") ?? "0"), turn = 0;
        string transform = (string?)e.Attribute("transform") ?? "";
        if (Translate().Match(transform) is { Success: true } moved)
        {
            x += Number(moved.Groups[1].Value);
            y += Number(moved.Groups[2].Value);
        }

        if (Rotate().Match(transform) is { Success: true } turned)
        {
            turn = Number(turned.Groups[1].Value);
        }

        return (x, y, turn);
    }

    private static double[] Box(XElement rect)
    {
        double Get(string name) => Number((string?)rect.Attribute(name) ?? "0");
        return [Get("x"), Get("y"), Get("x") + Get("width"), Get("y") + Get("height")];
    }

    private static string Style(XElement e, string name) =>
        (string?)e.Attribute(name) ?? Regex.Match((string?)e.Attribute("style") ?? "", name + @"\s*:\s*([^;]+)").Groups[1].Value;

    private static double Number(string text) => text.Length == 0 ? 400 : double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"#([^)""']+)")]
    private static partial Regex ClipName();

    [GeneratedRegex(@"translate\(([-\d.]+)[ ,]+([-\d.]+)\)")]
    private static partial Regex Translate();

    [GeneratedRegex(@"rotate\(([-\d.]+)")]
    private static partial Regex Rotate();
}
