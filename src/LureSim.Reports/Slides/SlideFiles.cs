using System.Text;
using System.Text.Json;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;

namespace LureSim.Reports.Slides;

/// <summary>The set of files of a talk.</summary>
public static class SlideFiles
{
    /// <summary>Name of the notes.</summary>
    public const string Notes = "notes.md";

    /// <summary>Writes slides and notes, all or none.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="deck">Slides.</param>
    /// <param name="plots">Which pictures; the moving one is always SVG.</param>
    /// <exception cref="OutputException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the set was whole.</exception>
    public static void Write(OutputFolder folder, SlideDeck deck, PlotFormat plots)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(deck);
        for (int i = 0; i < deck.Slides.Count && plots != PlotFormat.None; i++)
        {
            Add(folder, deck.Stem(i), deck.Slides[i], plots);
        }

        folder.Add(Notes, Encoding.UTF8.GetBytes(SlideNotes.Markdown(deck)));
        folder.Commit();
    }

    /// <summary>The list of slides as JSON.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="decks">Talks.</param>
    public static void WriteJson(Stream stream, IReadOnlyList<SlideDeck> decks) => JsonText.Object(stream, json =>
    {
        json.WriteStartArray("talks");
        foreach (SlideDeck deck in decks)
        {
            WriteDeck(json, deck);
        }

        json.WriteEndArray();
    });

    /// <summary>The list of slides as text.</summary>
    /// <param name="deck">Talk.</param>
    public static string Text(SlideDeck deck)
    {
        ArgumentNullException.ThrowIfNull(deck);
        return $"{deck.Title}: {deck.Slides.Count} slides\n{SlideNotes.Lines(deck)}What to say with each: {Notes}\n";
    }

    private static void Add(OutputFolder folder, string stem, Slide slide, PlotFormat plots)
    {
        if (slide.Movie is byte[] movie)
        {
            folder.Add(stem + ".svg", movie);
            return;
        }

        if (plots is PlotFormat.Svg or PlotFormat.Both)
        {
            folder.Add(stem + ".svg", ChartRenderer.Svg(slide.Picture!));
        }

        if (plots is PlotFormat.Png or PlotFormat.Both)
        {
            folder.Add(stem + ".png", ChartRenderer.Png(slide.Picture!, SlideFit.PixelWidth));
        }
    }

    private static void WriteDeck(Utf8JsonWriter json, SlideDeck deck)
    {
        json.WriteStartObject();
        json.WriteString("title", deck.Title);
        json.WriteString("file", deck.File);
        json.WriteStartArray("slides");
        for (int i = 0; i < deck.Slides.Count; i++)
        {
            json.WriteStartObject();
            json.WriteString("name", deck.Stem(i));
            json.WriteString("title", deck.Slides[i].Title);
            json.WriteString("say", deck.Slides[i].Say);
            json.WriteString("command", deck.Slides[i].Command);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
