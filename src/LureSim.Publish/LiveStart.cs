using LureSim.Live;

namespace LureSim.Cli.Live;

/// <summary>Serves the page in this very program: what is shipped has the server inside. It stands in for the file of that name in LureSim.Cli.</summary>
internal static class LiveStart
{
    /// <summary>Serves until the page was closed or the person stops it.</summary>
    /// <param name="values">Arguments.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="stop">Set when the person stops it.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static int Run(LiveValues values, Terminal terminal, CancellationToken stop) =>
        LiveHost.Run(values, terminal, starter: null, stop).GetAwaiter().GetResult();
}
