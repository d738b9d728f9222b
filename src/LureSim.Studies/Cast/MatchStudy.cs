using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Cast;

/// <summary>A cast that somebody measured.</summary>
/// <param name="Label">What tells it from the others.</param>
/// <param name="Setup">Set-up; its effort is not read.</param>
/// <param name="Task">Cast.</param>
/// <param name="DistanceM">Distance over ground, m, positive.</param>
/// <param name="MeanOf">Number of casts of which it is the mean, at least 1; null for one cast, about which nothing more was said.</param>
public sealed record MeasuredCast(string Label, Setup Setup, CastTask Task, double DistanceM, int? MeanOf = null);

/// <summary>One measured cast against the fit.</summary>
/// <param name="Label">What tells it from the others.</param>
/// <param name="MeasuredM">Measured distance, m.</param>
/// <param name="Effort">Effort that explains this cast alone.</param>
/// <param name="ComputedM">Distance with the common effort, m.</param>
/// <param name="MeanOf">Number of casts of which it is the mean; null for one cast.</param>
public sealed record MatchRow(string Label, double MeasuredM, double Effort, double ComputedM, int? MeanOf = null)
{
    /// <summary>Casts behind it, at least 1: its weight.</summary>
    public int Casts => MeanOf ?? 1;

    /// <summary>Measured less computed, m.</summary>
    public double ResidualM => MeasuredM - ComputedM;

    /// <summary>The same over computed.</summary>
    public double ResidualShare => ResidualM / ComputedM;
}

/// <summary>Effort fitted to measured casts.</summary>
/// <param name="Effort">Mean of the single efforts, each with the weight of its number of casts.</param>
/// <param name="EffortScatter">Standard deviation of the effort of a single cast: of several rows from what they show (rows - 1), of one mean of
/// N casts from the model's scatter from cast to cast; NaN for one cast.</param>
/// <param name="ScatterShare">Standard deviation of measured over computed distance of a single cast (rows - 1); NaN for one row.</param>
/// <param name="Rows">The casts, in their order.</param>
public sealed record MatchFit(double Effort, double EffortScatter, double ScatterShare, IReadOnlyList<MatchRow> Rows)
{
    /// <summary>Casts behind all rows.</summary>
    public int Casts => Rows.Sum(r => r.Casts);

    /// <summary>Standard error of the mean effort: scatter over the root of the number of casts; NaN for one cast.</summary>
    public double EffortError => EffortScatter / Math.Sqrt(Casts);
}

/// <summary>One effort for measured casts.</summary>
public static class MatchStudy
{
    /// <summary>Fits the effort: the mean of those that explain each cast alone. One cast is taken as let go as its task says; what is
    /// said to be a mean, and each of several casts, holds release errors and is set against the mean of many casts. It fails when a distance is out of reach.</summary>
    /// <param name="casts">Casts, at least one.</param>
    /// <param name="threads">Most threads; 0 = all cores. The result does not depend on it.</param>
    /// <param name="done">Called after each run of twice as many as there are casts; may be null.</param>
    /// <param name="stop">Stops the runs.</param>
    /// <param name="run">Runs one cast; null = the cast.</param>
    /// <exception cref="ArgumentException">There is no cast, or a value is out of range.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<MatchFit> Fit(
        IReadOnlyList<MeasuredCast> casts, int threads, Action? done, CancellationToken stop, Func<Setup, CastTask, Outcome<CastResult>>? run = null)
    {
        ArgumentNullException.ThrowIfNull(casts);
        if (casts.Count == 0)
        {
            throw new ArgumentException("needs at least one cast", nameof(casts));
        }

        var context = new RunContext(null, stop);
        Outcome<double[]> efforts = Runs(c => CastMatch.Effort(c.Setup, c.Task, c.DistanceM, IsMean(casts, c), context, run));
        if (!efforts.IsWhole)
        {
            return new(null, efforts.Failure);
        }

        double[] weights = [.. casts.Select(c => (double)(c.MeanOf ?? 1))];
        double mean = Mean(efforts.Result, weights);
        Outcome<double[]> computed = Runs(c => CastMatch.Distance(c.Setup, c.Task, mean, IsMean(casts, c), context, run));
        if (!computed.IsWhole)
        {
            return new(null, computed.Failure);
        }

        MatchRow[] rows = [.. casts.Select((c, i) => new MatchRow(c.Label, c.DistanceM, efforts.Result[i], computed.Result[i], c.MeanOf))];
        double scatter = casts is [{ MeanOf: not null } only] ? ModelScatter(only, mean, context, run) : Deviation(efforts.Result, weights);
        return new(new MatchFit(mean, scatter, Deviation([.. rows.Select(r => r.ResidualShare)], weights), rows));

        Outcome<double[]> Runs(Func<MeasuredCast, Outcome<double>> one)
        {
            Outcome<double>[] all = ParallelRuns.Execute(casts, one, threads, done, stop);
            Failure? first = all.FirstOrDefault(o => !o.IsWhole)?.Failure;
            return first is null ? new([.. all.Select(o => o.Result)]) : new(null, first);
        }
    }

    /// <summary>What a tenth more effort would add to the mean distance, m: little where the speed of the hands is the limit, and then a distance
    /// tells little about effort.</summary>
    /// <param name="casts">Casts, at least one.</param>
    /// <param name="effort">Effort, 0.05 to 2.7.</param>
    /// <param name="run">Runs one cast; null = the cast.</param>
    /// <param name="stop">Stops the runs.</param>
    /// <exception cref="ArgumentException">A value is out of range.</exception>
    /// <returns>NaN where a cast could not be finished.</returns>
    public static double GainM(
        IReadOnlyList<MeasuredCast> casts, double effort, Func<Setup, CastTask, Outcome<CastResult>>? run = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(casts);
        double more = Math.Min(1.1 * effort, CastMatch.MostEffort);
        double Distance(MeasuredCast c, double e) => CastMatch.Distance(c.Setup, c.Task, e, IsMean(casts, c), new(null, stop), run) is { IsWhole: true, Result: double far } ? far : double.NaN;
        return casts.Average(c => Distance(c, more) - Distance(c, effort)) * 0.1 * effort / (more - effort);
    }

    private static bool IsMean(IReadOnlyList<MeasuredCast> casts, MeasuredCast cast) => casts.Count > 1 || cast.MeanOf is not null;

    // One mean shows no scatter of its own: that of the model's casts, over what distance gains with effort.
    private static double ModelScatter(MeasuredCast cast, double effort, RunContext context, Func<Setup, CastTask, Outcome<CastResult>>? run)
    {
        double perEffort = GainM([cast], effort, run, context.Stop) / (0.1 * effort);
        run ??= (s, t) => CastRunner.Run(s, t, context);
        Outcome<CastResult> one = run(cast.Setup with { Hands = cast.Setup.Hands with { Effort = effort } }, cast.Task);
        return one.IsWhole && perEffort > 0.0 ? CastDraw.Of(one.Result).SigmaM / perEffort : double.NaN;
    }

    private static double Mean(double[] values, double[] weights) => values.Zip(weights, (v, w) => w * v).Sum() / weights.Sum();

    // A mean of N scatters by 1/sqrt(N) of a single cast: its square counts N times.
    private static double Deviation(double[] values, double[] weights)
    {
        double mean = Mean(values, weights);
        return values.Length > 1 ? Math.Sqrt(values.Zip(weights, (v, w) => w * (v - mean) * (v - mean)).Sum() / (values.Length - 1)) : double.NaN;
    }
}

/// <summary>What the fitted effort would be with a guess at the ends of its range.</summary>
/// <param name="Label">The guess with its range.</param>
/// <param name="AtLow">Effort with the lower end; NaN where no effort explains the casts.</param>
/// <param name="AtHigh">Effort with the upper end; NaN where no effort explains the casts.</param>
public sealed record MatchEnd(string Label, double AtLow, double AtHigh);

/// <summary>A fit and what it rests on.</summary>
/// <param name="Title">Title of the scenario.</param>
/// <param name="Fit">Fit.</param>
/// <param name="TenthM">What a tenth more effort would add to the mean distance, m.</param>
/// <param name="Ends">Leading guesses at the ends of their ranges.</param>
public sealed record MatchReport(string Title, MatchFit Fit, double TenthM, IReadOnlyList<MatchEnd> Ends);
