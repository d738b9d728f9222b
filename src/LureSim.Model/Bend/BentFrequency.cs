using LureSim.Model.Rods;

namespace LureSim.Model.Bend;

/// <summary>First frequency of small swings about a bent shape: the rod as it hangs, not as it was straight.</summary>
internal static class BentFrequency
{
    private const int MostPasses = 500;
    private const double Tolerance = 1e-13;

    /// <summary>The frequency, Hz.</summary>
    /// <param name="chain">The rod, with the mass at its tip if there is one.</param>
    /// <param name="shape">Its shape at rest under its own weight.</param>
    /// <param name="gravityMS2">g along -y, m/s2.</param>
    /// <exception cref="ModelException">The shape is not stable.</exception>
    public static double FirstHz(RodChain chain, RodShape shape, double gravityMS2)
    {
        int n = chain.Links;
        double[,] inertia = new double[n, n];
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                inertia[i, j] = chain.InertiaKgM2[i + 1, j + 1] * Math.Cos(shape.AngleRad[i + 1] - shape.AngleRad[j + 1]);
            }
        }

        (double[] pivot, double[] diagonal) = Factor(chain, shape, gravityMS2);
        double[] x = [.. Enumerable.Range(1, n).Select(i => (double)i / n)], load = new double[n];
        double last = 0.0;
        for (int pass = 0; pass < MostPasses; pass++)
        {
            // Inverse iteration: the slowest mode grows fastest. Rayleigh's quotient doubles its digits.
            Multiply(inertia, x, load);
            Solve(chain, pivot, load, x);
            Multiply(inertia, x, load);
            double square = Bending(chain, diagonal, x) / Dot(x, load);
            double scale = 1.0 / Math.Sqrt(Dot(x, load));
            for (int i = 0; i < n; i++)
            {
                x[i] *= scale;
            }

            if (Math.Abs(square - last) <= Tolerance * square)
            {
                return Math.Sqrt(square) / (2.0 * Math.PI);
            }

            last = square;
        }

        throw new ModelException("The first frequency of the bent rod was not found.", 0.0);
    }

    // Hessian of the potential, tridiagonal: its diagonal, and the pivots of its elimination.
    private static (double[] Pivot, double[] Diagonal) Factor(RodChain chain, RodShape shape, double gravity)
    {
        int n = chain.Links;
        double[] pivot = new double[n], diagonal = new double[n];
        for (int i = 0; i < n; i++)
        {
            double outer = i + 1 < n ? chain.SpringNm[i + 1] : 0.0;
            diagonal[i] = chain.SpringNm[i] + outer - (gravity * chain.FirstMomentKgM[i + 1] * Math.Sin(shape.AngleRad[i + 1]));
            pivot[i] = diagonal[i] - (i > 0 ? chain.SpringNm[i] * chain.SpringNm[i] / pivot[i - 1] : 0.0);
            if (!(pivot[i] > 0.0))
            {
                throw new ModelException("The bent rod is not stable.", 0.0);
            }
        }

        return (pivot, diagonal);
    }

    private static void Solve(RodChain chain, double[] pivot, double[] load, double[] x)
    {
        int n = pivot.Length;
        x[0] = load[0];
        for (int i = 1; i < n; i++)
        {
            x[i] = load[i] + (chain.SpringNm[i] / pivot[i - 1] * x[i - 1]);
        }

        x[n - 1] /= pivot[n - 1];
        for (int i = n - 2; i >= 0; i--)
        {
            x[i] = (x[i] + (chain.SpringNm[i + 1] * x[i + 1])) / pivot[i];
        }
    }

    private static double Bending(RodChain chain, double[] diagonal, double[] x)
    {
        double sum = 0.0;
        for (int i = 0; i < x.Length; i++)
        {
            sum += diagonal[i] * x[i] * x[i];
            sum -= i > 0 ? 2.0 * chain.SpringNm[i] * x[i] * x[i - 1] : 0.0;
        }

        return sum;
    }

    private static void Multiply(double[,] matrix, double[] x, double[] product)
    {
        for (int i = 0; i < x.Length; i++)
        {
            double sum = 0.0;
            for (int j = 0; j < x.Length; j++)
            {
                sum += matrix[i, j] * x[j];
            }

            product[i] = sum;
        }
    }

    private static double Dot(double[] a, double[] b)
    {
        double sum = 0.0;
        for (int i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }
}
