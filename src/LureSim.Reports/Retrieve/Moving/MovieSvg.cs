using System.Globalization;
using System.Text;
using System.Xml;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using OxyPlot;

namespace LureSim.Reports.Retrieve.Moving;

/// <summary>Where the anchor of a text lies.</summary>
internal enum TextAnchor
{
    /// <summary>At its start.</summary>
    Start,

    /// <summary>In its middle.</summary>
    Middle,

    /// <summary>At its end.</summary>
    End,
}

/// <summary>An SVG document written piece by piece; text of the user is shown as text.</summary>
internal sealed class MovieSvg : IDisposable
{
    /// <summary>Size of words, px: a thirtieth of the height, to be read from the back of a room.</summary>
    public const double TextSize = 30.0;

    /// <summary>Size of the picture, px: 16 to 9.</summary>
    public const double Width = 1600.0, Height = 900.0;

    private readonly MemoryStream _stream = new();
    private readonly XmlWriter _xml;

    /// <summary>Begins a picture on white.</summary>
    /// <param name="title">What it is.</param>
    /// <param name="description">The same for those who do not see it.</param>
    /// <param name="css">Style sheet.</param>
    public MovieSvg(string title, string description, string css)
    {
        _xml = XmlWriter.Create(_stream, new() { Encoding = new UTF8Encoding(false), Indent = true, IndentChars = "", NewLineChars = "\n" });
        _xml.WriteStartElement("svg", "http://www.w3.org/2000/svg");
        Attributes(("viewBox", $"0 0 {Number(Width)} {Number(Height)}"), ("width", Number(Width)), ("height", Number(Height)), ("role", "img"), ("font-family", FontFile.Family), ("fill", "none"));
        _xml.WriteElementString("title", Plain(title));
        _xml.WriteElementString("desc", Plain(description));
        _xml.WriteElementString("style", css);
        Rectangle(0.0, 0.0, Width, Height, OxyColors.White);
    }

    /// <summary>A number of the document.</summary>
    /// <param name="value">Value, px or deg.</param>
    public static string Number(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>Begins a group; end it with <see cref="End"/>.</summary>
    /// <param name="name">Its class in the style sheet; null for none.</param>
    /// <param name="attributes">Further attributes.</param>
    public void Group(string? name, params (string Name, string Value)[] attributes)
    {
        _xml.WriteStartElement("g");
        if (name is not null)
        {
            Attributes(("class", name));
        }

        Attributes(attributes);
    }

    /// <summary>Begins a group of which only a box is seen; end it with <see cref="End"/>.</summary>
    public void Clipped(string id, double x, double y, double width, double height)
    {
        _xml.WriteStartElement("clipPath");
        Attributes(("id", id));
        Rectangle(x, y, width, height, OxyColors.White);
        End();
        Group(null, ("clip-path", $"url(#{id})"));
    }

    /// <summary>Ends a group.</summary>
    public void End() => _xml.WriteEndElement();

    /// <summary>A rectangle.</summary>
    public void Rectangle(double x, double y, double width, double height, OxyColor fill, OxyColor? stroke = null)
    {
        _xml.WriteStartElement("rect");
        Attributes(("x", Number(x)), ("y", Number(y)), ("width", Number(width)), ("height", Number(height)), ("fill", Hex(fill)));
        if (stroke is OxyColor edge)
        {
            Attributes(("stroke", Hex(edge)), ("stroke-width", "1.5"));
        }

        End();
    }

    /// <summary>A line through points.</summary>
    /// <param name="points">Points, px.</param>
    /// <param name="color">Colour.</param>
    /// <param name="thick">Thickness, px.</param>
    /// <param name="attributes">Further attributes.</param>
    public void Path(IEnumerable<ScreenPoint> points, OxyColor color, double thick, params (string Name, string Value)[] attributes)
    {
        _xml.WriteStartElement("polyline");
        Attributes(("points", Points(points)), ("stroke", Hex(color)), ("stroke-width", Number(thick)), ("stroke-linejoin", "round"));
        Attributes(attributes);
        End();
    }

    /// <summary>A closed outline.</summary>
    /// <param name="points">Corners, px.</param>
    /// <param name="fill">Colour inside.</param>
    public void Outline(IEnumerable<ScreenPoint> points, OxyColor fill)
    {
        _xml.WriteStartElement("polygon");
        Attributes(("points", Points(points)), ("fill", Hex(fill)), ("stroke", Hex(ChartStyle.Ink)), ("stroke-width", "2"));
        End();
    }

    /// <summary>A dot.</summary>
    /// <param name="at">Middle, px.</param>
    /// <param name="radius">Radius, px.</param>
    /// <param name="fill">Colour.</param>
    public void Dot(ScreenPoint at, double radius, OxyColor fill)
    {
        _xml.WriteStartElement("circle");
        Attributes(("cx", Number(at.X)), ("cy", Number(at.Y)), ("r", Number(radius)), ("fill", Hex(fill)));
        End();
    }

    /// <summary>Words on one line.</summary>
    /// <param name="text">Words, of whoever they are.</param>
    /// <param name="x">Anchor, px.</param>
    /// <param name="y">Baseline, or middle of the letters, px.</param>
    /// <param name="anchor">Which part of the words lies at x.</param>
    /// <param name="middle">True where y is their middle.</param>
    /// <param name="size">Size, px.</param>
    /// <param name="bold">Bold.</param>
    public void Text(string text, double x, double y, TextAnchor anchor = TextAnchor.Start, bool middle = false, double size = TextSize, bool bold = false)
    {
        _xml.WriteStartElement("text");
        Attributes(
            ("x", Number(x)), ("y", Number(middle ? y + (0.36 * size) : y)), ("text-anchor", anchor.ToString().ToLowerInvariant()), ("font-size", Number(size)),
            ("font-weight", bold ? "700" : "400"), ("fill", Hex(ChartStyle.Ink)));
        _xml.WriteString(Plain(text));
        End();
    }

    /// <summary>Ends the document.</summary>
    public byte[] ToBytes()
    {
        _xml.WriteEndElement();
        _xml.Flush();
        _stream.WriteByte((byte)'\n');
        return _stream.ToArray();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _xml.Dispose();
        _stream.Dispose();
    }

    private static string Points(IEnumerable<ScreenPoint> points) => string.Join(' ', points.Select(p => $"{Number(p.X)},{Number(p.Y)}"));

    private static string Plain(string text) => string.Join(' ', TextLayout.Lines(text));

    private static string Hex(OxyColor color) => $"#{color.R:x2}{color.G:x2}{color.B:x2}";

    private void Attributes(params (string Name, string Value)[] attributes)
    {
        foreach ((string name, string value) in attributes)
        {
            _xml.WriteAttributeString(name, value);
        }
    }
}
