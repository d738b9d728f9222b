using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Studies.Across;
using LureSim.Studies.Doubt;
using LureSim.Studies.Figures;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Sayings;

/// <summary>Puts sayings to the test: every test in every place over draws of the guesses, each draw the same on all sides, and second looks at every word.</summary>
public static class SayingStudy
{
    // A search over rhythm is some thirty retrieves; only the line of progress asks.
    private const double WorkOfStudy = 30.0;

    /// <summary>Runs sayings one after the other, so that what is finished stays when the person stops.</summary>
    /// <param name="sayings">Sayings.</param>
    /// <param name="plan">Plan.</param>
    /// <param name="progress">Gets the share done, from several threads; may be null.</param>
    /// <param name="finished">Gets each result; may be null.</param>
    /// <param name="stop">Stops; the report then holds what was finished.</param>
    public static SayingsReport Run(IReadOnlyList<ReadySaying> sayings, SayingPlan plan, Action<double>? progress, Action<SayingResult>? finished, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(sayings);
        ArgumentNullException.ThrowIfNull(plan);
        double all = sayings.Sum(s => Work(s, plan)), before = 0.0;
        var results = new List<SayingResult>();
        try
        {
            foreach (ReadySaying saying in sayings)
            {
                double from = before, own = Work(saying, plan);
                results.Add(One(saying, plan, share => progress?.Invoke((from + (share * own)) / all), stop));
                finished?.Invoke(results[^1]);
                before += own;
            }
        }
        catch (OperationCanceledException) when (results.Count > 0)
        {
            // What is finished is told.
        }

        return new(results, sayings.Count, plan);
    }

    private static double Work(ReadySaying saying, SayingPlan plan) => saying.Trials.Sum(t => Work(t, plan));

    private static double Work(ReadyTrial trial, SayingPlan plan) =>
        (plan.Draws + plan.OtherDraws + (2.0 * plan.FinerDraws)) * trial.Sides.Count * Math.Max(1, trial.Test.Starts) * (trial.Figures.IsStudy ? WorkOfStudy : 1.0);

    private static SayingResult One(ReadySaying saying, SayingPlan plan, Action<double> progress, CancellationToken stop)
    {
        TrialRuns[] trials = [.. saying.Trials.Select(t => new TrialRuns(t, plan))];
        (int Trial, RunOf Run)[] jobs = [.. trials.SelectMany((t, i) => t.Runs.Select(r => (i, r)))];
        int done = 0;
        FigureRow[] rows = ParallelRuns.Execute(jobs, j => trials[j.Trial].Execute(j.Run, stop), plan.Threads, () => progress((double)++done / jobs.Length), stop);
        var results = new List<TrialResult>();
        int at = 0;
        foreach (TrialRuns trial in trials)
        {
            results.Add(TrialReading.Read(trial, rows[at..(at + trial.Runs.Count)]));
            at += trial.Runs.Count;
        }

        return new(saying.Saying, results);
    }
}

/// <summary>One run of a trial.</summary>
/// <param name="Look">Which look: null for the draws themselves.</param>
/// <param name="Draw">Draw.</param>
/// <param name="Side">Side.</param>
/// <param name="Start">Start of a retrieve.</param>
internal readonly record struct RunOf(Again? Look, int Draw, int Side, int Start);

/// <summary>All runs of a test in a place.</summary>
internal sealed class TrialRuns
{
    private readonly GuessDesign _own, _other;
    private readonly Dictionary<(Again? Look, int Side, int Start), DrawnSetUp> _setUps = [];

    public TrialRuns(ReadyTrial trial, SayingPlan plan)
    {
        (Trial, Plan) = (trial, plan);
        ulong seed = trial.Sides[0].Here.Setup!.Seed;
        (_own, _other) = (new(plan.Draws, seed), new(plan.OtherDraws, seed + 1));
        var runs = new List<RunOf>();
        WalkStart[] starts = trial.Test.Starts > 0 ? WalkStart.Spread(trial.Test.Starts) : [];
        foreach ((Again? look, int draws) in Looks())
        {
            for (int side = 0; side < trial.Sides.Count; side++)
            {
                for (int start = 0; start < Math.Max(1, starts.Length); start++)
                {
                    _setUps[(look, side, start)] = trial.With(side, [.. Changes(look, side), .. starts.Length == 0 ? [] : Start(starts[start])]);
                }
            }

            runs.AddRange(from d in Enumerable.Range(0, draws) from s in Enumerable.Range(0, trial.Sides.Count) from k in Enumerable.Range(0, Math.Max(1, starts.Length)) select new RunOf(look, d, s, k));
        }

        Runs = runs;
    }

    public ReadyTrial Trial { get; }

    public SayingPlan Plan { get; }

    public IReadOnlyList<RunOf> Runs { get; }

    /// <summary>Looks that are run, with their draws; one whose keys the command does not read is none.</summary>
    public IEnumerable<(Again? Look, int Draws)> Looks()
    {
        yield return (null, Plan.Draws);
        foreach (Again look in Enum.GetValues<Again>().Where(l => l == Again.Seed || Changes(l, 0).Length > 0))
        {
            yield return (look, look == Again.Seed ? Plan.OtherDraws : Plan.FinerDraws);
        }
    }

    /// <summary>Shares of the guesses of the first side in the draws.</summary>
    public IEnumerable<(string Key, double[] Shares)> Guesses() =>
        GuessDesign.Of(Trial.Sides[0].Here, Trial.Figures).Select(g => (g.Key.Path, Enumerable.Range(0, Plan.Draws).Select(d => _own.Share(g, d)).ToArray()));

    public FigureRow Execute(RunOf run, CancellationToken stop)
    {
        GuessDesign design = run.Look == Again.Seed ? _other : _own;
        return _setUps[(run.Look, run.Side, run.Start)].DrawWhole(design, Trial.Figures, run.Draw) is ScenarioResult scenario
            ? FigureRow.Of(Trial.Figures, scenario, stop)
            : FigureRow.Failed("the set-up has faults");
    }

    private string[] Changes(Again? look, int side) => look switch
    {
        Again.Mesh => Finer.Mesh(Trial.Figures, Trial.Sides[side].Here),
        Again.Step => Finer.Step(Trial.Figures, Trial.Sides[side].Here),
        Again.Seed => [FormattableString.Invariant($"{TopKeys.Seed.Path}={(Trial.Sides[side].Here.Setup!.Seed + 1) % 1_000_000_000}")],
        _ => [],
    };

    private static string[] Start(WalkStart start) =>
    [
        $"{RetrieveKeys.StartHeading.Path}={Quantity.Format(start.HeadingRad, QuantityKind.Angle)}", $"{RetrieveKeys.StartSideways.Path}={Quantity.Format(start.SidewaysM, QuantityKind.Length)}",
    ];
}
