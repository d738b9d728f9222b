using LureSim.Model;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Measured;
using LureSim.Studies.Doubt;
using LureSim.Studies.Figures;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Cast;

/// <summary>Fits the effort of a scenario's hands to measured casts, and again with the leading guesses at the ends of their ranges.</summary>
/// <param name="source">Scenario file.</param>
/// <param name="overrides">Overrides.</param>
/// <param name="casts">What was measured.</param>
public sealed class MatchOfScenario(ScenarioSource source, IReadOnlyList<string> overrides, IReadOnlyList<MeasuredCastText> casts)
{
    // What an effort takes in most besides the hands' torque: drag of the lure, speed of the hands, the fixed spool, the line's skin.
    private static readonly KeySpec[] Leading = [FlightKeys.Tumbling, HandsKeys.Speed, CastKeys.PickUp, CastKeys.LineFriction];

    private int _done;

    /// <summary>The casts to fit; fewer after faults.</summary>
    /// <param name="more">Further overrides.</param>
    /// <param name="faults">Gets every fault.</param>
    public MeasuredCast[] Specs(IReadOnlyList<string> more, List<ScenarioFault> faults) =>
    [
        .. casts.Select(c => (Text: c, Spec: c.Resolve(source, overrides, more, faults))).Where(c => c.Spec is not null)
            .Select(c => new MeasuredCast(c.Text.Label, c.Spec!.Setup, c.Spec.Cast!, c.Text.DistanceM, c.Text.MeanOf)),
    ];

    /// <summary>Runs the fit; it fails when no effort explains the casts.</summary>
    /// <param name="scenario">The scenario, valid.</param>
    /// <param name="measured">The casts.</param>
    /// <param name="threads">Most threads, at least 1; the result does not depend on it.</param>
    /// <param name="progress">Gets the share done, from several threads.</param>
    /// <param name="stop">Stops the study.</param>
    /// <exception cref="ArgumentException">A value makes no cast, such as a lure that hangs in the water.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public Outcome<MatchReport> Run(ScenarioResult scenario, MeasuredCast[] measured, int threads, Action<double> progress, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(measured);
        GuessedKey[] leading = [.. GuessDesign.Of(scenario, new CastSource()).Where(g => Leading.Contains(g.Key))];
        MeasuredCast[][] ends = [.. leading.SelectMany(g => (double[])[g.Low, g.High], (g, v) => Specs([g.Override(v)], []))];
        int all = 2 * (measured.Length + ends.Sum(e => e.Length));
        void Done() => progress((double)Interlocked.Increment(ref _done) / all);
        Outcome<MatchFit>? fit = null;
        double gain = double.NaN;
        var efforts = new double[ends.Length];
        ParallelRuns.Execute(Enumerable.Range(-1, ends.Length + 1).ToArray(), Job, threads, null, stop);
        MatchEnd[] shown = [.. leading.Select((g, i) => new MatchEnd(GuessDesign.Label(g), efforts[2 * i], efforts[(2 * i) + 1]))];
        return fit!.IsWhole ? new(new MatchReport(scenario.Setup!.Title, fit.Result, gain, shown)) : new(null, fit.Failure);

        bool Job(int job)
        {
            if (job < 0)
            {
                fit = MatchStudy.Fit(measured, 1, Done, stop);
                gain = fit.IsWhole ? MatchStudy.GainM(measured, fit.Result.Effort, stop: stop) : double.NaN;
            }
            else
            {
                efforts[job] = Effort(ends[job], Done, stop);
            }

            return true;
        }
    }

    // A guess at its end may put a cast out of reach, or make no valid scenario beside what a row gives.
    private double Effort(MeasuredCast[] some, Action step, CancellationToken stop)
    {
        if (some.Length < casts.Count)
        {
            return double.NaN;
        }

        try
        {
            return MatchStudy.Fit(some, 1, step, stop).Result?.Effort ?? double.NaN;
        }
        catch (ArgumentException)
        {
            return double.NaN;
        }
    }
}
