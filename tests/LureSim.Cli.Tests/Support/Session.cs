using System.Runtime.CompilerServices;

namespace LureSim.Cli.Tests.Support;

/// <summary>One call of the program.</summary>
internal sealed record Session(int Exit, string Out, string Error)
{
    // No process can be handed a NUL.
    public static Session Run(params string[] args) =>
        BuiltProgram.Other is string program && !args.Any(a => a.Contains('\0', StringComparison.Ordinal)) ? BuiltProgram.Run(program, args) : Run(CancellationToken.None, args);

    public static Session Run(CancellationToken stop, params string[] args)
    {
        using StringWriter output = new(), error = new();
        int exit = App.Run(args, new Terminal(output, error, false, ShowsProgress: false), stop);
        return new(exit, output.ToString(), error.ToString());
    }

    public static string Scenario(string name, [CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "scenarios", name + ".toml"));
}
