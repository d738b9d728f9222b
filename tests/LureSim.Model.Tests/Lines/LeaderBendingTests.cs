using LureSim.Model.Lines;
using LureSim.References.Lines;

namespace LureSim.Model.Tests.Lines;

public sealed class LeaderBendingTests
{
    [Fact]
    public void Small_droop_is_that_of_a_beam()
    {
        // q = w L^3/EI = 1e-3: drop w L^4/(8 EI), tip angle w L^3/(6 EI); the next term is of order q^2.
        Droop droop = LeaderBending.OwnWeight(1.0, 1e-3, 1.0);
        Assert.Equal(1e-3 / 8.0, droop.DropM, 1e-9);
        Assert.Equal(1e-3 / 6.0, droop.TipAngleRad, 1e-9);
    }

    [Fact]
    public void Shooting_has_the_order_of_its_integrator()
    {
        double exact = LeaderBending.OwnWeight(1.0, 10.0, 1.0, 5000).TipAngleRad;
        double Error(int n) => Math.Abs(LeaderBending.OwnWeight(1.0, 10.0, 1.0, n).TipAngleRad - exact);
        Assert.Equal(4.0, Math.Log2(Error(40) / Error(80)), 0.1);
        Assert.Equal(4.0, Math.Log2(Error(80) / Error(160)), 0.1);
    }

    [Fact]
    public void A_nylon_leader_holds_itself_out_and_braid_does_not()
    {
        LineSpec nylon = LineSizing.Resolve(LineMaterial.Nylon, 0.45e-3, null, null, SurfaceFilm.Dry, new(ModulusPa: 2.5e9)).Spec;
        LineSpec braid = LineSizing.Resolve(LineMaterial.Braid, null, 3, null, SurfaceFilm.Dry).Spec;
        double Length(LineSpec l) => LeaderBending.SelfSupportLength(l.BendingStiffnessNm2, l.LinearDensityKgM * Physics.GravityMS2);
        Assert.Equal(0.1415, Length(nylon), 5e-5);
        Assert.Equal(0.0, Length(braid));
    }

    [Fact]
    public void Bad_arguments_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => LeaderBending.OwnWeight(0.0, 1.0, 1.0));
        Assert.Throws<ArgumentOutOfRangeException>(() => LeaderBending.OwnWeight(1.0, 1.0, 10.0));
        Assert.Throws<ArgumentOutOfRangeException>(() => LeaderBending.OwnWeight(1.0, 1.0, double.NaN));
    }
}
