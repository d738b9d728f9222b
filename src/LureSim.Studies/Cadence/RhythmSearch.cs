using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Retrieve;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Cadence;

/// <summary>A rhythm that a search wants to have run.</summary>
/// <param name="PerS">Rhythm, twitches per second.</param>
/// <param name="Starts">Which starts of the plan, by their place in its list.</param>
public sealed record WantedRhythm(double PerS, IReadOnlyList<int> Starts);

/// <summary>
/// The search over rhythm of one set-up, in rounds: it says which rhythms it wants, is told what they gave, and so on until
/// it wants no more. Rounds of many set-ups can therefore share one batch of runs. The scan runs two starts of a rhythm first, and the others where
/// these two or a neighbouring rhythm have another word; every other rhythm, the set-up's own and the best among them, has all starts.
/// </summary>
public sealed class RhythmSearch
{
    // A best rhythm is sampled itself, which may unmask it; then the next best is tried.
    private const int MostBestRounds = 5;

    // With fewer starts all are run at once.
    private const int FewestToSplit = 4;

    // The first of the list with the nose to each side.
    private static readonly int[] First = [0, 2];

    private readonly CadencePlan _plan;
    private readonly SortedList<double, RhythmPoint> _points = [];
    private readonly Dictionary<double, StationaryOutcome?[]> _outcomes = [];
    private readonly SortedList<double, int[]> _wanted = [];
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
        foreach (double perS in plan.Scan())
        {
            _wanted.Add(perS, plan.Starts < FewestToSplit ? Missing(perS) : First);
        }

        double own = task.CadencePerS;
        if (own > plan.FromPerS && own < plan.ToPerS)
        {
            _wanted[own] = Missing(own);
        }
    }

    /// <summary>Set-up.</summary>
    public Setup Setup { get; }

    /// <summary>Retrieve.</summary>
    public RetrieveTask Task { get; }

    /// <summary>Rhythms wanted next, rising; empty when the search is over.</summary>
    public IReadOnlyList<WantedRhythm> Wanted => [.. _wanted.Select(w => new WantedRhythm(w.Key, w.Value))];

    /// <summary>Takes the outcomes of the wanted rhythms and decides what is wanted next.</summary>
    /// <param name="outcomes">Outcomes of the wanted starts, in the order of <see cref="Wanted"/>.</param>
    public void Add(IReadOnlyList<IReadOnlyList<StationaryOutcome>> outcomes)
    {
        ArgumentNullException.ThrowIfNull(outcomes);
        for (int i = 0; i < _wanted.Count; i++)
        {
            Take(_wanted.GetKeyAtIndex(i), _wanted.GetValueAtIndex(i), outcomes[i]);
        }

        _wanted.Clear();
        Want(Enumerable.Range(0, _points.Count).Where(NeedsRest).Select(i => _points.Keys[i]));
        if (_wanted.Count == 0)
        {
            Want(EdgeRefinement.Next([.. _points.Keys], Tolerance));
        }

        if (_wanted.Count == 0 && _bestRounds++ < MostBestRounds && FindBest() is BestRhythm best && Missing(best.PerS).Length > 0)
        {
            Want([best.PerS]);
        }
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

    private void Take(double perS, int[] starts, IReadOnlyList<StationaryOutcome> outcomes)
    {
        if (!_outcomes.TryGetValue(perS, out StationaryOutcome?[]? all))
        {
            _outcomes.Add(perS, all = new StationaryOutcome?[_plan.Starts]);
        }

        for (int k = 0; k < starts.Length; k++)
        {
            all[starts[k]] = outcomes[k];
        }

        _points[perS] = new RhythmPoint(perS, [.. all.OfType<StationaryOutcome>()], _plan.LockShare);
    }

    private void Want(IEnumerable<double> rhythms)
    {
        foreach (double perS in rhythms)
        {
            _wanted.Add(perS, Missing(perS));
        }
    }

    private int[] Missing(double perS) =>
        [.. Enumerable.Range(0, _plan.Starts).Where(s => !_outcomes.TryGetValue(perS, out StationaryOutcome?[]? all) || all[s] is null)];

    // Starts that disagree were found next to changes of the word alone (docs/cadence.md).
    private bool NeedsRest(int i)
    {
        RhythmPoint point = _points.Values[i];
        bool Differs(int j) => j >= 0 && j < _points.Count && _points.Values[j].Pattern != point.Pattern;
        return point.Outcomes.Count < _plan.Starts && (point.Outcomes.Any(o => o.Pattern != point.Pattern) || Differs(i - 1) || Differs(i + 1));
    }

    private BestRhythm? FindBest() => BestRhythm.Find([.. _points.Values], CadenceWindow.Find([.. _points.Values]), _plan.Room);

    // Only where walking sets in or ends: changes between other patterns are in no figure, and each would cost as many runs as an edge.
    private double Tolerance(int i) =>
        _points.Values[i].Walks != _points.Values[i + 1].Walks ? _plan.EdgePerS : double.PositiveInfinity;
}
