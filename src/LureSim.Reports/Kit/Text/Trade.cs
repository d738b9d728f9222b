using System.Globalization;

namespace LureSim.Reports.Kit.Text;

/// <summary>Numbers as people write them.</summary>
public static class Trade
{
    /// <summary>Turning speed to the hundred, with its unit: 17138 reads 17100 rpm.</summary>
    /// <param name="rpm">Speed, rev/min.</param>
    public static string Rpm(double rpm) => Fixed(100.0 * Math.Round(rpm / 100.0), 0) + " rpm";

    /// <summary>A number with two significant digits (three from 100 on), no exponent.</summary>
    /// <param name="value">Any finite number.</param>
    public static string Digits(double value) => Digits(value, 4);

    /// <summary>The same with a limit on its decimals.</summary>
    /// <param name="value">Any finite number.</param>
    /// <param name="most">Most decimals, 0 to 15.</param>
    public static string Digits(double value, int most)
    {
        double size = Math.Abs(value);
        int places = size == 0 ? 0 : Math.Clamp(1 - (int)Math.Floor(Math.Log10(size)), 0, most);
        if (places > 0 && Math.Round(size, places) >= Math.Pow(10, 2 - places))
        {
            places--;
        }

        string text = value.ToString("F" + places, CultureInfo.InvariantCulture);
        return text.AsSpan().IndexOfAnyInRange('1', '9') < 0 ? "0" : text;
    }

    /// <summary>A number with a fixed count of decimals and a point, whatever the machine's culture; never "-0".</summary>
    /// <param name="value">Any finite number.</param>
    /// <param name="places">Decimals.</param>
    public static string Fixed(double value, int places)
    {
        string text = value.ToString("F" + places, CultureInfo.InvariantCulture);
        return text[0] == '-' && text.AsSpan(1).IndexOfAnyExcept('0', '.') < 0 ? text[1..] : text;
    }

    /// <summary>Items joined as in a sentence.</summary>
    /// <param name="items">Items, at least one.</param>
    public static string And(IReadOnlyList<string> items) => items.Count == 1 ? items[0] : $"{string.Join(", ", items.Take(items.Count - 1))} and {items[^1]}";

    /// <summary>Words at the start of a sentence.</summary>
    /// <param name="words">Words, at least one letter.</param>
    public static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
