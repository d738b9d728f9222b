namespace LureSim.Live.Tests;

/// <summary>When a server that nobody looks at ends.</summary>
public sealed class LastSeenTests
{
    private static readonly TimeSpan Limit = TimeSpan.FromMinutes(3);

    [Fact]
    public async Task It_ends_when_the_page_was_silent_for_so_long()
    {
        var clock = new HandClock();
        Task silence = new LastSeen(clock).Silence(Limit, CancellationToken.None);
        await clock.Pass(0.9 * Limit);
        Assert.False(silence.IsCompleted);
        await Ends(silence, clock);
    }

    [Fact]
    public async Task A_sign_of_life_puts_it_off()
    {
        var clock = new HandClock();
        var seen = new LastSeen(clock);
        Task silence = seen.Silence(Limit, CancellationToken.None);
        await clock.Pass(0.9 * Limit);
        seen.Now();
        await clock.Pass(0.9 * Limit);
        Assert.False(silence.IsCompleted);
        await Ends(silence, clock);
    }

    [Fact]
    public async Task A_study_at_work_keeps_it_awake()
    {
        var clock = new HandClock();
        var seen = new LastSeen(clock);
        Task silence = seen.Silence(Limit, CancellationToken.None);
        using (seen.AtWork())
        {
            await clock.Pass(3.0 * Limit);
            Assert.False(silence.IsCompleted);
        }

        await Ends(silence, clock);
    }

    [Fact]
    public async Task A_wish_to_stop_ends_the_wait()
    {
        using var stop = new CancellationTokenSource();
        Task silence = new LastSeen(new HandClock()).Silence(Limit, stop.Token);
        await stop.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => silence);
    }

    private static async Task Ends(Task silence, HandClock clock)
    {
        for (int turns = 0; !silence.IsCompleted && turns < 1000; turns++)
        {
            await clock.Pass(Limit);
        }

        Assert.True(silence.IsCompletedSuccessfully);
    }

    /// <summary>A clock that is turned by hand.</summary>
    private sealed class HandClock : TimeProvider
    {
        private readonly Lock _gate = new();
        private readonly List<Waiting> _waiting = [];
        private long _ticks;

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override long GetTimestamp() => Interlocked.Read(ref _ticks);

        public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
        {
            var timer = new Waiting(GetTimestamp() + dueTime.Ticks, () => callback(state));
            lock (_gate)
            {
                _waiting.Add(timer);
            }

            return timer;
        }

        /// <summary>Time passes in small steps, between which whoever waits may go on.</summary>
        public async Task Pass(TimeSpan time)
        {
            for (int step = 0; step < 10; step++)
            {
                Waiting[] due;
                lock (_gate)
                {
                    Interlocked.Add(ref _ticks, time.Ticks / 10);
                    due = [.. _waiting.Where(w => w.DueTicks <= _ticks)];
                    _waiting.RemoveAll(w => w.DueTicks <= _ticks);
                }

                Array.ForEach(due, w => w.Ring());
                await Task.Delay(2);
            }
        }

        private sealed record Waiting(long DueTicks, Action Ring) : ITimer
        {
            public bool Change(TimeSpan dueTime, TimeSpan period) => false;

            public void Dispose()
            {
            }

            public ValueTask DisposeAsync() => ValueTask.CompletedTask;
        }
    }
}
