using LureSim.References.Ode;
using MathNet.Numerics.RootFinding;

namespace LureSim.Validation.OdeChecks;

/// <summary>Events and a threshold of parametric drive.</summary>
public static class EventsAndThresholds
{
    /// <summary>O6.</summary>
    [PublishedCheck]
    public static Check BouncingBall()
    {
        (double E, double Third)[] cases = [(0.8, 1.752210932), (0.5, 1.129001889), (0.9, 1.996075340)];
        return new Check(
            "O6", "A ball dropped from 1 m: times of the first and third impact", "Closed form t1 (1 + 2e + 2e^2), t1 = sqrt(2h/g), g = 9.80665 m/s2",
            "ten digits; parabolas are integrated exactly, an event is located to rounding",
            [.. cases.SelectMany(c =>
            {
                double[] times = Impacts(c.E);
                return (Row[])
                [
                    new($"first impact, e = {c.E}", "s", 0.451600756, times[0], 1e-9, Tol.Absolute),
                    new($"third impact, e = {c.E}", "s", c.Third, times[2], 2e-9, Tol.Absolute),
                ];
            })]);
    }

    /// <summary>M4.</summary>
    [PublishedCheck]
    public static Check ParametricThreshold()
    {
        (double Damping, double Eps)[] cases = [(0.01, 0.0400009), (0.02, 0.0800070), (0.05, 0.2001093), (0.1, 0.4008740)];
        return new Check(
            "M4", "Threshold of x'' + 2 z x' + (1 + eps cos 2t) x = 0: the drive at which a rest position starts to swing",
            "Leading order eps = 4 z (published); digits by Floquet multipliers, recomputed",
            "seven digits given; the monodromy matrix is integrated at a tolerance of 1e-11",
            [.. cases.Select(c => new Row($"eps at z = {c.Damping}", "", c.Eps, Threshold(c.Damping), 2e-7, Tol.Absolute))]);
    }

    private static double[] Impacts(double e)
    {
        var impact = new OdeEvent((_, y) => y[0]) { Crossing = Crossing.Falling, StopAt = 3, Map = (_, y) => y[1] *= -e };
        var fall = new FunctionSystem(2, (_, y, f) => (f[0], f[1]) = (y[1], -9.80665));
        OdeSolution s = DormandPrince54.Solve(new OdeProblem(fall, 0.0, 5.0, [1.0, 0.0]) { Events = [impact] }, new AdaptiveSteps(1e-10, 1e-10));
        return [.. s.Occurrences.Select(o => o.Time)];
    }

    private static double Threshold(double damping) => Brent.FindRoot(eps => LargestMultiplier(damping, eps) - 1.0, 3.0 * damping, 5.0 * damping, 1e-10);

    /// <summary>Largest modulus of the eigenvalues of the map over one period of the drive, pi.</summary>
    private static double LargestMultiplier(double z, double eps)
    {
        double[] y = Problem.Solve(Math.PI, 1e-11, [1, 0, 0, 1], (t, s, f) =>
        {
            double k = 1.0 + (eps * Math.Cos(2.0 * t));
            (f[0], f[1], f[2], f[3]) = (s[1], (-2.0 * z * s[1]) - (k * s[0]), s[3], (-2.0 * z * s[3]) - (k * s[2]));
        });
        double half = 0.5 * (y[0] + y[3]), det = (y[0] * y[3]) - (y[1] * y[2]), root = (half * half) - det;
        return root < 0.0 ? Math.Sqrt(det) : Math.Abs(half) + Math.Sqrt(root);
    }
}
