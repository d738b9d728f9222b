using System.Globalization;

namespace LureSim.Scenarios.Quantities;

/// <summary>One value read from text.</summary>
/// <param name="Si">Value in the kind's SI unit.</param>
/// <param name="Error">What is wrong, or null.</param>
/// <param name="Note">What the writer should know though it was accepted, or null.</param>
/// <param name="Kind">Kind it was read as.</param>
public sealed record QuantityValue(double Si, string? Error, string? Note, QuantityKind Kind)
{
    /// <summary>Nothing was read.</summary>
    public static readonly QuantityValue None = new(double.NaN, null, null, QuantityKind.Text);

    /// <summary>Unit it was written in, by the name of the documents (<c>ft</c> for feet and inches); empty for plain numbers and words.</summary>
    public string Unit { get; init; } = "";
}

/// <summary>
/// The one strict reader of quantities: a number (decimal, fraction, mixed; invariant culture), then a unit of an exact list.
/// Feet and inches, pounds and ounces are read in the trade's spellings. Thread-safe; holds no state.
/// </summary>
public static class Quantity
{
    /// <summary>Reads a text as a quantity of a kind.</summary>
    /// <param name="text">For example <c>7 ft 6 in</c>, <c>5/8 oz</c>, <c>120 /min</c>.</param>
    /// <param name="kind">What it must be; not choice, flag, text or list.</param>
    /// <returns>The value in SI, or the error.</returns>
    public static QuantityValue Read(string text, QuantityKind kind) => Read(text, kind, Units.Due(kind));

    /// <summary>The same, with what is due in words of the caller; empty where the caller says it.</summary>
    internal static QuantityValue Read(string text, QuantityKind kind, string due)
    {
        ArgumentNullException.ThrowIfNull(text);
        string plain = QuoteMarks.Straighten(text);
        if (kind == QuantityKind.LineNumber)
        {
            return LineNumberReader.Read(text, plain, due);
        }

        if (kind == QuantityKind.Length && FeetInches.TryRead(plain, out double metres, out string? feetError, out string? note))
        {
            return feetError is null ? new(metres, null, note, kind) { Unit = "ft" } : Fail(text, feetError, kind, due);
        }

        if (kind == QuantityKind.Mass && PoundsOunces.TryRead(plain, out double kilograms, out string? poundError))
        {
            return poundError is null ? new(kilograms, null, null, kind) { Unit = "lb" } : Fail(text, poundError, kind, due);
        }

        if (NumberReader.Take(plain, out double number, out int used) is string error)
        {
            return Fail(text, error, kind, due);
        }

        string unit = plain[used..].Trim();
        if (unit.Length == 0 && Units.NeedUnit(kind))
        {
            return Fail(text, "it has no unit", kind, due);
        }

        string known = UnitSpelling.Canonical(kind, unit);
        double si = Units.ToSi(kind, known, number);
        return double.IsFinite(si)
            ? new(si, null, FeetInches.DecimalFeetNote(text, number, known, kind), kind) { Unit = known }
            : Fail(text, UnknownUnit(unit), kind, due);
    }

    /// <summary>Writes a value so that <see cref="Read(string, QuantityKind)"/> returns the same bits: SI unit, shortest round-trip digits.</summary>
    /// <param name="si">Value in SI.</param>
    /// <param name="kind">Its kind.</param>
    public static string Format(double si, QuantityKind kind)
    {
        string number = si.ToString("R", CultureInfo.InvariantCulture);
        string unit = Units.SiName(kind);
        if (kind == QuantityKind.LineNumber)
        {
            return $"no. {number}";
        }

        return unit.Length == 0 ? number : $"{number} {unit}";
    }

    /// <summary>Writes a value for people in the given unit.</summary>
    /// <param name="si">Value in SI.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="unit">A unit of the kind's list.</param>
    /// <param name="digits">Significant digits, at least 1.</param>
    public static string Show(double si, QuantityKind kind, string unit, int digits = 4)
    {
        string format = kind == QuantityKind.WholeNumber ? "F0" : string.Create(CultureInfo.InvariantCulture, $"G{digits}");
        string number = Units.FromSi(kind, unit, si).ToString(format, CultureInfo.InvariantCulture);
        if (number.Contains('E', StringComparison.Ordinal))
        {
            number = Units.FromSi(kind, unit, si).ToString("0.####E0", CultureInfo.InvariantCulture);
        }

        return kind == QuantityKind.LineNumber ? $"no. {number}" : unit.Length == 0 ? number : $"{number} {unit}";
    }

    internal static QuantityValue Fail(string text, string what, QuantityKind kind, string due) =>
        new(double.NaN, due.Length == 0 ? $"\"{text}\": {what}" : $"\"{text}\": {what}; {due}", null, kind);

    private static string UnknownUnit(string unit)
    {
        if (unit.Length == 0)
        {
            return "it is not a finite number";
        }

        string rest = unit.StartsWith("to ", StringComparison.Ordinal) ? unit[3..] : unit.TrimStart('-', ' ');
        return char.IsAsciiDigit(unit[0]) ? "there are two numbers in a row (thousands marks are not allowed)"
            : rest.Length > 0 && char.IsAsciiDigit(rest[0]) ? "one value is due, not a range"
            : $"\"{unit}\" does not fit here";
    }
}
