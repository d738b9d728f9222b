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

    [Fact]
    public void A_grown_system_solves_like_one_made_in_full_size() => Systems.Sample(
        s =>
        {
            UnilateralTridiagonal whole = Build(s.Off, s.Extra, s.Right);
            whole.Solve();
            var grown = new UnilateralTridiagonal(1, whole.Count, 0);
            Fill(grown, [.. s.Off.Take(1)], s.Extra, s.Right);
            grown.Solve();
            for (int n = 2; n <= whole.Count; n++)
            {
                grown.Append();
                Fill(grown, [.. s.Off.Take(n)], s.Extra, s.Right);
                grown.Solve();
            }

            for (int j = 0; j < whole.Count; j++)
            {
                Assert.Equal(whole.Tension[j], grown.Tension[j], 1e-12);
            }
        },
        iter: 500);

    [Fact]
    public void An_appended_unknown_starts_as_the_one_before_it_and_room_ends_with_the_capacity()
    {
        var solver = new UnilateralTridiagonal(1, 2, 0);
        Fill(solver, [0], [0.5], [1.0]);
        solver.Solve();
        solver.Append();
        Assert.Equal(2, solver.Count);
        Assert.Equal(2.0, solver.Tension[1]);
        Assert.Throws<InvalidOperationException>(solver.Append);
        Assert.Throws<ArgumentOutOfRangeException>(() => new UnilateralTridiagonal(3, 2, 0));
    }

    [Fact]
    public void A_removed_unknown_lets_the_others_move_up()
    {
        double[] off = [-0.4, -0.4, -0.4, 0], extra = [0.3, 0.3, 0.3, 0.3], right = [1, -1, 0.5, 0.2];
        UnilateralTridiagonal solver = Build(off, extra, right);
        solver.Solve();
        double[] before = [.. solver.Tension.Take(4)];
        solver.RemoveAt(1);
        Assert.Equal((3, before[0], before[2], before[3]), (solver.Count, solver.Tension[0], solver.Tension[1], solver.Tension[2]));
        UnilateralTridiagonal three = Build([-0.4, -0.4, 0], [0.3, 0.3, 0.3], [1, 0.5, 0.2]);
        Fill(solver, [-0.4, -0.4, 0], [0.3, 0.3, 0.3], [1, 0.5, 0.2]);
        three.Solve();
        solver.Solve();
        Assert.Equal(three.Tension.Take(3), solver.Tension.Take(3));
        Assert.Throws<ArgumentOutOfRangeException>(() => solver.RemoveAt(3));
        Assert.Throws<ArgumentOutOfRangeException>(() => new UnilateralTridiagonal(1, 0).RemoveAt(0));
    }

    [Fact]
    public void A_copy_goes_on_from_the_set_it_took_over()
    {
        double[] off = [-0.4, -0.4, -0.4, 0], extra = [0.3, 0.3, 0.3, 0.3], right = [1, -1, 0.5, 0.2];
        UnilateralTridiagonal first = Build(off, extra, right);
        first.Solve();
        var copy = new UnilateralTridiagonal(1, 6, 0);
        copy.CopyFrom(first);
        Assert.Equal(first.Count, copy.Count);
        Assert.Equal(first.Tension.Take(4), copy.Tension.Take(4));
        Fill(copy, off, extra, right);
        copy.Solve();
        Assert.Equal(first.Tension.Take(4), copy.Tension.Take(4));
        Assert.Equal(1, copy.Passes);
        Assert.Throws<ArgumentException>(() => new UnilateralTridiagonal(1, 3, 0).CopyFrom(first));
    }

    private static UnilateralTridiagonal Build(double[] off, double[] extra, double[] right)
    {
        var solver = new UnilateralTridiagonal(off.Length, 8);
        Fill(solver, off, extra, right);
        return solver;
    }

    private static void Fill(UnilateralTridiagonal solver, double[] off, double[] extra, double[] right)
    {
        int n = off.Length;
        for (int j = 0; j < n; j++)
        {
            solver.OffDiagonal[j] = j < n - 1 ? off[j] : 0.0;
            solver.Diagonal[j] = extra[j] + Math.Abs(solver.OffDiagonal[j]) + (j > 0 ? Math.Abs(off[j - 1]) : 0.0);
            solver.RightSide[j] = right[j];
        }
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
