namespace LureSim.Live;

/// <summary>One piece of work at a time: a newer one stops the one before.</summary>
internal sealed class Latest : IDisposable
{
    private readonly Lock _gate = new();
    private CancellationTokenSource? _now;

    /// <summary>Stops the work before, and gives the next its own way to stop.</summary>
    /// <param name="stop">Stops it too.</param>
    public CancellationTokenSource Next(CancellationToken stop)
    {
        var own = CancellationTokenSource.CreateLinkedTokenSource(stop);
        lock (_gate)
        {
            Cancel();
            _now = own;
        }

        return own;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_gate)
        {
            Cancel();
        }
    }

    private void Cancel()
    {
        try
        {
            _now?.Cancel();
        }
        catch (ObjectDisposedException)
        {
            // It has ended by itself.
        }
    }
}
