using System.Text;
using LureSim.Model.Retrieve;
using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Doubt;

namespace LureSim.Reports.Retrieve;

/// <summary>The summary that a person reads at the terminal: ASCII, lines of at most 100 characters.</summary>
public static class RetrieveText
{
    /// <summary>Title, table, sentences, warnings and caution, each line ended by a line feed.</summary>
    /// <param name="result">Retrieve, complete or stopped.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="doubt">What the guesses may change, or null.</param>
    public static string Build(RetrieveResult result, RunNotes notes, DoubtStudy? doubt = null)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(notes);
        var text = new StringBuilder();
        text.Append(result.Setup.Title).Append("\n\n");
        text.Append(RetrieveTable.Text(result.Summary, notes.Shown)).Append('\n');
        if (result.Failure is not null)
        {
            text.AppendWrapped("STOPPED EARLY: " + result.Failure);
        }

        foreach (string sentence in RetrieveStory.Sentences(result, notes.Shown))
        {
            text.AppendWrapped(sentence);
        }

        text.Append('\n');
        text.Append(doubt is null ? "" : DoubtText.Build(doubt, notes.Shown));
        text.AppendNotes(notes);
        return text.ToString();
    }
}
