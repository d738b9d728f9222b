using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Ranges in words, in the key's own unit or the one that was written.</summary>
internal static class RangeText
{
    private const int Digits = 3;

    /// <summary>The allowed range.</summary>
    /// <param name="key">Key.</param>
    /// <param name="other">Of the key's second kind.</param>
    /// <param name="unit">Unit to show it in; null for the key's own.</param>
    public static string Of(KeySpec key, bool other = false, string? unit = null)
    {
        (double low, double high) = other ? key.OtherRange : (key.Low, key.High);
        QuantityKind kind = other ? key.OtherKind!.Value : key.Kind;
        return Of(low, high, kind, unit ?? (other ? Units.SiName(kind) : key.Unit));
    }

    /// <summary>A range in a unit. Its ends are rounded inward, so that an end that is typed as shown is allowed.</summary>
    public static string Of(double low, double high, QuantityKind kind, string unit)
    {
        if (double.IsInfinity(low) && double.IsInfinity(high))
        {
            return "any";
        }

        string from = Show(low, kind, unit, Math.Ceiling);
        if (double.IsInfinity(high))
        {
            return $"at least {from}";
        }

        return $"{(unit.Length == 0 ? from : from[..^(unit.Length + 1)])} to {Show(high, kind, unit, Math.Floor)}";
    }

    private static string Show(double si, QuantityKind kind, string unit, Func<double, double> inward)
    {
        double shown = Units.FromSi(kind, unit, si);
        if (kind is QuantityKind.WholeNumber or QuantityKind.LineNumber || shown == 0.0 || !double.IsFinite(shown))
        {
            return Quantity.Show(si, kind, unit);
        }

        // A value with few digits of its own stays as it is: 0.1 g must not become 0.101 g by a rounding in its last bit.
        double step = Math.Pow(10.0, Math.Floor(Math.Log10(Math.Abs(shown))) + 1 - Digits), steps = shown / step;
        double whole = Math.Abs(steps - Math.Round(steps)) < 1e-9 * Math.Abs(steps) ? Math.Round(steps) : inward(steps);
        return Quantity.Show(Units.ToSi(kind, unit, whole * step), kind, unit);
    }
}
