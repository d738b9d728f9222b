using System.Text;
using LureSim.Model.Strike;
using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Doubt;
using LureSim.Studies.Strike;

namespace LureSim.Reports.Strike;

/// <summary>A strike for the terminal: ASCII, lines of at most <see cref="Closing.Width"/> characters.</summary>
public static class StrikeText
{
    internal const string Caution =
        "Care under load: braid cuts, so never take a turn of it around a hand; a hook that lets go flies back at the rod, so face away and wear glasses.";

    /// <summary>Title, table, what happened, what can give, the drag, holding and landing, guesses, warnings and cautions, each line ended by a line feed.</summary>
    /// <param name="report">Strike.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="doubt">What the guesses may change, or null.</param>
    public static string Build(StrikeReport report, RunNotes notes, DoubtStudy? doubt = null)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(notes);
        Shown shown = notes.Shown;
        StrikeResult strike = report.Strike;
        var text = new StringBuilder();
        text.Append(strike.Setup.Title).Append("\n\n").Append(StrikeTable.Text(strike, shown)).Append('\n');
        Paragraph(text, StrikeStory.Sentences(strike, shown));
        text.Append(StrikeTable.Margins(strike.Summary, shown)).Append('\n');
        Paragraph(text, [.. DragStory.Sentences(report, shown), .. ExtremesStory.Sentences(report, shown)]);
        Paragraph(text, LandingStory.Sentences(report.Landing, shown));
        text.AppendWrapped(GuessStory.Sentence(report, shown));
        text.Append('\n');
        text.Append(doubt is null ? "" : DoubtText.Build(doubt, shown));
        text.AppendWrapped(Caution);
        text.AppendNotes(notes);
        return text.ToString();
    }

    private static void Paragraph(StringBuilder text, IEnumerable<string> sentences)
    {
        foreach (string sentence in sentences)
        {
            text.AppendWrapped(sentence);
        }

        text.Append('\n');
    }
}
