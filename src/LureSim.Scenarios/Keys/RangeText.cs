using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Ranges in words, in the key's own unit.</summary>
internal static class RangeText
{
    /// <summary>The allowed range.</summary>
    public static string Of(KeySpec key, bool other = false)
    {
        (double low, double high) = other ? key.OtherRange : (key.Low, key.High);
        QuantityKind kind = other ? key.OtherKind!.Value : key.Kind;
        return Of(low, high, kind, other ? Units.SiName(kind) : key.Unit);
    }

    /// <summary>A range in a unit.</summary>
    public static string Of(double low, double high, QuantityKind kind, string unit)
    {
        if (double.IsInfinity(low) && double.IsInfinity(high))
        {
            return "any";
        }

        if (double.IsInfinity(high))
        {
            return $"at least {Quantity.Show(low, kind, unit)}";
        }

        string from = Quantity.Show(low, kind, unit);
        return $"{(unit.Length == 0 ? from : from[..^(unit.Length + 1)])} to {Quantity.Show(high, kind, unit)}";
    }
}
