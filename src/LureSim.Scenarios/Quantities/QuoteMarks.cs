using System.Text;

namespace LureSim.Scenarios.Quantities;

/// <summary>Phones and word processors bend marks: foot and inch marks, dashes, fractions, wide letters. This turns them straight.</summary>
internal static class QuoteMarks
{
    private const int WideFirst = 0xFF01, WideLast = 0xFF5E, WideToPlain = 0xFEE0;

    /// <summary>The text with straight marks, plain dashes and fractions as <c>1/2</c>, without blanks around it.</summary>
    public static string Straighten(string text)
    {
        if (Ascii.IsValid(text))
        {
            return Paired(text.Trim().Replace('`', '\''));
        }

        var plain = new StringBuilder(text.Length + 8);
        foreach (char c in text)
        {
            if (Fraction(c) is string fraction)
            {
                plain.Append(plain.Length > 0 && char.IsAsciiDigit(plain[^1]) ? " " : "").Append(fraction);
            }
            else
            {
                plain.Append(Plain(c));
            }
        }

        return Paired(plain.ToString().Trim());
    }

    private static string Paired(string text) => text.Replace("''", "\"", StringComparison.Ordinal);

    private static char Plain(char c) => c switch
    {
        '`' or '\u2018' or '\u2019' or '\u201A' or '\u201B' or '\u2032' or '\u2035' or '\u00B4' or '\u02B9' or '\u02BC' => '\'',
        '\u201C' or '\u201D' or '\u201E' or '\u201F' or '\u2033' or '\u2036' or '\u02BA' or '\u301D' or '\u301E' or '\u301F' => '"',
        >= '\u2010' and <= '\u2015' => '-',
        '\u2044' or '\u2215' => '/',
        '\u00A0' or '\u2009' or '\u202F' or '\u3000' => ' ',
        >= (char)WideFirst and <= (char)WideLast => (char)(c - WideToPlain),
        _ => c,
    };

    private static string? Fraction(char c) => c switch
    {
        '\u00BD' => "1/2",
        '\u2153' => "1/3",
        '\u2154' => "2/3",
        '\u00BC' => "1/4",
        '\u00BE' => "3/4",
        '\u215B' => "1/8",
        '\u215C' => "3/8",
        '\u215D' => "5/8",
        '\u215E' => "7/8",
        _ => null,
    };
}
