using System.Globalization;
using System.Text;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Sayings;
using LureSim.Studies.Sayings;

namespace LureSim.Reports.Sayings;

/// <summary>Sayings for the terminal.</summary>
public static class SayingsText
{
    /// <summary>The table of verdicts, then a paragraph of each saying.</summary>
    /// <param name="report">What came out.</param>
    /// <param name="shown">Units.</param>
    public static string Build(SayingsReport report, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(shown);
        var numbers = new SayingNumbers(shown);
        var text = new StringBuilder();
        string part = report.IsWhole ? "" : $" (stopped: {report.Results.Count} of {report.Asked})";
        text.Append(CultureInfo.InvariantCulture, $"Sayings put to the test{part}, {report.Plan.Draws} draws of the guesses in every place\n\n");
        text.Append(ColumnTable.Text(
            ["saying", "verdict", "number (8 of 10 draws)", "pages"],
            [.. report.Results.Select(r => new[] { r.Saying.Name, SayingWords.Verdict(r.Verdict), numbers.Overall(r), SayingWords.Told(r.Saying.Told) })]));
        foreach (SayingResult result in report.Results)
        {
            text.Append('\n');
            Append(text, result, numbers);
        }

        text.Append('\n');
        text.AppendWrapped($"{Trade.Capital(SayingWords.Rule)}. A third of the draws were run again with twice the nodes, and with half the step where the command has one, and half as many with another seed: a word that changes is no word.");
        return text.ToString();
    }

    /// <summary>Names and texts, without running anything.</summary>
    /// <param name="sayings">Sayings.</param>
    public static string List(IReadOnlyList<Saying> sayings)
    {
        ArgumentNullException.ThrowIfNull(sayings);
        return ColumnTable.Text(["name", "pages", "saying"], [.. sayings.Select(s => new[] { s.Name, SayingWords.Told(s.Told), s.Says })]);
    }

    private static void Append(StringBuilder text, SayingResult result, SayingNumbers numbers)
    {
        text.AppendWrapped($"{result.Saying.Says} {Trade.Capital(SayingWords.Whole(result))}.");
        text.AppendWrapped(result.Saying.Why, "  ");
        foreach (IGrouping<SayingTest, TrialResult> test in result.Trials.GroupBy(t => t.Trial.Test))
        {
            ReadyTrial trial = test.First().Trial;
            text.AppendWrapped($"Asked: {SayingWords.Figure(trial)}, {SayingWords.Claim(trial)}.", "  ");
            text.Append(ColumnTable.Text(
                ["", .. trial.Test.Sides.Select(s => s.Name), "number (8 of 10 draws)", "chance", "here"],
                [.. test.Select(t => Row(t, numbers))]));
        }

        foreach (TrialResult trial in result.Trials)
        {
            string[] told = [.. new[] { SayingWords.WhyUnknown(trial), Reason(trial, numbers), Guess(trial) }.Where(s => s.Length > 0)];
            if (told.Length > 0)
            {
                text.AppendWrapped($"{Trade.Capital(SayingWords.Name(trial))}: {string.Join("; ", told)}.", "  ");
            }
        }
    }

    private static string[] Row(TrialResult trial, SayingNumbers numbers) =>
    [
        SayingWords.Name(trial), .. Enumerable.Range(0, trial.Trial.Test.Sides.Count).Select(s => numbers.Side(trial, s)), numbers.WithBand(trial), SayingWords.Share(trial.Chance),
        SayingWords.Word(trial.Word) + (SayingWords.Instead(trial) is { Length: > 0 } instead ? $": {instead}" : ""),
    ];

    private static string Reason(TrialResult trial, SayingNumbers numbers) => string.Join(", ", numbers.Moved(trial)) is { Length: > 0 } moved ? $"moved with it: {moved}" : "";

    private static string Guess(TrialResult trial) => trial.Guess is LeadingGuess guess ? $"it rests most on {guess.Key}" : "";
}
