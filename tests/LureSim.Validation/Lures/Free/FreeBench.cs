using LureSim.Model.Lures;
using LureSim.Model.Lures.Free;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Validation.Lures.Free;

/// <summary>Runs the hull in six degrees of freedom by itself.</summary>
internal static class FreeBench
{
    /// <summary>g, m/s2.</summary>
    public const double Gravity = FloatingLure.GravityMS2;

    /// <summary>Nothing of it takes energy but what goes under and comes out; no hooks.</summary>
    public static LureSpec Bare(LureSpec lure) => lure with
    {
        NoseDamping = 0.0,
        CrossFlowCd = 0.0,
        AxialDragFactor = 0.0,
        SternShedding = 0.0,
        RollDamping = 0.0,
        Hooks = [],
    };

    /// <summary>Floats a lure.</summary>
    public static FreeHull Hull(LureSpec lure) => new(FloatingLure.Float(lure, Samples.Water));

    /// <summary>Steps a lure; the force acts at the tie, the moment is that of a knot, both of the state at the start of the step.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="dt">Step, s.</param>
    /// <param name="seconds">How long.</param>
    /// <param name="pull">Force at a time, N, world axes, given the tie as the step extrapolates it.</param>
    /// <param name="each">Sees every committed step with its end time.</param>
    public static void Run(FreeLure lure, double dt, double seconds, Func<double, Vec3, Vec3>? pull = null, Action<double>? each = null)
    {
        int steps = (int)Math.Round(seconds / dt);
        for (int i = 0; i < steps; i++)
        {
            Bdf2 step = i == 0 ? Bdf2.BackwardEuler(dt) : Bdf2.Step(dt, dt);
            lure.Guess(step);
            Vec3 force = pull?.Invoke((i + 1) * dt, lure.Tie) ?? Vec3.Zero;
            lure.Begin(step, force, Vec3.Zero);
            lure.Finish(step, Vec3.Zero);
            lure.Commit();
            each?.Invoke((i + 1) * dt);
        }
    }

    /// <summary>Mean time between upward passages through 0 of what a lure shows, s.</summary>
    public static double Period(FreeLure lure, double dt, double seconds, Func<FreeMotionState, double> shown)
    {
        double last = shown(lure.Now), first = double.NaN, latest = double.NaN;
        int count = 0;
        Run(lure, dt, seconds, null, t =>
        {
            double now = shown(lure.Now);
            if (last < 0.0 && now >= 0.0)
            {
                latest = t - (dt * now / (now - last));
                first = count == 0 ? latest : first;
                count++;
            }

            last = now;
        });
        return (latest - first) / (count - 1);
    }

    /// <summary>Momentum of body and added mass in space, and its moment about the world's origin.</summary>
    public static (Vec3 Linear, Vec3 Angular) Impulse(FreeHull hull, in FreeMotionState s)
    {
        (Vec3 p, Vec3 l, _) = Momentum(hull, s);
        Vec3 linear = s.Frame.ToWorld(p);
        return (linear, s.Frame.ToWorld(l) + Vec3.Cross(s.Origin, linear));
    }

    /// <summary>1/2 nu' M nu, J.</summary>
    public static double Kinetic(FreeHull hull, in FreeMotionState s) => Momentum(hull, s).Energy;

    private static (Vec3 Linear, Vec3 Angular, double Energy) Momentum(FreeHull hull, in FreeMotionState s)
    {
        var forces = new FreeForces(hull);
        forces.Set(s);
        Span<double> nu = [s.Velocity.X, s.Velocity.Y, s.Velocity.Z, s.Rate.X, s.Rate.Y, s.Rate.Z];
        Span<double> p = stackalloc double[6];
        forces.Mass.Multiply(nu, p);
        return (new Vec3(p[0], p[1], p[2]), new Vec3(p[3], p[4], p[5]), 0.5 * forces.Mass.Square(nu));
    }
}
