using System.Globalization;
using System.Text;
using LureSim.Scenarios.Quantities;

namespace LureSim.Reports.Slides;

/// <summary>What a speaker takes along: a line a slide, and the same as text for the terminal.</summary>
internal static class SlideNotes
{
    private const string Special = "\\`*_{}[]<>#|~&!$";

    /// <summary>The notes as Markdown.</summary>
    /// <param name="deck">Slides.</param>
    public static string Markdown(SlideDeck deck)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"# {Plain(deck.Title)}\n\n");
        text.Append("A line a slide: what it shows, what to say, and the command that makes it by itself.\n");
        text.Append("The moving picture plays in any browser; the others are there as PNG and SVG.\n\n");
        for (int i = 0; i < deck.Slides.Count; i++)
        {
            Slide s = deck.Slides[i];
            text.Append(CultureInfo.InvariantCulture, $"{i + 1}. **{Plain(s.Title)}** ({s.Name}). {s.Say} {Code(s.Command)}\n");
        }

        text.Append(CultureInfo.InvariantCulture, $"\nNobody has measured a walking lure: these are computed. {Guesses(deck)} What the model leaves out: docs/limits.md of the project.\n");
        text.Append("Hooks, casting and braid under load can hurt: keep trebles covered when you pass a lure around.\n");
        return text.ToString();
    }

    /// <summary>The list for a terminal.</summary>
    /// <param name="deck">Slides.</param>
    public static string Lines(SlideDeck deck) => string.Concat(deck.Slides.Select((s, i) => $"  {deck.Stem(i),-20} {s.Title}\n"));

    private static string Guesses(SlideDeck deck) =>
        deck.Guesses == 0 ? "Every value was given." : string.Create(CultureInfo.InvariantCulture, $"{deck.Guesses} values are guesses; {Code($"luresim check {deck.File}")} names them.");

    // Text of the user steers neither Markdown nor the terminal.
    private static string Plain(string text)
    {
        var plain = new StringBuilder();
        foreach (char c in PlainText.Escape(text.ReplaceLineEndings(" ")))
        {
            plain.Append(Special.Contains(c, StringComparison.Ordinal) ? "\\" : "").Append(c);
        }

        return plain.ToString();
    }

    // A fence longer than any run of its own marks inside.
    private static string Code(string text)
    {
        string plain = PlainText.Escape(text.ReplaceLineEndings(" ")), fence = "`";
        while (plain.Contains(fence, StringComparison.Ordinal))
        {
            fence += "`";
        }

        string room = fence.Length > 1 ? " " : "";
        return fence + room + plain + room + fence;
    }
}
