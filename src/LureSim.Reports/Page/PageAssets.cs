using System.Reflection;
using System.Text;

namespace LureSim.Reports.Page;

/// <summary>Scripts and styles of a page, which the program carries.</summary>
internal static class PageAssets
{
    private const string Engine = "engine.js";

    private static readonly string[] Scripts =
        ["film.js", "words.js", "phases.js", "captions.js", "hull.js", "run.js", "draw.js", "above.js", "side.js", "lanes.js", "stage.js", "stills.js", "player.js", "controls.js", Engine, "main.js"];

    private static readonly string[] Styles = ["page.css", "page-text.css"];

    /// <summary>All scripts as one module, in their order.</summary>
    public static string Script { get; } = Joined(Scripts);

    /// <summary>The same for a served page: it asks the server instead of a solver of its own.</summary>
    public static string ServedScript { get; } = Joined([.. Scripts.Select(s => s == Engine ? "live.js" : s)]);

    /// <summary>All styles as one sheet.</summary>
    public static string Style { get; } = Joined(Styles);

    /// <summary>The same for a served page.</summary>
    public static string ServedStyle { get; } = Joined([.. Styles, "live.css"]);

    private static string Joined(string[] names) => string.Join("\n", names.Select(Read).Where(t => t.Length > 0));

    private static string Read(string name)
    {
        using Stream? stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("page/" + name);
        if (stream is null)
        {
            return "";
        }

        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
