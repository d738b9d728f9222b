using LureSim.Studies.Batches;

namespace LureSim.Studies.Tests.Batches;

public class BatchTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(7)]
    public void Every_index_is_run_once_whatever_the_thread_count(int threads)
    {
        var results = new double[1000];
        var calls = new int[1000];
        Batch.Execute(Enumerable.Range(0, 1000), threads, i => Math.Sqrt(i), (i, r) =>
        {
            results[i] = r;
            calls[i]++;
        });
        Assert.All(calls, c => Assert.Equal(1, c));
        Assert.Equal([.. Enumerable.Range(0, 1000).Select(i => Math.Sqrt(i))], results);
    }

    [Fact]
    public void Results_are_handed_on_one_at_a_time()
    {
        int inside = 0, worst = 0;
        Batch.Execute(Enumerable.Range(0, 200), 4, i => i, (_, _) =>
        {
            worst = Math.Max(worst, Interlocked.Increment(ref inside));
            Thread.Yield();
            Interlocked.Decrement(ref inside);
        });
        Assert.Equal(1, worst);
    }

    [Fact]
    public void Runs_go_on_at_the_same_time()
    {
        // Each waits for the other: on one thread neither would ever get past.
        using var both = new Barrier(2);
        bool met = true;
        Batch.Execute(Enumerable.Range(0, 2), 2, _ => both.SignalAndWait(TimeSpan.FromMinutes(1)), (_, m) => met &= m);
        Assert.True(met);
    }

    [Fact]
    public void A_stop_keeps_what_is_done()
    {
        using var stop = new CancellationTokenSource();
        var done = new List<int>();
        Assert.Throws<OperationCanceledException>(() => Batch.Execute(
            Enumerable.Range(0, 1_000_000),
            2,
            i => i,
            (i, _) =>
            {
                done.Add(i);
                if (done.Count == 10)
                {
                    stop.Cancel();
                }
            },
            stop.Token));
        Assert.InRange(done.Count, 10, 1000);
        Assert.Equal(done.Count, done.Distinct().Count());
    }

    [Fact]
    public void A_run_that_watches_the_stop_ends_the_batch_as_stopped()
    {
        using var stop = new CancellationTokenSource();
        Assert.Throws<OperationCanceledException>(() => Batch.Execute(
            Enumerable.Range(0, 4),
            2,
            i =>
            {
                stop.Cancel();
                stop.Token.ThrowIfCancellationRequested();
                return i;
            },
            (_, _) => { },
            stop.Token));
    }

    [Fact]
    public void An_exception_comes_through_as_it_was() =>
        Assert.Throws<IOException>(() => Batch.Execute(Enumerable.Range(0, 100), 2, i => i, (_, _) => throw new IOException("full")));

    [Theory]
    [InlineData("2/8", 2, 8)]
    [InlineData("1/1", 1, 1)]
    public void Shards_are_read(string text, int number, int of) => Assert.Equal(new Shard(number, of), Shard.Parse(text));

    [Theory]
    [InlineData("0/8")]
    [InlineData("9/8")]
    [InlineData("1")]
    [InlineData("1/0")]
    [InlineData("-1/8")]
    [InlineData("1/2/3")]
    [InlineData("a/b")]
    [InlineData(" 1/2")]
    public void What_is_no_shard_is_refused(string text) => Assert.Null(Shard.Parse(text));

    [Theory]
    [InlineData(10, 3)]
    [InlineData(2, 5)]
    [InlineData(7, 7)]
    public void Shards_part_the_list(int count, int of)
    {
        int sum = 0;
        for (int index = 0; index < count; index++)
        {
            Assert.Equal(1, Enumerable.Range(1, of).Count(i => new Shard(i, of).Has(index)));
        }

        for (int i = 1; i <= of; i++)
        {
            Assert.Equal(Enumerable.Range(0, count).Count(new Shard(i, of).Has), new Shard(i, of).CountOf(count));
            sum += new Shard(i, of).CountOf(count);
        }

        Assert.Equal(count, sum);
    }
}
