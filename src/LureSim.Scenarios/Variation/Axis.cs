using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Variation;

/// <summary>One thing that a study varies: a key (or linked keys) with the values it takes. Read by <see cref="AxisReader"/>.</summary>
/// <remarks>Immutable; safe to use from several threads.</remarks>
public sealed class Axis
{
    internal Axis(IReadOnlyList<KeySpec> keys, string name, QuantityKind kind, IReadOnlyList<AxisValue> values) =>
        (Keys, Name, Kind, Values) = (keys, name, kind, values);

    /// <summary>The key, or the linked keys.</summary>
    public IReadOnlyList<KeySpec> Keys { get; }

    /// <summary>Path as given, for example <c>rod.length</c> or <c>lure.hooks[1].mass</c>; linked keys are joined by <c>+</c>.</summary>
    public string Name { get; }

    /// <summary>What it is in words with its unit, for example <c>rod length, ft</c>.</summary>
    public string Title => string.Join(" + ", Name.Split('+').Select(Words)) + (Unit.Length > 0 ? ", " + Unit : "");

    /// <summary>Kind that all values were read as; <see cref="QuantityKind.Text"/> when they are words, lists, linked or mixed.</summary>
    public QuantityKind Kind { get; }

    /// <summary>The values in order; empty for a range <c>from:to</c> without step or count, which can only be sampled.</summary>
    public IReadOnlyList<AxisValue> Values { get; }

    /// <summary>Lower end of a range, SI; NaN for a list.</summary>
    public double LowSi { get; internal init; } = double.NaN;

    /// <summary>Upper end of a range, SI; NaN for a list.</summary>
    public double HighSi { get; internal init; } = double.NaN;

    /// <summary>True when the axis was given as a range.</summary>
    public bool IsRange => !double.IsNaN(LowSi);

    /// <summary>True when every value is a number of one kind, so that <see cref="AxisValue.Si"/> can be plotted.</summary>
    public bool IsNumeric => Kind is not (QuantityKind.Text or QuantityKind.Choice or QuantityKind.Flag or QuantityKind.List);

    /// <summary>Unit for people; empty for plain numbers and words.</summary>
    public string Unit => !IsNumeric ? "" : Kind == Keys[0].Kind ? Keys[0].Unit : Units.SiName(Kind);

    /// <summary>A value in <see cref="Unit"/>.</summary>
    /// <param name="si">Value, SI.</param>
    public double InUnit(double si) => Units.FromSi(Kind, Unit, si);

    /// <summary>The value at a share of the axis, for sampling: linear in a range, the item in a list.</summary>
    /// <param name="share">0 to 1, 1 excluded.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share lies outside.</exception>
    public AxisValue At(double share)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(share);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(share, 1.0);
        if (!IsRange)
        {
            return Values[(int)(share * Values.Count)];
        }

        double si = LowSi + (share * (HighSi - LowSi));
        return Number(Kind == QuantityKind.WholeNumber ? Math.Round(si) : si);
    }

    // The tables of the trip go without saying; a length needs its rod or lure.
    private static string Words(string path)
    {
        string table = path.Split('.')[0];
        string told = table is "retrieve" or "angler" or "cast" ? path[(table.Length + 1)..] : path;
        return told.Replace('.', ' ').Replace('_', ' ');
    }

    internal AxisValue Number(double si) => Number(Keys[0], Name, Kind, si);

    internal static AxisValue Number(KeySpec key, string name, QuantityKind kind, double si)
    {
        string unit = kind == key.Kind ? key.Unit : Units.SiName(kind);
        return new(Quantity.Show(si, kind, unit), si, [$"{name}={Quantity.Format(si, kind)}"]);
    }
}
