using System.Globalization;
using System.Text;
using System.Xml;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Quantities;
using OxyPlot;

namespace LureSim.Reports.Kit.Plans;

/// <summary>A sheet as SVG whose width and height are millimetres, so that programs open and print it at true scale. Needs no native code.</summary>
public static class PlanSvg
{
    private const string Namespace = "http://www.w3.org/2000/svg";

    /// <summary>The document in UTF-8: the same bytes for the same sheet.</summary>
    /// <param name="sheet">What to draw.</param>
    /// <param name="title">Title that programs show; any text.</param>
    public static byte[] Write(PlanSheet sheet, string title)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        using var stream = new MemoryStream();
        using (var xml = XmlWriter.Create(stream, new XmlWriterSettings { Indent = true, NewLineChars = "\n", Encoding = new UTF8Encoding(false) }))
        {
            xml.WriteStartElement("svg", Namespace);
            xml.WriteAttributeString("width", Mm(sheet.WidthMm) + "mm");
            xml.WriteAttributeString("height", Mm(sheet.HeightMm) + "mm");
            xml.WriteAttributeString("viewBox", $"0 0 {Mm(sheet.WidthMm)} {Mm(sheet.HeightMm)}");
            xml.WriteElementString("title", Namespace, PlainText.Escape(title));
            xml.WriteStartElement("rect", Namespace);
            xml.WriteAttributeString("width", Mm(sheet.WidthMm));
            xml.WriteAttributeString("height", Mm(sheet.HeightMm));
            xml.WriteAttributeString("fill", "#ffffff");
            xml.WriteEndElement();
            Items(xml, sheet.Items);
            xml.WriteEndElement();
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    private static void Items(XmlWriter xml, IReadOnlyList<PlanItem> items)
    {
        foreach (PlanItem item in items)
        {
            switch (item)
            {
                case PlanPath p:
                    Start(xml, p.Closed ? "polygon" : "polyline", p.Name);
                    xml.WriteAttributeString("points", string.Join(' ', p.Points.Select(q => $"{Mm(q.X)},{Mm(q.Y)}")));
                    Pen(xml, p.Pen);
                    break;
                case PlanCircle c:
                    Start(xml, "circle", c.Name);
                    Numbers(xml, ("cx", c.Centre.X), ("cy", c.Centre.Y), ("r", c.RadiusMm));
                    Pen(xml, c.Pen);
                    break;
                case PlanText t:
                    Words(xml, t);
                    break;
                default:
                    throw new NotSupportedException($"a {item.GetType().Name} cannot be written as SVG");
            }

            xml.WriteEndElement();
        }
    }

    private static void Words(XmlWriter xml, PlanText t)
    {
        Start(xml, "text", t.Name);
        Numbers(xml, ("x", t.At.X), ("y", t.At.Y));
        xml.WriteAttributeString("font-family", FontFile.Family);
        xml.WriteAttributeString("font-size", Mm(t.SizeMm));
        xml.WriteAttributeString("font-weight", t.Bold ? "700" : "400");
        xml.WriteAttributeString("text-anchor", t.Anchor switch { PlanAnchor.Start => "start", PlanAnchor.Middle => "middle", _ => "end" });
        xml.WriteAttributeString("fill", Colour(t.Colour));
        xml.WriteString(PlainText.Escape(t.Text));
    }

    private static void Start(XmlWriter xml, string element, string? name)
    {
        xml.WriteStartElement(element, Namespace);
        if (name is not null)
        {
            xml.WriteAttributeString("id", name);
        }
    }

    private static void Numbers(XmlWriter xml, params (string Name, double Value)[] numbers)
    {
        foreach ((string name, double value) in numbers)
        {
            xml.WriteAttributeString(name, Mm(value));
        }
    }

    private static void Pen(XmlWriter xml, PlanPen pen)
    {
        xml.WriteAttributeString("fill", "none");
        xml.WriteAttributeString("stroke", Colour(pen.Colour));
        xml.WriteAttributeString("stroke-width", Mm(pen.WidthMm));
        if (pen.DashMm > 0.0)
        {
            xml.WriteAttributeString("stroke-dasharray", Mm(pen.DashMm));
        }
    }

    private static string Colour(OxyColor c) => string.Create(CultureInfo.InvariantCulture, $"#{c.R:x2}{c.G:x2}{c.B:x2}");

    // A tenth of a micrometre: finer than any printer.
    private static string Mm(double mm) => Trade.Fixed(mm, 4);
}
