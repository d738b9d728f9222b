using OxyPlot;

namespace LureSim.Reports.Tests.Support;

/// <summary>How colours are seen, by published formulas.</summary>
internal static class ColourScience
{
    /// <summary>Colour vision, as matrices over linear RGB at full severity: Machado, Oliveira and Fernandes 2009, "A physiologically-based model for
    /// simulation of color vision deficiency", IEEE Trans. Vis. Comput. Graph. 15(6), supplementary tables.</summary>
    public static IReadOnlyDictionary<string, double[][]> Eyes { get; } = new Dictionary<string, double[][]>
    {
        ["usual"] = [[1, 0, 0], [0, 1, 0], [0, 0, 1]],
        ["deuteranopia"] = [[0.367322, 0.860646, -0.227968], [0.280085, 0.672501, 0.047413], [-0.011820, 0.042940, 0.968881]],
        ["protanopia"] = [[0.152286, 1.052583, -0.204868], [0.114503, 0.786281, 0.099216], [-0.003882, -0.048116, 1.051998]],
    };

    /// <summary>Contrast of two colours, 1 to 21: WCAG 2.2 (W3C 2023), relative luminance and contrast ratio.</summary>
    public static double Contrast(OxyColor a, OxyColor b)
    {
        double x = Luminance(a), y = Luminance(b);
        return (Math.Max(x, y) + 0.05) / (Math.Min(x, y) + 0.05);
    }

    /// <summary>Distance of two colours, CIE 1976: Euclid in L*a*b* under D65 (ISO/CIE 11664-4); 2.3 is just noticed side by side.</summary>
    public static double Distance(OxyColor a, OxyColor b, string eyes)
    {
        double[] x = Lab(a, Eyes[eyes]), y = Lab(b, Eyes[eyes]);
        return Math.Sqrt(x.Zip(y, (p, q) => (p - q) * (p - q)).Sum());
    }

    private static double Luminance(OxyColor c) => 0.2126 * Linear(c.R) + (0.7152 * Linear(c.G)) + (0.0722 * Linear(c.B));

    private static double[] Lab(OxyColor color, double[][] eyes)
    {
        double[] rgb = [Linear(color.R), Linear(color.G), Linear(color.B)];
        double[] seen = [.. eyes.Select(row => Math.Clamp(row.Zip(rgb, (m, v) => m * v).Sum(), 0, 1))];
        // sRGB to XYZ over the white of D65: IEC 61966-2-1.
        double x = F(((0.4124564 * seen[0]) + (0.3575761 * seen[1]) + (0.1804375 * seen[2])) / 0.95047);
        double y = F((0.2126729 * seen[0]) + (0.7151522 * seen[1]) + (0.0721750 * seen[2]));
        double z = F(((0.0193339 * seen[0]) + (0.1191920 * seen[1]) + (0.9503041 * seen[2])) / 1.08883);
        return [(116 * y) - 16, 500 * (x - y), 200 * (y - z)];
    }

    private static double F(double t) => t > 216.0 / 24389.0 ? Math.Cbrt(t) : ((24389.0 / 27.0 * t) + 16) / 116;

    private static double Linear(byte part)
    {
        double c = part / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
    }
}
