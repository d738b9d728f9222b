using LureSim.Reports.Kit.Text;
using LureSim.Studies.Doubt;

namespace LureSim.Reports.Doubt;

/// <summary>How a figure that people ask for first is told.</summary>
/// <param name="Shown">Units.</param>
/// <param name="Figure">Figure.</param>
internal sealed record FigureWords(Shown Shown, HeadlineFigure Figure)
{
    /// <summary>Name in files.</summary>
    public string Key => Figure.Key;

    /// <summary>In a sentence.</summary>
    public string Words => Figure.Words;

    /// <summary>A value: "2.1 in (5.3 cm)".</summary>
    /// <param name="value">In the unit of the key, finite.</param>
    public string Show(double value) => Shown.Joined(Units(value), u => u.Text(value));

    /// <summary>The ends of a band: "1.1 and 4.0 in (2.8 and 10 cm)".</summary>
    /// <param name="band">Band.</param>
    public string Between(Band band) => Shown.Joined(Units(band.P10, band.P90), u => $"{u.Digits(band.P10)} and {u.Text(band.P90)}");

    /// <summary>Two shifts: "-0.5 and +0.3 in (-1.2 and +0.8 cm)".</summary>
    /// <param name="low">One, NaN for none.</param>
    /// <param name="high">The other, NaN for none.</param>
    public string Shifts(double low, double high) =>
        Shown.Joined(Units(low, high), u => $"{Signed(u, low)} and {Signed(u, high)}{(u.Name.Length > 0 ? " " + u.Name : "")}");

    private static string Signed(ShownUnit unit, double value) => double.IsNaN(value) ? "none" : (value < 0.0 ? "" : "+") + unit.Digits(value);

    private ShownUnit[] Units(params double[] values) =>
        FigureUnit.Of(Shown, Key, values.Where(double.IsFinite).Select(Math.Abs).DefaultIfEmpty(0.0).Max());
}
