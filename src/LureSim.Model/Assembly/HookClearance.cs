using LureSim.Model.Lines.Chain;
using LureSim.Model.Lures;
using LureSim.Numerics;

namespace LureSim.Model.Assembly;

/// <summary>How near the line comes to the hangers of the hooks: where it passes within a hook's reach, a hook can catch it.</summary>
internal static class HookClearance
{
    /// <summary>Shortest distance between line and hangers, m, at most the length of the hull. A hook nearer to the tie than its reach does not count:
    /// the line always passes there.</summary>
    /// <param name="line">Line, tip to tie.</param>
    /// <param name="segments">Segments.</param>
    /// <param name="pose">Lure.</param>
    /// <param name="lure">Its hooks.</param>
    /// <param name="centre">Centre of gravity, body axes, m.</param>
    public static double Of(LineState line, int segments, in HullPose pose, LureSpec lure, Vec3 centre)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(lure);
        double nearest = lure.LengthM;
        foreach (HookSpec hook in lure.Hooks)
        {
            Vec3 hanger = pose.Place(new Vec3(hook.XM, 0.0, hook.ZM) - centre);
            if (!hook.HasPoints || (hanger - pose.Tie).Length <= lure.HookReachM)
            {
                continue;
            }

            double run = 0.0;
            for (int j = segments - 1; j >= 0 && run < 2.0 * lure.LengthM; j--)
            {
                Vec3 a = new(line.X[j], line.Y[j], line.Z[j]), b = new(line.X[j + 1], line.Y[j + 1], line.Z[j + 1]);
                nearest = Math.Min(nearest, Distance(hanger, a, b));
                run += (b - a).Length;
            }
        }

        return nearest;
    }

    private static double Distance(Vec3 p, Vec3 a, Vec3 b)
    {
        Vec3 along = b - a, off = p - a;
        double square = Vec3.Dot(along, along);
        double t = square > 0.0 ? Math.Clamp(Vec3.Dot(off, along) / square, 0.0, 1.0) : 0.0;
        return (off - (t * along)).Length;
    }
}
