using LureSim.Model.Pool;
using LureSim.Scenarios.Measured;

namespace LureSim.Studies.Fit;

/// <summary>A test as the fit computes it: what it reads, what it leaves unknown of itself (how fast a push was), and what a lure would give.</summary>
internal abstract class FitTest(FitKind kind, bool hooksOn)
{
    /// <summary>Kind.</summary>
    public FitKind Kind => kind;

    /// <summary>Whether the hooks were on.</summary>
    public bool HooksOn => hooksOn;

    /// <summary>What was read.</summary>
    public required IReadOnlyList<FitReading> Readings { get; init; }

    /// <summary>What is unknown of this test alone.</summary>
    public IReadOnlyList<FitUnknown> Own { get; init; } = [];

    /// <summary>Where the search of those begins, in z.</summary>
    public double[] OwnStart { get; init; } = [];

    /// <summary>Numbers that are laid so that the readings fit best, such as where a film's axes lie: as many readings tell nothing else.</summary>
    public virtual int Laid => 0;

    /// <summary>Step in z for slopes where that of the others would be too small; else null.</summary>
    public virtual double? Step => null;

    /// <summary>Whether stroke and slack of the hand enter it.</summary>
    public virtual bool IsOfHand => false;

    /// <summary>What the readings would be.</summary>
    /// <param name="candidate">Lure, and what is done with it.</param>
    /// <param name="own">Values of <see cref="Own"/>, SI.</param>
    /// <param name="stop">Stops it.</param>
    /// <returns>Null where it cannot be computed.</returns>
    public abstract double[]? Compute(FitCandidate candidate, double[] own, CancellationToken stop);
}

/// <summary>A test that needs no more than the lure on the water.</summary>
internal abstract class PoolTest(FitKind kind, bool hooksOn) : FitTest(kind, hooksOn)
{
    /// <inheritdoc/>
    public override double[] Compute(FitCandidate candidate, double[] own, CancellationToken stop) => Compute(candidate.Trial(HooksOn), own, stop);

    /// <summary>What the readings would be.</summary>
    /// <param name="trial">Lure.</param>
    /// <param name="own">Values of what is unknown of this test alone, SI.</param>
    /// <param name="stop">Stops it.</param>
    public abstract double[] Compute(PoolTrial trial, double[] own, CancellationToken stop);
}

/// <summary>Tows under the same conditions.</summary>
internal sealed class TowReadings(bool hooksOn, PoolTask task, double speedMS) : PoolTest(FitKind.Tow, hooksOn)
{
    private const double Degree = Math.PI / 180.0;

    /// <inheritdoc/>
    public override double[] Compute(PoolTrial trial, double[] own, CancellationToken stop)
    {
        TowRow row = trial.Tow(task, speedMS, stop);
        return [.. Readings.Select(r => Degree * (r.Quantity == FitQuantity.Sheer ? row.SheerDeg : row.SwingDeg))];
    }
}

/// <summary>A push: its drift is known to an error.</summary>
internal sealed class PushReading(bool hooksOn, PoolTask task) : PoolTest(FitKind.Push, hooksOn)
{
    private const double Degree = Math.PI / 180.0, Turned = 45.0;

    /// <inheritdoc/>
    public override double[] Compute(PoolTrial trial, double[] own, CancellationToken stop)
    {
        bool never = Readings[0].Quantity == FitQuantity.Turned;
        PushResult push = trial.Push(task with { PushDriftRad = Math.Abs(own[0]) }, endsTurned: !never, stop);
        return [never ? Math.Abs(push.TurnedDeg) * Degree : push.TurnM ?? Way(push) * Turned / Math.Max(Math.Abs(push.TurnedDeg), 1.0)];
    }

    // One that does not turn so far would need that much more way: even where it just turns, and ever more the less it does.
    private static double Way(PushResult push)
    {
        double way = 0.0;
        for (int i = 1; i < push.XM.Count; i++)
        {
            double x = push.XM[i] - push.XM[i - 1], y = push.YM[i] - push.YM[i - 1];
            way += Math.Sqrt((x * x) + (y * y));
        }

        return way;
    }
}

/// <summary>A coast-down: how fast it was let go, and where its ruler began, are unknown.</summary>
internal sealed class CoastRun(bool hooksOn, double[] timeS, double stepS) : PoolTest(FitKind.Coast, hooksOn)
{
    /// <inheritdoc/>
    public override int Laid => 1;

    /// <inheritdoc/>
    public override double[] Compute(PoolTrial trial, double[] own, CancellationToken stop)
    {
        SwimResult swim = trial.Swim(new(own[0], 0.0, 0.0, timeS[^1] - timeS[0]), stepS, stop);
        double[] way = [.. timeS.Select(t => SwimTrace.At(swim.TimeS, swim.WayM, t - timeS[0]))];
        double offset = way.Select((w, i) => Readings[i].Measured - w).Average();
        return [.. way.Select(w => w + offset)];
    }
}

/// <summary>A swing: periods and losses of one kind, let go alike.</summary>
internal sealed class SwingReadings(bool hooksOn, PoolTask task, Func<PoolTrial, PoolTask, CancellationToken, SwingResult> run) : PoolTest(FitKind.Swing, hooksOn)
{
    // A lure that does not swing has no period: five errors off.
    private const double Off = 5.0;

    /// <inheritdoc/>
    public override double[] Compute(PoolTrial trial, double[] own, CancellationToken stop)
    {
        SwingResult swing = run(trial, task, stop);
        return
        [
            .. Readings.Select(r => r.Quantity is FitQuantity.RollPeriod or FitQuantity.BobPeriod or FitQuantity.NodPeriod
                ? swing.PeriodS ?? r.Measured + (Off * r.Sigma)
                : swing.LossShare ?? 1.0),
        ];
    }
}

/// <summary>A lure in a bowl.</summary>
internal sealed class FloatReadings() : PoolTest(FitKind.Bowl, true)
{
    /// <inheritdoc/>
    public override double[] Compute(PoolTrial trial, double[] own, CancellationToken stop)
    {
        RestResult rest = trial.Rest();
        return
        [
            .. Readings.Select(r => r.Quantity switch
            {
                FitQuantity.FloatAngle => rest.TrimRad,
                FitQuantity.NoseHeight => rest.NoseHeightM,
                FitQuantity.TailHeight => rest.TailHeightM,
                _ => rest.MiddleDraftM,
            }),
        ];
    }
}
