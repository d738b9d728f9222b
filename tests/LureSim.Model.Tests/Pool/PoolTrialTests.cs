using LureSim.Model.Lures;
using LureSim.Model.Pool;
using LureSim.Model.Tests.Lures;

namespace LureSim.Model.Tests.Pool;

/// <summary>Measurements one by one are those of the whole pool test.</summary>
public sealed class PoolTrialTests
{
    private static readonly PoolTask Task = new() { SpeedsMS = [0.15, 0.5] };

    private static LureSpec Walker(double chi) => new(
        LureShape.Cigar, 0.115, 0.021, 0.021, 0.018, 0.0575, 0.0, [new BallastSpec(0.0025, -0.012, -0.006)],
        [new HookSpec(0.0015, 0.028, -0.010, 0.0, 0.19e-6), new HookSpec(0.0015, -0.055, 0.0, 0.0, 0.19e-6)], SternShedding: chi);

    // A tow that ends early has come to rest: within a two-hundredth of a degree over a second and a half; the rest of a minute's way may move it by forty of those.
    // The one that sheers leaves this rest again, so slowly that it is 0.9 deg less in the end: a third of what such an angle is read to.
    // One that fishtails does not end early and is the same to the last bit.
    [Theory]
    [InlineData(0.25, TowCourse.Sheers, 1.2)]
    [InlineData(0.75, TowCourse.Fishtails, 0.0)]
    [InlineData(1.25, TowCourse.Straight, 0.1)]
    public void A_tow_may_end_where_it_has_come_to_rest(double chi, TowCourse course, double withinDeg)
    {
        PoolTrial trial = PoolTrial.Of(Walker(chi), TestLures.Water);
        PoolResult whole = PoolRun.Run(Walker(chi), TestLures.Water, Task).Demand();
        TowRow early = trial.Tow(Task, 0.15, default);
        Assert.Equal((course, course), (early.Course, whole.Tow[0].Course));
        Assert.Equal(whole.Tow[0].SheerDeg, early.SheerDeg, withinDeg);
        Assert.Equal(whole.Tow[0].SwingDeg, early.SwingDeg, withinDeg);
    }

    [Fact]
    public void Push_swings_and_rest_are_the_same()
    {
        PoolTrial trial = PoolTrial.Of(Walker(0.5), TestLures.Water);
        PoolResult whole = PoolRun.Run(Walker(0.5), TestLures.Water, Task).Demand();
        Assert.Equal(whole.Push.TurnM, trial.Push(Task, endsTurned: true, default).TurnM);
        Assert.Equal(whole.Push.TurnedDeg, trial.Push(Task, endsTurned: false, default).TurnedDeg);
        Assert.Equal(whole.Roll.PeriodS, trial.Roll(Task, default).PeriodS);
        Assert.Equal(whole.Heave.LossShare, trial.Bob(Task, default).LossShare);
        Assert.Equal(whole.Pitch.PeriodS, trial.Nod(Task, default).PeriodS);
        Assert.Equal(whole.RestTrimDeg * Math.PI / 180.0, trial.Rest().TrimRad, 1e-12);
        Assert.Equal(0.115 * Math.Cos(trial.Rest().TrimRad), trial.Rest().NoseAheadM - trial.Rest().TailAheadM, 1e-9);
    }

    [Fact]
    public void A_swim_is_the_push_and_turns_as_it_is_let_go()
    {
        PoolTrial trial = PoolTrial.Of(Walker(0.5), TestLures.Water);
        PushResult push = trial.Push(Task, endsTurned: false, default);
        SwimResult swim = trial.Swim(new(Task.PushSpeedMS, Task.PushDriftRad, 0.0, 0.4), Task.StepS, default);

        // Rows of the push come every 20 ms, those of the swim every 10; the push gives the speed to the middle of the hull's axis, the swim to its centre of gravity,
        // which differ by nothing where it does not turn.
        Assert.Equal(push.XM[20], swim.XM[40], 1e-9);
        Assert.Equal(push.HeadingDeg[20], swim.HeadingRad[40] * 180.0 / Math.PI, 1e-6);
        Assert.Equal(swim.WayM[^1], Math.Sqrt((swim.XM[^1] * swim.XM[^1]) + (swim.YM[^1] * swim.YM[^1])), 0.01);

        SwimResult turned = trial.Swim(new(0.3, 0.0, 1.0, 0.01), 1e-4, default);
        Assert.Equal(0.01, turned.HeadingRad[^1], 1e-3);
        Assert.Equal(0.003, turned.WayM[^1], 1e-4);
        Assert.ThrowsAny<ArgumentException>(() => trial.Swim(new(0.3, 0.0, 1.0, 1.0), 0.1, default));
    }

    [Fact]
    public void It_stops()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        PoolTrial trial = PoolTrial.Of(Walker(0.5), TestLures.Water);
        Assert.ThrowsAny<OperationCanceledException>(() => trial.Swim(new(0.3, 0.0, 0.0, 1.0), 1e-3, stop.Token));
        Assert.ThrowsAny<OperationCanceledException>(() => trial.Tow(Task, 0.3, stop.Token));
    }
}
