using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Quantities;
using LureSim.Scenarios.Variation;

namespace LureSim.Studies.Across;

/// <summary>What a scenario holds by itself where set-ups differ.</summary>
internal static class OwnValue
{
    // Numbers of the same meaning in other units differ in their last bits.
    private const double Rounding = 1e-9;

    /// <summary>The scenario's own value of an axis; null where no effective value stands for it, as for a column of a list.</summary>
    /// <param name="axis">Axis.</param>
    /// <param name="own">The scenario.</param>
    public static AcrossPick? Of(Axis axis, EffectiveScenario own)
    {
        EffectiveValue?[] values = [.. axis.Name.Split('+').Select(path => Find(own, path))];
        if (values.Any(v => v is null || v.Key.Kind == QuantityKind.List))
        {
            return null;
        }

        double number = axis.IsNumeric && axis.Kind == axis.Keys[0].Kind ? axis.InUnit(values[0]!.Si) : double.NaN;
        return new(new(string.Join(" + ", values.Select(v => Plain(v!.Text))), number), [.. values.Where(v => IsOpen(v!)).Select(v => Fixed(v!))]);
    }

    /// <summary>Text of a value without quotes, or null.</summary>
    /// <param name="own">The scenario.</param>
    /// <param name="path">Key.</param>
    public static string? Text(EffectiveScenario own, string path) => Find(own, path) is EffectiveValue value ? Plain(value.Text) : null;

    /// <summary>True for the same numbers.</summary>
    /// <param name="a">One.</param>
    /// <param name="b">The other.</param>
    public static bool Same(double a, double b) => Math.Abs(a - b) <= Rounding * Math.Max(Math.Abs(a), Math.Abs(b));

    /// <summary>True when all values are the same, whatever they come from.</summary>
    /// <param name="a">A scenario.</param>
    /// <param name="b">Another.</param>
    public static bool Same(EffectiveScenario a, EffectiveScenario b)
    {
        EffectiveValue[] first = [.. a.Values.Where(Counts)], second = [.. b.Values.Where(Counts)];
        return first.Length == second.Length && first.Zip(second).All(p => p.First.Key == p.Second.Key && Same(p.First, p.Second));
    }

    // A class word counts by the number that it gives, which stands there too.
    private static bool Counts(EffectiveValue value) => value.Key.Gives is null;

    private static bool Same(EffectiveValue a, EffectiveValue b) =>
        double.IsNaN(a.Si) || double.IsNaN(b.Si) ? a.Text == b.Text : Same(a.Si, b.Si);

    private static EffectiveValue? Find(EffectiveScenario own, string path) => own.Values.FirstOrDefault(v => v.Key.Path == path);

    // A guess is drawn, and what follows from others moves with them, unless it is set.
    private static bool IsOpen(EffectiveValue value) => value.Mark is ValueMark.Guess or ValueMark.Derived && double.IsFinite(value.Si) && value.Key.Kind != QuantityKind.Choice;

    private static string Fixed(EffectiveValue value) => $"{value.Key.Path}={Quantity.Format(value.Si, value.Key.Kind)}";

    private static string Plain(string toml) => toml.Length > 1 && toml[0] == '"' ? toml[1..^1].Replace("\\\"", "\"", StringComparison.Ordinal) : toml;
}
