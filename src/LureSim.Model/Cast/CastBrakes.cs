using LureSim.Model.Assembly;
using LureSim.Model.Reels;

namespace LureSim.Model.Cast;

/// <summary>The least magnetic brake that keeps a revolving spool from throwing loops.</summary>
public static class CastBrakes
{
    private const double Most = 2e-5;
    private const int Halvings = 9;

    /// <summary>Searches the magnetic coefficient between none and 2e-5 N m s, the release kept.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Cast.</param>
    /// <param name="loops">Loops that the line still takes up by itself, guess 5 (about half a metre).</param>
    /// <param name="context">Stop.</param>
    /// <param name="run">Runs one cast; null = the cast.</param>
    /// <returns>The brake; a failure when even the strongest one throws loops.</returns>
    /// <exception cref="ArgumentException">A value is out of range, or the reel's spool is fixed.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<LeastBrake> Least(
        Setup setup, CastTask task, double loops = 5.0, RunContext context = default, Func<Setup, CastTask, Outcome<CastResult>>? run = null)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(task);
        Require.Positive(loops);
        if (setup.Reel.Kind != ReelKind.Revolving)
        {
            throw new ArgumentException("a fixed spool has no brake", nameof(setup));
        }

        run ??= (s, t) => CastRunner.Run(s, t, context);
        return Outcome.Of(() => Search((brake, how) => run(With(setup, brake), how).Demand(), task, loops));
    }

    private static LeastBrake Search(Func<double, CastTask, CastResult> cast, CastTask task, double loops)
    {
        CastResult free = cast(0.0, task);
        CastTask held = task with { Release = new ReleaseSpec(ReleaseMode.AtTime, free.ReleaseTimeS) };
        if (free.LoopsThrown <= loops)
        {
            return new LeastBrake(0.0, free.DistanceM, free.DistanceM, free.LoopsThrown);
        }

        double low = 0.0, high = Most;
        CastResult best = cast(high, held);
        if (best.LoopsThrown > loops)
        {
            throw new ModelException($"Even a brake of {Most} N m s leaves {best.LoopsThrown:F1} loops.", 0.0);
        }

        for (int i = 0; i < Halvings; i++)
        {
            double mid = low == 0.0 ? 0.1 * high : 0.5 * (low + high);
            CastResult trial = cast(mid, held);
            (low, high, best) = trial.LoopsThrown > loops ? (mid, high, best) : (low, mid, trial);
        }

        // A braked spool wants another release; it counts if it keeps the loops down too.
        CastResult tuned = cast(high, task);
        double far = tuned.LoopsThrown <= loops ? Math.Max(tuned.DistanceM, best.DistanceM) : best.DistanceM;
        return new LeastBrake(high, far, free.DistanceM, free.LoopsThrown);
    }

    private static Setup With(Setup setup, double magnetic) =>
        setup with { Reel = setup.Reel with { Spool = setup.Reel.Spool with { MagneticNms = magnetic } } };
}

/// <summary>What keeping the loops down costs.</summary>
/// <param name="MagneticNms">Least coefficient, N m s.</param>
/// <param name="DistanceM">Distance with it, m.</param>
/// <param name="UnbrakedDistanceM">Distance without a magnetic brake, thumb as given, m.</param>
/// <param name="UnbrakedLoops">Loops thrown without it.</param>
public sealed record LeastBrake(double MagneticNms, double DistanceM, double UnbrakedDistanceM, double UnbrakedLoops);
