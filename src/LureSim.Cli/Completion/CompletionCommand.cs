using System.CommandLine;

namespace LureSim.Cli.Completion;

/// <summary><c>completion</c>: prints the script that lets a shell complete commands, options and values with the tabulator key.</summary>
internal static class CompletionCommand
{
    private static readonly string Known = string.Join(", ", Shells.All.Select(s => s.Name));

    /// <summary>The capability.</summary>
    public static Capability Capability { get; } = new((terminal, _) => Create(terminal));

    private static Command Create(Terminal terminal)
    {
        var name = new Argument<string?>("shell") { Description = Known + ".", Arity = ArgumentArity.ZeroOrOne };
        var command = new Command("completion", "Print a script that lets your shell complete what you type here.") { name };
        command.SetAction(parsed => Run(parsed.GetValue(name), terminal));
        return command;
    }

    private static int Run(string? name, Terminal terminal)
    {
        if (Shells.All.FirstOrDefault(s => s.Name == name) is not Shell shell)
        {
            terminal.Error.WriteLine(name is null ? $"completion: a shell is due: {Known}" : $"completion: \"{name}\" is no shell known here; shells: {Known}");
            return ExitCode.BadInput;
        }

        terminal.Out.Write($"# The tabulator key completes luresim's commands, options, keys, parts and files. To keep it: {shell.Where}\n{shell.Script}");
        return ExitCode.Done;
    }
}
