using LureSim.Model.Lures;
using LureSim.Model.Lures.Free;
using LureSim.Numerics;

namespace LureSim.Model.Pool;

/// <summary>The lure pushed along its axis and let go: with a little drift to see how soon it turns, without to see how fast it slows.</summary>
internal static class PushTest
{
    private const double Degree = Math.PI / 180.0, Turned = 45.0 * Degree, LeftShare = 0.1, LongestPushS = 30.0, LongestCoastS = 120.0, OutputS = 0.02;

    /// <summary>Pushes with drift.</summary>
    /// <param name="hull">Constants.</param>
    /// <param name="task">Speed and drift.</param>
    /// <param name="stop">Stops it.</param>
    /// <param name="endsTurned">True: it ends as soon as it has turned.</param>
    public static PushResult Push(FreeHull hull, PoolTask task, CancellationToken stop, bool endsTurned = false)
    {
        FreeSwim swim = Start(hull, task, task.PushDriftRad, stop);
        Vec3 from = swim.Pose.Centre, last = from;
        var path = new List<(double T, double X, double Y, double Heading)> { (0.0, 0.0, 0.0, task.PushDriftRad / Degree) };
        double way = 0.0, turned = 0.0;
        double? turn = null;
        int every = Math.Max(1, (int)Math.Round(OutputS / task.StepS));
        for (int i = 1; swim.SpeedMS > LeftShare * task.PushSpeedMS && swim.TimeS < LongestPushS && (turn is null || !endsTurned); i++)
        {
            swim.Step(Vec3.Zero);
            HullPose pose = swim.Pose;
            double before = turned, step = Horizontal(pose.Centre - last);
            turned = pose.HeadingRad - task.PushDriftRad;
            if (turn is null && Math.Abs(turned) >= Turned)
            {
                turn = way + (step * (Turned - Math.Abs(before)) / (Math.Abs(turned) - Math.Abs(before)));
            }

            (way, last) = (way + step, pose.Centre);
            if (i % every == 0)
            {
                path.Add((swim.TimeS, last.X - from.X, last.Y - from.Y, pose.HeadingRad / Degree));
            }
        }

        return new PushResult(
            turn, turned / Degree, last.Y - from.Y, [.. path.Select(p => p.T)], [.. path.Select(p => p.X)], [.. path.Select(p => p.Y)], [.. path.Select(p => p.Heading)]);
    }

    /// <summary>Pushes straight and fits 1/u = 1/u0 + k t by least squares until half of the speed is lost.</summary>
    /// <param name="hull">Constants.</param>
    /// <param name="task">Speed.</param>
    /// <param name="stop">Stops it.</param>
    public static CoastResult Coast(FreeHull hull, PoolTask task, CancellationToken stop)
    {
        FreeSwim swim = Start(hull, task, 0.0, stop);
        Vec3 from = swim.Pose.Centre;
        Vec3 last = from;
        double before = swim.SpeedMS, n = 0.0, st = 0.0, sy = 0.0, stt = 0.0, sty = 0.0;
        while (swim.SpeedMS > 0.5 * task.PushSpeedMS)
        {
            double t = swim.TimeS, y = 1.0 / swim.SpeedMS;
            (n, st, sy, stt, sty) = (n + 1.0, st + t, sy + y, stt + (t * t), sty + (t * y));
            if (t >= LongestCoastS)
            {
                return new CoastResult(null, null);
            }

            (before, last) = (swim.SpeedMS, swim.Pose.Centre);
            swim.Step(Vec3.Zero);
        }

        double share = (before - (0.5 * task.PushSpeedMS)) / (before - swim.SpeedMS);
        double slope = ((n * sty) - (st * sy)) / ((n * stt) - (st * st));
        return n < 3.0 ? new CoastResult(null, null) : new CoastResult(slope, Horizontal(last - from) + (share * Horizontal(swim.Pose.Centre - last)));
    }

    // Along +x, with the nose turned off that way by the drift.
    private static FreeSwim Start(FreeHull hull, PoolTask task, double drift, CancellationToken stop)
    {
        FreeMotionState rest = hull.AtRest(0.0, 0.0, drift);
        return new FreeSwim(hull, rest with { Velocity = rest.Frame.ToBody(new Vec3(task.PushSpeedMS, 0.0, 0.0)) }, drift, task.StepS, stop);
    }

    private static double Horizontal(Vec3 way) => Math.Sqrt((way.X * way.X) + (way.Y * way.Y));
}
