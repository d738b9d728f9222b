using LureSim.Studies.Maps;

namespace LureSim.Studies.Tests.Maps;

public sealed class AdaptiveLatticeTests
{
    private static (AdaptiveLattice Lattice, int Samples) Sample(int depth, Func<double, double, int> name, int cells = 6, int? otherDepth = null)
    {
        var lattice = new AdaptiveLattice(cells, cells, depth, 1, otherDepth ?? depth);
        int samples = 0;
        for (var wanted = lattice.Wanted(); wanted.Count > 0; wanted = lattice.Wanted())
        {
            samples += wanted.Count;
            foreach ((int i, int j) in wanted)
            {
                double x = i / (lattice.Width - 1.0), y = j / (lattice.Height - 1.0);
                lattice.Set(i, j, name(x, y), x + (10 * y));
            }
        }

        return (lattice, samples);
    }

    private static int Wrong(AdaptiveLattice lattice, Func<double, double, int> name)
    {
        int[,] classes = lattice.Fill().Classes;
        int wrong = 0;
        for (int i = 0; i < lattice.Width; i++)
        {
            for (int j = 0; j < lattice.Height; j++)
            {
                wrong += classes[i, j] == name(i / (lattice.Width - 1.0), j / (lattice.Height - 1.0)) ? 0 : 1;
            }
        }

        return wrong;
    }

    private static int Circle(double x, double y) => ((x - 0.4) * (x - 0.4)) + ((y - 0.45) * (y - 0.45)) < 0.09 ? 1 : 0;

    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    [InlineData(4)]
    public void Every_lattice_point_of_a_round_class_is_right(int depth) => Assert.Equal(0, Wrong(Sample(depth, Circle).Lattice, Circle));

    [Fact]
    public void Three_classes_that_meet_are_right_too()
    {
        static int Name(double x, double y) => y > 0.3 + (0.4 * x) ? 2 : x > 0.52 ? 1 : 0;
        Assert.Equal(0, Wrong(Sample(4, Name).Lattice, Name));
    }

    [Fact]
    public void Boundaries_without_the_main_class_may_stay_coarse()
    {
        static int Name(double x, double y) => x > 0.52 ? 1 : y > 0.437 ? 2 : 0;
        (AdaptiveLattice fine, int all) = Sample(4, Name);
        (AdaptiveLattice coarse, int some) = Sample(4, Name, 6, 1);
        Assert.True(some < all);
        Assert.Equal(0, Wrong(fine, Name));
        Assert.InRange(Wrong(coarse, Name), 1, 500);
        static int Main(double x, double y) => Name(x, y) == 1 ? 1 : 0;
        int[,] classes = coarse.Fill().Classes;
        for (int i = 0; i < coarse.Width; i++)
        {
            for (int j = 0; j < coarse.Height; j++)
            {
                Assert.Equal(Main(i / (coarse.Width - 1.0), j / (coarse.Height - 1.0)) == 1, classes[i, j] == 1);
            }
        }
    }

    [Fact]
    public void Samples_grow_like_the_boundary_and_not_like_the_area()
    {
        // One more cut doubles a boundary's points and makes four times as many lattice points.
        int coarse = Sample(3, Circle).Samples, fine = Sample(4, Circle).Samples;
        Assert.InRange((fine - 49) / (coarse - 49.0), 1.6, 2.6);
        Assert.True(fine < 97 * 97 / 3);
    }

    [Fact]
    public void One_class_needs_the_corners_only() => Assert.Equal(49, Sample(3, (_, _) => 5).Samples);

    [Fact]
    public void An_island_between_corners_is_missed_and_finer_cells_find_it()
    {
        static int Island(double x, double y) => Math.Abs(x - 0.25) < 0.05 && Math.Abs(y - 0.25) < 0.05 ? 1 : 0;
        Assert.NotEqual(0, Wrong(Sample(3, Island).Lattice, Island));
        Assert.Equal(0, Wrong(Sample(1, Island, 24).Lattice, Island));
    }

    [Fact]
    public void Numbers_between_samples_are_bilinear()
    {
        AdaptiveLattice lattice = Sample(3, Circle).Lattice;
        double[,] values = lattice.Fill().Values;
        for (int i = 0; i < lattice.Width; i++)
        {
            for (int j = 0; j < lattice.Height; j++)
            {
                Assert.Equal((i / (lattice.Width - 1.0)) + (10 * j / (lattice.Height - 1.0)), values[i, j], 1e-12);
            }
        }
    }

    [Fact]
    public void Where_some_corners_are_set_only_the_others_are_wanted()
    {
        // Every other coarse point: each cell that misses a corner shares it with another cell.
        var lattice = new AdaptiveLattice(4, 4, 2, 1, 2);
        for (int i = 0; i <= 16; i += 8)
        {
            for (int j = 0; j <= 16; j += 8)
            {
                lattice.Set(i, j, 0, 0.0);
            }
        }

        Assert.Equal(25 - 9, lattice.Wanted().Count);
        Assert.All(lattice.Wanted(), p => Assert.Equal((0, 0), (p.I % 4, p.J % 4)));
    }
}
