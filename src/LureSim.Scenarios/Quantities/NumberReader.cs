using System.Globalization;

namespace LureSim.Scenarios.Quantities;

/// <summary>Takes one number from the start of a text: decimal, fraction or mixed. Invariant culture, no thousands marks.</summary>
internal static class NumberReader
{
    /// <summary>Reads the number.</summary>
    /// <param name="text">Text without leading blanks.</param>
    /// <param name="value">The number; 0 when there is an error.</param>
    /// <param name="used">Characters used.</param>
    /// <returns>Null, or what is wrong.</returns>
    public static string? Take(ReadOnlySpan<char> text, out double value, out int used)
    {
        value = 0.0;
        used = 0;
        bool negative = text is ['-' or '\u2212', ..];
        int at = negative || text is ['+', ..] ? 1 : 0;
        int start = at;
        at = SkipDigits(text, at);
        int whole = at - start;
        if (whole > 0 && at < text.Length && text[at] == '/' && !PerUnit(text, at))
        {
            return TakeFraction(text, start, 0.0, negative, out value, out used);
        }

        if (whole > 0 && MixedStart(text, at) is int fraction)
        {
            return TakeFraction(text, fraction, Parse(text[start..at]), negative, out value, out used);
        }

        if (at < text.Length && text[at] == '.')
        {
            int point = at;
            at = SkipDigits(text, at + 1);
            if (at == point + 1)
            {
                return "digits are missing after the decimal point";
            }
        }
        else if (whole == 0)
        {
            return IsNotFiniteWord(text) ? "it is not a finite number" : "it does not start with a number";
        }

        at = SkipExponent(text, at);
        if (at < text.Length && text[at] is (',' or '/' or '.' or '_') && !PerUnit(text, at))
        {
            return Explain(text[at]);
        }

        value = Parse(text[start..at]) * (negative ? -1.0 : 1.0);
        used = at;
        return double.IsFinite(value) ? null : "it is not a finite number";
    }

    private static string? TakeFraction(
        ReadOnlySpan<char> text, int start, double whole, bool negative, out double value, out int used)
    {
        value = 0.0;
        used = 0;
        int slash = SkipDigits(text, start);
        int end = SkipDigits(text, slash + 1);
        if (end == slash + 1 || (end < text.Length && text[end] is '.' or ',' or '/'))
        {
            return "a fraction is two whole numbers, for example 5/8";
        }

        double below = Parse(text[(slash + 1)..end]);
        if (below == 0.0)
        {
            return "the fraction divides by zero";
        }

        value = (whole + (Parse(text[start..slash]) / below)) * (negative ? -1.0 : 1.0);
        used = end;
        return null;
    }

    // "2/s" is no fraction.
    private static bool PerUnit(ReadOnlySpan<char> text, int at) => text[at] == '/' && at + 1 < text.Length && char.IsAsciiLetter(text[at + 1]);

    // "1 3/8" and "1-3/8": the trade writes both.
    private static int? MixedStart(ReadOnlySpan<char> text, int at)
    {
        if (at >= text.Length || text[at] is not (' ' or '-'))
        {
            return null;
        }

        int start = at;
        while (start < text.Length && text[start] == ' ')
        {
            start++;
        }

        start += start == at ? 1 : 0;
        int slash = SkipDigits(text, start);
        return slash > start && slash < text.Length && text[slash] == '/' ? start : null;
    }

    private static int SkipDigits(ReadOnlySpan<char> text, int at)
    {
        while (at < text.Length && char.IsAsciiDigit(text[at]))
        {
            at++;
        }

        return at;
    }

    private static int SkipExponent(ReadOnlySpan<char> text, int at)
    {
        if (at >= text.Length || text[at] is not ('e' or 'E'))
        {
            return at;
        }

        int digits = at + 1 < text.Length && text[at + 1] is '+' or '-' ? at + 2 : at + 1;
        int end = SkipDigits(text, digits);
        return end > digits ? end : at;
    }

    private static string Explain(char mark) => mark switch
    {
        ',' => "it has a comma; the decimal mark is a point and there are no thousands marks",
        '/' => "a fraction is two whole numbers, for example 1 5/8",
        _ => $"it has a stray '{mark}' in the number",
    };

    private static bool IsNotFiniteWord(ReadOnlySpan<char> text)
    {
        ReadOnlySpan<char> word = text.TrimStart("+-");
        return word.StartsWith("nan", StringComparison.OrdinalIgnoreCase)
            || word.StartsWith("inf", StringComparison.OrdinalIgnoreCase);
    }

    private static double Parse(ReadOnlySpan<char> digits) =>
        double.Parse(digits, NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture);
}
