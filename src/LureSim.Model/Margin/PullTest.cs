using LureSim.Model.Lures;
using LureSim.Model.Lures.Free;
using LureSim.Numerics;

namespace LureSim.Model.Margin;

/// <summary>One pull at a lure that lies at rest at an angle to its line, then slack: a half sine of given impulse at the tie, along the line as it lay.</summary>
internal static class PullTest
{
    private const double Degree = Math.PI / 180.0, OutputS = 0.01;

    /// <summary>Pulls and watches.</summary>
    /// <param name="hull">Constants.</param>
    /// <param name="task">Pull.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="ModelException">The motion is no longer finite.</exception>
    public static PullResponse Run(FreeHull hull, MarginTask task, CancellationToken stop)
    {
        var swim = new FreeSwim(hull, hull.AtRest(0.0, 0.0, task.AngleRad), task.AngleRad, task.StepS, stop);
        Vec3 from = swim.Pose.Centre;
        double rest = swim.Pose.RollRad, heading = task.AngleRad, least = heading, roll = 0.0, nose = swim.Pose.Nose.Z;
        double? crossed = null;
        var trace = new List<(double T, double Heading, double X, double Y)> { (0.0, heading / Degree, 0.0, 0.0) };
        int steps = (int)Math.Ceiling(task.WatchS / task.StepS), every = Math.Max(1, (int)Math.Round(OutputS / task.StepS));
        for (int i = 1; i <= steps; i++)
        {
            swim.Step(new Vec3(PullN(task, i * task.StepS), 0.0, 0.0));
            HullPose pose = swim.Pose;
            crossed ??= heading > 0.0 && pose.HeadingRad <= 0.0
                ? swim.TimeS - (task.StepS * pose.HeadingRad / (pose.HeadingRad - heading)) : null;
            heading = pose.HeadingRad;
            least = Math.Min(least, heading);
            roll = Math.Max(roll, Math.Abs(Math.IEEERemainder(pose.RollRad - rest, 2.0 * Math.PI)));
            nose = Math.Min(nose, pose.Nose.Z);
            if (i % every == 0)
            {
                trace.Add((swim.TimeS, heading / Degree, pose.Centre.X - from.X, pose.Centre.Y - from.Y));
            }
        }

        Vec3 way = swim.Pose.Centre - from;
        return new PullResponse(
            (task.AngleRad - least) / Degree, -least / Degree, crossed, Math.Abs(way.Y), way.X, roll / Degree, nose,
            [.. trace.Select(t => t.T)], [.. trace.Select(t => t.Heading)], [.. trace.Select(t => t.X)], [.. trace.Select(t => t.Y)]);
    }

    // Half a sine whose area is the impulse.
    private static double PullN(MarginTask task, double t) =>
        t >= task.PullS ? 0.0 : 0.5 * Math.PI * task.PullNs / task.PullS * Math.Sin(Math.PI * t / task.PullS);
}
