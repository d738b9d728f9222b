using System.Text;
using LureSim.Reports.Kit.Json;

namespace LureSim.Reports.Kit.Text;

/// <summary>What every text for a terminal shares: its width and its end.</summary>
public static class Closing
{
    /// <summary>Longest line, characters.</summary>
    public const int Width = 100;

    /// <summary>The caution that ends every summary.</summary>
    public const string Caution =
        "Care: hooks are sharp, so look behind you, keep people and pets clear, stay far from power lines, and follow "
        + "local rules. This is a model; measure before you trust it.";

    /// <summary>Adds warnings, number of guesses, caution.</summary>
    /// <param name="text">Receives them.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="file">File that lists the guesses.</param>
    internal static void AppendNotes(this StringBuilder text, RunNotes notes, string file = "summary.json")
    {
        foreach (string warning in notes.Warnings)
        {
            text.AppendWrapped("Note: " + warning);
        }

        if (notes.Guesses.Count > 0)
        {
            text.AppendWrapped($"Guessed parameters: {notes.Guesses.Count}; effective.toml marks them, {file} lists them.");
        }

        text.AppendWrapped(Caution);
    }
}
