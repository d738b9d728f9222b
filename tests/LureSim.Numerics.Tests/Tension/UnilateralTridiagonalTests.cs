using CsCheck;
using LureSim.Numerics.Tension;

namespace LureSim.Numerics.Tests.Tension;

public sealed class UnilateralTridiagonalTests
{
    // Diagonally dominant, as the rows of a line are: the diagonal holds both neighbours' yields and the segment's own.
    private static readonly Gen<(double[] Off, double[] Extra, double[] Right)> Systems =
        from n in Gen.Int[1, 7]
        from off in Gen.Double[-1.0, 1.0].Array[n]
        from extra in Gen.Double[0.05, 1.0].Array[n]
        from right in Gen.Double[-1.0, 1.0].Array[n]
        select (off, extra, right);

    [Fact]
    public void Agrees_with_a_search_over_all_active_sets() => Systems.Sample(
        s =>
        {
            UnilateralTridiagonal solver = Build(s.Off, s.Extra, s.Right);
            solver.Solve();
            double[] best = Search(solver);
            for (int j = 0; j < solver.Count; j++)
            {
                Assert.Equal(best[j], solver.Tension[j], 1e-9);
            }
        },
        iter: 2000);

    [Fact]
    public void Warm_start_gives_the_same_answer()
    {
        UnilateralTridiagonal solver = Build([-0.4, -0.4, -0.4, 0], [0.3, 0.3, 0.3, 0.3], [1, -1, 0.5, 0.2]);
        solver.Solve();
        double[] first = [.. solver.Tension.Take(4)];
        long passes = solver.Passes;
        solver.Solve();
        Assert.Equal(first, solver.Tension.Take(4));
        Assert.Equal(1, solver.Passes - passes);
        Assert.Equal(0, solver.LimitHits);
    }

    [Fact]
    public void Solving_allocates_nothing()
    {
        UnilateralTridiagonal solver = Build([-0.4, -0.4, -0.4, 0], [0.3, 0.3, 0.3, 0.3], [1, -1, 0.5, 0.2]);
        solver.Solve();
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++)
        {
            solver.RightSide[i % 4] = Math.Sin(i);
            solver.Solve();
        }

        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }

    private static UnilateralTridiagonal Build(double[] off, double[] extra, double[] right)
    {
        int n = off.Length;
        var solver = new UnilateralTridiagonal(n, 8);
        for (int j = 0; j < n; j++)
        {
            solver.OffDiagonal[j] = j < n - 1 ? off[j] : 0.0;
            solver.Diagonal[j] = extra[j] + Math.Abs(solver.OffDiagonal[j]) + (j > 0 ? Math.Abs(off[j - 1]) : 0.0);
            solver.RightSide[j] = right[j];
        }

        return solver;
    }

    /// <summary>Tries every set by dense elimination: the one with no negative tension and no overstretched inactive row.</summary>
    private static double[] Search(UnilateralTridiagonal s)
    {
        for (int set = 0; set < 1 << s.Count; set++)
        {
            double[] t = Dense(s, set);
            bool good = true;
            for (int j = 0; j < s.Count; j++)
            {
                double residual = (s.Diagonal[j] * t[j]) - s.RightSide[j]
                    + (j > 0 ? s.OffDiagonal[j - 1] * t[j - 1] : 0.0) + (j < s.Count - 1 ? s.OffDiagonal[j] * t[j + 1] : 0.0);
                good &= (set >> j & 1) == 1 ? t[j] >= -1e-13 : residual >= -1e-13;
            }

            if (good)
            {
                return t;
            }
        }

        throw new InvalidOperationException("no set fits");
    }

    private static double[] Dense(UnilateralTridiagonal s, int set)
    {
        var a = MathNet.Numerics.LinearAlgebra.Matrix<double>.Build.DenseIdentity(s.Count);
        var b = MathNet.Numerics.LinearAlgebra.Vector<double>.Build.Dense(s.Count);
        for (int j = 0; j < s.Count; j++)
        {
            if ((set >> j & 1) == 0)
            {
                continue;
            }

            a[j, j] = s.Diagonal[j];
            b[j] = s.RightSide[j];
            if (j > 0)
            {
                a[j, j - 1] = s.OffDiagonal[j - 1];
            }

            if (j < s.Count - 1)
            {
                a[j, j + 1] = s.OffDiagonal[j];
            }
        }

        return a.Solve(b).ToArray();
    }
}
