namespace LureSim.Live;

/// <summary>When the page was last heard of; it says so every few seconds while it is open.</summary>
/// <param name="clock">Clock.</param>
internal sealed class LastSeen(TimeProvider clock)
{
    private long _at = clock.GetTimestamp();
    private int _atWork;

    /// <summary>The page was heard of.</summary>
    public void Now() => Interlocked.Exchange(ref _at, clock.GetTimestamp());

    /// <summary>Keeps the server awake until disposed: a study goes on however quiet the page is.</summary>
    public IDisposable AtWork() => new Work(this);

    /// <summary>Ends when nobody was heard of for so long and nothing is at work.</summary>
    /// <param name="limit">How long.</param>
    /// <param name="stop">Ends the wait.</param>
    public async Task Silence(TimeSpan limit, CancellationToken stop)
    {
        while (true)
        {
            TimeSpan left = limit - clock.GetElapsedTime(Interlocked.Read(ref _at));
            if (left <= TimeSpan.Zero && Volatile.Read(ref _atWork) == 0)
            {
                return;
            }

            await Task.Delay(left > TimeSpan.Zero ? left : limit, clock, stop).ConfigureAwait(false);
        }
    }

    private sealed class Work : IDisposable
    {
        private readonly LastSeen _seen;

        public Work(LastSeen seen)
        {
            _seen = seen;
            Interlocked.Increment(ref seen._atWork);
        }

        public void Dispose()
        {
            Interlocked.Decrement(ref _seen._atWork);
            _seen.Now();
        }
    }
}
