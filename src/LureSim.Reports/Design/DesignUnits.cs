using LureSim.Reports.Kit.Text;

namespace LureSim.Reports.Design;

/// <summary>Measures of a builder, with the decimals that a caliper and a scale have: tables and lines to build by need more digits than sentences.</summary>
/// <param name="shown">Units.</param>
internal sealed class DesignUnits(Shown shown)
{
    private const double Inch = 0.0254, Ounce = 0.028349523125;

    private bool IsMetric => shown.Choice != UnitChoice.Trade;

    /// <summary>Unit of lengths.</summary>
    public string LengthUnit => IsMetric ? "mm" : "in";

    /// <summary>Unit of masses.</summary>
    public string MassUnit => IsMetric ? "g" : "oz";

    /// <summary>A length without its unit; empty where there is none.</summary>
    public string Length(double? m) => m is double v && double.IsFinite(v) ? IsMetric ? Trade.Fixed(1e3 * v, 1) : Trade.Fixed(v / Inch, 3) : "";

    /// <summary>A mass without its unit.</summary>
    public string Mass(double? kg) => kg is double v && double.IsFinite(v) ? IsMetric ? Trade.Fixed(1e3 * v, 2) : Trade.Fixed(v / Ounce, 3) : "";

    /// <summary>A length with its unit.</summary>
    public string LengthText(double m) => $"{Length(m)} {LengthUnit}";

    /// <summary>A mass with its unit.</summary>
    public string MassText(double kg) => $"{Mass(kg)} {MassUnit}";

    /// <summary>A place along the lure.</summary>
    public string Along(double x) => Length(Math.Abs(x)) is var size && IsSome(size) ? $"{size} {LengthUnit} {(x > 0.0 ? "ahead of" : "behind")} the middle" : "in the middle";

    /// <summary>A height on the lure.</summary>
    public string Up(double z) => Length(Math.Abs(z)) is var size && IsSome(size) ? $"{size} {LengthUnit} {(z > 0.0 ? "over" : "under")} the axis" : "on the axis";

    /// <summary>A number with its sign; one lost in rounding has none.</summary>
    public static string Signed(double value, Func<double, string> tell)
    {
        string text = tell(value);
        return value > 0.0 && IsSome(text) ? "+" + text : text;
    }

    private static bool IsSome(string number) => number.AsSpan().IndexOfAnyInRange('1', '9') >= 0;
}
