using LureSim.Model.Lures;
using LureSim.Model.Lures.Free;
using LureSim.Numerics;

namespace LureSim.Model.Pool;

/// <summary>The lure let go away from rest: zero crossings give the period, the first peaks what a swing loses.</summary>
/// <remarks>
/// A half swing counts in full from 20 % of the release on and not at all below 10 %, half a millimetre of a bob of five, where no eye sees it (guesses), in
/// proportion between. What comes later is tilted by the other motions of the lure and no longer its own. So period and
/// loss change evenly with the lure, however many swings are seen, and a fit finds no jump to hide behind.
/// </remarks>
internal sealed class SwingTest
{
    private const double Degree = Math.PI / 180.0, SeenShare = 0.1, ClearShare = 0.2, ShownS = 3.0, LongestS = 6.0, OutputS = 0.005;
    private const int WantedCrossings = 3, MostCrossings = 7;

    private readonly FreeSwim _swim;
    private readonly Func<HullPose, double> _away;
    private readonly List<double> _crossings = [], _peaks = [], _times = [], _trace = [];

    private SwingTest(FreeSwim swim, Func<HullPose, double> away) => (_swim, _away) = (swim, away);

    /// <summary>Lets it go heeled, about its own axis; deg.</summary>
    /// <param name="hull">Constants.</param>
    /// <param name="task">Heel.</param>
    /// <param name="heelRad">Heel wanted, rad.</param>
    /// <param name="stop">Stops it.</param>
    public static SwingResult Roll(FreeHull hull, PoolTask task, double heelRad, CancellationToken stop)
    {
        FreeMotionState rest = hull.AtRest(0.0, 0.0, 0.0);
        double level = hull.Float.State.Attitude.HeelRad;
        FreeMotionState start = rest with { Frame = rest.Frame.Turned(new Vec3(heelRad, 0.0, 0.0)) };
        return Run(hull, start, task, p => Math.IEEERemainder(p.RollRad - level, 2.0 * Math.PI) / Degree, stop);
    }

    /// <summary>Lets it go pressed down; m.</summary>
    /// <param name="hull">Constants.</param>
    /// <param name="task">Step.</param>
    /// <param name="pressM">How far, m.</param>
    /// <param name="stop">Stops it.</param>
    public static SwingResult Heave(FreeHull hull, PoolTask task, double pressM, CancellationToken stop)
    {
        FreeMotionState rest = hull.AtRest(0.0, 0.0, 0.0);
        double level = rest.Place(hull.Centre).Z;
        return Run(hull, rest with { Origin = rest.Origin - new Vec3(0.0, 0.0, pressM) }, task, p => p.Centre.Z - level, stop);
    }

    /// <summary>Lets it go with its nose pressed down; deg, nose up positive.</summary>
    /// <param name="hull">Constants.</param>
    /// <param name="task">Step.</param>
    /// <param name="angleRad">How far, rad.</param>
    /// <param name="stop">Stops it.</param>
    public static SwingResult Pitch(FreeHull hull, PoolTask task, double angleRad, CancellationToken stop)
    {
        FreeMotionState rest = hull.AtRest(0.0, 0.0, 0.0);
        double level = hull.Float.State.Attitude.TrimRad;
        FreeMotionState start = rest with { Frame = rest.Frame.Turned(new Vec3(0.0, angleRad, 0.0)) };
        return Run(hull, start, task, p => (p.PitchRad - level) / Degree, stop);
    }

    private static SwingResult Run(FreeHull hull, FreeMotionState start, PoolTask task, Func<HullPose, double> away, CancellationToken stop) =>
        new SwingTest(new FreeSwim(hull, start, 0.0, task.StepS, stop), away).Run(task.StepS);

    private SwingResult Run(double dt)
    {
        double now = _away(_swim.Pose), release = now, peak = Math.Abs(now);
        int every = Math.Max(1, (int)Math.Round(OutputS / dt));
        Keep(now);
        for (int i = 1; _swim.TimeS < ShownS || (_swim.TimeS < LongestS && _crossings.Count < WantedCrossings); i++)
        {
            double before = now, t = _swim.TimeS;
            _swim.Step(Vec3.Zero);
            now = _away(_swim.Pose);
            if ((before < 0.0) != (now < 0.0) && peak > SeenShare * Math.Abs(release) && _crossings.Count < MostCrossings)
            {
                _crossings.Add(t + (dt * before / (before - now)));
                _peaks.Add(peak);
                peak = 0.0;
            }

            peak = Math.Max(peak, Math.Abs(now));
            if (i % every == 0)
            {
                Keep(now);
            }
        }

        _peaks.Add(peak);
        return new SwingResult(release, Period(release), Loss(release), [.. _times], [.. _trace]);
    }

    private void Keep(double value)
    {
        _times.Add(_swim.TimeS);
        _trace.Add(value);
    }

    // Mean of the half swings after the first crossing, doubled.
    private double? Period(double release)
    {
        double sum = 0.0, weights = 0.0;
        for (int i = 1; i < _crossings.Count; i++)
        {
            double weight = Math.Min(1.0, ((_peaks[i] / Math.Abs(release)) - SeenShare) / (ClearShare - SeenShare));
            (sum, weights) = (sum + (weight * (_crossings[i] - _crossings[i - 1])), weights + weight);
        }

        return weights > 0.0 ? 2.0 * sum / weights : null;
    }

    // The first peak on the side where it was let go, however small: without one that is seen, all is lost.
    private double? Loss(double release) => _crossings.Count < 2 ? null : 1.0 - (_peaks[2] / Math.Abs(release));
}
