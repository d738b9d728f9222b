using System.Buffers;
using System.Text;
using System.Text.Json;
using LureSim.Model.Retrieve;
using LureSim.Reports.Cadence;
using LureSim.Reports.Kit.Json;
using LureSim.Scenarios.Quantities;
using LureSim.Studies.Page;
using LureSim.Wire;

namespace LureSim.Reports.Page;

/// <summary>The data that the scripts of a page read.</summary>
internal static class PageData
{
    /// <summary>JSON.</summary>
    /// <param name="page">Page.</param>
    /// <param name="computes">True where the page carries the solver.</param>
    public static string Of(PageContext page, bool computes)
    {
        var buffer = new ArrayBufferWriter<byte>(1 << 16);
        using (var json = new Utf8JsonWriter(buffer))
        {
            json.WriteStartObject();
            json.WriteString("title", PlainText.Escape(PageContext.Title(page.Result.Cases[0])));
            json.WriteString("command", page.Command);
            json.WriteString("units", page.Shown.Choice.ToString().ToLowerInvariant());
            json.WriteStartArray("runs");
            foreach (PageRun run in page.Result.Runs.Where(r => r.Result is not null))
            {
                Run(json, page, run);
            }

            bool slides = computes && page.Result.Cases[0].Own.Result is { Task.IsTow: false };
            if (slides)
            {
                Tried(json);
            }

            json.WriteEndArray();
            if (slides)
            {
                Sliders(json, page);
            }

            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    private static void Run(Utf8JsonWriter json, PageContext page, PageRun run)
    {
        RetrieveResult result = run.Result!;
        json.WriteStartObject();
        json.WriteString("id", run.Id);
        json.WriteString("name", page.IsMany ? PlainText.Escape(PageContext.Title(page.Result.Cases[run.File])) : run.Name);
        json.WriteString("setup", SetUpWords.Short(result.Setup, result.Task, page.Shown));
        json.WriteString("failure", run.Failure);
        json.WriteStartObject("summary");
        json.WriteString("pattern", RetrieveFigures.Name(result.Summary.Pattern));
        json.WriteNumber("warm_up_twitches", result.WarmUpTwitches);
        JsonText.Figures(json, RetrieveFigures.All, result.Summary);
        json.WriteEndObject();
        json.WritePropertyName("film");
        run.Film!.WriteTo(json);
        HullJson.Write(json, result.Setup);
        json.WriteEndObject();
    }

    // What the sliders make, until they are moved.
    private static void Tried(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("id", "tried");
        json.WriteString("name", "your change");
        json.WriteString("like", "own");
        json.WriteEndObject();
    }

    // The file's own run with every number resolved, what the sliders lay over it, and words for what comes out.
    private static void Sliders(Utf8JsonWriter json, PageContext page)
    {
        PageFile file = page.Result.Cases[0].File;
        json.WritePropertyName("run");
        RunJson.Write(json, new(file.Here.Setup!, file.Here.Retrieve!));
        ControlJson.Write(json, page);
        json.WriteString("retrieve", string.Join(' ', ["luresim retrieve", ShellWord.Of(file.Source.Name), .. file.Overrides.Select(o => $"--set {ShellWord.Of(o)}")]));
        json.WriteStartObject("patterns");
        foreach (WalkPattern pattern in Enum.GetValues<WalkPattern>())
        {
            json.WriteString(RetrieveFigures.Name(pattern), PatternClasses.Name(pattern));
        }

        json.WriteEndObject();
    }
}
