namespace LureSim.Model.Rods;

/// <summary>Five-point Gauss-Legendre rule (degree 9): links are short, tapers smooth, so this is exact to round-off.</summary>
internal static class GaussLegendre
{
    private static readonly double[] Node = [0.0, 0.53846931010568309, 0.90617984593866399];
    private static readonly double[] Weight = [0.56888888888888889, 0.47862867049936647, 0.23692688505618909];

    /// <summary>Integral of f from a to b in four panels.</summary>
    public static double Integrate(Func<double, double> f, double a, double b)
    {
        const int panels = 4;
        double half = (b - a) / (2 * panels);
        double sum = 0.0;
        for (int i = 0; i < panels; i++)
        {
            double mid = a + (((2 * i) + 1) * half);
            sum += Weight[0] * f(mid);
            for (int j = 1; j < Node.Length; j++)
            {
                sum += Weight[j] * (f(mid - (Node[j] * half)) + f(mid + (Node[j] * half)));
            }
        }

        return sum * half;
    }
}
