using System.Diagnostics;
using System.Globalization;

namespace LureSim.Cli.Running;

/// <summary>
/// Progress on stderr: nothing for runs shorter than a second, then one line rewritten in place on a terminal, or a line
/// every five seconds in a log. Calls may come from several threads.
/// </summary>
public sealed class ProgressLine : IDisposable
{
    private readonly string _title;
    private readonly Terminal _terminal;
    private readonly bool _quiet;
    private readonly Stopwatch _watch = Stopwatch.StartNew();
    private readonly Lock _gate = new();
    private double _nextS = 1.0;
    private bool _shown;

    /// <summary>Starts the clock.</summary>
    /// <param name="title">What runs.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="quiet">Say nothing.</param>
    public ProgressLine(string title, Terminal terminal, bool quiet)
    {
        ArgumentNullException.ThrowIfNull(terminal);
        (_title, _terminal, _quiet) = (title, terminal, quiet || !terminal.ShowsProgress);
    }

    /// <summary>Tells how far the work is.</summary>
    /// <param name="share">0 to 1.</param>
    public void Report(double share)
    {
        double now = _watch.Elapsed.TotalSeconds;
        lock (_gate)
        {
            if (_quiet || now < _nextS || share <= 0.0)
            {
                return;
            }

            _nextS = now + (_terminal.IsInteractive ? 0.2 : 5.0);
            _shown = true;
            double left = now * (1.0 - share) / share;
            string line = string.Create(CultureInfo.InvariantCulture, $"{_title}: {100.0 * share:F0} %, about {left:F0} s left");
            _terminal.Cursor.Write(_terminal.IsInteractive ? "\r" + line.PadRight(60) : line + Environment.NewLine);
        }
    }

    /// <summary>Tells something that stays, in a line of its own.</summary>
    /// <param name="text">One line.</param>
    public void Tell(string text)
    {
        lock (_gate)
        {
            if (!_quiet)
            {
                Dispose();
                _shown = false;
                _terminal.Error.WriteLine($"{_title}: {text}");
            }
        }
    }

    /// <summary>Clears the line.</summary>
    public void Dispose()
    {
        if (_shown && _terminal.IsInteractive)
        {
            _terminal.Cursor.Write("\r" + new string(' ', 60) + "\r");
        }
    }
}
