using System.Globalization;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Variation;

/// <summary>Ranges: <c>from:to</c>, <c>from:to:step</c>, <c>from:to:count</c>, <c>from:to:n=count</c>.</summary>
internal static class RangeAxis
{
    private const int MostValues = 1_000_000;
    private const string CountMark = "n=";

    /// <summary>Reads the fields of a range.</summary>
    public static Axis? Read(KeySpec key, string name, List<string> fields, Action<string> fault)
    {
        if (key.Kind is QuantityKind.Choice or QuantityKind.Flag or QuantityKind.LineNumber)
        {
            fault($"it has no ranges, only lists: {key.Path}=a,b,c");
            return null;
        }

        QuantityValue from = ValueReader.ReadText(key, fields[0]), to = ValueReader.ReadText(key, fields[1]);
        if ((from.Error ?? to.Error ?? EndsError(from, to)) is string error)
        {
            fault(error);
            return null;
        }

        if (fields.Count == 2)
        {
            return Make([]);
        }

        int count = Count(fields[2], from, to, out double step, out string? wrong);
        if (wrong is not null)
        {
            fault(wrong);
            return null;
        }

        return Make([.. Enumerable.Range(0, count).Select(i => Axis.Number(key, name, from.Kind, Value(from.Si, to.Si, step, i)))]);

        Axis Make(IReadOnlyList<AxisValue> values) => new([key], name, from.Kind, values)
        {
            LowSi = Math.Min(from.Si, to.Si),
            HighSi = Math.Max(from.Si, to.Si),
        };
    }

    private static string? EndsError(QuantityValue from, QuantityValue to) =>
        from.Kind != to.Kind ? "both ends must be of one kind" : from.Si == to.Si ? "both ends are the same" : null;

    private static int Count(string text, QuantityValue from, QuantityValue to, out double step, out string? error)
    {
        double span = to.Si - from.Si;
        bool marked = text.StartsWith(CountMark, StringComparison.Ordinal);
        bool bare = Units.NeedUnit(from.Kind) && text.All(char.IsAsciiDigit);
        step = 0.0;
        if (marked || bare)
        {
            bool read = int.TryParse(marked ? text[CountMark.Length..] : text, NumberStyles.None, CultureInfo.InvariantCulture, out int count);
            error = read && count is >= 2 and <= MostValues ? null : $"\"{text}\" is no count; allowed: 2 to {MostValues}";
            step = span / (count - 1);
            return count;
        }

        // A step is a difference: of a temperature only the size of the unit counts.
        QuantityValue reading = Quantity.Read(text, from.Kind);
        double size = reading.Si - (from.Kind == QuantityKind.Temperature ? OffsetOf(reading.Unit) : 0.0);
        error = reading.Error ?? StepError(text, size, span, from.Kind);
        step = Math.CopySign(size, span);
        return error is null ? (int)Math.Floor((Math.Abs(span) / size) + 1e-9) + 1 : 0;
    }

    private static string? StepError(string text, double size, double span, QuantityKind kind)
    {
        string hint = Units.NeedUnit(kind) ? "" : "; a number of values is written n=5";
        return !(size > 0.0) ? $"the step \"{text}\" must be above zero"
            : size > Math.Abs(span) * (1.0 + 1e-9) ? $"the step \"{text}\" is larger than the range{hint}"
            : Math.Abs(span) / size >= MostValues ? $"the step \"{text}\" makes more than {MostValues} values"
            : null;
    }

    private static double OffsetOf(string unit) => Units.ToSi(QuantityKind.Temperature, unit, 0.0);

    // Twelve digits: 0.1 + 2 * 0.1 shall read 0.3. The last value of a step that divides the range is its end, to the bit.
    private static double Value(double from, double to, double step, int i)
    {
        double value = from + (i * step);
        return Math.Abs(value - to) <= 1e-9 * Math.Abs(step) ? to
            : i == 0 ? from
            : double.Parse(value.ToString("G12", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }
}
