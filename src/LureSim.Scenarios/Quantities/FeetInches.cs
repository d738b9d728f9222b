using System.Globalization;
using System.Text.RegularExpressions;

namespace LureSim.Scenarios.Quantities;

/// <summary>
/// Lengths in feet and inches together, as the trade spells them: <c>7 ft 6 in</c>, <c>7'6"</c>, <c>7' 6 1/2"</c>, <c>7' 6</c>, <c>6'-6"</c>, <c>7ft6</c>,
/// <c>7 ft. 6 in.</c>, <c>7-6</c>.
/// </summary>
internal static partial class FeetInches
{
    private const string Spelling = "feet and inches are written 7 ft 6 in or 7'6\"";
    private const int InchesOfFoot = 12;

    /// <summary>Reads a compound length.</summary>
    /// <param name="text">Text with straight marks, no blanks around it.</param>
    /// <param name="metres">Length, m.</param>
    /// <param name="error">What is wrong with it.</param>
    /// <param name="note">What the writer should know, or null.</param>
    /// <returns>False: the text is not feet followed by something, another reader's case.</returns>
    public static bool TryRead(string text, out double metres, out string? error, out string? note)
    {
        (metres, error, note) = (0.0, null, null);
        if (Dashed().Match(text) is { Success: true } dashed)
        {
            note = $"\"{text}\" is read as {dashed.Groups["ft"].Value} ft {dashed.Groups["in"].Value} in";
            error = Sum(Parse(dashed.Groups["ft"].Value), Parse(dashed.Groups["in"].Value), dashed.Groups["in"].Value, out metres);
            return true;
        }

        if (NumberReader.Take(text, out double feet, out int used) is not null || Mark().Match(text[used..]) is not { Success: true } mark)
        {
            return false;
        }

        string rest = text[(used + mark.Length)..];
        if (rest.Length == 0)
        {
            return false;
        }

        string? wrong = NumberReader.Take(rest, out double inches, out int taken);
        string inchMark = wrong is null ? rest[taken..] : "";
        error = wrong is not null || !InchMark().IsMatch(inchMark) ? Spelling : Sum(feet, inches, rest, out metres);
        return true;
    }

    /// <summary>The text with units in letters instead of marks: <c>7'6"</c> is <c>7 ft 6 in</c>.</summary>
    /// <param name="text">Text with straight marks.</param>
    public static string Respelled(string text)
    {
        string letters = text.Replace("'", " ft ", StringComparison.Ordinal).Replace("\"", " in ", StringComparison.Ordinal);
        string plain = string.Join(' ', letters.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Replace("ft -", "ft ", StringComparison.Ordinal);
        return text.Contains('\'', StringComparison.Ordinal) && char.IsAsciiDigit(plain[^1]) ? $"{plain} in" : plain;
    }

    /// <summary>The remark that decimal feet deserve: on many pages 9.6 ft stands for 9 ft 6 in.</summary>
    public static string? DecimalFeetNote(string text, double number, string unit, QuantityKind kind)
    {
        bool asks = kind == QuantityKind.Length && unit == "ft" && text.Contains('.', StringComparison.Ordinal) && number > 0.0 && number != Math.Floor(number);
        if (!asks)
        {
            return null;
        }

        double feet = Math.Floor(number);
        double inches = InchesOfFoot * (number - feet);
        string written = text[(text.IndexOf('.', StringComparison.Ordinal) + 1)..].TrimEnd();
        string digits = written[..written.TakeWhile(char.IsAsciiDigit).Count()];
        string read = string.Create(CultureInfo.InvariantCulture, $"\"{text}\" is read as decimal feet, {feet:F0} ft {inches:0.##} in");
        return Parse(digits) < InchesOfFoot
            ? string.Create(CultureInfo.InvariantCulture, $"{read}; {feet:F0} ft {digits} in would be written {feet:F0}'{digits}\"")
            : read;
    }

    private static string? Sum(double feet, double inches, string inchText, out double metres)
    {
        int leading = inchText.TakeWhile(char.IsAsciiDigit).Count();
        string? error = feet < 0.0 || feet != Math.Floor(feet) ? "feet in front of inches must be a whole number"
            : inches is >= 0.0 and < InchesOfFoot && leading <= 2 ? null
            : "inches after feet must lie between 0 and 12; there are no thousands marks";
        metres = error is null ? Units.ToSi(QuantityKind.Length, "ft", feet) + Units.ToSi(QuantityKind.Length, "in", inches) : 0.0;
        return error;
    }

    private static double Parse(string digits) => double.Parse(digits, CultureInfo.InvariantCulture);

    // 7-6 and 7-6": whole feet, a dash, whole inches.
    [GeneratedRegex("""^(?<ft>\d{1,2})\s?-\s?(?<in>\d{1,2})\s?("|in\.?|inch|inches)?$""")]
    private static partial Regex Dashed();

    // What may stand between the feet and the inches.
    [GeneratedRegex("""^\s*-?\s*('|ft\.?(?![/a-z])|foot|feet)\s*(-|,|and\b)?\s*""", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Mark();

    [GeneratedRegex("""^\s*-?\s*("|in\.?|ins|inch|inches)?$""", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex InchMark();
}
