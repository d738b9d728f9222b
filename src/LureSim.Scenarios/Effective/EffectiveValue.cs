using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Effective;

/// <summary>Where an effective value comes from.</summary>
public enum ValueMark
{
    /// <summary>Stands in the file, a part, or an override.</summary>
    Given,

    /// <summary>A default that is a choice, not a guess.</summary>
    Default,

    /// <summary>Follows from other values.</summary>
    Derived,

    /// <summary>Not known well; it has a range.</summary>
    Guess,
}

/// <summary>One effective value.</summary>
/// <param name="Key">Key.</param>
/// <param name="Text">As a file would hold it, in the unit people use.</param>
/// <param name="Si">SI value; NaN for words and lists.</param>
/// <param name="Mark">Origin.</param>
/// <param name="Low">Lower end of the guess, SI, else NaN.</param>
/// <param name="High">Upper end of the guess, SI, else NaN.</param>
/// <param name="IsLive">True when the effective file holds it as a key; false when it holds it as a comment.</param>
public sealed record EffectiveValue(KeySpec Key, string Text, double Si, ValueMark Mark, double Low, double High, bool IsLive);

/// <summary>A guess for studies of doubt.</summary>
/// <param name="Key">Key.</param>
/// <param name="Value">Value used, SI.</param>
/// <param name="Low">Lower end, SI.</param>
/// <param name="High">Upper end, SI.</param>
/// <param name="Follows">True where value and range follow from other values, so that they move with them.</param>
public sealed record GuessedKey(KeySpec Key, double Value, double Low, double High, bool Follows = false)
{
    /// <summary>The override that sets another value, exact to the last bit; of a count the nearest whole number.</summary>
    /// <param name="si">Value, SI.</param>
    public string Override(double si) => $"{Key.Path}={Quantity.Format(Key.Kind == QuantityKind.WholeNumber ? Math.Round(si) : si, Key.Kind)}";

    /// <summary>As people read it: key, value, range, in the key's unit.</summary>
    public override string ToString() =>
        $"{Key.Path} = {Quantity.Show(Value, Key.Kind, Key.Unit)} ({Quantity.Show(Low, Key.Kind, Key.Unit)} to {Quantity.Show(High, Key.Kind, Key.Unit)})";
}
