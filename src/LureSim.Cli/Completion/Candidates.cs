using System.CommandLine;
using System.CommandLine.Completions;
using System.Globalization;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Start;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Parts;

namespace LureSim.Cli.Completion;

/// <summary>The values that may come, by the name of an argument or option; whatever the parser knows itself (commands, options, fixed words) needs nothing here.</summary>
internal static class Candidates
{
    // The parser's own word for "what may come here", which the scripts of the shells say first: [suggest:13] "retrieve --pl".
    private const string Question = "[suggest";

    // Other spellings of --help, which nobody needs to be shown.
    private static readonly string[] Hidden = ["-?", "-h", "/?", "/h"];

    private static readonly Dictionary<string, Func<string, IEnumerable<string>>> Sources = new(StringComparer.Ordinal)
    {
        ["file"] = Files,
        ["files"] = Files,
        ["name"] = _ => [.. NameLists.All.Select(l => l.Name), .. PartLibrary.All.Select(p => p.Name)],
        ["words"] = _ => Parts("lures"),
        ["--rod"] = _ => Parts("rods"),
        ["--reel"] = _ => Parts("reels"),
        ["--line"] = _ => Parts("lines"),
        ["--leader"] = _ => Parts("leaders"),
        ["--height"] = _ => Parts("hands"),
        ["shell"] = _ => Shells.All.Select(s => s.Name),
        ["--units"] = _ => Enum.GetNames<UnitChoice>().Select(n => n.ToLowerInvariant()),
        ["--set"] = _ => Keys(),
        ["--vary"] = _ => Keys(),
    };

    /// <summary>Whether the arguments come from a shell that completes.</summary>
    /// <param name="args">Arguments.</param>
    public static bool AreAskedFor(string[] args) => args.Length > 0 && args[0].StartsWith(Question, StringComparison.Ordinal);

    /// <summary>The words that may come at the end of a line, or at a place in it.</summary>
    /// <param name="root">All commands; told here what the parser does not know.</param>
    /// <param name="args">The question, with or without the place, and the line without the program's name.</param>
    public static IEnumerable<string> Answer(RootCommand root, string[] args)
    {
        AddTo(root);
        string line = args.Length > 1 ? args[1] : "";
        string place = args[0].TrimEnd(']').Split(':')[^1];
        int at = int.TryParse(place, NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? Math.Min(n, line.Length) : line.Length;
        return root.Parse(line).GetCompletions(at).Select(c => c.InsertText ?? c.Label).Except(Hidden);
    }

    private static void AddTo(Command command)
    {
        foreach (Argument argument in command.Arguments.Where(a => Sources.ContainsKey(a.Name)))
        {
            argument.CompletionSources.Add(context => Of(argument.Name, context));
        }

        foreach (Option option in command.Options.Where(o => Sources.ContainsKey(o.Name)))
        {
            option.CompletionSources.Add(context => Of(option.Name, context));
        }

        foreach (Command below in command.Subcommands)
        {
            AddTo(below);
        }
    }

    private static IEnumerable<CompletionItem> Of(string name, CompletionContext context) =>
        Sources[name](context.WordToComplete).Distinct().Where(w => w.StartsWith(context.WordToComplete, StringComparison.Ordinal)).Select(w => new CompletionItem(w));

    private static IEnumerable<string> Parts(string folder) => PartLibrary.In(folder).Select(p => p.Name);

    private static IEnumerable<string> Keys() => ScenarioSchema.Keys.Select(k => k.Path + "=");

    // Scenarios and readings in the folder that is being typed, and folders to go on with.
    private static IEnumerable<string> Files(string word)
    {
        string folder = word[..(word.LastIndexOf('/') + 1)];
        try
        {
            var at = new DirectoryInfo(folder.Length > 0 ? folder : ".");
            return
            [
                .. at.EnumerateFiles().Where(f => f.Extension is ".toml" or ".csv").Select(f => folder + f.Name).Order(StringComparer.Ordinal),
                .. at.EnumerateDirectories().Where(d => !d.Name.StartsWith('.')).Select(d => folder + d.Name + "/").Order(StringComparer.Ordinal),
            ];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return [];
        }
    }
}
