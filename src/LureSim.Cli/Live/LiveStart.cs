using System.Diagnostics;
using System.Globalization;

namespace LureSim.Cli.Live;

/// <summary>Starts the program that serves the page, and ends with it. What is shipped has the server inside (LureSim.Publish); this one stands in for it
/// where programs are built and tested, so that no other command needs the framework's web server.</summary>
internal static class LiveStart
{
    /// <summary>Name of that program.</summary>
    private const string Program = "luresim-live";

    /// <summary>Serves until the page was closed or the person stops it.</summary>
    /// <param name="values">Arguments.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="stop">Set when the person stops it.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static int Run(LiveValues values, Terminal terminal, CancellationToken stop)
    {
        string path = Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? Program + ".exe" : Program);
        if (!File.Exists(path))
        {
            terminal.Error.WriteLine($"live: {Program} is a program of its own and does not lie beside this one; build src/LureSim.Live, or take a program of docs/install.md, which has it inside");
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
