using System.Globalization;
using System.Xml.Linq;

namespace LureSim.Scenarios.Outlines;

/// <summary>The shapes of SVG as curves.</summary>
internal static class ShapeCurves
{
    /// <summary>Reads a shape.</summary>
    /// <param name="shape">Element.</param>
    /// <param name="pieces">Its pieces.</param>
    /// <returns>Null, or what is wrong.</returns>
    public static string? Read(XElement shape, out List<List<Curve>> pieces)
    {
        string name = shape.Name.LocalName;
        if (name == "path")
        {
            return PathReader.Read((string?)shape.Attribute("d") ?? "", out pieces);
        }

        pieces = [];
        if (name is "polygon" or "polyline")
        {
            return Corners(shape, name == "polygon", pieces);
        }

        string[] names = name switch
        {
            "rect" => ["x", "y", "width", "height", "rx", "ry"],
            "circle" => ["cx", "cy", "r"],
            _ => ["cx", "cy", "rx", "ry"],
        };
        var n = new double[names.Length];
        for (int i = 0; i < n.Length; i++)
        {
            if (Number(shape, names[i]) is not double number)
            {
                return $"{names[i]} = \"{(string?)shape.Attribute(names[i])}\" cannot be read; a plain number is due";
            }

            n[i] = number;
        }

        pieces.Add(name switch
        {
            "rect" => Rectangle(n, shape),
            "circle" => [.. ArcCurves.Ellipse(new(n[0], n[1]), n[2], n[2])],
            _ => [.. ArcCurves.Ellipse(new(n[0], n[1]), n[2], n[3])],
        });
        return null;
    }

    private static string? Corners(XElement shape, bool closes, List<List<Curve>> pieces)
    {
        double[]? n = AffineMap.Numbers((string?)shape.Attribute("points") ?? "");
        if (n is null || n.Length < 6 || n.Length % 2 != 0)
        {
            return "its points cannot be read; at least three pairs of numbers are due";
        }

        Spot[] spots = [.. Enumerable.Range(0, n.Length / 2).Select(i => new Spot(n[2 * i], n[(2 * i) + 1]))];
        var curves = new List<Curve>();
        for (int i = 1; i < spots.Length; i++)
        {
            curves.Add(Curve.Line(spots[i - 1], spots[i]));
        }

        if (closes && spots[^1] != spots[0])
        {
            curves.Add(Curve.Line(spots[^1], spots[0]));
        }

        pieces.Add(curves);
        return null;
    }

    private static List<Curve> Rectangle(double[] n, XElement shape)
    {
        // Of two radii one stands for both where the other is not given; none is more than half the side.
        double rx = shape.Attribute("rx") is null ? n[5] : n[4], ry = shape.Attribute("ry") is null ? n[4] : n[5];
        (rx, ry) = (Math.Min(rx, 0.5 * n[2]), Math.Min(ry, 0.5 * n[3]));
        (double left, double top, double right, double bottom) = (n[0], n[1], n[0] + n[2], n[1] + n[3]);
        Spot[] corners = [new(left + rx, top), new(right - rx, top), new(right, top + ry), new(right, bottom - ry), new(right - rx, bottom), new(left + rx, bottom), new(left, bottom - ry), new(left, top + ry)];
        var curves = new List<Curve>();
        for (int i = 0; i < corners.Length; i += 2)
        {
            Spot next = corners[(i + 2) % corners.Length];
            curves.Add(Curve.Line(corners[i], corners[i + 1]));
            if (corners[i + 1] != next)
            {
                curves.AddRange(ArcCurves.Of(corners[i + 1], new(rx, ry), 0.0, large: false, sweep: true, next));
            }
        }

        return [.. curves.Where(c => c.A != c.D)];
    }

    private static double? Number(XElement shape, string name)
    {
        string text = ((string?)shape.Attribute(name))?.Trim() ?? "0";
        string plain = text.EndsWith("px", StringComparison.Ordinal) ? text[..^2] : text;
        return double.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number) ? number : null;
    }
}
