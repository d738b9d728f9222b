using LureSim.Model.Lures;
using LureSim.Model.Lures.Free;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Tests.Lures.Free;

/// <summary>What the tests of the hull in six degrees of freedom share.</summary>
internal static class FreeBodies
{
    /// <summary>Round sections, their centres 3 mm under the axis all along.</summary>
    public static LureSpec Hanging() => new(
        LureShape.Stations, 0.1, 0.02, 0.02, 0.012, 0.04, 0.0, [], [], [new(-0.05, 0.01, 0.01, -0.003), new(0.05, 0.01, 0.01, -0.003)]);

    /// <summary>Tail-down cigar.</summary>
    public static LureSpec TailDown(double ballastX = -0.035) => TestLures.Cigar() with { Ballast = [new BallastSpec(0.008, ballastX, -0.0066)] };

    public static FreeHull Hull(LureSpec lure) => new(FloatingLure.Float(lure, TestLures.Water));

    /// <summary>Anywhere within 1.5 cm of the surface, any attitude, 1 m/s and 20 rad/s.</summary>
    public static FreeMotionState Anyhow(FreeHull hull, Random random)
    {
        double U(double size) => size * ((2.0 * random.NextDouble()) - 1.0);
        Frame3 frame = hull.AtRest(0.0, 0.0, 0.0).Frame.Turned(new Vec3(U(3.0), U(1.5), U(3.0)));
        return new FreeMotionState(new Vec3(0.1, 0.2, U(0.015)), frame, new Vec3(U(1.0), U(1.0), U(1.0)), new Vec3(U(20.0), U(20.0), U(20.0)));
    }

    /// <summary>The state after a steady motion, velocities changed at given rates.</summary>
    public static FreeMotionState Moved(in FreeMotionState s, double dt, double[] rates) => new(
        s.Origin + (dt * s.Frame.ToWorld(s.Velocity)),
        s.Frame.Turned(dt * s.Rate),
        s.Velocity + (dt * new Vec3(rates[0], rates[1], rates[2])),
        s.Rate + (dt * new Vec3(rates[3], rates[4], rates[5])));

    public static double Energy(FreeHull hull, in FreeMotionState s)
    {
        var forces = new FreeForces(hull);
        forces.Set(s);
        return forces.Energy(s);
    }

    /// <summary>Steps without a line.</summary>
    public static FreeMotionState After(FreeHull hull, in FreeMotionState start, double dt, int steps)
    {
        var lure = new FreeLure(hull, start, 0.0);
        for (int i = 0; i < steps; i++)
        {
            Bdf2 step = i == 0 ? Bdf2.BackwardEuler(dt) : Bdf2.Step(dt, dt);
            lure.Guess(step);
            lure.Begin(step, Vec3.Zero, Vec3.Zero);
            lure.Finish(step, Vec3.Zero);
            lure.Commit();
        }

        return lure.Now;
    }
}
