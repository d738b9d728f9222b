using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Sayings;
using LureSim.Studies.Across;
using LureSim.Studies.Figures;

namespace LureSim.Studies.Sayings;

/// <summary>A test in a place, ready to run.</summary>
/// <param name="Test">Test.</param>
/// <param name="Place">Place.</param>
/// <param name="Figures">Command.</param>
/// <param name="Column">Place of the figure among the numbers, or of the column among the words.</param>
/// <param name="Source">Scenario.</param>
/// <param name="Sides">Set-up of each side.</param>
/// <param name="Overrides">Overrides of each side.</param>
public sealed record ReadyTrial(
    SayingTest Test, SayingPlace Place, IFigureSource Figures, int Column, ScenarioSource Source, IReadOnlyList<DrawnSetUp> Sides, IReadOnlyList<IReadOnlyList<string>> Overrides)
{
    /// <summary>Key of the figure, or of the column of words.</summary>
    public string Figure => Test.IsOfWords ? Figures.Words[Column] : Figures.Numbers[Column];

    /// <summary>The set-up of a side with further overrides.</summary>
    /// <param name="side">Side.</param>
    /// <param name="more">Overrides.</param>
    internal DrawnSetUp With(int side, IReadOnlyList<string> more) => more.Count == 0 ? Sides[side] : new(Source, [.. Overrides[side], .. more], Test.Sides[side].Rod?.Text);
}

/// <summary>A saying whose commands, figures, scenarios and keys were all found.</summary>
/// <param name="Saying">Saying.</param>
/// <param name="Trials">Every test in every place; places change fastest.</param>
public sealed record ReadySaying(Saying Saying, IReadOnlyList<ReadyTrial> Trials)
{
    /// <summary>Looks everything up.</summary>
    /// <param name="saying">Saying.</param>
    /// <param name="commands">Summaries of the program.</param>
    /// <param name="faults">Gets every fault, with the place in the saying's file.</param>
    /// <returns>Null where there are faults.</returns>
    public static ReadySaying? Of(Saying saying, IReadOnlyList<IFigureSource> commands, ICollection<ScenarioFault> faults)
    {
        ArgumentNullException.ThrowIfNull(saying);
        ArgumentNullException.ThrowIfNull(commands);
        ArgumentNullException.ThrowIfNull(faults);
        var trials = new List<ReadyTrial>();
        var told = new HashSet<ScenarioFault>();
        for (int t = 0; t < saying.Tests.Count; t++)
        {
            string key = saying.Tests.Count > 1 ? FormattableString.Invariant($"test {t + 1}") : "test";
            if (Command(saying.Tests[t], key, commands, told) is (IFigureSource figures, int column))
            {
                trials.AddRange(saying.Places.Select(p => Trial(saying, p, saying.Tests[t], figures, column, told)).OfType<ReadyTrial>());
            }
        }

        told.ToList().ForEach(faults.Add);
        return told.Count == 0 ? new(saying, trials) : null;
    }

    private static (IFigureSource Figures, int Column)? Command(SayingTest test, string key, IReadOnlyList<IFigureSource> commands, HashSet<ScenarioFault> faults)
    {
        if (commands.FirstOrDefault(c => c.Name == test.Command.Text) is not IFigureSource figures)
        {
            faults.Add(new(test.Command.Place, $"{key}.command", $"\"{test.Command.Text}\" has no summary; {OneOf(test.Command.Text, [.. commands.Select(c => c.Name)])}"));
            return null;
        }

        IReadOnlyList<string> columns = test.IsOfWords ? figures.Words : figures.Numbers;
        int column = test.IsOfWords && test.Figure.Text.Length == 0 ? 0 : columns.ToList().IndexOf(test.Figure.Text);
        if (column < 0)
        {
            faults.Add(new(test.Figure.Place, $"{key}.{(test.IsOfWords ? "column" : "figure")}", $"\"{test.Figure.Text}\" is no {(test.IsOfWords ? "column of words" : "figure")} of {figures.Name}; {OneOf(test.Figure.Text, columns)}"));
            return null;
        }

        return (figures, column);
    }

    private static string OneOf(string word, IReadOnlyList<string> known) =>
        Nearest.Of(word, known) is string near ? $"did you mean {near}?"
        : known.Count <= 12 ? $"due: {string.Join(", ", known)}" : $"docs/figures.md lists all {known.Count}";

    private static ReadyTrial? Trial(Saying saying, SayingPlace place, SayingTest test, IFigureSource figures, int column, HashSet<ScenarioFault> faults)
    {
        int before = faults.Count;
        ScenarioSource source = saying.Open(place, figures.Asks);
        ScenarioResult own = source.Resolve();
        foreach (ScenarioFault fault in own.Errors)
        {
            faults.Add(fault with { Place = $"{place.Base.Place}: {fault.Place}" });
        }

        if (!own.IsValid)
        {
            return null;
        }

        figures = Running(figures, test, source.Resolve([.. place.Set.Concat(test.Set).Concat(test.Sides[0].Set).Select(s => s.Text)]));
        string[] mesh = Finer.OfStudy(figures, own);
        var sides = new List<DrawnSetUp>();
        var overrides = new List<IReadOnlyList<string>>();
        foreach (SayingSide side in test.Sides)
        {
            SaidText[] set = [.. place.Set, .. test.Set, .. side.Set];
            overrides.Add([.. mesh, .. set.Select(s => s.Text)]);
            sides.Add(new(source, overrides[^1], side.Rod?.Text));
            foreach (ScenarioFault fault in sides[^1].Here.Errors)
            {
                SaidText? said = set.LastOrDefault(s => fault.Place == $"--set {s.Text}") ?? (fault.Place.StartsWith("--set ", StringComparison.Ordinal) ? side.Rod : null);
                faults.Add(fault with { Place = said?.Place ?? $"{test.Command.Place}: {fault.Place}" });
            }

            Unread(set, figures, sides[^1].Here, faults);
        }

        return faults.Count == before ? new(test, place, figures, column, source, sides, overrides) : null;
    }

    // From several starts a walk is told that has settled; a steady pull has none.
    private static IFigureSource Running(IFigureSource figures, SayingTest test, ScenarioResult here) =>
        figures is RetrieveSource && test.Starts > 0 && here.Retrieve is { IsTow: false } ? new SettledRetrieveSource() : figures;

    // A key that enters nothing would make any two sides the same.
    private static void Unread(SaidText[] set, IFigureSource figures, ScenarioResult here, HashSet<ScenarioFault> faults)
    {
        if (!here.IsValid)
        {
            return;
        }

        foreach (SaidText said in set)
        {
            string path = said.Text.Split('=')[0].Trim();
            if (ScenarioSchema.Find(path) is KeySpec key && key != TopKeys.Title && !figures.Reads(key, here))
            {
                faults.Add(new(said.Place, path, $"does not enter {figures.Name}, so it can make no difference there"));
            }
        }
    }
}
