using System.Globalization;

namespace LureSim.Scenarios.Quantities;

/// <summary>Lengths in feet and inches together: <c>7 ft 6 in</c>, <c>7'6"</c>, <c>7' 6 1/2"</c>, <c>7' 6</c>, <c>7'-6"</c>.</summary>
internal static class FeetInches
{
    private const string Spelling = "feet and inches are written 7 ft 6 in or 7'6\"";

    /// <summary>Reads a compound length.</summary>
    /// <param name="text">Text with straight marks, no blanks around it.</param>
    /// <param name="metres">Length, m.</param>
    /// <param name="error">What is wrong with it.</param>
    /// <returns>False: the text is not feet followed by something, another reader's case.</returns>
    public static bool TryRead(string text, out double metres, out string? error)
    {
        metres = 0.0;
        error = null;
        if (NumberReader.Take(text, out double feet, out int used) is not null)
        {
            return false;
        }

        ReadOnlySpan<char> rest = text.AsSpan(used).TrimStart();
        if (DashBetweenNumbers(rest))
        {
            error = Spelling;
            return true;
        }

        int mark = FootMark(rest, out bool apostrophe);
        if (mark == 0 || rest[mark..].Trim().IsEmpty)
        {
            return false;
        }

        rest = rest[mark..].TrimStart();
        if (apostrophe && rest[0] == '-')
        {
            rest = rest[1..].TrimStart();
        }

        error = ReadInches(rest, apostrophe, out double inches);
        if (error is null && (feet < 0.0 || feet != Math.Floor(feet)))
        {
            error = "feet in front of inches must be a whole number";
        }

        metres = error is null ? Units.ToSi(QuantityKind.Length, "ft", feet) + Units.ToSi(QuantityKind.Length, "in", inches) : 0.0;
        return true;
    }

    /// <summary>The remark that decimal feet deserve: on many pages 9.6 ft stands for 9 ft 6 in.</summary>
    public static string? DecimalFeetNote(string text, double number, string unit, QuantityKind kind)
    {
        bool asks = kind == QuantityKind.Length && unit == "ft" && text.Contains('.', StringComparison.Ordinal) && number > 0.0;
        if (!asks)
        {
            return null;
        }

        double feet = Math.Floor(number);
        double inches = 12.0 * (number - feet);
        string written = text[(text.IndexOf('.', StringComparison.Ordinal) + 1)..].TrimEnd();
        string digits = written[..written.TakeWhile(char.IsAsciiDigit).Count()];
        return string.Create(
            CultureInfo.InvariantCulture,
            $"\"{text}\" is read as decimal feet, {feet:F0} ft {inches:0.##} in; {feet:F0} ft {digits} in would be written {feet:F0}'{digits}\"");
    }

    private static string? ReadInches(ReadOnlySpan<char> text, bool apostrophe, out double inches)
    {
        if (NumberReader.Take(text, out inches, out int used) is not null)
        {
            return Spelling;
        }

        bool markDue = !apostrophe;
        ReadOnlySpan<char> unit = text[used..].Trim();
        if (unit.IsEmpty ? markDue : unit is not ("\"" or "in" or "inch" or "inches"))
        {
            return Spelling;
        }

        int leading = 0;
        while (leading < text.Length && char.IsAsciiDigit(text[leading]))
        {
            leading++;
        }

        return inches is >= 0.0 and < 12.0 && leading <= 2 ? null : "inches after feet must lie between 0 and 12; there are no thousands marks";
    }

    private static bool DashBetweenNumbers(ReadOnlySpan<char> rest) =>
        rest.Length > 1 && rest[0] == '-' && char.IsAsciiDigit(rest[1]);

    private static int FootMark(ReadOnlySpan<char> text, out bool apostrophe)
    {
        apostrophe = text.StartsWith("'");
        if (apostrophe)
        {
            return 1;
        }

        return text.StartsWith("feet") || text.StartsWith("foot") ? 4 : text.StartsWith("ft") && !text.StartsWith("ft/") ? 2 : 0;
    }
}
