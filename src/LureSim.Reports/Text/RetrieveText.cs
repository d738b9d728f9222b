using System.Text;
using LureSim.Model.Retrieve;
using LureSim.Reports.Files;

namespace LureSim.Reports.Text;

/// <summary>The summary that a person reads at the terminal: ASCII, lines of at most 100 characters.</summary>
public static class RetrieveText
{
    /// <summary>Longest line, characters.</summary>
    public const int Width = 100;

    /// <summary>The caution that ends every summary.</summary>
    public const string Caution =
        "Care: hooks are sharp, so look behind you, keep people and pets clear, stay far from power lines, and follow "
        + "local rules. This is a model; measure before you trust it.";

    /// <summary>Title, table, sentences, warnings and caution, each line ended by a line feed.</summary>
    /// <param name="result">Retrieve, complete or stopped.</param>
    /// <param name="notes">Warnings and guesses.</param>
    public static string Build(RetrieveResult result, RunNotes notes)
    {
        var text = new StringBuilder();
        text.Append(result.Spec.Title).Append("\n\n");
        text.Append(RetrieveTable.Text(result.Summary)).Append('\n');
        if (result.Failure is not null)
        {
            AppendWrapped(text, "STOPPED EARLY: " + result.Failure);
        }

        foreach (string sentence in RetrieveStory.Sentences(result))
        {
            AppendWrapped(text, sentence);
        }

        text.Append('\n');
        foreach (string warning in notes.Warnings)
        {
            AppendWrapped(text, "Note: " + warning);
        }

        if (notes.Guesses.Count > 0)
        {
            AppendWrapped(text, $"Guessed parameters: {notes.Guesses.Count}; effective.toml marks them, summary.json lists them.");
        }

        AppendWrapped(text, Caution);
        return text.ToString();
    }

    private static void AppendWrapped(StringBuilder text, string paragraph)
    {
        int column = 0;
        foreach (string word in paragraph.Split(' '))
        {
            if (column > 0 && column + 1 + word.Length > Width)
            {
                text.Append('\n');
                column = 0;
            }

            text.Append(column > 0 ? " " : string.Empty).Append(word);
            column += (column > 0 ? 1 : 0) + word.Length;
        }

        text.Append('\n');
    }
}
