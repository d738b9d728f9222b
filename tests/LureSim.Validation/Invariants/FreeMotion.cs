using LureSim.Model.Lines.Chain;
using LureSim.Model.Lures;
using LureSim.Model.Retrieve;
using LureSim.Numerics;
using LureSim.Numerics.Steps;
using LureSim.Validation.LineChecks;

namespace LureSim.Validation.Invariants;

/// <summary>
/// Motion without weight and drag. A hull with added mass then keeps the Kelvin impulse (m11 u, m22 v + m23 r) in world axes, its
/// moment about a fixed point, and its energy: the Coriolis terms, and with them the Munk moment, must do exactly that.
/// </summary>
public static class FreeMotion
{
    private static readonly WalkHull Hull = new(
        0.11, 0.018, 0.019, 0.029, 2e-5, 2.1e-5, 0.054, BenchMedia.High, [], [], 0.0, [], [], 1.0, 1.0, 1.0, [], []);

    [PublishedCheck]
    public static Check Momentum()
    {
        (double Linear, double Angular, double Energy) spin = Glide(1e-4, null), line = Glide(1e-4, Chain);
        (double linear, double angular) = Chained(1e-4);
        return new(
            "I2", "Free motion without drag and weight, 2 s at 0.1 ms",
            "Conservation of linear and angular momentum (Kelvin impulse of a body with added mass; Newman 1977, Marine Hydrodynamics, sec. 4.13, from memory)",
            "A chain: rounding. A hull: second order in the step, 2e-3 at 0.1 ms for one that turns 5 times a second.",
            [
                new("linear momentum of a line whirling with two weights, change", "-", 0.0, Math.Round(linear, 10), 1e-9, Tol.Absolute),
                new("its angular momentum, change", "-", 0.0, Math.Round(angular, 10), 1e-9, Tol.Absolute),
                new("impulse of a spinning, gliding hull, change", "-", 0.0, spin.Linear, 2e-3, Tol.Absolute),
                new("its moment, change", "-", 0.0, spin.Angular, 2e-3, Tol.Absolute),
                new("its energy, change", "-", 0.0, spin.Energy, 2e-3, Tol.Absolute),
                new("impulse of hull, line and a weight, change", "-", 0.0, line.Linear, 2e-3, Tol.Absolute),
                new("its moment, change", "-", 0.0, line.Angular, 2e-3, Tol.Absolute),
            ],
            new("dt, ms", "impulse of the spinning hull, change", [.. new[] { 0.4, 0.2, 0.1, 0.05 }.Select(ms => (ms, Glide(1e-3 * ms, null).Linear))],
                1.9, "order 2 of BDF2; 0.1 for the next term"));
    }

    private static LineMedium Weightless => BenchMedia.Vacuum with { GravityMS2 = 0.0 };

    private static LineMesh Chain => new(BenchMedia.Line(1e-4, 500.0), null, 1.0, 10);

    /// <summary>Relative change of linear and angular momentum of a line between two free weights.</summary>
    private static (double Linear, double Angular) Chained(double dt)
    {
        var bench = new LineBench(Chain, Weightless, s => new Vec3(s, 0.0, BenchMedia.High));
        bench.SetMotion(i => new Vec3(0.3, (0.1 * i) - 0.4, 0.2 * Math.Sin(i)));
        (Vec3 p0, Vec3 h0) = MomentumOf(bench.Mesh, bench.Now, 0.01, 0.02);
        bench.Run(dt, 2.0, new FreeEnd(0.01, Vec3.Zero), new FreeEnd(0.02, Vec3.Zero));
        (Vec3 p, Vec3 h) = MomentumOf(bench.Mesh, bench.Now, 0.01, 0.02);
        return ((p - p0).Length / p0.Length, (h - h0).Length / h0.Length);
    }

    private static (Vec3 P, Vec3 H) MomentumOf(LineMesh mesh, LineState s, double head, double tail)
    {
        Vec3 p = Vec3.Zero, h = Vec3.Zero;
        for (int i = 0; i <= mesh.Segments; i++)
        {
            double m = i == 0 ? head : i == mesh.Segments ? tail : mesh.Mass[i];
            Vec3 mv = m * new Vec3(s.VX[i], s.VY[i], s.VZ[i]);
            p += mv;
            h += Vec3.Cross(new Vec3(s.X[i], s.Y[i], s.Z[i] - BenchMedia.High), mv);
        }

        return (p, h);
    }

    /// <summary>Largest relative change of impulse and moment, and change of energy, of a hull; with a line it draws a weight along.</summary>
    private static (double Linear, double Angular, double Energy) Glide(double dt, LineMesh? mesh)
    {
        LineMesh line = mesh ?? Chain;
        int n = line.Segments;
        var walk = new WalkingHull(Hull);
        var now = new HullState(0.0, 0.0, 0.3, 0.4, 0.2, mesh is null ? 30.0 : 8.0, 0.0, 0.0);
        HullState before = now;
        Vec3 tie = walk.Tie(now);
        var pass = new LinePass(line, Weightless);
        LineState lineBefore = new(n), lineNow = new(n), lineNext = new(n);
        for (int i = 0; i <= n; i++)
        {
            lineBefore.X[i] = lineNow.X[i] = tie.X + (0.9 * (n - i) / n);
            lineBefore.Y[i] = lineNow.Y[i] = tie.Y;
            lineBefore.Z[i] = lineNow.Z[i] = tie.Z;
        }

        double weight = mesh is null ? 0.0 : 0.01;
        (Vec3 p0, double h0) = Impulse(now, line, lineNow, weight, mesh is not null);
        double energy0 = Energy(now), linear = 0.0, angular = 0.0;
        for (int k = 0; k < (int)Math.Round(2.0 / dt); k++)
        {
            Bdf2 step = k == 0 ? Bdf2.BackwardEuler(dt) : Bdf2.Step(dt, dt);
            HullState guess = walk.Guess(step, before, now);
            pass.Begin(step, lineBefore, lineNow, lineNext);
            LineEnd head = new FreeEnd(0.01, Vec3.Zero).At(step, 0.0, lineBefore, lineNow, 0);
            for (int round = 0; round < 2; round++)
            {
                Vec3 force = Vec3.Zero, place = walk.Tie(guess);
                (lineNext.X[n], lineNext.Y[n], lineNext.Z[n]) = (place.X, place.Y, place.Z);
                pass.SetDirections(lineNext);
                LineEnd tail = walk.Begin(step, before, now, guess, Vec3.Zero, 0.0);
                if (mesh is not null)
                {
                    pass.Solve(step, lineNext, head, tail, out _, out force);
                }

                guess = walk.Finish(step, force);
            }

            Vec3 end = walk.Tie(guess);
            (lineNext.X[n], lineNext.Y[n], lineNext.Z[n]) = (end.X, end.Y, end.Z);
            (lineBefore, lineNow, lineNext) = (lineNow, lineNext, lineBefore);
            (before, now) = (now, guess);
            (Vec3 p, double h) = Impulse(now, line, lineNow, weight, mesh is not null);
            linear = Math.Max(linear, (p - p0).Length / p0.Length);
            angular = Math.Max(angular, Math.Abs(h - h0) / Math.Abs(h0));
        }

        return (linear, angular, Math.Abs((Energy(now) / energy0) - 1.0));
    }

    private static double Energy(HullState h) => 0.5 * ((Hull.M11 * h.U * h.U) + (Hull.M22 * h.V * h.V) + (2.0 * Hull.M23 * h.V * h.R) + (Hull.M33 * h.R * h.R));

    private static (Vec3 P, double H) Impulse(HullState h, LineMesh line, LineState s, double weight, bool withLine)
    {
        double c = Math.Cos(h.Psi), n = Math.Sin(h.Psi);
        double surge = Hull.M11 * h.U, sway = (Hull.M22 * h.V) + (Hull.M23 * h.R);
        var p = new Vec3((surge * c) - (sway * n), (surge * n) + (sway * c), 0.0);
        double moment = (Hull.M23 * h.V) + (Hull.M33 * h.R) + (h.X * p.Y) - (h.Y * p.X);
        for (int i = 0; withLine && i < line.Segments; i++)
        {
            Vec3 mv = (i == 0 ? weight : line.Mass[i]) * new Vec3(s.VX[i], s.VY[i], 0.0);
            p += mv;
            moment += (s.X[i] * mv.Y) - (s.Y[i] * mv.X);
        }

        return (p, moment);
    }
}
