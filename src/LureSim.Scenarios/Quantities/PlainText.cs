using System.Globalization;
using System.Text;

namespace LureSim.Scenarios.Quantities;

/// <summary>
/// What of a text a terminal or a picture may show. Characters that steer instead of being seen (control characters, marks that turn the
/// direction of writing, separators of lines, halves of a pair) are refused in values, and escaped wherever a text of the user is shown.
/// </summary>
public static class PlainText
{
    // These join and part letters of some scripts and emoji.
    private const int SoftHyphen = 0xAD, NonJoiner = 0x200C, Joiner = 0x200D;

    /// <summary>The text with every character that steers as <c>\u001B</c>, an escape that JSON and TOML read back.</summary>
    /// <param name="text">Any text.</param>
    /// <param name="keepLines">Leave line feeds as they are.</param>
    public static string Escape(string text, bool keepLines = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        int first = IndexOfSteering(text, keepLines);
        if (first < 0)
        {
            return text;
        }

        var plain = new StringBuilder(text, 0, first, text.Length + 32);
        for (int i = first, used; i < text.Length; i += used)
        {
            bool steers = Steers(text, i, keepLines, out used);
            for (int k = i; k < i + used; k++)
            {
                _ = steers ? plain.Append(CultureInfo.InvariantCulture, $"\\u{(int)text[k]:X4}") : plain.Append(text[k]);
            }
        }

        return plain.ToString();
    }

    /// <summary>Why a text cannot be a value, or null.</summary>
    /// <param name="text">Any text.</param>
    public static string? Fault(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        int at = IndexOfSteering(text, keepLines: false);
        return at < 0 ? null : string.Create(CultureInfo.InvariantCulture, $"it holds the control character U+{(int)text[at]:X4}; letters, digits and signs are allowed");
    }

    private static int IndexOfSteering(string text, bool keepLines)
    {
        for (int i = 0, used; i < text.Length; i += used)
        {
            if (Steers(text, i, keepLines, out used))
            {
                return i;
            }
        }

        return -1;
    }

    private static bool Steers(string text, int at, bool keepLines, out int used)
    {
        used = 1;
        if (text[at] is >= ' ' and <= '~' || (keepLines && text[at] == '\n'))
        {
            return false;
        }

        if (!Rune.TryGetRuneAt(text, at, out Rune rune))
        {
            return true;
        }

        used = rune.Utf16SequenceLength;
        return Rune.GetUnicodeCategory(rune) switch
        {
            UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => true,
            UnicodeCategory.Format => rune.Value is not (SoftHyphen or NonJoiner or Joiner),
            _ => false,
        };
    }
}
