using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Studies.Cast;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Cast;

public sealed class CastStudyTests
{
    private static readonly CastTask Task = new();

    [Fact]
    public void A_fixed_spool_is_cast_once_and_has_no_brake()
    {
        int casts = 0;
        CastReport report = CastStudy.Run(MadeUp.Caster(), Task, run: (s, t) =>
        {
            casts++;
            return new(MadeUpCast.Result(s, t, 30.0, 28.0));
        }).Demand();
        Assert.Equal((1, 30.0), (casts, report.Cast.DistanceM));
        Assert.Empty(report.Brakes);
        Assert.Null(report.LeastBrake);
    }

    // A metre and a loop are lost with every strength; one in twenty tangles with one loop (the made-up cast), so the least brake is 3 of 4 loops.
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void A_revolving_spool_gets_a_curve_of_brakes(int threads)
    {
        CastReport report = CastStudy.Run(MadeUp.Setup(), Task, threads, run: Braked(4.0)).Demand();
        Assert.Equal(CastBrakes.Strengths, report.Brakes.Select(b => b.Strength));
        Assert.All(report.Brakes, b => Assert.Equal((40.0 - b.Strength, Math.Max(0.0, 4.0 - b.Strength)), (b.DistanceMeanM, b.LoopsMean)));
        Assert.Equal(3.0, report.LeastBrake!.Value, 1e-12);
    }

    [Fact]
    public void Few_loops_need_no_brake_and_very_many_none_helps()
    {
        Assert.Equal(0.0, CastStudy.Run(MadeUp.Setup(), Task, run: Braked(0.5)).Demand().LeastBrake);
        Assert.Null(CastStudy.Run(MadeUp.Setup(), Task, run: Braked(26.0)).Demand().LeastBrake);
    }

    // The scenario's own brake is cast as it is; the curve takes brakes given in numbers off.
    [Fact]
    public void The_curve_is_that_of_the_law_alone()
    {
        Setup setup = MadeUp.Setup();
        setup = setup with { Reel = setup.Reel with { Spool = setup.Reel.Spool with { MagneticNms = 1e-6, CentrifugalNms2 = 1e-9 } } };
        Setup braked = CastBrakes.With(setup, 1.5);
        Assert.Equal((1.5, 0.0, 0.0), (braked.Reel.Spool.BrakeStrength, braked.Reel.Spool.MagneticNms, braked.Reel.Spool.CentrifugalNms2));
    }

    [Fact]
    public void A_cast_that_fails_keeps_its_reason()
    {
        Outcome<CastReport> outcome = CastStudy.Run(MadeUp.Setup(), Task, run: (_, _) => new(null, new("the rod broke", 0.1)));
        Assert.Equal((null, "the rod broke"), (outcome.Result, outcome.Failure?.Reason));
    }

    [Fact]
    public void Without_another_cast_the_model_is_run()
    {
        Setup spec = MadeUp.Caster();
        Assert.Equal(CastRunner.Run(spec, Task).Demand().DistanceM, CastStudy.Run(spec, Task).Demand().Cast.DistanceM);
    }

    private static Func<Setup, CastTask, Outcome<CastResult>> Braked(double loops) => (s, t) =>
    {
        double brake = s.Reel.Spool.BrakeStrength;
        return new(MadeUpCast.Result(s, t, 41.0 - brake, 40.0 - brake, loops: Math.Max(0.0, loops - brake)));
    };
}
