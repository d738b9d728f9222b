using System.CommandLine;

namespace LureSim.Cli.Live;

/// <summary><c>live</c>: serves the page on this machine; who does the serving: <see cref="LiveStart"/>.</summary>
internal static class LiveCommand
{
    /// <summary>The capability.</summary>
    public static Capability Capability { get; } = new(Create);

    private static Command Create(Terminal terminal, CancellationToken stop)
    {
        var arguments = new LiveArguments();
        var command = new Command("live", "Open the page on this machine, computed by this program: sliders, whole studies, nothing leaves the machine.");
        arguments.AddTo(command);
        command.SetAction(parsed => arguments.Read(parsed, terminal) is LiveValues values ? LiveStart.Run(values, terminal, stop) : ExitCode.BadInput);
        return command;
    }
}
