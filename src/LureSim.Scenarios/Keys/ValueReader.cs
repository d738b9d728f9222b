using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Reads the text of one key: allowed words first, then the quantity, then the allowed range.</summary>
internal static class ValueReader
{
    /// <summary>Reads and checks; the error names what is allowed.</summary>
    public static QuantityValue ReadText(KeySpec key, string text)
    {
        if (FindChoice(key, text) is Choice choice)
        {
            return new(choice.Value, null, null, QuantityKind.Choice);
        }

        if (key.Kind is QuantityKind.Text or QuantityKind.Flag)
        {
            return Word(key, text);
        }

        if (key.Kind == QuantityKind.Choice && key.NoNumber is not null && NumberReader.Take(text.AsSpan().Trim(), out _, out _) is null)
        {
            return new(double.NaN, $"\"{text}\" is a number; a word is due: {Names(key)}; {key.NoNumber}", null, key.Kind);
        }

        if (key.Kind == QuantityKind.Choice)
        {
            return new(double.NaN, $"\"{text}\" is not known; allowed: {Names(key)}{NearestText(key, text)}", null, key.Kind);
        }

        QuantityValue reading = Quantity.Read(text, key.Kind, key.Due);
        if (reading.Error is not null && key.OtherKind is QuantityKind other)
        {
            QuantityValue second = Quantity.Read(text, other);
            reading = second.Error is null
                ? second
                : reading with { Error = $"{reading.Error}; or {Units.Due(other)}" };
        }

        if (reading.Error is not null && key.Choices.Count > 0)
        {
            reading = reading with { Error = $"{reading.Error}; or a word: {Names(key)}{NearestText(key, text)}" };
        }

        return reading.Error is null ? InRange(key, reading, text) : reading;
    }

    /// <summary>The allowed word, or null.</summary>
    public static Choice? FindChoice(KeySpec key, string text)
    {
        foreach (Choice choice in key.Choices)
        {
            if (choice.Name == text)
            {
                return choice;
            }
        }

        return null;
    }

    private static QuantityValue Word(KeySpec key, string text)
    {
        if (key.Kind == QuantityKind.Text)
        {
            return new(0.0, PlainText.Fault(text), null, key.Kind);
        }

        bool known = text is "true" or "false";
        return new(text == "true" ? 1.0 : 0.0, known ? null : $"\"{text}\" is not true or false", null, key.Kind);
    }

    private static QuantityValue InRange(KeySpec key, QuantityValue reading, string text)
    {
        bool first = reading.Kind == key.Kind;
        (double low, double high) = first ? (key.Low, key.High) : key.OtherRange;
        if (reading.Kind == QuantityKind.WholeNumber && reading.Si != Math.Floor(reading.Si))
        {
            return reading with { Error = $"\"{text}\" is not a whole number; allowed: {RangeText.Of(key)}" };
        }

        return reading.Si >= low && reading.Si <= high
            ? reading
            : reading with { Error = $"\"{text}\" is out of range; allowed: {RangeText.Of(key, !first)}" };
    }

    private static string Names(KeySpec key) => string.Join(", ", key.Choices.Select(c => c.Name));

    private static string NearestText(KeySpec key, string text) =>
        Nearest.Of(text, key.Choices.Select(c => c.Name)) is string name ? $"; nearest: {name}" : "";
}
