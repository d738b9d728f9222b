namespace LureSim.References.Ode;

/// <summary>A function of one variable, as a struct so that the root finder allocates nothing.</summary>
internal interface IScalarFunction
{
    /// <summary>Value at x.</summary>
    public double At(double x);
}

/// <summary>Root inside a sign change.</summary>
/// <remarks>T. R. Chandrupatla, Adv. Eng. Software 28 (1997) 145 (from memory): inverse quadratic interpolation where its
/// monotonicity test holds, bisection elsewhere.</remarks>
internal static class BracketedRoot
{
    /// <summary>A point within about <paramref name="width"/> of a zero between a and b.</summary>
    /// <remarks>fa and fb are the values at a and b, of opposite sign; of the final bracket the end with the smaller |f| is
    /// returned.</remarks>
    public static double Find<T>(T f, double a, double fa, double b, double fb, double width)
        where T : struct, IScalarFunction
    {
        double x1 = a, f1 = fa, x2 = b, f2 = fb, t = 0.5;
        while (true)
        {
            double x = x1 + (t * (x2 - x1)), fx = f.At(x);
            double x3, f3;
            if ((fx < 0.0) == (f1 < 0.0))
            {
                (x3, f3) = (x1, f1);
            }
            else
            {
                (x3, f3) = (x2, f2);
                (x2, f2) = (x1, f1);
            }

            (x1, f1) = (x, fx);
            double best = Math.Abs(f1) < Math.Abs(f2) ? x1 : x2;
            double margin = width / Math.Abs(x2 - x1);

            // Written so that NaN from a function that is not finite ends the search.
            if (!(margin < 0.5) || f1 == 0.0)
            {
                return f1 == 0.0 ? x1 : best;
            }

            t = Math.Clamp(Interpolated(x1, f1, x2, f2, x3, f3), margin, 1.0 - margin);
        }
    }

    private static double Interpolated(double x1, double f1, double x2, double f2, double x3, double f3)
    {
        double xi = (x1 - x2) / (x3 - x2), phi = (f1 - f2) / (f3 - f2);
        if (!(phi * phi < xi && (1.0 - phi) * (1.0 - phi) < 1.0 - xi))
        {
            return 0.5;
        }

        return (f1 / (f2 - f1) * f3 / (f2 - f3)) + ((x3 - x1) / (x2 - x1) * f1 / (f3 - f1) * f2 / (f3 - f2));
    }
}
