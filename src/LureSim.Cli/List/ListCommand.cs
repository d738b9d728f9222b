using System.CommandLine;
using System.Text;
using LureSim.Reports.Start;
using LureSim.Scenarios.Parts;

namespace LureSim.Cli.List;

/// <summary><c>list</c>: what can be named, and the parts that come with the program.</summary>
internal static class ListCommand
{
    /// <summary>The capability.</summary>
    public static Capability Capability { get; } = new((terminal, _) => Create(terminal));

    private static Command Create(Terminal terminal)
    {
        var name = new Argument<string?>("name")
        {
            Description = $"{string.Join(", ", NameLists.All.Select(l => l.Name))}; or a part, whose file is printed.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var json = new Option<bool>("--json") { Description = "Print the tables as JSON." };
        var command = new Command("list", "Show what can be named: lures, rods, lines, leaders, reels, hands, casting styles, water; or print a part's file.") { name, json };
        command.SetAction(parsed => Run(parsed.GetValue(name), parsed.GetValue(json), terminal));
        return command;
    }

    private static int Run(string? name, bool json, Terminal terminal)
    {
        NameList? list = name is null ? null : NameLists.All.FirstOrDefault(l => l.Name == name || l.Name == name + "s");
        if (name is not null && list is null)
        {
            return PrintPart(name, terminal);
        }

        if (json)
        {
            using var stream = new MemoryStream();
            ListText.WriteJson(stream, list is null ? NameLists.All : [list]);
            terminal.Out.Write(Encoding.UTF8.GetString(stream.ToArray()));
        }
        else
        {
            terminal.Out.Write(list is null ? ListText.Overview() : ListText.Build(list));
        }

        return ExitCode.Done;
    }

    private static int PrintPart(string name, Terminal terminal)
    {
        IReadOnlyList<Part> parts = PartLibrary.Named(name);
        if (parts.Count == 1)
        {
            terminal.Out.Write(parts[0].Text);
            return ExitCode.Done;
        }

        terminal.Error.WriteLine(parts.Count == 0
            ? $"list: \"{name}\" is neither a list nor a part; lists: {string.Join(", ", NameLists.All.Select(l => l.Name))}"
            : $"list: more than one part is called \"{name}\": {string.Join(", ", parts.Select(p => $"{p.Folder.Name}/{p.Name}"))}");
        return ExitCode.BadInput;
    }
}
