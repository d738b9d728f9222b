using LureSim.Cli.Running;
using LureSim.Cli.Sweeps;
using LureSim.Model;
using LureSim.Reports.Cast;
using LureSim.Reports.Retrieve;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Cast;
using LureSim.Studies.Runs;

namespace LureSim.Cli.Commands;

/// <summary><c>cast --match</c>: the effort that explains measured casts.</summary>
internal static class CastMatchCommand
{
    // What an effort takes in most besides the hands' torque: drag of the lure, speed of the hands, the fixed spool, the line's skin.
    private static readonly KeySpec[] Leading = [FlightKeys.Tumbling, HandsKeys.Speed, CastKeys.PickUp, CastKeys.LineFriction];

    /// <summary>Runs the fit.</summary>
    /// <param name="values">Common options.</param>
    /// <param name="scenario">The scenario, valid.</param>
    /// <param name="casts">What was measured.</param>
    /// <param name="threads">Most threads, at least 1.</param>
    /// <param name="terminal">Where to write.</param>
    /// <param name="stop">Set when the person stops the run.</param>
    public static int Run(
        CommonValues values, ScenarioResult scenario, IReadOnlyList<MeasuredCastText> casts, int threads, Terminal terminal, CancellationToken stop)
    {
        ScenarioSource source = ScenarioSource.Load(values.File, Activities.Cast);
        var faults = new List<ScenarioFault>();
        MeasuredCast[] measured = Specs(casts, source, values.Overrides, [], faults);
        if (faults.Count > 0)
        {
            faults.ForEach(terminal.Error.WriteLine);
            return ExitCode.BadInput;
        }

        EffectiveScenario effective = scenario.Effective();
        MatchReport report;
        try
        {
            report = Fit(values, scenario, casts, measured, source, threads, terminal, stop);
        }
        catch (AggregateException e) when (e.Flatten().InnerExceptions.FirstOrDefault(Explains) is Exception inner)
        {
            terminal.Error.WriteLine($"--match: {inner.Message.Split('\n')[0]}");
            return ExitCode.BadInput;
        }

        RunNotes notes = CastCommand.Notes(scenario, effective);
        if (values.Folder is not null)
        {
            MatchFiles.Write(values.Folder, report, effective.ToToml(), notes, values.Plots);
        }

        CadenceCommand.Print(values, stream => MatchFiles.WriteJson(stream, report, notes), () => MatchText.Build(report, notes, values.Folder), terminal);
        return ExitCode.Done;
    }

    private static MatchReport Fit(
        CommonValues values, ScenarioResult scenario, IReadOnlyList<MeasuredCastText> casts, MeasuredCast[] measured, ScenarioSource source, int threads,
        Terminal terminal, CancellationToken stop)
    {
        using var progress = new ProgressLine("match", terminal, values.Quiet);
        GuessedKey[] leading = [.. GuessDesign.Of(scenario, new CastFigures()).Where(g => Leading.Contains(g.Key))];
        MeasuredCast[][] ends = [.. leading.SelectMany(g => (double[])[g.Low, g.High], (g, v) => Specs(casts, source, values.Overrides, [g.Override(v)], []))];
        int done = 0, all = 2 * (measured.Length + ends.Sum(e => e.Length));
        void Done() => progress.Report((double)Interlocked.Increment(ref done) / all);
        MatchFit? fit = null;
        double gain = double.NaN;
        var efforts = new double[ends.Length];
        ParallelRuns.Execute(Enumerable.Range(-1, ends.Length + 1).ToArray(), Job, threads, null, stop);
        MatchEnd[] shown = [.. leading.Select((g, i) => new MatchEnd(GuessDesign.Label(g), efforts[2 * i], efforts[(2 * i) + 1]))];
        return new(scenario.Setup!.Title, fit!, gain, shown);

        bool Job(int job)
        {
            if (job < 0)
            {
                fit = MatchStudy.Fit(measured, 1, Done, stop);
                gain = MatchStudy.GainM(measured, fit.Effort, stop);
            }
            else
            {
                efforts[job] = Effort(ends[job], casts.Count, Done, stop);
            }

            return true;
        }
    }

    private static bool Explains(Exception e) => e is ModelException or ArgumentException;

    private static MeasuredCast[] Specs(
        IReadOnlyList<MeasuredCastText> casts, ScenarioSource source, IReadOnlyList<string> overrides, IReadOnlyList<string> more, List<ScenarioFault> faults)
    {
        var specs = new List<MeasuredCast>();
        foreach (MeasuredCastText cast in casts)
        {
            if (cast.Resolve(source, overrides, more, faults) is Scenario spec)
            {
                specs.Add(new(cast.Label, spec.Setup, spec.Cast!, cast.DistanceM));
            }
        }

        return [.. specs];
    }

    // A guess at its end may put a cast out of reach, or make no valid scenario beside what a row gives.
    private static double Effort(MeasuredCast[] casts, int due, Action done, CancellationToken stop)
    {
        if (casts.Length < due)
        {
            return double.NaN;
        }

        try
        {
            return MatchStudy.Fit(casts, 1, done, stop).Effort;
        }
        catch (AggregateException e) when (e.Flatten().InnerExceptions.All(Explains))
        {
            return double.NaN;
        }
    }
}
