namespace LureSim.Model.Rods;

/// <summary>Cholesky's factors of a small symmetric positive matrix, stored by rows.</summary>
internal static class RowCholesky
{
    /// <summary>Factors a matrix in place: L below the diagonal, the inverse of its diagonal on it.</summary>
    /// <param name="f">Lower triangle, n x n, row by row.</param>
    /// <param name="n">Number of rows.</param>
    public static void Factor(Span<double> f, int n)
    {
        for (int i = 0; i < n; i++)
        {
            Span<double> row = f.Slice(i * n, i + 1);
            for (int j = 0; j < i; j++)
            {
                ReadOnlySpan<double> other = f.Slice(j * n, j + 1);
                double sum = row[j];
                for (int k = 0; k < other.Length - 1; k++)
                {
                    sum -= row[k] * other[k];
                }

                row[j] = sum * other[j];
            }

            double pivot = row[i];
            for (int k = 0; k < row.Length - 1; k++)
            {
                pivot -= row[k] * row[k];
            }

            row[i] = 1.0 / Math.Sqrt(pivot);
        }
    }

    /// <summary>Solves three right-hand sides at once, in place: their chains of sums run side by side.</summary>
    /// <param name="f">What <see cref="Factor"/> left.</param>
    /// <param name="b">First right-hand side, of length n.</param>
    /// <param name="c">Second.</param>
    /// <param name="d">Third.</param>
    public static void Solve(ReadOnlySpan<double> f, double[] b, double[] c, double[] d)
    {
        int n = b.Length;
        for (int i = 0; i < n; i++)
        {
            double p = b[i], q = c[i], r = d[i];
            ReadOnlySpan<double> row = f.Slice(i * n, i + 1);
            for (int k = 0; k < i; k++)
            {
                double l = row[k];
                p -= l * b[k];
                q -= l * c[k];
                r -= l * d[k];
            }

            (b[i], c[i], d[i]) = (p * row[i], q * row[i], r * row[i]);
        }

        for (int i = n - 1; i >= 0; i--)
        {
            double p = b[i], q = c[i], r = d[i];
            for (int k = i + 1; k < n; k++)
            {
                double l = f[(k * n) + i];
                p -= l * b[k];
                q -= l * c[k];
                r -= l * d[k];
            }

            double pivot = f[(i * n) + i];
            (b[i], c[i], d[i]) = (p * pivot, q * pivot, r * pivot);
        }
    }
}
