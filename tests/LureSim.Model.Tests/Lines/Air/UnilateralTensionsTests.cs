using CsCheck;
using LureSim.Model.Lines.Air;
using MathNet.Numerics.LinearAlgebra;

namespace LureSim.Model.Tests.Lines.Air;

/// <summary>The active set of a cast's line against a search over every set of taut segments.</summary>
public sealed class UnilateralTensionsTests
{
    // Diagonally dominant, as the rows of a line are: the diagonal holds the yields of both points and the segment's own.
    private static readonly Gen<(double[] Off, double[] Extra, double[] Right, bool[] Taut)> Systems =
        from n in Gen.Int[1, 7]
        from off in Gen.Double[-1.0, 1.0].Array[n]
        from extra in Gen.Double[0.05, 1.0].Array[n]
        from right in Gen.Double[-1.0, 1.0].Array[n]
        from taut in Gen.Bool.Array[n]
        select (off, extra, right, taut);

    [Fact]
    public void Tensions_are_those_of_the_one_set_that_fits() => Systems.Sample(
        s =>
        {
            (Matrix<double> a, Vector<double> b) = Dense(s.Off, s.Extra, s.Right);
            UnilateralTensions solver = Build(a, b, s.Taut);
            solver.Solve(b.Count);
            Vector<double> best = Search(a, b);
            for (int j = 0; j < b.Count; j++)
            {
                Assert.Equal(best[j], solver.Tension[j], 1e-9);
            }
        },
        iter: 2000);

    // A loose segment is woken by a neighbour that pushes it apart. A = (2 1; 1 2), b = (1, 0.6): with both taut T = (1.4, 0.2)/3,
    // with the first alone T = (0.5, 0) and the second still wants 0.6 - 0.5.
    [Fact]
    public void A_loose_row_looks_at_the_pull_of_its_neighbours()
    {
        Matrix<double> a = Matrix<double>.Build.DenseOfArray(new[,] { { 2.0, 1.0 }, { 1.0, 2.0 } });
        UnilateralTensions both = Build(a, Vector<double>.Build.Dense([1.0, 0.6]), [true, false]);
        both.Solve(2);
        Assert.Equal(1.4 / 3.0, both.Tension[0], 1e-15);
        Assert.Equal(0.2 / 3.0, both.Tension[1], 1e-15);
        UnilateralTensions one = Build(a, Vector<double>.Build.Dense([1.0, 0.4]), [true, false]);
        one.Solve(2);
        Assert.Equal([0.5, 0.0], one.Tension.Take(2));
    }

    [Fact]
    public void A_copy_goes_on_from_the_same_set()
    {
        Matrix<double> a = Matrix<double>.Build.DenseOfArray(new[,] { { 2.0, -1.0 }, { -1.0, 2.0 } });
        UnilateralTensions first = Build(a, Vector<double>.Build.Dense([1.0, -3.0]), [true, true]), copy = new(4);
        first.Solve(2);
        copy.CopyFrom(first, 2);
        Assert.Equal([0.5, 0.0], copy.Tension.Take(2));
        Assert.Equal([true, false], copy.Taut.Take(2));
    }

    private static (Matrix<double> A, Vector<double> B) Dense(double[] off, double[] extra, double[] right)
    {
        int n = off.Length;
        var a = Matrix<double>.Build.Dense(n, n);
        for (int j = 0; j < n; j++)
        {
            a[j, j] += extra[j];
            if (j < n - 1)
            {
                a[j, j + 1] = a[j + 1, j] = off[j];
                a[j, j] += Math.Abs(off[j]);
                a[j + 1, j + 1] += Math.Abs(off[j]);
            }
        }

        return (a, Vector<double>.Build.Dense(right));
    }

    private static UnilateralTensions Build(Matrix<double> a, Vector<double> b, bool[] taut)
    {
        int n = b.Count;
        var solver = new UnilateralTensions(n + 2);
        for (int j = 0; j < n; j++)
        {
            // What lies beyond the last row must not matter.
            solver.SetRow(j, a[j, j], j < n - 1 ? a[j, j + 1] : 7.0, b[j]);
            solver.Taut[j] = taut[j];
        }

        return solver;
    }

    /// <summary>Tries every set by dense elimination: the one with no negative tension and no overstretched loose row.</summary>
    private static Vector<double> Search(Matrix<double> a, Vector<double> b)
    {
        int n = b.Count;
        for (int set = 0; set < 1 << n; set++)
        {
            int[] taut = [.. Enumerable.Range(0, n).Where(j => (set >> j & 1) == 1)];
            var t = Vector<double>.Build.Dense(n);
            if (taut.Length > 0)
            {
                var part = Matrix<double>.Build.Dense(taut.Length, taut.Length, (i, k) => a[taut[i], taut[k]]);
                Vector<double> solved = part.Solve(Vector<double>.Build.Dense(taut.Length, i => b[taut[i]]));
                for (int i = 0; i < taut.Length; i++)
                {
                    t[taut[i]] = solved[i];
                }
            }

            Vector<double> pull = b - (a * t);
            if (Enumerable.Range(0, n).All(j => taut.Contains(j) ? t[j] >= -1e-13 : pull[j] <= 1e-13))
            {
                return t;
            }
        }

        throw new InvalidOperationException("no set fits");
    }
}
