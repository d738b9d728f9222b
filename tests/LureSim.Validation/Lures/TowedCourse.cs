using System.Numerics;
using LureSim.Model.Lures;
using LureSim.Model.Retrieve;
using LureSim.Numerics;
using LureSim.Numerics.Steps;
using MathNet.Numerics.LinearAlgebra;
using Polynomials = MathNet.Numerics.Polynomial;

namespace LureSim.Validation.Lures;

/// <summary>
/// A hull towed straight on a line: its small motions by differencing the product's planar walk, against the roots of the
/// classical quartic. Lateral derivatives come from hooks, whose drag is linear in drift at speed: Yv = -sum k U, Yr = Nv = -sum k U x,
/// Nr = -sum k U x^2; the Munk moment comes out of the walk's own Coriolis terms. A stern that sheds adds -A, -A x0, B0 - A x0, B1 - A x0^2.
/// </summary>
public static class TowedCourse
{
    // Units of the published problem: L = U = m = 1.
    private const double Mass = 1.0, SurgeAdded = 0.06, SwayAdded = 0.9, YawInertia = 0.09, Pull = 0.1;

    // Two equal hooks that make Yv = -0.6, Yr = 0, Nr = -0.1, as published.
    private static readonly Hull Finless = new(0.45, [Math.Sqrt(0.1 / 0.6), -Math.Sqrt(0.1 / 0.6)], [0.3, 0.3]);

    private static readonly Hull Fishtailer = new(0.45, [-0.2], [2.5]);

    // Not of a real hull: large enough to be told from nothing in every root.
    private static readonly Hull Shedding = Finless with { Stern = new(-0.35, 0.5, 0.08, -0.032) };

    [PublishedCheck]
    public static Check Roots()
    {
        Complex[] published = [1.517190, -2.870532, new(-0.036779, 0.192136), new(-0.036779, -0.192136)];
        Hull forward = Fishtailer with { Arm = 0.8 };
        return new(
            "T1", "Small motions of a towed hull: the planar walk, linearised by differences",
            "Strandhagen, Schoenherr, Kobayashi 1950, Trans. SNAME 58:32 (equations from memory; roots of the finless hull recomputed to 6 decimals); hooks aft: roots of the same quartic",
            "Last printed digit, and the step of 1e-7 L/U in which the walk is differenced: 1e-7 times the square of a root, 8e-7 at most.",
            [
                .. Pairs("finless, line 2 L", published, Finless.Walk(2.0)),
                .. new[] { 0.5, 2.0, 20.0 }.SelectMany(l => Pairs($"hooks aft, line {l} L", Fishtailer.Quartic(l), Fishtailer.Walk(l))),
                .. Pairs("hooks aft, tie 0.8 L ahead, line 2 L", forward.Quartic(2.0), forward.Walk(2.0)),
                .. new[] { 0.5, 20.0 }.SelectMany(l => Pairs($"cross-flow shed at the stern, line {l} L", Shedding.Quartic(l), Shedding.Walk(l))),
            ],
            new("step, 1e-6 L/U", "roots of the finless hull, U/L",
                [.. new[] { 1000.0, 100.0, 10.0, 1.0 }.Select(s => (s, Distance(Finless.Quartic(2.0), Finless.Walk(2.0, 1e-6 * s))))],
                0.95, "order 1 of one-sided differences"));
    }

    [PublishedCheck]
    public static Check Trends()
    {
        double Largest(Hull hull, double l) => hull.Walk(l).Max(r => r.Real);
        double low = 0.5, high = 3.0;
        for (int i = 0; i < 40; i++)
        {
            // The constant term of the quartic, E = (T U/l)(Nv - x_p Yv), has the sign of the product of the roots.
            double middle = 0.5 * (low + high);
            Complex product = (Finless with { Arm = middle }).Walk(2.0).Aggregate((p, q) => p * q);
            (low, high) = product.Real < 0.0 ? (middle, high) : (low, middle);
        }

        Row Sign(string name, double expected, double root) => new(name, "sign", expected, Math.Sign(root), 0.0, Tol.Absolute);
        return new(
            "T1", "What makes a towed hull run straight",
            "Static criterion x_p > Nv/Yv, value derived; trends: Inoue et al. 1971, W. Japan Soc. Nav. Arch. 41, and Yasukawa and Yamada 2009, J. JASNAOE 9:167 (abstracts)",
            "Neutral point: the differenced walk is exact to 1e-6. Trends: the sign of the largest real part.",
            [
                new("neutral point of the finless hull ahead of G", "L", 1.4, low, 1e-5, Tol.Absolute),
                Sign("finless hull towed by its nose runs off to one side", 1.0, Largest(Finless, 2.0)),
                Sign("hooks aft: fishtails on a short line, 0.5 L", 1.0, Largest(Fishtailer, 0.5)),
                Sign("hooks aft: steady on a long line, 20 L", -1.0, Largest(Fishtailer, 20.0)),
                Sign("hooks aft: 2 L is too short", 1.0, Largest(Fishtailer, 2.0)),
                Sign("hooks aft, tie 0.8 L ahead: steady on 2 L", -1.0, Largest(Fishtailer with { Arm = 0.8 }, 2.0)),
            ]);
    }

    /// <summary>Real and imaginary parts, one row for each of a conjugate pair.</summary>
    private static IEnumerable<Row> Pairs(string name, Complex[] expected, Complex[] computed)
    {
        (Complex[] e, Complex[] c) = (Sorted(expected), Sorted(computed));
        for (int i = 0; i < e.Length; i++)
        {
            if (e[i].Imaginary >= 0.0)
            {
                yield return new($"{name}: root {i + 1}", "U/L", e[i].Real, c[i].Real, 2e-6, Tol.Absolute);
            }

            if (e[i].Imaginary > 0.0)
            {
                yield return new($"{name}: root {i + 1}, imaginary part", "U/L", e[i].Imaginary, c[i].Imaginary, 2e-6, Tol.Absolute);
            }
        }
    }

    private static double Distance(Complex[] a, Complex[] b) => Sorted(a).Zip(Sorted(b), (p, q) => (p - q).Magnitude).Max();

    private static Complex[] Sorted(Complex[] roots) => [.. roots.OrderByDescending(r => Math.Round(r.Real, 5)).ThenByDescending(r => r.Imaginary)];

    private sealed record Hull(double Arm, double[] HookX, double[] HookDrag)
    {
        public SternShedding Stern { get; init; } = SternShedding.None;

        /// <summary>Roots of the published quartic.</summary>
        public Complex[] Quartic(double l)
        {
            double yv = -HookDrag.Sum(), yr = -HookDrag.Zip(HookX, (k, x) => k * x).Sum(), nr = -HookDrag.Zip(HookX, (k, x) => k * x * x).Sum();
            double nv = -(SwayAdded - SurgeAdded) + yr + Stern.BehindKg - (Stern.AtKgM * Stern.XM), m = Mass + SwayAdded, t = Pull;
            (yv, yr) = (yv - Stern.AtKgM, yr - (Stern.AtKgM * Stern.XM));
            nr += Stern.BehindKgM - (Stern.AtKgM * Stern.XM * Stern.XM);

            // (a s^2 + b s + c)(e s^2 + f s + h) - (p s + q)(u s + w): sway and yaw on the diagonal, their couplings beside it.
            (double a, double b, double c) = (m, -yv, t / l);
            (double p, double q) = ((SurgeAdded - SwayAdded) - yr, yv + (t * ((Arm / l) + 1.0)));
            (double u, double w) = (-nv, t * Arm / l);
            (double e, double f, double h) = (YawInertia, -nr, nv + (t * Arm * ((Arm / l) + 1.0)));
            return new Polynomials(
                (c * h) - (q * w), (b * h) + (c * f) - (p * w) - (q * u), (a * h) + (b * f) + (c * e) - (p * u), (a * f) + (b * e), a * e).Roots();
        }

        /// <summary>Eigenvalues of the walk about the straight tow, states y, psi, v, r.</summary>
        public Complex[] Walk(double l, double step = 1e-7)
        {
            // Surge drag of hooks and hull balances the pull at U = 1; the hull's own share may be negative, it only holds the speed.
            var hull = new WalkHull(
                1.0, Mass, Mass + SurgeAdded, Mass + SwayAdded, 0.0, YawInertia, Arm, 0.0, [], [], Pull - HookDrag.Sum(),
                HookX, HookDrag, 1.0, 1.0, 1.0, [], [])
            { ShedAhead = Stern };
            const double Difference = 1e-5;
            Matrix<double> a = Matrix<double>.Build.Dense(4, 4);
            for (int j = 0; j < 4; j++)
            {
                double[] up = Rates(hull, l, j, Difference, step), down = Rates(hull, l, j, -Difference, step);
                for (int i = 0; i < 4; i++)
                {
                    a[i, j] = (up[i] - down[i]) / (2.0 * Difference);
                }
            }

            return [.. a.Evd().EigenValues];
        }

        /// <summary>Rates of the disturbed walk from one tiny step of the product; the tow point runs along the x axis at U.</summary>
        private static double[] Rates(WalkHull hull, double l, int state, double h, double dt)
        {
            double At(int i) => i == state ? h : 0.0;
            var now = new HullState(0.0, At(0), At(1), 1.0, At(2), At(3), 0.0, 0.0);
            var walk = new WalkingHull(hull);
            Bdf2 step = Bdf2.BackwardEuler(dt);
            walk.Begin(step, now, now, now, Vec3.Zero, 0.0);

            // A tow point so far ahead that the line is l long; only the tie's sideways place matters to first order.
            Vec3 tie = walk.Tie(now);
            double across = -tie.Y / l;
            HullState next = walk.Finish(step, Pull * new Vec3(Math.Sqrt(1.0 - (across * across)), across, 0.0));
            return [(next.Y - now.Y) / dt, (next.Psi - now.Psi) / dt, (next.V - now.V) / dt, (next.R - now.R) / dt];
        }
    }
}
