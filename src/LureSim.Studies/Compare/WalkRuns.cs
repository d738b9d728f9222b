using LureSim.Model.Assembly;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Studies.Across;
using LureSim.Studies.Cadence;
using LureSim.Studies.Doubt;
using LureSim.Studies.Figures;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Compare;

/// <summary>Every retrieve of a comparison, each made once: a search over rhythm as the set-ups stand and in the first draws, the set-ups' own rhythm in all.</summary>
internal static class WalkRuns
{
    private static readonly RetrieveSource Retrieves = new();

    /// <summary>Runs them.</summary>
    /// <param name="setUps">Set-ups, valid and twitched.</param>
    /// <param name="plan">Plan.</param>
    /// <param name="progress">Gets the share done; may be null.</param>
    /// <param name="stop">Stops.</param>
    /// <param name="run">Runs one retrieve; null = the retrieve.</param>
    public static IReadOnlyList<WalkCase> Run(
        IReadOnlyList<CompareSetUp> setUps, ComparePlan plan, Action<double>? progress, CancellationToken stop, Func<Setup, RetrieveTask, StationaryOutcome>? run = null)
    {
        run ??= (setup, task) => StationaryOutcome.Of(setup, task, stop);
        var design = new GuessDesign(plan.WalkDraws, plan.Seed);
        int each = plan.WalkDraws + 1, windows = Math.Min(plan.WindowDraws, plan.WalkDraws) + 1;
        (int SetUp, int Draw)[] jobs = [.. from s in Enumerable.Range(0, setUps.Count) from d in Enumerable.Range(-1, each) select (s, d)];
        Scenario?[] drawn = ParallelRuns.Execute(jobs, j => Draw(setUps[j.SetUp].SetUp, design, j.Draw), plan.Threads, null, stop);
        int[] searched = [.. Enumerable.Range(0, jobs.Length).Where(j => jobs[j].Draw < windows - 1 && drawn[j] is not null)];
        double searching = 14.0 * windows / ((14.0 * windows) + each - windows);
        RhythmSearch[] searches = CadenceStudy.Search([.. searched.Select(j => (drawn[j]!.Setup, drawn[j]!.Retrieve!))], plan.Search, run, new(s => progress?.Invoke(searching * s)), stop);
        var rhythms = searched.Zip(searches).ToDictionary(s => s.First, s => s.Second.Finish(Torque(drawn[s.First]!.Setup)).Result);
        int[] rest = [.. Enumerable.Range(0, jobs.Length).Where(j => drawn[j] is not null && Own(rhythms.GetValueOrDefault(j)) is null)];
        int done = 0;
        StationaryOutcome[] own = ParallelRuns.Execute(
            rest, j => run(drawn[j]!.Setup, Stationary(drawn[j]!.Retrieve!, plan)), plan.Threads,
            () => progress?.Invoke(searching + ((1.0 - searching) * Interlocked.Increment(ref done) / rest.Length)), stop);
        var atOwn = rest.Zip(own).ToDictionary(o => o.First, o => o.Second);
        WalkDraw Of(int j) => new(
            drawn[j]?.Setup, drawn[j]?.Retrieve, (atOwn.GetValueOrDefault(j) ?? Own(rhythms.GetValueOrDefault(j)))?.Summary, rhythms.GetValueOrDefault(j));
        return [.. setUps.Select((_, s) => new WalkCase(Of(s * each), [.. Enumerable.Range((s * each) + 1, each - 1).Select(Of)], windows - 1))];
    }

    private static Scenario? Draw(DrawnSetUp setUp, GuessDesign design, int draw) => draw < 0 ? setUp.Here.Scenario : setUp.Draw(design, Retrieves, draw);

    // The drawn wrist is one wrist.
    private static SustainedTorque Torque(Setup setup) => new(setup.Angler.SustainedTorqueNm, setup.Angler.SustainedTorqueNm, setup.Angler.SustainedTorqueNm);

    private static StationaryOutcome? Own(CadenceResult? rhythms) => rhythms?.Own?.Outcomes[0];

    private static RetrieveTask Stationary(RetrieveTask task, ComparePlan plan) => StationaryRun.Make(task, task.CadencePerS, WalkStart.Spread(1)[0], plan.Search.Run ?? new());
}
