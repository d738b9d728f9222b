namespace LureSim.Scenarios.Quantities;

/// <summary>Foot and inch marks come in many shapes; phones and word processors bend them.</summary>
internal static class QuoteMarks
{
    /// <summary>Turns curly marks and primes into straight ones.</summary>
    public static string Straighten(string text)
    {
        if (System.Text.Ascii.IsValid(text))
        {
            return text.Replace("''", "\"", StringComparison.Ordinal);
        }

        char[] marks = text.ToCharArray();
        for (int i = 0; i < marks.Length; i++)
        {
            marks[i] = marks[i] switch
            {
                '\u2018' or '\u2019' or '\u201B' or '\u2032' or '\u00B4' => '\'',
                '\u201C' or '\u201D' or '\u201F' or '\u2033' => '"',
                '\u00A0' or '\u2009' or '\u202F' => ' ',
                char other => other,
            };
        }

        return new string(marks).Replace("''", "\"", StringComparison.Ordinal);
    }
}
