using LureSim.References.Ode;
using LureSim.Studies.Cadence;

namespace LureSim.Validation.CadenceChecks;

/// <summary>The edge finder of the rhythm study on kicked and shaken systems whose edges are known exactly.</summary>
public static class WindowEdges
{
    [PublishedCheck]
    public static Check KickedRotor()
    {
        double Edge(double bracket) => Edges(3.0, 5.0, 9, bracket, KeepsToItsFixedPoint)[0];
        return new Check("M1", "Edge of the window in which the kicked rotor keeps its period: K = 4",
            "Chirikov's standard map; textbook stability 0 < K < 4 of the fixed point (pi, 0)",
            "Half of the bracket of 1e-4, and as much again for growth too slow to be seen in 4,000 kicks.",
            [new Row("upper edge K", "-", 4.0, Edge(1e-4), 1e-4, Tol.Absolute)],
            BracketLadder("upper edge K", 4.0, Edge));
    }

    [PublishedCheck]
    public static Check BouncingBall()
    {
        const double e = 0.5;
        double q = Math.PI * (1.0 - e) / (1.0 + e);
        double birth = q, doubling = Math.Sqrt((q * q) + Math.Pow(2.0 * (1.0 + (e * e)) / ((1.0 + e) * (1.0 + e)), 2.0));
        double[] edges = Edges(0.85, 1.85, 11, 1e-3, g => BouncesOncePerCycle(g, e));
        return new Check("M2", "Window in which a ball bounces once per cycle of a vibrating table, restitution 0.5",
            "Luo and Han 1996, exact table motion (from memory; recomputed by differentiating the map)",
            "Half of the bracket of 1e-3; next to the doubling edge 4,000 bounces do not settle closer than 2e-3.",
            [
                new Row("birth, A omega^2/g", "-", birth, edges[0], 2e-3, Tol.Absolute),
                new Row("period doubling, A omega^2/g", "-", doubling, edges[1], 2e-3, Tol.Absolute),
            ]);
    }

    [PublishedCheck]
    public static Check DrivenPendulum() => new(
        "M3", "Windows in which a damped driven pendulum repeats after one and after two periods of its drive",
        "Taylor, Classical Mechanics, ch. 12: doublings at gamma 1.0663 and 1.0793 (from memory); Floquet multiplier -1 at 1.066373, recomputed",
        "Half of the bracket of 1e-4, the last digit given, and as much again for slow settling next to an edge: 1,500 periods are waited for.",
        [
            new Row("first doubling, gamma", "-", 1.066373, Edges(1.060, 1.076, 5, 1e-4, g => Period(g) == 1)[0], 2e-4, Tol.Absolute),
            new Row("second doubling, gamma", "-", 1.0793, Edges(1.070, 1.0815, 5, 1e-4, g => Period(g) <= 2)[0], 2e-4, Tol.Absolute),
        ]);

    /// <summary>Drive periods, 1, 2 or 4 (or more), after which the pendulum is back; drive 2 pi, own frequency 1.5 of it, damping a quarter of that.</summary>
    private static int Period(double gamma)
    {
        const double w0 = 3.0 * Math.PI, beta = 0.25 * w0, tolerance = 1e-4;
        var pendulum = new FunctionSystem(
            2, (t, y, f) => (f[0], f[1]) = (y[1], (-2.0 * beta * y[1]) - (w0 * w0 * Math.Sin(y[0])) + (gamma * w0 * w0 * Math.Cos(2.0 * Math.PI * t))));
        double[] y = [-0.5 * Math.PI, 0.0];
        var last = new double[4];
        for (int n = 0; n < 1500; n++)
        {
            y = [.. DormandPrince54.Solve(new OdeProblem(pendulum, n, n + 1.0, y), new AdaptiveSteps(1e-9, 1e-9)).State];
            last[n % 4] = y[0];
        }

        return Math.Abs(last[3] - last[2]) < tolerance ? 1 : Math.Abs(last[3] - last[1]) < tolerance ? 2 : 4;
    }

    private static Ladder BracketLadder(string quantity, double exact, Func<double, double> edge) => new(
        "1/bracket", quantity, [.. new[] { 0.1, 1e-2, 1e-3 }.Select(b => (1.0 / b, Math.Abs(edge(b) - exact)))],
        0.8, "order 1: the edge lies anywhere in its bracket; bisection goes by halves, so that a tenth may be an eighth");

    /// <summary>Edges as the study finds them: a scan, then bisection of every change.</summary>
    private static double[] Edges(double from, double to, int scan, double bracket, Func<double, bool> inside)
    {
        var known = new SortedList<double, bool>();
        List<double> next = [.. Enumerable.Range(0, scan).Select(i => from + (i * (to - from) / (scan - 1)))];
        while (next.Count > 0)
        {
            next.ForEach(x => known.Add(x, inside(x)));
            next = EdgeRefinement.Next([.. known.Keys], i => known.Values[i] != known.Values[i + 1] ? bracket : double.PositiveInfinity);
        }

        return
        [
            .. Enumerable.Range(0, known.Count - 1).Where(i => known.Values[i] != known.Values[i + 1])
                .Select(i => 0.5 * (known.Keys[i] + known.Keys[i + 1])),
        ];
    }

    private static bool KeepsToItsFixedPoint(double k)
    {
        double x = Math.PI + 1e-9, p = 0.0;
        for (int n = 0; n < 4000; n++)
        {
            p += k * Math.Sin(x);
            x += p;
            if (Math.Abs(x - Math.PI) > 1e-3)
            {
                return false;
            }
        }

        return true;
    }

    // Units: omega = 1, g = 1, so the table is gamma sin t.
    private static bool BouncesOncePerCycle(double gamma, double restitution)
    {
        double period = 2.0 * Math.PI;
        // Steady bounce: the ball leaves with pi and comes back one period later; its phase balances loss and kick.
        double kick = Math.PI * (1.0 - restitution) / (1.0 + restitution) / gamma;
        double t = Math.Acos(Math.Min(1.0, kick)) + 1e-3, speed = Math.PI, last = 0.0;
        for (int n = 0; n < 4000; n++)
        {
            double flight = Flight(gamma, t, speed);
            double arrival = speed - flight;
            t = (t + flight) % period;
            double table = gamma * Math.Cos(t);
            speed = table + (restitution * (table - arrival));
            last = flight;
            if (speed - table < 1e-6)
            {
                return false;
            }
        }

        return Math.Abs(last - period) < 1e-4;
    }

    /// <summary>Time until ball and table meet again.</summary>
    private static double Flight(double gamma, double t, double speed)
    {
        double Gap(double s) => (gamma * Math.Sin(t)) + (speed * s) - (0.5 * s * s) - (gamma * Math.Sin(t + s));
        double low = 0.02, high = low;
        while (Gap(high) > 0.0)
        {
            (low, high) = (high, high + 0.02);
        }

        for (int i = 0; i < 60; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = Gap(middle) > 0.0 ? (middle, high) : (low, middle);
        }

        return high;
    }
}
