using System.Buffers;
using System.Text;
using System.Text.Json;
using LureSim.Model;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Page;

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
            json.WriteString("title", PageContext.Title(page.Result.Cases[0]));
            json.WriteString("command", page.Command);
            json.WriteString("units", page.Shown.Choice.ToString().ToLowerInvariant());
            json.WriteStartArray("runs");
            foreach (PageRun run in page.Result.Runs.Where(r => r.Result is not null))
            {
                Run(json, page, run);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    private static void Run(Utf8JsonWriter json, PageContext page, PageRun run)
    {
        RetrieveResult result = run.Result!;
        json.WriteStartObject();
        json.WriteString("id", run.Set.Count > 0 ? "other" : $"own{(run.File > 0 ? $"{run.File + 1}" : "")}");
        json.WriteString("name", page.IsMany ? PageContext.Title(page.Result.Cases[run.File]) : run.Name);
        json.WriteString("setup", SetUpWords.Short(result.Setup, result.Task, page.Shown));
        json.WriteString("failure", run.Failure);
        json.WriteStartObject("summary");
        json.WriteString("pattern", RetrieveFigures.Name(result.Summary.Pattern));
        json.WriteNumber("warm_up_twitches", result.WarmUpTwitches);
        JsonText.Figures(json, RetrieveFigures.All, result.Summary);
        json.WriteEndObject();
        json.WriteEndObject();
    }
}
