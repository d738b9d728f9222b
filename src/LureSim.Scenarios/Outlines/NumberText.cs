namespace LureSim.Scenarios.Outlines;

/// <summary>Numbers of SVG, which may stand without anything between them: <c>10-5</c>, <c>.5.5</c>.</summary>
internal static class NumberText
{
    /// <summary>Where the number that begins at i ends.</summary>
    public static int End(string text, int i)
    {
        bool dot = false, exponent = false;
        for (int start = i; i < text.Length; i++)
        {
            char c = text[i];
            bool sign = c is '+' or '-' && (i == start || text[i - 1] is 'e' or 'E');
            if (c is 'e' or 'E' && !exponent && i + 1 < text.Length && (char.IsAsciiDigit(text[i + 1]) || text[i + 1] is '+' or '-'))
            {
                exponent = true;
            }
            else if (c == '.' && !dot && !exponent)
            {
                dot = true;
            }
            else if (!sign && !char.IsAsciiDigit(c))
            {
                break;
            }
        }

        return i;
    }
}
