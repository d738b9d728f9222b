using LureSim.Model.Assembly;
using MathNet.Numerics.RootFinding;

namespace LureSim.Model.Cast;

/// <summary>Finds the effort that explains a measured distance. Torque and effort act only as a product, so an effort so found
/// takes in every other error of the hands, and most of those of drag and reel too.</summary>
public static class CastMatch
{
    /// <summary>Least effort that is tried.</summary>
    public const double LeastEffort = 0.05;

    /// <summary>Most effort that is tried.</summary>
    public const double MostEffort = 3.0;

    // Of the effort. Finer makes no sense: releases are 1 ms apart, and distances rough by some 0.3 %.
    private const double Accuracy = 5e-4;
    private const int MostSteps = 60;

    /// <summary>The effort at which the cast, released as its spec says, goes as far as measured, within some 0.3 %.</summary>
    /// <param name="setup">Set-up; its own effort is not read.</param>
    /// <param name="task">Cast.</param>
    /// <param name="distanceM">Measured distance, m, positive.</param>
    /// <param name="mean">True for a mean of many casts with their release errors, false for one cast let go as the task says.</param>
    /// <param name="context">Stop.</param>
    /// <param name="run">Runs one cast; null = the cast.</param>
    /// <returns>The effort; a failure when no effort in range goes that far, or the least one goes farther.</returns>
    /// <exception cref="ArgumentException">The distance is not positive, or a value is out of range.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<double> Effort(
        Setup setup, CastTask task, double distanceM, bool mean = false, RunContext context = default, Func<Setup, CastTask, Outcome<CastResult>>? run = null)
    {
        Require.Positive(distanceM);
        return Outcome.Of(() => Search(effort => Distance(setup, task, effort, mean, context, run).Demand(), distanceM));
    }

    /// <summary>Distance with another effort, m.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Cast.</param>
    /// <param name="effort">e, 0.05 to 3.</param>
    /// <param name="mean">True for the mean of many casts with their release errors.</param>
    /// <param name="context">Stop.</param>
    /// <param name="run">Runs one cast; null = the cast.</param>
    /// <exception cref="ArgumentException">A value is out of range.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<double> Distance(
        Setup setup, CastTask task, double effort, bool mean = false, RunContext context = default, Func<Setup, CastTask, Outcome<CastResult>>? run = null)
    {
        ArgumentNullException.ThrowIfNull(setup);
        run ??= (s, t) => CastRunner.Run(s, t, context);
        return Outcome.Of(() =>
        {
            CastResult cast = run(setup with { Hands = setup.Hands with { Effort = effort } }, task).Demand();
            return mean ? cast.DistanceMeanM : cast.DistanceM;
        });
    }

    private static double Search(Func<double, double> distance, double distanceM)
    {
        double least = distance(LeastEffort), most = distance(MostEffort);
        if (!(least <= distanceM && distanceM <= most))
        {
            throw new ModelException(
                FormattableString.Invariant($"no effort makes this set-up cast {distanceM:F1} m; it reaches {least:F1} m with effort {LeastEffort} and {most:F1} m with effort {MostEffort}"), 0.0);
        }

        return Brent.TryFindRoot(
            logEffort => distance(FromLog(logEffort)) - distanceM, Math.Log(LeastEffort), Math.Log(MostEffort), Accuracy, MostSteps, out double root)
            ? FromLog(root)
            : throw new ModelException(FormattableString.Invariant($"the search for an effort that casts {distanceM:F1} m did not settle"), 0.0);
    }

    private static double FromLog(double log) => Math.Clamp(Math.Exp(log), LeastEffort, MostEffort);
}
