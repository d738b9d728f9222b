namespace LureSim.Scenarios.Sayings;

/// <summary>A text of a saying's file and where it stands.</summary>
/// <param name="Text">As written.</param>
/// <param name="Place"><c>file(line,column)</c>.</param>
public sealed record SaidText(string Text, string Place);

/// <summary>Who says so: pages that were seen, for and against; or a sentence where nobody counted.</summary>
/// <param name="For">Pages that say so; 0 where nobody counted.</param>
/// <param name="Against">Pages that say something else.</param>
/// <param name="Words">What is said instead of counts; empty where there are counts.</param>
public sealed record ToldBy(int For, int Against, string Words);

/// <summary>A place over which a saying is tried: a scenario with overrides.</summary>
/// <param name="Name">In words, after "with" or "in"; empty for the only place of a saying.</param>
/// <param name="Base">Scenario file as named.</param>
/// <param name="Set">Overrides <c>key=value</c>.</param>
public sealed record SayingPlace(string Name, SaidText Base, IReadOnlyList<SaidText> Set);

/// <summary>One of the set-ups that a test compares.</summary>
/// <param name="Name">In words.</param>
/// <param name="Set">Overrides <c>key=value</c>, on top of those of place and test.</param>
/// <param name="Rod">Length of the rod, mass and load going with it; null = the rod as it is.</param>
public sealed record SayingSide(string Name, IReadOnlyList<SaidText> Set, SaidText? Rod = null);

/// <summary>One test of a saying.</summary>
/// <param name="Name">In words; empty for the only test of a saying.</param>
/// <param name="Command">Command whose summary is looked at.</param>
/// <param name="Figure">Column of the summary: a number, or words.</param>
/// <param name="Words">Words of that column that count as 1, others as 0; empty for a number.</param>
/// <param name="Set">Overrides of every side.</param>
/// <param name="Sides">What is compared: one, two (less, more) or a rising list.</param>
/// <param name="Claim">What would count as true.</param>
/// <param name="Starts">Starts of each retrieve; 0 = the scenario's own alone.</param>
public sealed record SayingTest(
    string Name, SaidText Command, SaidText Figure, IReadOnlyList<string> Words, IReadOnlyList<SaidText> Set, IReadOnlyList<SayingSide> Sides, Claim Claim, int Starts)
{
    /// <summary>Whether the figure is a share of runs that show one of the words.</summary>
    public bool IsOfWords => Words.Count > 0;
}

/// <summary>A saying of the trade and how it is put to the test. It holds no outcome.</summary>
/// <param name="Name">Name of its file without ending.</param>
/// <param name="Says">The saying in the project's words.</param>
/// <param name="Why">What is compared and why physics might have a say, without verdict.</param>
/// <param name="Told">Who says so.</param>
/// <param name="Places">Places, at least one.</param>
/// <param name="Tests">Tests, at least one.</param>
public sealed record Saying(string Name, string Says, string Why, ToldBy Told, IReadOnlyList<SayingPlace> Places, IReadOnlyList<SayingTest> Tests)
{
    /// <summary>Folder that the names of scenario files start from; null for a saying that comes with the program.</summary>
    public string? Directory { get; init; }

    /// <summary>Reads a scenario that a place names.</summary>
    /// <param name="place">A place of this saying.</param>
    /// <param name="asked">What it is wanted for.</param>
    public ScenarioSource Open(SayingPlace place, Activities asked)
    {
        ArgumentNullException.ThrowIfNull(place);
        return Directory is null
            ? ScenarioSource.Shipped(Path.GetFileName(place.Base.Text), asked)
            : ScenarioSource.Load(Path.Combine(Directory, place.Base.Text), asked);
    }
}
