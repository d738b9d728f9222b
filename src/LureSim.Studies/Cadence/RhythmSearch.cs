using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Retrieve;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Cadence;

/// <summary>
/// The search over rhythm of one set-up, in rounds: it says which rhythms it wants, is told what they gave, and so on until
/// it wants no more. The scan runs one start of a rhythm first, the edges two; more follow two at a time, where starts or neighbouring rhythms have
/// another word, until it is decided whether enough of all starts walk. The set-up's own rhythm and the best have all. Some runs go ahead only for their hand.
/// </summary>
public sealed class RhythmSearch
{
    // A best rhythm is sampled itself, which may unmask it; then the next best is tried.
    private const int MostBestRounds = 5;

    // With fewer starts all are run at once.
    private const int FewestToSplit = 4;

    // Of the scan, the second of every three rhythms is run ahead once, only for its hand: then every rhythm has one near by to take the hand from.
    private const int EachPioneer = 3, FirstPioneer = 1;

    // The first of the list with the nose to each side.
    private static readonly int[] First = [0, 2];

    private readonly CadencePlan _plan;
    private readonly SortedList<double, RhythmPoint> _points = [];
    private readonly Dictionary<double, StationaryOutcome?[]> _outcomes = [];
    private readonly SortedList<double, int[]> _wanted = [];
    private readonly double[] _scan;
    private readonly SortedList<double, RhythmPoint> _hands = [];
    private bool _isScanned;
    private int _bestRounds;

    /// <summary>Starts a search.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Retrieve.</param>
    /// <param name="plan">Plan.</param>
    /// <exception cref="ArgumentException">The task is a steady pull, which has no rhythm.</exception>
    public RhythmSearch(Setup setup, RetrieveTask task, CadencePlan plan)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(task);
        ArgumentNullException.ThrowIfNull(plan);
        plan.Check();
        if (task.IsTow)
        {
            throw new ArgumentException("a steady pull (retrieve.stroke = 0) has no rhythm", nameof(task));
        }

        (Setup, Task, _plan) = (setup, task, plan);
        double[] scan = plan.Scan();
        _scan = [.. scan, .. new[] { task.CadencePerS }.Where(f => f > plan.FromPerS && f < plan.ToPerS)];
        Want(scan.Where((_, i) => i % EachPioneer == FirstPioneer), _ => [0]);
    }

    /// <summary>Set-up.</summary>
    public Setup Setup { get; }

    /// <summary>Retrieve.</summary>
    public RetrieveTask Task { get; }

    /// <summary>Rhythms wanted next, rising; empty when the search is over.</summary>
    public IReadOnlyList<WantedRhythm> Wanted =>
        [.. _wanted.Select(w => new WantedRhythm(w.Key, w.Value, [.. w.Value.Select(start => HandSeed.At(Hands(w.Key), w.Key, start, Task.TakeUp.FastestMS))]))];

    /// <summary>Takes the outcomes of the wanted rhythms and decides what is wanted next.</summary>
    /// <param name="outcomes">Outcomes of the wanted starts, in the order of <see cref="Wanted"/>.</param>
    public void Add(IReadOnlyList<IReadOnlyList<StationaryOutcome>> outcomes)
    {
        ArgumentNullException.ThrowIfNull(outcomes);
        for (int i = 0; i < _wanted.Count; i++)
        {
            double perS = _wanted.GetKeyAtIndex(i);
            _hands[perS] = _isScanned ? Take(perS, _wanted.GetValueAtIndex(i), outcomes[i]) : new(perS, outcomes[i], _plan.LockShare);
        }

        _wanted.Clear();
        WantNext();
    }

    /// <summary>The result of a finished search; it fails when every run did.</summary>
    /// <param name="torque">What the wrist sustains.</param>
    public Outcome<CadenceResult> Finish(SustainedTorque torque)
    {
        RhythmPoint[] all = [.. _points.Values];
        if (all.All(p => p.Pattern is null))
        {
            return new(null, new(all[0].Failure ?? "no run finished", 0.0));
        }

        return new(new CadenceResult
        {
            Setup = Setup,
            Task = Task,
            Plan = _plan,
            Points = all,
            Windows = CadenceWindow.Find(all),
            Best = FindBest(),
            Wrist = (WristLimit.Find(all, torque.Nm), WristLimit.Find(all, torque.LowNm), WristLimit.Find(all, torque.HighNm)),
            Torque = torque,
        });
    }

    /// <summary>A rhythm with outcomes that are not yet taken; null for a run that is only made for its hand.</summary>
    internal RhythmPoint? With(WantedRhythm wanted, IReadOnlyList<StationaryOutcome> outcomes) =>
        _isScanned ? new(wanted.PerS, [.. Merged(wanted.PerS, wanted.Starts, outcomes).OfType<StationaryOutcome>()], _plan.LockShare) : null;

    private RhythmPoint Take(double perS, int[] starts, IReadOnlyList<StationaryOutcome> outcomes)
    {
        StationaryOutcome?[] all = _outcomes[perS] = Merged(perS, starts, outcomes);
        return _points[perS] = new RhythmPoint(perS, [.. all.OfType<StationaryOutcome>()], _plan.LockShare);
    }

    private StationaryOutcome?[] Merged(double perS, IReadOnlyList<int> starts, IReadOnlyList<StationaryOutcome> outcomes)
    {
        StationaryOutcome?[] all = _outcomes.TryGetValue(perS, out StationaryOutcome?[]? known) ? [.. known] : new StationaryOutcome?[_plan.Starts];
        for (int k = 0; k < starts.Count; k++)
        {
            all[starts[k]] = outcomes[k];
        }

        return all;
    }

    private void WantNext()
    {
        if (!_isScanned)
        {
            _isScanned = true;
            Want(_scan, ScanStarts);
            return;
        }

        Want(_points.Values.Where(IsSplit).Select(p => p.PerS), NextTwo);
        if (_wanted.Count == 0)
        {
            Want(EdgeRefinement.Next([.. _points.Keys], Tolerance), SomeStarts);
        }

        if (_wanted.Count == 0)
        {
            Want(Enumerable.Range(0, _points.Count).Where(IsNextToChange).Select(i => _points.Keys[i]), NextTwo);
        }

        if (_wanted.Count == 0 && _bestRounds++ < MostBestRounds && FindBest() is BestRhythm best)
        {
            Want([best.PerS], Missing);
        }
    }

    private void Want(IEnumerable<double> rhythms, Func<double, int[]> starts)
    {
        foreach (double perS in rhythms)
        {
            if (starts(perS) is { Length: > 0 } some)
            {
                _wanted[perS] = some;
            }
        }
    }

    // One start each, the nose to either side in turn, so that neighbours ask each other what a second start would.
    private int[] ScanStarts(double perS) => SomeStarts(perS) is { Length: 2 } two && _plan.Starts >= FewestToSplit ? [two[Array.IndexOf(_scan, perS) % 2]] : SomeStarts(perS);

    private int[] SomeStarts(double perS) => _plan.Starts < FewestToSplit || perS == Task.CadencePerS ? Missing(perS) : First;

    private int[] Missing(double perS) =>
        [.. Enumerable.Range(0, _plan.Starts).Where(s => !_outcomes.TryGetValue(perS, out StationaryOutcome?[]? all) || all[s] is null)];

    // Two at a time, since most questions are answered by three or four.
    private int[] NextTwo(double perS) => [.. Missing(perS).Take(FewestToSplit / 2)];

    private bool IsOpen(RhythmPoint point) => point.IsOpen(_plan.Starts, _plan.LockShare);

    private bool IsSplit(RhythmPoint point) => IsOpen(point) && point.Outcomes.Any(o => o.Pattern != point.Pattern);

    // More starts at a rhythm ask whether its answer hangs on the hand too: they have that of its neighbours, not its own.
    private IList<RhythmPoint> Hands(double perS) => _points.ContainsKey(perS) ? [.. _hands.Values.Where(p => p.PerS != perS)] : _hands.Values;

    // Starts that disagree were found next to changes of the word alone (docs/cadence.md).
    private bool IsNextToChange(int i)
    {
        RhythmPoint point = _points.Values[i];
        bool Differs(int j) => j >= 0 && j < _points.Count && (_points.Values[j].Pattern != point.Pattern || (point.Outcomes.Count == 1 && _points.Values[j].DependsOnStart));
        return IsOpen(point) && (Differs(i - 1) || Differs(i + 1));
    }

    private BestRhythm? FindBest() => BestRhythm.Find([.. _points.Values], CadenceWindow.Find([.. _points.Values]), _plan.Room);

    // Only where walking sets in or ends: changes between other patterns are in no figure, and each would cost as many runs as an edge.
    private double Tolerance(int i) =>
        _points.Values[i].Walks != _points.Values[i + 1].Walks ? _plan.EdgePerS : double.PositiveInfinity;
}
