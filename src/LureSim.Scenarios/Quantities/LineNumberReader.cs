namespace LureSim.Scenarios.Quantities;

/// <summary>Line numbers: <c>PE 3</c> for braid (by mass), <c>no. 3</c> or <c>#3</c> for either.</summary>
internal static class LineNumberReader
{
    /// <summary>Reads a line number.</summary>
    /// <param name="text">As written, for the message.</param>
    /// <param name="plain">Without blanks around it.</param>
    /// <param name="due">What is due, for the message.</param>
    public static QuantityValue Read(string text, string plain, string due)
    {
        int mark = Mark(plain);
        if (mark == 0)
        {
            return Quantity.Fail(text, "it has no mark", QuantityKind.LineNumber, due);
        }

        string rest = plain[mark..].TrimStart();
        string? error = NumberReader.Take(rest, out double number, out int used);
        if (error is null && used < rest.Length)
        {
            error = $"\"{rest[used..].Trim()}\" follows the number";
        }

        return error is null
            ? new(number, null, null, QuantityKind.LineNumber)
            : Quantity.Fail(text, error, QuantityKind.LineNumber, due);
    }

    /// <summary>True when the number is one of braid, by mass.</summary>
    public static bool IsBraidNumber(string text) => text.TrimStart().StartsWith("PE", StringComparison.Ordinal);

    private static int Mark(string text)
    {
        if (text.StartsWith("PE", StringComparison.Ordinal))
        {
            return text.StartsWith("PE#", StringComparison.Ordinal) ? 3 : 2;
        }

        return text.StartsWith("no.", StringComparison.OrdinalIgnoreCase) ? 3 : text.StartsWith('#') ? 1 : 0;
    }
}
