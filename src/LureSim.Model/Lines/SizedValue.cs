using System.Globalization;

namespace LureSim.Model.Lines;

/// <summary>Where a number of a line comes from.</summary>
public enum ValueOrigin
{
    /// <summary>Stated by the user.</summary>
    Given,

    /// <summary>Follows by definition or formula from what was stated.</summary>
    Derived,

    /// <summary>Rests on a table or a material value that is not known well; the range says how well.</summary>
    Guess,
}

/// <summary>One number of a line with its origin and range.</summary>
/// <param name="Name">Name of the <see cref="LineSpec"/> property, unit in the name, or "LabelN".</param>
/// <param name="Value">Value used, SI.</param>
/// <param name="Low">Lower end of the range; the value itself where nothing is guessed.</param>
/// <param name="High">Upper end of the range.</param>
/// <param name="Origin">Given, derived or guess.</param>
/// <param name="Basis">What it rests on, one clause.</param>
public sealed record SizedValue(string Name, double Value, double Low, double High, ValueOrigin Origin, string Basis)
{
    /// <summary>One line for an effective scenario: name, value, range and basis.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Name} = {Value:G4} ({Low:G4} to {High:G4}): {Basis}");

    internal static SizedValue Given(string name, double value) =>
        new(name, value, value, value, ValueOrigin.Given, "given");

    internal static SizedValue Guess(string name, double value, double low, double high, string basis) =>
        new(name, value, low, high, ValueOrigin.Guess, basis);

    /// <summary>A value computed from another one: it keeps that one's relative range, and is a guess if that one is.</summary>
    internal static SizedValue From(string name, double value, SizedValue source, double exponent, string basis) => new(
        name,
        value,
        value * Math.Pow(source.Low / source.Value, exponent),
        value * Math.Pow(source.High / source.Value, exponent),
        source.Origin == ValueOrigin.Guess ? ValueOrigin.Guess : ValueOrigin.Derived,
        basis);
}
