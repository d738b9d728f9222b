using System.CommandLine;
using System.Diagnostics;
using System.Globalization;

namespace LureSim.Cli.Live;

/// <summary><c>live</c>: starts the program that serves the page on this machine, and ends with it.</summary>
internal static class LiveCommand
{
    /// <summary>Name of that program.</summary>
    private const string Program = "luresim-live";

    /// <summary>The capability.</summary>
    public static Capability Capability { get; } = new(Create);

    private static Command Create(Terminal terminal, CancellationToken stop)
    {
        var arguments = new LiveArguments();
        var command = new Command("live", "Open the page on this machine, computed by this program: sliders, whole studies, nothing leaves the machine.");
        arguments.AddTo(command);
        command.SetAction(parsed => arguments.Read(parsed, terminal) is LiveValues values ? Start(values, terminal, stop) : ExitCode.BadInput);
        return command;
    }

    private static int Start(LiveValues values, Terminal terminal, CancellationToken stop)
    {
        string path = Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? Program + ".exe" : Program);
        if (!File.Exists(path))
        {
            terminal.Error.WriteLine($"live: {Program} is a program of its own and does not lie beside this one; docs/install.md tells where to get it");
            return ExitCode.BadInput;
        }

        // It ends when this pipe does, so that it never outlives the command, however that ends.
        var start = new ProcessStartInfo(path) { RedirectStandardInput = true, UseShellExecute = false };
        start.ArgumentList.Add(values.File);
        if (values.Units is not null)
        {
            start.ArgumentList.Add("--units=" + values.Units);
        }

        if (values.Port > 0)
        {
            start.ArgumentList.Add("--port=" + values.Port.ToString(CultureInfo.InvariantCulture));
        }

        using Process server = Process.Start(start)!;
        using CancellationTokenRegistration ended = stop.Register(server.StandardInput.Close);
        server.WaitForExit();
        return server.ExitCode;
    }
}
