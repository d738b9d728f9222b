using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Lures;
using LureSim.Studies.Cast;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Cast;

public sealed class PowerTableTests
{
    // Made-up casts: distance is best at a load of 3 N whatever the lure; rods of less than 2 N bend too far.
    [Fact]
    public void The_best_power_bends_no_farther_than_it_is_made_for()
    {
        PowerTable table = PowerTableStudy.Run(MadeUp.Caster(), new CastTask(), 2, null, default, Made(2.0));
        Assert.Equal(PowerTableStudy.MassesKg.Count, table.Cells.Count);
        int best = table.Best(0)!.Value;
        Assert.Equal("medium", RodClass.All[best].Name);
        Assert.Contains(best, table.Good(0));
        Assert.All(table.Good(0), i => Assert.True(table.Cells[0][i].DistanceMeanM >= 0.98 * table.Cells[0][best].DistanceMeanM));

        // Where all that cast far bend too far, the farthest of the sound ones is best, however much less it is.
        PowerTable strict = PowerTableStudy.Run(MadeUp.Caster(), new CastTask(), 1, null, default, Made(8.0));
        Assert.Equal("extra-heavy", RodClass.All[strict.Best(0)!.Value].Name);
        Assert.Null(PowerTableStudy.Run(MadeUp.Caster(), new CastTask(), 1, null, default, Made(99.0)).Best(0));
    }

    [Fact]
    public void A_cast_that_fails_is_a_cell_without_one()
    {
        PowerTable table = PowerTableStudy.Run(MadeUp.Caster(), new CastTask(), 1, null, default, (_, _) => new(null, new("the rod broke", 0.1)));
        Assert.All(table.Cells, row => Assert.All(row, c => Assert.Equal("the rod broke", c.Failure)));
        Assert.Null(table.Best(0));
        Assert.Empty(table.Good(0));
    }

    // The same shape and make: eight times the mass is twice the size and four times the drag area.
    [Fact]
    public void A_heavier_lure_of_the_same_make_has_the_area_of_its_size()
    {
        Setup setup = MadeUp.Caster();
        Setup large = PowerTableStudy.With(setup, 8.0 * FlyingLure.MassKg(setup.Lure), 3.0);
        Assert.Equal(8.0 * FlyingLure.MassKg(setup.Lure), FlyingLure.MassKg(large.Lure), 1e-12);
        Assert.Equal(2.0 * setup.Lure.LengthM, large.Lure.LengthM, 1e-12);
        Assert.Equal(1.0, FlyingLure.AreaM2(large.Lure) / (4.0 * FlyingLure.AreaM2(setup.Lure)), 1e-9);
        Assert.Equal(3.0, large.Rod.ThirdLoadN);
    }

    private static Func<Setup, CastTask, Outcome<CastResult>> Made(double soft) => (s, t) =>
    {
        double power = s.Rod.ThirdLoadN, far = 30.0 - (2.0 * Math.Pow(Math.Log(power / 3.0), 2));
        return new(MadeUpCast.Result(s, t, far, far) with { Remarks = power < soft ? CastRemarks.BendBeyondRod : CastRemarks.None });
    };
}
