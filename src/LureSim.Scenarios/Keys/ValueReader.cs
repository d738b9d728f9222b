using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Reads the text of one key: allowed words first, then the quantity, then the allowed range.</summary>
internal static class ValueReader
{
    /// <summary>Reads and checks; the error says what is wrong, then what was probably meant, or what is due.</summary>
    public static QuantityValue ReadText(KeySpec key, string text)
    {
        QuantityValue value = Read(key, text);
        return value.Error is null || key.Kind is QuantityKind.Text or QuantityKind.Flag ? value
            : value with { Error = key.Kind == QuantityKind.Choice ? WrongWord(key, text) : WithHint(key, text, value) };
    }

    /// <summary>Whether a text would be accepted.</summary>
    public static bool Reads(KeySpec key, string text) => Read(key, text).Error is null;

    /// <summary>The allowed word in any of its spellings, or null.</summary>
    public static Choice? FindChoice(KeySpec key, string text)
    {
        foreach (Choice choice in key.Choices)
        {
            if (choice.Name == text)
            {
                return choice;
            }
        }

        if (key.Choices.Count == 0)
        {
            return null;
        }

        string form = Synonyms.Form(text);
        string? word = key.Choices.FirstOrDefault(c => Synonyms.Form(c.Name) == form)?.Name ?? Synonyms.WordOf(key, text);
        return word is null ? null : key.Choices.FirstOrDefault(c => c.Name == word);
    }

    /// <summary>The allowed words.</summary>
    public static string Names(KeySpec key) => string.Join(", ", key.Choices.Select(c => c.Name));

    private static QuantityValue Read(KeySpec key, string text)
    {
        if (FindChoice(key, text) is Choice choice)
        {
            return new(choice.Value, null, null, QuantityKind.Choice);
        }

        if (key.Kind is QuantityKind.Text or QuantityKind.Flag)
        {
            return Word(key, text);
        }

        if (key.Kind == QuantityKind.Choice)
        {
            return new(double.NaN, $"\"{text}\" is not known", null, key.Kind);
        }

        QuantityValue reading = Quantity.Read(text, key.Kind, "");
        if (reading.Error is not null && key.OtherKind is QuantityKind other && Quantity.Read(text, other, "") is { Error: null } second)
        {
            reading = second;
        }

        return reading.Error is null ? InRange(key, reading, text) : reading;
    }

    private static string WithHint(KeySpec key, string text, QuantityValue value)
    {
        string hint = WordHint(key, text) is { Length: > 0 } word ? word : Suggestion.For(key, text);
        string due = key.OtherKind is QuantityKind other ? $"; {key.Due}; or {Units.Due(other)}" : $"; {key.Due}";
        string words = key.Choices.Count > 0 ? $"; or a word: {Names(key)}" : "";
        bool outOfRange = !double.IsNaN(value.Si);
        return outOfRange || hint.Length > 0 ? value.Error + hint : value.Error + due + words;
    }

    private static string WrongWord(KeySpec key, string text)
    {
        string what = key.NoNumber is string number && NumberReader.Take(text.AsSpan().Trim(), out _, out _) is null
            ? $"\"{text}\" is a number; the class is due: {Names(key)}; {number}"
            : $"\"{text}\" is not known; allowed: {Names(key)}";
        return what + WordHint(key, text);
    }

    private static string WordHint(KeySpec key, string text)
    {
        if (key.Choices.Count == 0)
        {
            return "";
        }

        string? near = Synonyms.MeantBy(key, text) is (string word, string why)
            ? word.Length > 0 ? word : null
            : Nearest.Of(Synonyms.Form(text), key.Choices.Select(c => Synonyms.Form(c.Name))) is string form ? key.Choices.First(c => Synonyms.Form(c.Name) == form).Name : null;
        string reason = Synonyms.MeantBy(key, text)?.Why ?? "";
        return near is not null ? $"; did you mean \"{near}\"?" : reason.Length > 0 ? $"; {reason}" : "";
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

        string? unit = reading.Unit.Length == 0 || reading.Kind == QuantityKind.Ratio ? null : reading.Unit;
        return reading.Si >= low && reading.Si <= high
            ? reading
            : reading with { Error = $"\"{text}\" is out of range; allowed: {RangeText.Of(key, !first, unit)}" };
    }
}
