using System.Text;
using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cast;
using LureSim.Studies.Doubt;

namespace LureSim.Reports.Cast;

/// <summary>A cast for the terminal: ASCII, lines of at most <see cref="Closing.Width"/> characters.</summary>
public static class CastText
{
    /// <summary>Title, table, sentences, warnings and caution, each line ended by a line feed.</summary>
    /// <param name="report">Cast.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="doubt">What the guesses may change, or null.</param>
    public static string Build(CastReport report, RunNotes notes, DoubtStudy? doubt = null)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(notes);
        var text = new StringBuilder();
        text.Append(report.Cast.Setup.Title).Append("\n\n");
        text.Append(CastTable.Text(report, notes.Shown)).Append('\n');
        foreach (string sentence in CastStory.Sentences(report, notes.Shown))
        {
            text.AppendWrapped(sentence);
        }

        text.Append('\n');
        text.Append(doubt is null ? "" : DoubtText.Build(doubt, notes.Shown));
        text.AppendNotes(notes, "cast.json");
        return text.ToString();
    }
}
