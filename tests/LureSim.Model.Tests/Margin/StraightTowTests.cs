using LureSim.Model.Lures;
using LureSim.Model.Lures.Free;
using LureSim.Model.Margin;
using LureSim.Model.Tests.Lures;
using LureSim.Numerics;

namespace LureSim.Model.Tests.Margin;

/// <summary>The roots of a straight tow against whole runs of the same hull, and the balance that they stand on.</summary>
public sealed class StraightTowTests
{
    private static readonly MarginTask Task = new();

    // A line so stiff that its stretch does not swing: the analysis holds the pull as it is.
    private static readonly ElasticLine Line = new(Task.LineM, 150.0, 5.0);

    [Theory]
    [InlineData(0.0, 20.0, 23.0)]
    [InlineData(0.1, 16.0, 20.0)]
    [InlineData(0.6, 12.0, 16.0)]
    public void A_small_error_grows_at_the_rate_of_the_leading_root(double chi, double early, double late)
    {
        FreeHull hull = Hull(TestLures.Pencil() with { SternShedding = chi });
        var tow = new StraightTow(hull, Task);
        Assert.True(tow.IsFound);
        TowMode lead = tow.Modes()[0];
        Assert.Equal(0.0, lead.SwingRadS);

        // Late enough for the other roots to have died, early enough to be small.
        double rate = Math.Log(BesideAfter(hull, tow, late) / BesideAfter(hull, tow, early)) / (late - early);
        Assert.Equal(lead.GrowthPerS, rate, 0.01 * Math.Max(0.1, Math.Abs(lead.GrowthPerS)));
    }

    [Fact]
    public void The_steady_tow_stays_where_it_is()
    {
        FreeHull hull = Hull(TestLures.Pencil());
        var tow = new StraightTow(hull, Task);
        HullPose end = Run(hull, tow, 0.0, 2.0).Pose;
        Assert.Equal(tow.TrimRad, end.PitchRad, 1e-4);
        Assert.Equal(tow.NoseHeightM, end.Nose.Z, 1e-5);
    }

    [Fact]
    public void Pulled_too_fast_by_a_tie_on_its_axis_it_digs_in_and_there_is_no_tow()
    {
        MarginTask fast = Task with { SpeedMS = 2.0, HandHeightM = 0.0 };
        Assert.False(new StraightTow(Hull(TestLures.Pencil() with { TieZM = 0.0 }), fast).IsFound);
        Assert.True(new StraightTow(Hull(TestLures.Pencil() with { TieZM = -0.010 }), fast).IsFound);
    }

    private static FreeHull Hull(LureSpec lure) => new(FloatingLure.Float(lure, TestLures.Water));

    private static double BesideAfter(FreeHull hull, StraightTow tow, double seconds) => Run(hull, tow, 1e-6, seconds).Pose.Tie.Y;

    private static FreeSwim Run(FreeHull hull, StraightTow tow, double besideM, double seconds)
    {
        const double dt = 1e-3;
        FreeMotionState start = tow.Steady with { Origin = tow.Steady.Origin + new Vec3(0.0, besideM, 0.0) };
        var swim = new FreeSwim(hull, start, 0.0, dt, CancellationToken.None);
        double stretch = tow.PullN / Line.StiffnessNM;
        Vec3 hand = tow.Hand + (stretch * (tow.Hand - tow.Steady.Place(hull.Tie)).Unit());
        for (int i = 1; i <= seconds / dt; i++)
        {
            swim.Step(Line, hand + new Vec3(Task.SpeedMS * i * dt, 0.0, 0.0), new Vec3(Task.SpeedMS, 0.0, 0.0));
        }

        return swim;
    }
}
