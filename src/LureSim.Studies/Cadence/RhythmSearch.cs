using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Retrieve;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Cadence;

/// <summary>
/// The search over rhythm of one set-up, in rounds: it says which rhythms it wants, is told what they gave, and so on until
/// it wants no more. Rounds of many set-ups can therefore share one batch of runs.
/// </summary>
public sealed class RhythmSearch
{
    // A best rhythm is sampled itself, which may unmask it; then the next best is tried.
    private const int MostBestRounds = 5;

    private readonly CadencePlan _plan;
    private readonly SortedList<double, RhythmPoint> _points = [];
    private readonly HashSet<double> _wanted = [];
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
        _wanted.UnionWith(plan.Scan());
        double own = task.CadencePerS;
        if (own > plan.FromPerS && own < plan.ToPerS)
        {
            _wanted.Add(own);
        }
    }

    /// <summary>Set-up.</summary>
    public Setup Setup { get; }

    /// <summary>Retrieve.</summary>
    public RetrieveTask Task { get; }

    /// <summary>Rhythms wanted next, rising; empty when the search is over.</summary>
    public double[] Wanted => [.. _wanted.Order()];

    /// <summary>Takes the outcomes of the wanted rhythms and decides what is wanted next.</summary>
    /// <param name="outcomes">Outcomes of all starts, in the order of <see cref="Wanted"/>.</param>
    public void Add(IReadOnlyList<IReadOnlyList<StationaryOutcome>> outcomes)
    {
        ArgumentNullException.ThrowIfNull(outcomes);
        double[] rhythms = Wanted;
        for (int i = 0; i < rhythms.Length; i++)
        {
            _points.Add(rhythms[i], new RhythmPoint(rhythms[i], outcomes[i], _plan.LockShare));
        }

        _wanted.Clear();
        _wanted.UnionWith(EdgeRefinement.Next([.. _points.Keys], Tolerance));
        if (_wanted.Count == 0 && _bestRounds++ < MostBestRounds && FindBest() is BestRhythm best && !_points.ContainsKey(best.PerS))
        {
            _wanted.Add(best.PerS);
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

    private BestRhythm? FindBest() => BestRhythm.Find([.. _points.Values], CadenceWindow.Find([.. _points.Values]), _plan.Room);

    // Only where walking sets in or ends: changes between other patterns are in no figure, and each would cost as many runs as an edge.
    private double Tolerance(int i) =>
        _points.Values[i].Walks != _points.Values[i + 1].Walks ? _plan.EdgePerS : double.PositiveInfinity;
}
