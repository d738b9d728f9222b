using System.Diagnostics;
using System.Globalization;

namespace LureSim.Cli.Running;

/// <summary>
/// Progress on stderr: nothing for runs shorter than a second, then one line rewritten in place on a terminal, or a line
/// every five seconds in a log. Calls may come from several threads.
/// </summary>
public sealed class ProgressLine : IDisposable
{
    private readonly string title;
    private readonly Terminal terminal;
    private readonly bool quiet;
    private readonly Stopwatch watch = Stopwatch.StartNew();
    private readonly Lock gate = new();
    private double nextS = 1.0;
    private bool shown;

    /// <summary>Starts the clock.</summary>
    /// <param name="title">What runs.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="quiet">Say nothing.</param>
    public ProgressLine(string title, Terminal terminal, bool quiet)
    {
        ArgumentNullException.ThrowIfNull(terminal);
        (this.title, this.terminal, this.quiet) = (title, terminal, quiet || !terminal.ShowsProgress);
    }

    /// <summary>Tells how far the work is.</summary>
    /// <param name="share">0 to 1.</param>
    public void Report(double share)
    {
        double now = watch.Elapsed.TotalSeconds;
        lock (gate)
        {
            if (quiet || now < nextS || share <= 0.0)
            {
                return;
            }

            nextS = now + (terminal.IsInteractive ? 0.2 : 5.0);
            shown = true;
            double left = now * (1.0 - share) / share;
            string line = string.Create(CultureInfo.InvariantCulture, $"{title}: {100.0 * share:F0} %, about {left:F0} s left");
            terminal.Error.Write(terminal.IsInteractive ? "\r" + line.PadRight(60) : line + Environment.NewLine);
        }
    }

    /// <summary>Clears the line.</summary>
    public void Dispose()
    {
        if (shown && terminal.IsInteractive)
        {
            terminal.Error.Write("\r" + new string(' ', 60) + "\r");
        }
    }
}
