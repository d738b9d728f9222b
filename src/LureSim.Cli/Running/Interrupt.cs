using System.Runtime.InteropServices;

namespace LureSim.Cli.Running;

/// <summary>Turns Ctrl-C and a polite kill into a token; a second Ctrl-C ends the process at once.</summary>
public sealed class Interrupt : IDisposable
{
    private readonly CancellationTokenSource _source = new();
    private readonly PosixSignalRegistration[] _signals;

    /// <summary>Starts to listen.</summary>
    public Interrupt() => _signals =
    [
        PosixSignalRegistration.Create(PosixSignal.SIGINT, Handle), PosixSignalRegistration.Create(PosixSignal.SIGTERM, Handle),
    ];

    /// <summary>Set when the person wants to stop.</summary>
    public CancellationToken Token => _source.Token;

    /// <summary>Stops listening.</summary>
    public void Dispose()
    {
        foreach (PosixSignalRegistration signal in _signals)
        {
            signal.Dispose();
        }

        _source.Dispose();
    }

    private void Handle(PosixSignalContext context)
    {
        context.Cancel = !_source.IsCancellationRequested;
        _source.Cancel();
    }
}
