using LureSim.Reports.Kit.Text;
using LureSim.Studies.Page;

namespace LureSim.Reports.Page;

/// <summary>The solver that a page carries: its files by name, each gzipped and in base64; none where the page computes nothing by itself.</summary>
/// <param name="Parts">Name and base64.</param>
public sealed record PageEngine(IReadOnlyList<(string Name, string Base64)> Parts)
{
    /// <summary>No solver.</summary>
    public static PageEngine None { get; } = new([]);

    /// <summary>The solver that this program carries along.</summary>
    public static PageEngine Carried { get; } = new(EngineParts.All());

    /// <summary>The solver of the program that serves the page.</summary>
    public static PageEngine Served { get; } = new([]) { IsServed = true };

    /// <summary>True where the page is served by the program that computes: script and style come beside it.</summary>
    public bool IsServed { get; private init; }

    /// <summary>True where the page can compute.</summary>
    public bool Computes => IsServed || Parts.Count > 0;
}

/// <summary>What the text of a page is made from.</summary>
/// <param name="Result">Runs.</param>
/// <param name="Shown">Units.</param>
/// <param name="Command">The command that makes the page, as typed.</param>
internal sealed record PageContext(PageResult Result, Shown Shown, string Command)
{
    /// <summary>True where the page tells of several files.</summary>
    public bool IsMany => Result.Cases.Count > 1;

    /// <summary>A section once per file: with a heading of the file's title where there are several.</summary>
    /// <param name="inside">What is told of a file.</param>
    public Markup Each(Func<PageCase, Markup> inside) => Markup.Of(Result.Cases.Select(c => IsMany
        ? Markup.Tag("div", "case", Markup.Tag("h3", "", Markup.Name(Title(c))), inside(c))
        : inside(c)));

    /// <summary>Title of a file's scenario.</summary>
    /// <param name="c">File.</param>
    public static string Title(PageCase c) => c.File.Here.Setup!.Title;

    /// <summary>A run's name among the others: the title where it tells files apart.</summary>
    /// <param name="run">Run.</param>
    public Markup NameOf(PageRun run) => IsMany ? Markup.Name(Title(Result.Cases[run.File])) : run.Name;
}
