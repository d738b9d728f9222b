using System.Text;
using LureSim.Model.Lures;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Effective;

/// <summary>A drawn body in the effective scenario: the sections that came of it, so that the file stands by itself.</summary>
internal static class DrawnBodies
{
    /// <summary>Whether a drawing gives the value of a key.</summary>
    public static bool IsReplaced(KeySpec key) => key == LureKeys.Shape || key == LureKeys.Stations || key == LureFormKeys.Outline
        || key == LureKeys.Length || key == LureKeys.Diameter || key == LureKeys.Height;

    /// <summary>What stands in place of it.</summary>
    public static IEnumerable<EffectiveValue> Of(KeySpec key, LureSpec lure)
    {
        if (key == LureFormKeys.Outline)
        {
            return [];
        }

        if (key == LureKeys.Shape)
        {
            return [Value(key, TomlText.Quote("stations"), isLive: true)];
        }

        if (key == LureKeys.Stations)
        {
            return [Value(key, Sections(lure), isLive: true)];
        }

        double si = key == LureKeys.Length ? lure.LengthM : key == LureKeys.Diameter ? lure.DiameterM : lure.HeightM;
        return [Value(key, TomlText.Quote(Quantity.Show(si, key.Kind, key.Unit)), isLive: false, si)];
    }

    private static EffectiveValue Value(KeySpec key, string text, bool isLive, double si = double.NaN) => new(key, text, si, ValueMark.Derived, double.NaN, double.NaN, isLive);

    // Exact to the last bit.
    private static string Sections(LureSpec lure)
    {
        static string Metres(double m) => TomlText.Quote(Quantity.Format(m, QuantityKind.Length));
        var text = new StringBuilder("[");
        foreach (HullStation s in lure.Stations!)
        {
            text.Append($"\n  {{ x = {Metres(s.XM)}, breadth = {Metres(2.0 * s.HalfBreadthM)}, height = {Metres(2.0 * s.HalfHeightM)}, centre = {Metres(s.CentreZM)} }},");
        }

        return text.Append("\n]").ToString();
    }
}
