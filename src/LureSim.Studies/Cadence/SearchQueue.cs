using LureSim.Model.Assembly;
using LureSim.Model.Retrieve;
using LureSim.Studies.Batches;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Cadence;

/// <summary>
/// Runs the searches of many set-ups: whichever thread is free takes the next run of the first set-up that has one waiting, and a set-up goes on to its next
/// round as soon as its own runs are done. So the first set-ups are finished first, and no thread waits for one slow run. What is run depends on
/// the outcomes of the same set-up alone, never on the order in which threads finish.
/// </summary>
internal sealed class SearchQueue : IDisposable
{
    // Refinement adds about this much to the first pass; only progress depends on it.
    private const double RunsPerScanned = 5.0;

    private readonly RhythmSearch[] _searches;
    private readonly SearchRound[] _rounds;
    private readonly WalkStart[] _starts;
    private readonly CadencePlan _plan;
    private readonly CadenceNews _news;
    private readonly List<(int Search, int Run)> _given = [];
    private readonly Lock _gate = new();
    private readonly SemaphoreSlim _changed = new(0);
    private int _done;
    private volatile bool _broken;

    /// <summary>Opens the first round of every search.</summary>
    /// <param name="searches">Searches.</param>
    /// <param name="plan">Plan.</param>
    /// <param name="news">Who is told.</param>
    public SearchQueue(RhythmSearch[] searches, CadencePlan plan, CadenceNews news)
    {
        (_searches, _plan, _news, _starts) = (searches, plan, news, WalkStart.Spread(plan.Starts));
        _rounds = [.. searches.Select(Round)];
    }

    /// <summary>Runs all searches to their end.</summary>
    /// <param name="run">Runs one retrieve.</param>
    /// <param name="stop">Stops between runs.</param>
    /// <exception cref="OperationCanceledException">Stopped. Any other exception is the one of a run, as it is.</exception>
    public void Run(Func<Setup, RetrieveTask, StationaryOutcome> run, CancellationToken stop)
    {
        Batch.Execute(Indices(stop), Batch.Cores(_plan.Threads), One, Keep, stop);

        StationaryOutcome One(int n)
        {
            try
            {
                (int search, int at) = Given(n);
                return run(_searches[search].Setup, Task(search, at));
            }
            catch
            {
                // Who waits for a run would wait for ever.
                _broken = true;
                _changed.Release();
                throw;
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _changed.Dispose();

    // The batch asks one thread at a time; it waits where every run is given out and not all are done.
    private IEnumerable<int> Indices(CancellationToken stop)
    {
        while (!_broken)
        {
            int? next;
            bool over;
            lock (_gate)
            {
                next = Give();
                over = next is null && Array.TrueForAll(_rounds, r => r.IsOver);
            }

            if (over)
            {
                yield break;
            }

            if (next is int n)
            {
                yield return n;
            }
            else
            {
                _changed.Wait(stop);
            }
        }
    }

    private static SearchRound Round(RhythmSearch search) => new([.. search.Wanted]);

    private int? Give()
    {
        int search = Array.FindIndex(_rounds, r => r.HasWaiting);
        if (search < 0)
        {
            return null;
        }

        _given.Add((search, _rounds[search].Take()));
        return _given.Count - 1;
    }

    private (int Search, int Run) Given(int n)
    {
        lock (_gate)
        {
            return _given[n];
        }
    }

    private RetrieveTask Task(int search, int run)
    {
        (WantedRhythm wanted, int k) = _rounds[search].At(run);
        return StationaryRun.Make(_searches[search].Task, wanted.PerS, _starts[wanted.Starts[k]], _plan.Runs, wanted.TakeUpsMS[k]);
    }

    private void Keep(int n, StationaryOutcome outcome)
    {
        (int search, int run) = Given(n);
        double expected = RunsPerScanned * _plan.ScanPoints * _searches.Length;
        _news.Share?.Invoke(Math.Min(0.99, ++_done / Math.Max(expected, _done)));
        SearchRound round = _rounds[search];
        if (round.Set(run, outcome) is var (wanted, outcomes) && _searches[search].With(wanted, outcomes) is RhythmPoint point)
        {
            _news.Rhythm?.Invoke(search, point);
        }

        if (round.IsDone)
        {
            _searches[search].Add(round.AllOutcomes());
            lock (_gate)
            {
                _rounds[search] = Round(_searches[search]);
            }

            if (_rounds[search].IsOver)
            {
                _news.Finished?.Invoke(search, _searches[search]);
            }
        }

        _changed.Release();
    }
}
