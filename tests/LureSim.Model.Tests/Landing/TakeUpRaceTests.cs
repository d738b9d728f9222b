using LureSim.Model.Landing;
using LureSim.Model.Reels;
using static LureSim.Model.Tests.Landing.LandingCases;

namespace LureSim.Model.Tests.Landing;

/// <summary>A reel against a fish that comes.</summary>
public sealed class TakeUpRaceTests
{
    [Fact]
    public void It_is_what_a_handle_turn_wins_times_the_turns()
    {
        TakeUpRace race = TakeUpRace.Of(Usual, new LandingTask(DistanceM: 15.0), 7.0);
        double turn = HandleTurn.TakeUpM(Usual.Reel with { Ratio = 7.0 }, Usual.Line, 15.0);
        Assert.Equal(turn, race.PerTurnM);
        Assert.Equal(2.0 * turn, race.SteadyMS);
        Assert.Equal(3.0 * turn, race.BurstMS);
        Assert.True(turn < 7.0 * Math.PI * 0.034);
    }

    [Fact]
    public void Won_line_goes_with_the_ratio_and_slack_is_what_is_missing()
    {
        ValueList<TakeUpRace> races = Run().ReelByRatio;
        Assert.Equal([6.3, 7.0, 8.0], races.Select(r => r.Ratio));
        Assert.Equal(races[0].PerTurnM * 8.0 / 6.3, races[2].PerTurnM, 1e-12);
        Assert.Equal(0.0, races[2].SlackMS(races[2].BurstMS));
        Assert.Equal(0.5, races[2].SlackMS(races[2].BurstMS + 0.5), 1e-12);
    }

    [Fact]
    public void A_sweep_from_pointing_to_pointing_back_wins_twice_the_rod_and_the_hands_way()
    {
        var task = new LandingTask(StartRad: -0.5 * Math.PI, StopRad: 0.5 * Math.PI, TravelM: 0.3);
        Assert.Equal((2.0 * SevenFoot.FreeLengthM) + 0.3, TakeUpRace.SweepM(Usual, task), 1e-12);
    }
}
