using System.Globalization;

namespace LureSim.Scenarios.Outlines;

/// <summary>An affine map x' = a x + c y + e, y' = b x + d y + f.</summary>
internal readonly record struct AffineMap(double A, double B, double C, double D, double E, double F)
{
    /// <summary>Leaves all as it is.</summary>
    public static AffineMap None { get; } = new(1, 0, 0, 1, 0, 0);

    /// <summary>The map of a point.</summary>
    public Spot Of(Spot p) => new((A * p.X) + (C * p.Y) + E, (B * p.X) + (D * p.Y) + F);

    /// <summary>The map of a curve.</summary>
    public Curve Of(Curve c) => new(Of(c.A), Of(c.B), Of(c.C), Of(c.D));

    /// <summary>This map after another.</summary>
    public AffineMap After(AffineMap m) => new(
        (A * m.A) + (C * m.B), (B * m.A) + (D * m.B), (A * m.C) + (C * m.D), (B * m.C) + (D * m.D), (A * m.E) + (C * m.F) + E, (B * m.E) + (D * m.F) + F);

    /// <summary>Reads an attribute <c>transform</c>: matrix, translate, scale, rotate, skewX, skewY, one after the other.</summary>
    /// <returns>Null where it cannot be read.</returns>
    public static AffineMap? Read(string text)
    {
        AffineMap all = None;
        for (string rest = text.Trim(' ', ',', '\n', '\t', '\r'); rest.Length > 0;)
        {
            int open = rest.IndexOf('(', StringComparison.Ordinal), close = rest.IndexOf(')', StringComparison.Ordinal);
            if (open < 0 || close < open || One(rest[..open].Trim(), Numbers(rest[(open + 1)..close])) is not AffineMap one)
            {
                return null;
            }

            all = all.After(one);
            rest = rest[(close + 1)..].Trim(' ', ',', '\n', '\t', '\r');
        }

        return all;
    }

    /// <summary>Plain numbers, blanks or commas between; null where something else stands there.</summary>
    public static double[]? Numbers(string text)
    {
        var all = new List<double>();
        for (int i = 0; i < text.Length;)
        {
            if (char.IsWhiteSpace(text[i]) || text[i] == ',')
            {
                i++;
                continue;
            }

            int end = NumberText.End(text, i);
            if (!double.TryParse(text.AsSpan(i, end - i), NumberStyles.Float, CultureInfo.InvariantCulture, out double number) || !double.IsFinite(number))
            {
                return null;
            }

            all.Add(number);
            i = end;
        }

        return [.. all];
    }

    private static AffineMap? One(string name, double[]? n) => (name, n) switch
    {
        ("matrix", [double a, double b, double c, double d, double e, double f]) => new(a, b, c, d, e, f),
        ("translate", [double x]) => None with { E = x },
        ("translate", [double x, double y]) => None with { E = x, F = y },
        ("scale", [double s]) => new(s, 0, 0, s, 0, 0),
        ("scale", [double x, double y]) => new(x, 0, 0, y, 0, 0),
        ("rotate", [double angle]) => Turn(angle),
        ("rotate", [double angle, double x, double y]) => (None with { E = x, F = y }).After(Turn(angle)).After(None with { E = -x, F = -y }),
        ("skewX", [double angle]) => None with { C = Math.Tan(Math.PI / 180.0 * angle) },
        ("skewY", [double angle]) => None with { B = Math.Tan(Math.PI / 180.0 * angle) },
        _ => null,
    };

    private static AffineMap Turn(double degrees)
    {
        (double s, double c) = Math.SinCos(Math.PI / 180.0 * degrees);
        return new(c, s, -s, c, 0, 0);
    }
}
