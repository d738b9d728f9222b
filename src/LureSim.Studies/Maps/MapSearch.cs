using LureSim.Model.Assembly;
using LureSim.Model.Retrieve;
using LureSim.Studies.Cadence;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Maps;

/// <summary>
/// The search over a map, in waves: it says which runs it wants, is told what they gave, and so on until it wants no more. First a few points of the coarse
/// lattice only for their hand, then every other coarse point, the rest of them, and what the lattice cuts, one start each with the nose to either
/// side in turn. Then the points at the edge of walking get further starts, one at a time, until it is decided whether enough of all walk. The point that
/// glides widest has all. What is wanted hangs on the outcomes alone.
/// </summary>
internal sealed class MapSearch
{
    // As along the rhythms of cadence: of three, the second is run ahead.
    private const int EachPioneer = 3, FirstPioneer = 1;

    // First and third of the list of starts have the nose to each side.
    private static readonly int[] First = [0, 2];
    private static readonly int NoPattern = Enum.GetValues<WalkPattern>().Length;

    private readonly MapPlan _plan;
    private readonly Func<double, double, (Setup Setup, RetrieveTask Task)?> _make;
    private readonly AdaptiveLattice _lattice;
    private readonly Dictionary<(int I, int J), (Setup Setup, RetrieveTask Task)?> _trials = [];
    private readonly Dictionary<(int I, int J), StationaryOutcome?[]> _outcomes = [];
    private readonly Dictionary<(int I, int J), RhythmPoint> _points = [];
    private readonly Dictionary<(int I, int J), RhythmPoint> _hands = [];
    private readonly WalkStart[] _starts;
    private IReadOnlyList<MapRun> _wanted;

    /// <summary>Starts a search.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="make">The set-up at shares 0 to 1 of both ranges, or null where it makes no sense.</param>
    public MapSearch(MapPlan plan, Func<double, double, (Setup Setup, RetrieveTask Task)?> make)
    {
        (_plan, _make, _starts) = (plan, make, WalkStart.Spread(plan.Starts));
        _lattice = new(plan.CellsX, plan.CellsY, plan.Depth, Code(WalkPattern.Alternating), plan.OtherDepth);
        _wanted = Sensible(Pioneers());
        if (_wanted.Count == 0)
        {
            GoOn();
        }
    }

    /// <summary>The runs wanted next, in a fixed order; empty when the search is over.</summary>
    public IReadOnlyList<(MapRun Run, Setup Setup, RetrieveTask Task)> Wanted() => [.. _wanted.Select(w => (w, _trials[(w.I, w.J)]!.Value.Setup, Task(w)))];

    /// <summary>Takes the outcomes of the wanted runs, in their order, and decides what is wanted next.</summary>
    /// <param name="outcomes">Outcomes.</param>
    public void Add(IReadOnlyList<StationaryOutcome> outcomes)
    {
        for (int n = 0; n < _wanted.Count; n++)
        {
            Take(_wanted[n], outcomes[n]);
        }

        GoOn();
    }

    /// <summary>The map of a finished search.</summary>
    public MapGrid Grid()
    {
        (int[,] codes, double[,] glide) = _lattice.Fill();
        var patterns = new WalkPattern?[_lattice.Width, _lattice.Height];
        for (int i = 0; i < _lattice.Width; i++)
        {
            for (int j = 0; j < _lattice.Height; j++)
            {
                patterns[i, j] = codes[i, j] == NoPattern ? null : (WalkPattern)codes[i, j];
                glide[i, j] = patterns[i, j] == WalkPattern.Alternating ? glide[i, j] : double.NaN;
            }
        }

        IEnumerable<MapSample> samples = _trials.Where(t => t.Value is null || _points.ContainsKey(t.Key)).Select(t => new MapSample(t.Key.I, t.Key.J, _points.GetValueOrDefault(t.Key)));
        return new([.. samples.OrderBy(s => s.I).ThenBy(s => s.J)], patterns, glide);
    }

    private static int Code(WalkPattern? pattern) => pattern is WalkPattern p ? (int)p : NoPattern;

    private IEnumerable<MapRun> Pioneers()
    {
        int cell = 1 << _plan.Depth;
        for (int a = FirstPioneer; a <= _plan.CellsX; a += EachPioneer)
        {
            for (int b = FirstPioneer; b <= _plan.CellsY; b += EachPioneer)
            {
                yield return new(a * cell, b * cell, _plan.Starts);
            }
        }
    }

    // Until there is something to run, or nothing wanted.
    private void GoOn()
    {
        do
        {
            _wanted = Next();
        }
        while (_wanted.Count > 0 && (_wanted = Sensible(_wanted)).Count == 0);
    }

    private MapRun[] Next()
    {
        IReadOnlyList<(int I, int J)> missing = _lattice.Wanted();
        if (missing.Count > 0)
        {
            // Every other coarse point first: then the rest has a hand next to it.
            int apart = 2 << _plan.Depth;
            (int I, int J)[] early = [.. missing.Where(p => p.I % apart == 0 && p.J % apart == 0)];
            return [.. (early.Length > 0 ? early : missing).Select(p => new MapRun(p.I, p.J, FirstStart(p.I, p.J)))];
        }

        MapRun[] edge = [.. Open().Where(p => _lattice.IsAtEdge(p.I, p.J)).Select(More)];
        return edge.Length > 0 ? edge : [.. Open().Where(IsWidest).Select(More)];
    }

    private IEnumerable<(int I, int J)> Open() => _points.Where(p => p.Value.IsOpen(_plan.Starts, _plan.LockShare)).Select(p => p.Key).Order();

    private bool IsWidest((int I, int J) at) => MapGrid.WidestOf(_points.OrderBy(p => p.Key).Select(p => p.Value)) == _points[at];

    // The nose to either side in turn, so that neighbours ask each other what a second start would.
    private int FirstStart(int i, int j) => _plan.Starts <= First[1] ? 0 : First[((i + j) >> System.Numerics.BitOperations.TrailingZeroCount(i | j | (1 << _plan.Depth))) % 2];

    private MapRun More((int I, int J) at) => new(at.I, at.J, Array.IndexOf(_outcomes[at], null));

    // Makes the set-ups; a point without one is set at once.
    private List<MapRun> Sensible(IEnumerable<MapRun> runs)
    {
        var sensible = new List<MapRun>();
        foreach (MapRun run in runs)
        {
            if (!_trials.TryGetValue((run.I, run.J), out (Setup Setup, RetrieveTask Task)? trial))
            {
                trial = _trials[(run.I, run.J)] = _make(run.I / (_lattice.Width - 1.0), run.J / (_lattice.Height - 1.0));
            }

            if (trial is not null)
            {
                sensible.Add(run);
            }
            else
            {
                _lattice.Set(run.I, run.J, NoPattern, double.NaN);
            }
        }

        return sensible;
    }

    private RetrieveTask Task(MapRun run)
    {
        RetrieveTask task = _trials[(run.I, run.J)]!.Value.Task;
        WalkStart start = _starts[run.Start % _plan.Starts];

        // Further starts ask whether the answer hangs on the hand too: they have that of the points around, not its own.
        (int I, int J) own = (run.I, run.J);
        bool isFirst = !_points.ContainsKey(own);
        double? hand = MapHand.At(_hands.Where(h => isFirst || h.Key != own), run, task.TakeUp.FastestMS);
        return StationaryRun.Make(task, task.CadencePerS, start, _plan.Runs, hand);
    }

    private void Take(MapRun run, StationaryOutcome outcome)
    {
        (int I, int J) at = (run.I, run.J);
        double perS = _trials[at]!.Value.Task.CadencePerS;
        if (run.Start == _plan.Starts)
        {
            _hands[at] = new(perS, [outcome], _plan.LockShare);
            return;
        }

        StationaryOutcome?[] all = _outcomes.TryGetValue(at, out StationaryOutcome?[]? some) ? some : _outcomes[at] = new StationaryOutcome?[_plan.Starts];
        all[run.Start] = outcome;
        RhythmPoint point = _hands[at] = _points[at] = new(perS, [.. all.OfType<StationaryOutcome>()], _plan.LockShare);
        _lattice.Set(run.I, run.J, Code(point.Pattern), point.Median(o => o.GlideWidthM));
    }
}
