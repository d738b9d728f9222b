using System.CommandLine;
using System.CommandLine.Parsing;
using System.Text.RegularExpressions;
using LureSim.Scenarios.Keys;

namespace LureSim.Cli;

/// <summary>What to say to a command line that cannot be run, and which other one is meant by <c>help</c>.</summary>
internal static partial class CommandHints
{
    private const string Help = "help";

    // What people type for a command.
    private static readonly (string Command, string Typed)[] Meant =
    [
        ("retrieve", "walk|twitch|work|run|simulate|sim|play|fish"),
        ("cast", "throw|distance|casting|flight"),
        ("cadence", "rhythm|tempo|rate"),
        ("trim", "float|balance|weigh|hull"),
        ("pool", "tub|tank|bathtub|tow"),
        ("crawl", "mat|frog|slop|drag"),
        ("sweep", "vary|grid|batch|scan"),
        ("check", "validate|test|verify|lint|read"),
        ("compare", "versus|vs|diff"),
        ("start", "new|init|create|begin"),
        ("bend", "bendtest|rod"),
        ("list", "ls|show|parts"),
    ];

    /// <summary>The arguments with <c>help</c>, <c>help cast</c> and <c>cast help</c> turned into the option.</summary>
    /// <param name="root">All commands.</param>
    /// <param name="args">As typed.</param>
    public static string[] WithoutHelpWord(RootCommand root, string[] args)
    {
        bool asks = args.Length > 0 && args[0].TrimStart('/').Equals(Help, StringComparison.OrdinalIgnoreCase), asksLast = args.Length == 2 && args[1] == Help && Find(root, args[0]) is not null;
        return asks && (args.Length == 1 || args[1] == Help) ? ["--help"]
            : asks && Find(root, args[1]) is not null ? [args[1], "--help"]
            : asks ? [.. args[1..]]
            : asksLast ? [args[0], "--help"]
            : args;
    }

    /// <summary>One line for a first word that is no command; null where there is nothing to say.</summary>
    /// <param name="root">All commands.</param>
    /// <param name="args">As typed.</param>
    public static string? NoCommand(RootCommand root, string[] args)
    {
        if (args.Length == 0 || args[0].StartsWith('-') || Find(root, args[0]) is not null)
        {
            return null;
        }

        string word = args[0];
        string[] names = [.. root.Subcommands.Select(c => c.Name)];
        if (word.EndsWith(".toml", StringComparison.OrdinalIgnoreCase) || File.Exists(word))
        {
            return $"{word} is a file; a command is due before it, for example: luresim cast {Quoted(word)}, luresim retrieve {Quoted(word)}, luresim check {Quoted(word)}";
        }

        string low = word.ToLowerInvariant();
        string? meant = names.FirstOrDefault(n => n == low)
            ?? Meant.FirstOrDefault(m => m.Typed.Split('|').Contains(low) && names.Contains(m.Command)).Command ?? Nearest.Of(low, names);
        return meant is null
            ? $"\"{word}\" is no command; commands: {string.Join(", ", names)}; luresim help tells more"
            : $"\"{word}\" is no command; did you mean luresim {meant}?";
    }

    /// <summary>One line for each thing that is wrong behind a command.</summary>
    /// <param name="parsed">What was read.</param>
    public static IEnumerable<string> Faults(ParseResult parsed)
    {
        Command command = parsed.CommandResult.Command;
        // A slip in an option that stood before the file was taken for the file.
        IEnumerable<string> slips = parsed.Tokens.Where(t => t.Type == TokenType.Argument && t.Value.StartsWith("--", StringComparison.Ordinal)).Select(t => t.Value);
        if (parsed.UnmatchedTokens.Count > 0)
        {
            yield return Lost(command, slips.Concat(parsed.UnmatchedTokens).First(), parsed);
            yield break;
        }

        foreach (string message in parsed.Errors.Select(e => Plain(command, e)).Distinct())
        {
            yield return message;
        }
    }

    private static string Lost(Command command, string first, ParseResult parsed)
    {
        if (first.StartsWith('-') && first.Length > 1)
        {
            string name = first.Split('=')[0], dashed = "--" + name.TrimStart('-').ToLowerInvariant();
            string[] known = [.. command.Options.Select(o => o.Name)];
            return (known.FirstOrDefault(k => k == dashed) ?? Nearest.Of(dashed, known)) is string near
                ? $"{command.Name}: {name} is no option; did you mean {near}?"
                : $"{command.Name}: {name} is no option; luresim help {command.Name} lists them";
        }

        return parsed.Tokens.Any(t => t.Value is "--set" or "--vary" or "--across" or "--match")
            ? $"{command.Name}: \"{first}\" stands alone; a value with blanks goes in quotes, for example --set \"rod.length=7 ft\""
            : $"{command.Name}: \"{first}\" is too much; luresim help {command.Name} tells what may stand there";
    }

    // The words of the parser, in those of a person.
    private static string Plain(Command command, ParseError error)
    {
        string message = error.Message.ReplaceLineEndings(" ");
        string option = error.SymbolResult is OptionResult result ? result.Option.Name : "";
        if (message.StartsWith("Required argument", StringComparison.Ordinal))
        {
            return option.Length > 0 ? $"{command.Name}: a value is due after {option}" : $"{command.Name}: a file is due, for example: luresim {command.Name} my.toml";
        }

        if (Unreadable().Match(message) is { Success: true } unread)
        {
            string due = unread.Groups["type"].Value.Contains("Int", StringComparison.Ordinal) ? "a whole number" : unread.Groups["type"].Value.Contains("Bool", StringComparison.Ordinal) ? "nothing" : "a number";
            return $"{command.Name}: {unread.Groups["option"].Value} \"{unread.Groups["text"].Value}\": {due} is due";
        }

        if (OneOf().Match(message) is { Success: true } one)
        {
            string[] allowed = [.. Between().Matches(one.Groups["list"].Value).Select(m => m.Groups[1].Value)];
            string near = Nearest.Of(one.Groups["text"].Value.ToLowerInvariant(), allowed) is string word ? $"; did you mean {word}?" : "";
            return $"{command.Name}: {option} \"{one.Groups["text"].Value}\" is not known; allowed: {string.Join(", ", allowed)}{near}";
        }

        if (TooMany().IsMatch(message))
        {
            return $"{command.Name}: {option} is given more than once";
        }

        return message.StartsWith("Required command", StringComparison.Ordinal) ? $"{command.Name}: one of its commands is due: {string.Join(", ", command.Subcommands.Select(c => c.Name))}" : message;
    }

    private static Command? Find(RootCommand root, string name) => root.Subcommands.FirstOrDefault(c => c.Name == name);

    private static string Quoted(string path) => path.Contains(' ', StringComparison.Ordinal) ? $"\"{path}\"" : path;

    [GeneratedRegex("^Cannot parse argument '(?<text>.*)' for (option|argument) '(?<option>.*)' as expected type '(?<type>.*)'")]
    private static partial Regex Unreadable();

    [GeneratedRegex("^Argument '(?<text>.*)' not recognized. Must be one of:(?<list>.*)$")]
    private static partial Regex OneOf();

    [GeneratedRegex("'([^']*)'")]
    private static partial Regex Between();

    [GeneratedRegex("expects a single argument but")]
    private static partial Regex TooMany();
}
