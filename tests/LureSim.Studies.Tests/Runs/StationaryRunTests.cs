using LureSim.Model.Retrieve;
using LureSim.Studies.Runs;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Runs;

public sealed class StationaryRunTests
{
    // 18 s at 2 /s are 36 twitches of warm-up; with 24 counted and half a one to spare, 60.5/2 s. At 4 /s that is less than one and a half warm-ups.
    [Theory]
    [InlineData(2.0, 30.25)]
    [InlineData(0.7, 53.571428571428571)]
    [InlineData(4.0, 27.0)]
    public void A_run_lasts_for_its_warm_up_and_its_twitches(double cadence, double duration)
    {
        RetrieveTask r = StationaryRun.Make(new RetrieveTask(), cadence, new(0.4, -0.1), new StationaryPlan());
        Assert.Equal(duration, r.DurationS, 1e-12);
        Assert.Equal((cadence, 18.0, true, 0.4, -0.1), (r.CadencePerS, r.WarmUpS, r.HoldDistance, r.StartHeadingRad, r.StartSidewaysM));
    }
}
