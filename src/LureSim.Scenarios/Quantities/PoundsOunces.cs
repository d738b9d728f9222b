using System.Text.RegularExpressions;

namespace LureSim.Scenarios.Quantities;

/// <summary>Masses in pounds and ounces together, as fish are weighed: <c>3 lb 4 oz</c>, <c>3lb 4oz</c>, <c>3 lbs. 4 1/2 oz</c>, <c>3 lb 4</c>.</summary>
internal static partial class PoundsOunces
{
    private const int OuncesOfPound = 16;

    /// <summary>Reads a compound mass.</summary>
    /// <param name="text">Text with straight marks, no blanks around it.</param>
    /// <param name="kilograms">Mass, kg.</param>
    /// <param name="error">What is wrong with it.</param>
    /// <returns>False: the text is not pounds followed by something, another reader's case.</returns>
    public static bool TryRead(string text, out double kilograms, out string? error)
    {
        (kilograms, error) = (0.0, null);
        if (NumberReader.Take(text, out double pounds, out int used) is not null || Mark().Match(text[used..]) is not { Success: true } mark)
        {
            return false;
        }

        string rest = text[(used + mark.Length)..];
        if (NumberReader.Take(rest, out double ounces, out int taken) is not null)
        {
            return false;
        }

        error = !OunceMark().IsMatch(rest[taken..]) ? "pounds and ounces are written 3 lb 4 oz"
            : pounds < 0.0 || pounds != Math.Floor(pounds) ? "pounds in front of ounces must be a whole number"
            : ounces is >= 0.0 and < OuncesOfPound ? null
            : "ounces after pounds must lie between 0 and 16";
        kilograms = error is null ? Units.ToSi(QuantityKind.Mass, "lb", pounds) + Units.ToSi(QuantityKind.Mass, "oz", ounces) : 0.0;
        return true;
    }

    // What may stand between the pounds and the ounces.
    [GeneratedRegex("""^\s*-?\s*(lbs?\.?(?![a-z])|pounds?|#)\s*(-|,|and\b)?\s*(?=[\d\u00BC-\u00BE.])""", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Mark();

    [GeneratedRegex("""^\s*-?\s*(oz\.?|ozs|ounces?)?$""", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex OunceMark();
}
