using LureSim.Model.Lines;
using LureSim.Model.Media;
using LureSim.References.Lines;
using LureSim.References.Media;

namespace LureSim.Model.Tests.Lines;

public sealed class FilmTests
{
    private static readonly WaterState Water = WaterModel.Evaluate(new(20.0));
    private static readonly double CapillaryLength = CapillaryNumbers.Length(Water);

    private static double Rad(double deg) => deg * Math.PI / 180.0;

    [Fact]
    public void Thin_law_is_the_meniscus_law_with_the_slope_eliminated()
    {
        var film = new ThinLineFilm(Water);
        for (double psi = -1.5; psi <= 1.5; psi += 0.1)
        {
            double h = 2.0 * CapillaryLength * Math.Sin(0.5 * psi);
            Assert.Equal(2.0 * Water.SurfaceTensionNM * Math.Sin(psi), film.Force(h), 12);
        }
    }

    [Fact]
    public void Breaks_through_at_root_two_capillary_lengths_carrying_two_sigma()
    {
        var film = new ThinLineFilm(Water);
        Assert.Equal(Math.Sqrt(2.0) * CapillaryLength, film.BreakThroughDepthM, 12);
        Assert.Equal(2.0 * Water.SurfaceTensionNM, film.Force(film.BreakThroughDepthM), 12);
        Assert.Equal(0.0, film.Force(1.001 * film.BreakThroughDepthM));
        Assert.Equal(0.0, film.Force(-1.001 * film.LiftOffHeightM));
    }

    [Theory]
    [InlineData(60.0)]
    [InlineData(75.0)]
    public void A_wettable_line_is_drawn_through_at_its_contact_angle(double deg)
    {
        var film = new ThinLineFilm(Water, Rad(deg));
        Assert.Equal(2.0 * Water.SurfaceTensionNM * Math.Sin(Rad(deg)), film.MaximumSupportNM, 12);
        Assert.Equal(film.MaximumSupportNM, film.Force(film.BreakThroughDepthM), 12);
        Assert.True(film.LiftOffHeightM > film.BreakThroughDepthM);
    }

    [Fact]
    public void Exact_support_tends_to_the_thin_law_as_the_line_thins()
    {
        var thin = new ThinLineFilm(Water);
        double Gap(double mm) => new SurfaceFilmForce(Water, 1e-3 * mm, Rad(90)).MaximumSupportNM - thin.MaximumSupportNM;
        // What is left out is displaced water, rho g pi R^2 to leading order plus 2 R h: at least quadratic between these sizes.
        Assert.InRange(Gap(0.05), 0.0, 1e-4 * 2.0);
        Assert.InRange(Gap(0.1) / Gap(0.05), 3.5, 4.5);
    }

    [Theory]
    [InlineData(0.1, 70)]
    [InlineData(0.5, 90)]
    [InlineData(1.0, 110)]
    [InlineData(2.0, 100)]
    public void Break_through_is_the_highest_load_of_all_positions(double mm, double deg)
    {
        var film = new SurfaceFilmForce(Water, 1e-3 * mm, Rad(deg));
        for (int i = 0; i <= 2000; i++)
        {
            Assert.True(film.Load(i * Math.PI / 2000) <= film.MaximumSupportNM * (1 + 1e-12));
        }
    }

    [Fact]
    public void Submerged_share_alone_is_plain_buoyancy()
    {
        // theta = 90 deg, contact line at the equator: level meniscus, half the cylinder in the water.
        var film = new SurfaceFilmForce(Water, 1e-3, Rad(90));
        double half = Water.DensityKgM3 * Physics.GravityMS2 * Math.PI * 0.25e-6 / 2.0;
        Assert.Equal(half, film.Load(Math.PI / 2.0), 12);
        Assert.Equal(0.0, film.AxisDepth(Math.PI / 2.0), 12);
    }

    [Fact]
    public void Every_clean_line_floats_and_a_thick_wire_does_not()
    {
        foreach (LineMaterial m in Enum.GetValues<LineMaterial>())
        {
            LineSpec line = LineSizing.Resolve(m, 0.6e-3, null, null, SurfaceFilm.Dry).Spec;
            var film = new SurfaceFilmForce(Water, line.DiameterM, LineMaterials.Of(m).ContactAngleRad.Value);
            Assert.True(film.Floats(line.LinearDensityKgM * Physics.GravityMS2));
        }

        Assert.False(new SurfaceFilmForce(Water, 2e-3, Rad(90)).Floats(7850 * Physics.GravityMS2 * Math.PI * 1e-6));
    }

    [Fact]
    public void Bad_arguments_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new ThinLineFilm(Water, 0.0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SurfaceFilmForce(Water, 0.0, 1.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SurfaceFilmForce(Water, 1e-3, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SurfaceFilmForce(Water, 1e-3, 1.5).Load(4.0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SurfaceFilmForce(Water, 1e-3, 1.5).Floats(double.NaN));
    }
}
