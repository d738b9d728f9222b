using LureSim.Model.Cover;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Media;
using LureSim.Model.Tests.Cast;

namespace LureSim.Model.Tests.Lines.Chain;

/// <summary>Where plants hold a line, and how much of it.</summary>
public sealed class PlantFrictionTests
{
    private const double Creep = 0.02;

    // What holds a line at rest that lies level, per creep: the whole of f times the length on plants.
    private static double HeldN(CoverSpec cover, double holeFromM = 0.0, double? overM = null, double heightM = 0.0)
    {
        var mesh = new LineMesh(CastCases.Braid, null, 10.0, 40);
        var pass = new LinePass(mesh, new LineMedium(WaterModel.Evaluate(new WaterSpec()), AirModel.Evaluate(new AirSpec()), DragCurve.FromLaw(_ => 1.0)));
        var state = new LineState(40);
        for (int i = 0; i <= 40; i++)
        {
            (state.X[i], state.Z[i]) = (0.25 * i, heightM);
        }

        var plants = new PlantFriction(cover, mesh, pass) { HoleFromM = holeFromM };
        plants.OverM = overM ?? plants.OverM;
        plants.Update(state);
        return Creep * pass.AlongFriction.Sum();
    }

    private static CoverSpec Cover(double over, double opening) => new(over, 0.5, OpeningM: opening, HeightM: 0.1);

    [Theory]
    [InlineData(6.0, 0.0, 0.0, 6.0)]
    [InlineData(6.0, 2.0, 0.0, 4.0)]
    [InlineData(6.0, 2.0, 1.0, 4.0)]
    [InlineData(6.0, 2.0, 5.0, 5.0)]
    [InlineData(6.0, 2.0, 7.0, 6.0)]
    [InlineData(6.0, 9.0, 0.0, 0.0)]
    [InlineData(0.0, 0.0, 0.0, 0.0)]
    public void Line_over_plants_and_not_over_the_opening_is_held(double over, double opening, double holeFrom, double held)
    {
        // The half segment at the tie belongs to the lure.
        double atTie = holeFrom == 0.0 && opening > 0.0 ? 0.0 : Math.Min(over, 0.125);
        Assert.Equal(0.5 * (held - atTie), HeldN(Cover(over, opening), holeFrom), 1e-12);
    }

    [Fact]
    public void A_mat_whose_edge_comes_nearer_holds_less() => Assert.Equal(0.5 * (2.0 - 0.125), HeldN(Cover(6.0, 0.0), overM: 2.0), 1e-12);

    [Theory]
    [InlineData(0.1, 1.0)]
    [InlineData(0.15, 0.5)]
    [InlineData(0.2, 0.0)]
    public void Line_higher_than_the_plants_is_free(double heightM, double share) => Assert.Equal(share * 0.5 * (6.0 - 0.125), HeldN(Cover(6.0, 0.0), heightM: heightM), 1e-9);
}
