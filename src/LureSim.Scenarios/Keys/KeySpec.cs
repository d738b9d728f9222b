using LureSim.Model;
using LureSim.Model.Cast;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>One allowed word, the number it stands for, and the range of that number where it is a guess.</summary>
/// <param name="Name">The word.</param>
/// <param name="Value">Number, SI (or the value of an enumeration).</param>
/// <param name="Low">Lower end of the guess, NaN when the word is exact.</param>
/// <param name="High">Upper end of the guess.</param>
public sealed record Choice(string Name, double Value, double Low = double.NaN, double High = double.NaN);

/// <summary>One key of a scenario file: the row of the schema from which reading, checking, defaults and documents follow.</summary>
public sealed class KeySpec
{
    private QuantityValue? _default;

    /// <summary>Creates a row.</summary>
    /// <param name="path">Full key, for example <c>rod.length</c>.</param>
    /// <param name="kind">Kind of quantity.</param>
    /// <param name="unit">Unit for people: documents, messages, effective values. Empty for plain numbers and words.</param>
    /// <param name="meaning">One line.</param>
    public KeySpec(string path, QuantityKind kind, string unit, string meaning) =>
        (Path, Kind, Unit, Meaning) = (path, kind, unit, meaning);

    /// <summary>Full key.</summary>
    public string Path { get; }

    /// <summary>Kind of quantity.</summary>
    public QuantityKind Kind { get; }

    /// <summary>Second kind that is read as well (a stroke is a length or an angle).</summary>
    public QuantityKind? OtherKind { get; init; }

    /// <summary>Unit for people.</summary>
    public string Unit { get; }

    /// <summary>One line.</summary>
    public string Meaning { get; }

    /// <summary>True when a scenario without it is refused.</summary>
    public bool Required { get; init; }

    /// <summary>Default as it would be written in a file, or null.</summary>
    public string? Default { get; init; }

    /// <summary>Lowest allowed value, SI.</summary>
    public double Low { get; init; } = double.NegativeInfinity;

    /// <summary>Highest allowed value, SI.</summary>
    public double High { get; init; } = double.PositiveInfinity;

    /// <summary>Range of <see cref="OtherKind"/>, SI.</summary>
    public (double Low, double High) OtherRange { get; init; } = (double.NegativeInfinity, double.PositiveInfinity);

    /// <summary>Lower end of the range of a default that is a guess, SI; NaN when it is none.</summary>
    public double GuessLow { get; init; } = double.NaN;

    /// <summary>Upper end of that range, SI.</summary>
    public double GuessHigh { get; init; } = double.NaN;

    /// <summary>Allowed words; with a quantity kind they stand beside numbers.</summary>
    public IReadOnlyList<Choice> Choices { get; init; } = [];

    /// <summary>
    /// Keys that say the same thing in different ways share a group: where a later layer gives one, the others of earlier
    /// layers fall.
    /// </summary>
    public string Group { get; init; } = "";

    /// <summary>Columns of a list of tables.</summary>
    public IReadOnlyList<KeySpec> Items { get; init; } = [];

    /// <summary>A list that may be a CSV file beside the scenario.</summary>
    public bool MayBeCsv { get; init; }

    /// <summary>Reads the effective value, SI, from a run; null where there is none.</summary>
    public Func<RunSpec, double>? FromSpec { get; init; }

    /// <summary>Reads the effective value, SI, from a cast, for keys that only a cast reads.</summary>
    public Func<CastRunSpec, double>? FromCast { get; init; }

    /// <summary>True for keys that a retrieve does not read.</summary>
    public bool IsCastOnly => FromCast is not null;

    /// <summary>Place in the schema (in its list, for a list's columns).</summary>
    public int Index { get; internal set; }

    /// <summary>Table of the key, empty at the top level.</summary>
    public string Table => Path.IndexOf('.', StringComparison.Ordinal) is > 0 and int dot ? Path[..dot] : "";

    /// <summary>Last part of the key.</summary>
    public string Name => Path[(Path.LastIndexOf('.') + 1)..];

    /// <summary>True when the default is a guess with a range.</summary>
    public bool IsGuess => !double.IsNaN(GuessLow);

    /// <summary>The default, read once.</summary>
    internal QuantityValue DefaultReading => _default ??= ValueReader.ReadText(this, Default!);
}
