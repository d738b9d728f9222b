using System.CommandLine;
using LureSim.Scenarios.Starting;

namespace LureSim.Cli.Start;

/// <summary>Argument and options of <c>start</c>.</summary>
internal sealed class StartOptions
{
    private const string Ending = ".toml";

    private readonly Argument<string[]> _words = new("words")
    {
        Description = "Kind of lure (small-walker, walker, large-walker, slanted, upright, hollow), its mass or length, and a file name if you like.",
        Arity = ArgumentArity.ZeroOrMore,
    };

    private readonly Option<string?> _mass = Text("--mass", "Mass of the lure as sold, hooks included: \"1/2 oz\".", "mass");
    private readonly Option<string?> _length = Text("--length", "Length of the lure's body: \"4 in\".", "length");
    private readonly Option<string?> _hooks = Text("--hooks", "Hooks of the lure: \"no. 4\", \"treble 1/0\".", "size");
    private readonly Option<string?> _rod = Text("--rod", "Rod: \"7 ft medium-heavy fast\", a part of luresim list rods, or your own part file.", "words");
    private readonly Option<string?> _reel = Text("--reel", "Reel: \"7.1:1\", \"spinning\", \"28 in/turn\".", "words");
    private readonly Option<string?> _line = Text("--line", "Main line: \"30 lb braid\", \"PE 2 braid\", \"0.30 mm nylon\".", "words");
    private readonly Option<string?> _leader = Text("--leader", "Leader: \"15 in of 20 lb nylon\", or none.", "words");
    private readonly Option<string?> _height = Text("--height", "Height of your rod hand over the water, or where you stand: kayak, wading, bank, boat deck, dock.", "words");
    private readonly Option<string?> _water = Text("--water", "Water: \"sea 18 C\", \"72 F\".", "words");
    private readonly Option<string?> _cover = Text("--cover", "Plants where you fish: open, sparse, mat.", "word");
    private readonly Option<string?> _style = Text("--style", "How you cast: \"one-handed beginner\", \"two-handed expert full\".", "words");
    private readonly Option<string?> _out = Text("--out", "File to write; default NAME.toml by the kind of lure.", "file");
    private readonly Option<bool> _force = new("--force") { Description = "Replace a file of that name." };
    private readonly Option<bool> _json = new("--json") { Description = "Print what was written as JSON instead of text." };
    private readonly Option<bool> _quiet = new("--quiet") { Description = "Print nothing but errors (and the JSON, if asked for)." };

    public void AddTo(Command command)
    {
        command.Add(_words);
        foreach (Option option in (Option[])[_mass, _length, _hooks, _rod, _reel, _line, _leader, _height, _water, _cover, _style, _out, _force, _json, _quiet])
        {
            command.Add(option);
        }
    }

    public bool MayReplace(ParseResult parsed) => parsed.GetValue(_force);

    public bool IsJson(ParseResult parsed) => parsed.GetValue(_json);

    public bool IsQuiet(ParseResult parsed) => parsed.GetValue(_quiet);

    /// <summary>The files that were named.</summary>
    public IReadOnlyList<string> Files(ParseResult parsed) => [.. Words(parsed).Where(IsFile), .. parsed.GetValue(_out) is string file ? [file] : Array.Empty<string>()];

    /// <summary>What was typed; files of the person as the scenario's folder sees them.</summary>
    public StartRequest Request(ParseResult parsed, string folder) => new()
    {
        Words = string.Join(' ', Words(parsed).Where(w => !IsFile(w))),
        Mass = parsed.GetValue(_mass),
        Length = parsed.GetValue(_length),
        Hooks = parsed.GetValue(_hooks),
        Rod = From(folder, parsed.GetValue(_rod)),
        Reel = From(folder, parsed.GetValue(_reel)),
        Line = From(folder, parsed.GetValue(_line)),
        Leader = From(folder, parsed.GetValue(_leader)),
        Height = From(folder, parsed.GetValue(_height)),
        Water = parsed.GetValue(_water),
        Cover = parsed.GetValue(_cover),
        Style = parsed.GetValue(_style),
    };

    private static Option<string?> Text(string name, string description, string help) => new(name) { Description = description, HelpName = help };

    private string[] Words(ParseResult parsed) => parsed.GetValue(_words) ?? [];

    private static bool IsFile(string word) => word.EndsWith(Ending, StringComparison.OrdinalIgnoreCase);

    private static string? From(string folder, string? text) => text is not null && IsFile(text) && File.Exists(text) ? Path.GetRelativePath(folder, text) : text;
}
