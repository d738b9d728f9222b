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
        Assert.Null(report.Brake);
        Assert.Null(report.NoBrake);
    }

    // Loops fall from 20 to 0 with the brake up to 2e-5, so 1.5e-5 leaves the five that are allowed; a metre is lost for every 1e-6.
    [Fact]
    public void A_revolving_spool_gets_the_least_brake_that_keeps_five_loops()
    {
        LeastBrake brake = CastStudy.Run(MadeUp.Setup(), Task, run: Braked(20.0, 1e6)).Demand().Brake!;
        Assert.InRange(brake.MagneticNms, 1.5e-5, 1.5e-5 + (1.8e-5 / 256));
        Assert.Equal(40.0 - (1e6 * brake.MagneticNms), brake.DistanceM, 1e-9);
        Assert.Equal((40.0, 20.0), (brake.UnbrakedDistanceM, brake.UnbrakedLoops));
    }

    [Fact]
    public void Few_loops_need_no_brake()
    {
        LeastBrake brake = CastStudy.Run(MadeUp.Setup(), Task, run: Braked(5.0, 0.0)).Demand().Brake!;
        Assert.Equal((0.0, 40.0), (brake.MagneticNms, brake.DistanceM));
    }

    // 26 loops less 20 leave 6.
    [Fact]
    public void A_brake_too_weak_is_named_and_the_cast_kept()
    {
        CastReport report = CastStudy.Run(MadeUp.Setup(), Task, run: Braked(26.0, 0.0)).Demand();
        Assert.Equal(40.0, report.Cast.DistanceM);
        Assert.Null(report.Brake);
        Assert.Contains("leaves 6.0 loops", report.NoBrake, StringComparison.Ordinal);
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

    private static Func<Setup, CastTask, Outcome<CastResult>> Braked(double loops, double loss) => (s, t) =>
    {
        double brake = s.Reel.Spool.MagneticNms;
        return new(MadeUpCast.Result(s, t, 40.0 - (loss * brake), 38.0, loops: loops - (1e6 * brake)));
    };
}
