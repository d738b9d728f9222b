using System.Globalization;
using System.Xml;
using System.Xml.Linq;

namespace LureSim.Scenarios.Outlines;

/// <summary>
/// Reads the outlines out of a drawing: shapes with id <c>side</c> and <c>top</c> (or groups of that id that hold one shape), with the maps of all groups
/// around them. What it does not know it refuses.
/// </summary>
internal static class SvgReader
{
    private const string Example = "give the outline the id \"side\" in your drawing program (object properties, XML editor)";

    private static readonly string[] Shapes = ["path", "polygon", "polyline", "rect", "ellipse", "circle"];

    // What stands in these is not drawn where it stands.
    private static readonly string[] Hidden = ["defs", "symbol", "clipPath", "mask", "marker", "pattern", "use"];

    /// <summary>Reads a drawing.</summary>
    /// <param name="text">The file.</param>
    /// <param name="body">What it shows.</param>
    /// <returns>Null, or what is wrong.</returns>
    public static string? Read(string text, out DrawnBody? body)
    {
        body = null;
        XElement root;
        try
        {
            using var reader = XmlReader.Create(new StringReader(text), new() { DtdProcessing = DtdProcessing.Ignore, XmlResolver = null });
            root = XDocument.Load(reader).Root!;
        }
        catch (XmlException e)
        {
            return string.Create(CultureInfo.InvariantCulture, $"it is no SVG: line {e.LineNumber}, character {e.LinePosition} cannot be read");
        }

        if (root.Name.LocalName != "svg")
        {
            return $"it is no SVG: it begins with <{root.Name.LocalName}>";
        }

        Contour? top = null;
        if ((View(root, "side", out Contour? side) ?? View(root, "top", out top)) is string wrong)
        {
            return wrong;
        }

        if (side is null)
        {
            string[] ids = [.. root.Descendants().Where(IsShape).Select(e => (string?)e.Attribute("id") ?? $"a {e.Name.LocalName} without id").Take(8)];
            return $"it has no shape with the id \"side\"; {(ids.Length == 0 ? "it has no shapes at all" : $"it has {string.Join(", ", ids)}")}; {Example}";
        }

        string? failure = Scale(root, out double? metresPerUnit);
        body = new(side, top, metresPerUnit);
        return failure ?? body.Wrong();
    }

    private static string? View(XElement root, string id, out Contour? view)
    {
        view = null;
        XElement[] named = [.. root.Descendants().Where(e => (string?)e.Attribute("id") == id)];
        if (named.Length == 0)
        {
            return null;
        }

        XElement[] shapes = [.. named.SelectMany(e => e.DescendantsAndSelf()).Where(IsShape)];
        if (named.Length > 1 || shapes.Length != 1)
        {
            return $"\"{id}\" holds {shapes.Length} shapes; one closed {string.Join(", ", Shapes)} is due";
        }

        List<List<Curve>> pieces = [];
        string? failure = Map(shapes[0], out AffineMap map) ?? ShapeCurves.Read(shapes[0], out pieces);
        failure ??= pieces.Count == 1
            ? Contour.Make([.. pieces[0].Select(map.Of)], out view)
            : $"it has {pieces.Count} pieces; one closed outline is due";
        return failure is null ? null : $"\"{id}\": {failure}";
    }

    private static bool IsShape(XElement e) => Shapes.Contains(e.Name.LocalName);

    private static string? Map(XElement shape, out AffineMap map)
    {
        map = AffineMap.None;
        foreach (XElement e in shape.AncestorsAndSelf().Where(e => e.Parent is not null))
        {
            string name = e.Name.LocalName;
            if (Hidden.Contains(name) || name == "svg")
            {
                return $"it stands inside <{name}>, which is not read; draw it by itself";
            }

            if (((string?)e.Attribute("style"))?.Contains("transform", StringComparison.Ordinal) == true)
            {
                return "a style moves it, which is not read; an attribute transform is";
            }

            if ((string?)e.Attribute("transform") is string text)
            {
                if (AffineMap.Read(text) is not AffineMap one)
                {
                    return $"transform = \"{text}\" cannot be read; matrix, translate, scale, rotate, skewX and skewY with plain numbers are";
                }

                map = one.After(map);
            }
        }

        return null;
    }

    // Millimetres per unit where the drawing says how wide it is; a browser's px are no measure.
    private static string? Scale(XElement root, out double? metresPerUnit)
    {
        metresPerUnit = null;
        double[]? box = (string?)root.Attribute("viewBox") is string text ? AffineMap.Numbers(text) : [];
        if (box is not ([] or [_, _, > 0.0, > 0.0]))
        {
            return $"viewBox = \"{(string?)root.Attribute("viewBox")}\" cannot be read; four numbers are due, the last two above 0";
        }

        double? width = Metres(root, "width"), height = Metres(root, "height");
        if (width is null && height is null)
        {
            return null;
        }

        // Without a box a unit is a px, of which an inch has 96.
        metresPerUnit = box.Length == 0 ? 0.0254 / 96.0 : Math.Min(width / box[2] ?? double.PositiveInfinity, height / box[3] ?? double.PositiveInfinity);
        bool stretched = (string?)root.Attribute("preserveAspectRatio") == "none" && width is double w && height is double h && box.Length > 0
            && Math.Abs((w / box[2] / (h / box[3])) - 1.0) > 0.01;
        return stretched ? "it is stretched (preserveAspectRatio = \"none\"); give width and height in the ratio of its viewBox" : null;
    }

    private static double? Metres(XElement root, string name)
    {
        string text = ((string?)root.Attribute(name))?.Trim() ?? "";
        double unit = text.EndsWith("mm", StringComparison.Ordinal) ? 1e-3 : text.EndsWith("cm", StringComparison.Ordinal) ? 1e-2
            : text.EndsWith("in", StringComparison.Ordinal) ? 0.0254 : double.NaN;
        return !double.IsNaN(unit) && AffineMap.Numbers(text[..^2]) is [> 0.0 and double number] ? unit * number : null;
    }
}
