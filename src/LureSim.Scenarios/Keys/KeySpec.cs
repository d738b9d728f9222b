using LureSim.Model;
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

    /// <summary>What it is in a few words, for charts and sentences; made from the key's name unless it is said.</summary>
    public string Words { get => field ??= Table.Length == 0 ? Path : $"{Table} {Name.Replace('_', ' ')}"; init; }

    /// <summary>True when a scenario without it is refused.</summary>
    public bool Required { get; init; }

    /// <summary>The number of the model that the key gives: range, default and guess come from there unless they are said here.</summary>
    public Parameter? Parameter { get; init; }

    /// <summary>True when the default follows from other keys, or must be given.</summary>
    public bool HasNoDefault { get; init; }

    /// <summary>Default as it would be written in a file, or null.</summary>
    public string? Default
    {
        get => field ??= HasNoDefault || double.IsNaN(Parameter?.Default ?? double.NaN) ? null : Quantity.Format(Parameter!.Default, Kind);
        init;
    }

    /// <summary>Lowest allowed value, SI.</summary>
    public double Low { get => double.IsNaN(field) ? Parameter?.Low ?? double.NegativeInfinity : field; init; } = double.NaN;

    /// <summary>Highest allowed value, SI.</summary>
    public double High { get => double.IsNaN(field) ? Parameter?.High ?? double.PositiveInfinity : field; init; } = double.NaN;

    /// <summary>Range of <see cref="OtherKind"/>, SI.</summary>
    public (double Low, double High) OtherRange { get; init; } = (double.NegativeInfinity, double.PositiveInfinity);

    /// <summary>Lower end of the range of a default that is a guess, SI; NaN when it is none.</summary>
    public double GuessLow { get => double.IsNaN(field) && Default is not null ? Parameter?.GuessLow ?? double.NaN : field; init; } = double.NaN;

    /// <summary>Upper end of that range, SI.</summary>
    public double GuessHigh { get => double.IsNaN(field) && Default is not null ? Parameter?.GuessHigh ?? double.NaN : field; init; } = double.NaN;

    /// <summary>Allowed words; with a quantity kind they stand beside numbers.</summary>
    public IReadOnlyList<Choice> Choices { get; init; } = [];

    /// <summary>The key whose value the words of this one give, as long as that key is not given itself (a class of rod and its measured load).</summary>
    public KeySpec? Gives { get; init; }

    /// <summary>What to say to a number where only words are read, or null.</summary>
    public string? NoNumber { get; init; }

    /// <summary>What is due, with its units and an example: the second half of a message.</summary>
    public string Due { get => field ?? Units.Due(Kind); init; }

    /// <summary>Name under which its guesses are drawn: its path, unless the draws of an older key go on under a new name.</summary>
    public string DrawnAs { get => field ?? Path; init; }

    /// <summary>The choice that a word as people type it stands for, or null.</summary>
    /// <param name="word">Word.</param>
    public Choice? ChoiceOf(string word) => ValueReader.FindChoice(this, word);

    /// <summary>
    /// Keys that say the same thing in different ways share a group: where a later layer gives one, the others of earlier
    /// layers fall.
    /// </summary>
    public string Group { get; init; } = "";

    /// <summary>Columns of a list of tables.</summary>
    public IReadOnlyList<KeySpec> Items { get; init; } = [];

    /// <summary>A list that may be a CSV file beside the scenario.</summary>
    public bool MayBeCsv { get; init; }

    /// <summary>A text that names a drawing (SVG) beside the scenario, read with it.</summary>
    public bool IsDrawing { get; init; }

    /// <summary>Where the effective value lies; null where the key only leads to others.</summary>
    public Lens? Lens { get; init; }

    /// <summary>Activities that read the key; the others do not mind its faults.</summary>
    public Activities ReadBy => Lens?.ReadBy ?? Activities.All;

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
