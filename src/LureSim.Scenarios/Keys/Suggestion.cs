using System.Globalization;
using System.Text.RegularExpressions;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>What a person probably meant by a quantity that could not be read. Every suggestion is tried: typed instead, it is accepted.</summary>
internal static partial class Suggestion
{
    private const int Most = 2;

    // The first of each side that fits is offered.
    private static readonly string[][] LengthUnits = [["ft", "in"], ["m", "cm", "mm"]], MassUnits = [["oz", "lb"], ["g", "kg"]], ForceUnits = [["lb", "oz"], ["kg", "g"]];

    /// <summary>One or two texts that would be accepted, in words; empty where none comes to mind.</summary>
    /// <param name="key">Key.</param>
    /// <param name="text">As written.</param>
    public static string For(KeySpec key, string text)
    {
        string[] found = [.. Of(key, text)];
        return found.Length == 0 ? "" : $"; did you mean {string.Join(" or ", found.Select(f => $"\"{f}\""))}?";
    }

    /// <summary>One or two texts that would be accepted.</summary>
    /// <param name="key">Key.</param>
    /// <param name="text">As written.</param>
    public static IEnumerable<string> Of(KeySpec key, string text)
    {
        string plain = QuoteMarks.Straighten(text);
        return Candidates(key, plain).Where(c => c != plain && ValueReader.Reads(key, c)).Distinct().Take(Most);
    }

    private static IEnumerable<string> Candidates(KeySpec key, string text)
    {
        yield return text.Replace(',', '.');
        yield return Thousands().Replace(text, "");
        yield return Fraction().Replace(text, "$1 $2");
        yield return Approximate().Replace(text, "");
        yield return Doubled().Replace(text, "$1.$2");
        yield return Reversed().Replace(text, "$1:1");
        bool bare = NumberReader.Take(text, out double number, out int used) is null;
        string unit = bare ? text[used..].Trim() : "";
        string digits = bare ? text[..used] : "";
        IEnumerable<string> more = !bare ? [] : unit.Length == 0 ? WithUnit(key, digits, number) : OtherUnit(key, digits, unit, number);
        foreach (string candidate in more)
        {
            yield return candidate;
        }
    }

    private static IEnumerable<string> WithUnit(KeySpec key, string digits, double number)
    {
        if (key == RodKeys.Length && RodCode(digits) is string length)
        {
            yield return length;
        }

        if (key.Kind == QuantityKind.LineNumber)
        {
            yield return $"PE {digits}";
            yield return $"no. {digits}";
        }

        foreach (string candidate in InUnits(key, digits))
        {
            yield return candidate;
        }

        if (key.Kind == QuantityKind.Ratio)
        {
            yield return $"{digits} %";
        }

        if (number < 0.0)
        {
            yield return $"{digits[1..]} {key.Unit}";
        }
    }

    private static IEnumerable<string> OtherUnit(KeySpec key, string digits, string unit, double number)
    {
        if (number < 0.0)
        {
            yield return $"{digits[1..]} {unit}";
        }

        yield return $"{digits} {unit}/turn";
        if (key.Kind == QuantityKind.Frequency && Quantity.Read($"{digits} {unit}", QuantityKind.Time) is { Error: null, Si: > 0.0 } every)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{1.0 / every.Si:0.##} /s");
        }

        if (UnitSpelling.Near(key.Kind, unit) is string near)
        {
            yield return $"{digits} {near}";
        }

        // A known unit, but the number is out of range with it: 115 cm for a lure of 115 mm.
        if (UnitSpelling.Knows(key.Kind, unit))
        {
            foreach (string candidate in InUnits(key, digits))
            {
                yield return candidate;
            }
        }
    }

    // The key's own unit first, then a unit of the other side where the number fits with it too.
    private static IEnumerable<string> InUnits(KeySpec key, string digits)
    {
        string[][] sides = key.Kind switch
        {
            QuantityKind.Length => LengthUnits,
            QuantityKind.Mass => MassUnits,
            QuantityKind.Force => ForceUnits,
            QuantityKind.Frequency => [["/s", "/min"]],
            QuantityKind.TakeUp => [["in/turn"], ["cm/turn"]],
            QuantityKind.Temperature => [["C", "F"]],
            QuantityKind.Speed => [["m/s", "mph"]],
            QuantityKind.Time => [["s", "ms"]],
            _ => key.Unit.Length > 0 ? [[key.Unit]] : [],
        };
        string Try(string unit) => $"{digits} {unit}";
        if (sides.Any(s => s.Contains(key.Unit)) && ValueReader.Reads(key, Try(key.Unit)))
        {
            yield return Try(key.Unit);
            sides = [.. sides.Where(s => !s.Contains(key.Unit))];
        }

        foreach (string[] side in sides)
        {
            if (side.FirstOrDefault(u => ValueReader.Reads(key, Try(u))) is string unit)
            {
                yield return Try(unit);
            }
        }
    }

    // 71 and 710 are codes of rod lengths, 7'1" and 7'10"; a third digit that makes no inches counts the pieces; 7.6 is meant as 7'6".
    private static string? RodCode(string digits) => Code().Match(digits) is { Success: true } code
        ? $"{code.Groups["ft"].Value} ft {int.Parse(code.Groups["in"].Value, CultureInfo.InvariantCulture)} in"
        : null;

    [GeneratedRegex(@"^(?<ft>[4-9]|1[0-4])(\.?(?<in>1[01])|\.?(?<in>\d)\d?)$")]
    private static partial Regex Code();

    // 1.5/8 oz stands on some pages for 1 5/8 oz.
    [GeneratedRegex(@"^(\d+)\.(\d+/\d+)")]
    private static partial Regex Fraction();

    [GeneratedRegex(@"^(~|ca\.?|about|approx\.?|around|roughly|=|:|<|>|\()\s*", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Approximate();

    [GeneratedRegex(@"(?<=\d),(?=\d{3}(?!\d))")]
    private static partial Regex Thousands();

    // 1:7.1 is a gear of 7.1:1.
    [GeneratedRegex(@"^1\s?:\s?(\d+(\.\d+)?)$")]
    private static partial Regex Reversed();

    [GeneratedRegex(@"^(\d+)\.[.,]+(\d+)")]
    private static partial Regex Doubled();
}
