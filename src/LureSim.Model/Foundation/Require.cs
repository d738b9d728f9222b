using System.Globalization;
using System.Runtime.CompilerServices;

namespace LureSim.Model;

/// <summary>Argument checks of the models: one place, one wording. NaN fails every one of them.</summary>
internal static class Require
{
    /// <summary>Demands low &lt;= value &lt;= high and returns the value.</summary>
    public static double InRange(
        double value, double low, double high, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value >= low && value <= high ? value : throw Outside(value, $"{Text(low)} to {Text(high)}", name);

    /// <summary>Demands a finite value above zero and returns it.</summary>
    public static double Positive(double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value > 0.0 && double.IsFinite(value) ? value : throw Outside(value, "a finite number above 0", name);

    private static ArgumentOutOfRangeException Outside(double value, string allowed, string? name) =>
        new(name, value, $"{name} is {Text(value)}; allowed: {allowed}.");

    private static string Text(double value) => value.ToString("G6", CultureInfo.InvariantCulture);
}
