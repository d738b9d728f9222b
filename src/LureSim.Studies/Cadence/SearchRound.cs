using LureSim.Studies.Runs;

namespace LureSim.Studies.Cadence;

/// <summary>The runs that a search wants at one time, and what has come of them.</summary>
/// <param name="wanted">What it wants.</param>
internal sealed class SearchRound(WantedRhythm[] wanted)
{
    private readonly WantedRhythm[] _wanted = wanted;
    private readonly (int Rhythm, int Start)[] _runs = [.. wanted.SelectMany((w, i) => w.Starts.Select((_, k) => (i, k)))];
    private readonly StationaryOutcome?[][] _outcomes = [.. wanted.Select(w => new StationaryOutcome?[w.Starts.Count])];
    private int _given;
    private int _done;

    /// <summary>True when the search wants no more.</summary>
    public bool IsOver => _runs.Length == 0;

    /// <summary>Whether a run is not yet given out.</summary>
    public bool HasWaiting => _given < _runs.Length;

    /// <summary>True when all runs are done.</summary>
    public bool IsDone => _done == _runs.Length;

    /// <summary>Gives out the next run.</summary>
    public int Take() => _given++;

    /// <summary>Rhythm of a run, and which of its wanted starts it is.</summary>
    /// <param name="run">Run.</param>
    public (WantedRhythm Wanted, int Start) At(int run) => (_wanted[_runs[run].Rhythm], _runs[run].Start);

    /// <summary>Keeps an outcome.</summary>
    /// <param name="run">Run.</param>
    /// <param name="outcome">Its outcome.</param>
    /// <returns>Its rhythm with all outcomes, when that is whole now.</returns>
    public (WantedRhythm Wanted, IReadOnlyList<StationaryOutcome> Outcomes)? Set(int run, StationaryOutcome outcome)
    {
        (int rhythm, int start) = _runs[run];
        _outcomes[rhythm][start] = outcome;
        _done++;
        return Array.TrueForAll(_outcomes[rhythm], o => o is not null) ? (_wanted[rhythm], Outcomes(rhythm)) : null;
    }

    /// <summary>Outcomes of the whole round, as the search takes them.</summary>
    public IReadOnlyList<IReadOnlyList<StationaryOutcome>> AllOutcomes() => [.. Enumerable.Range(0, _wanted.Length).Select(Outcomes)];

    private IReadOnlyList<StationaryOutcome> Outcomes(int rhythm) => [.. _outcomes[rhythm].Select(o => o!)];
}
