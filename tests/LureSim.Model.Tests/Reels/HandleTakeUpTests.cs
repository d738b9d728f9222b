using LureSim.Model.Hands;
using LureSim.Model.Reels;
using LureSim.Model.Retrieve;

namespace LureSim.Model.Tests.Reels;

/// <summary>The reel's handle against the formulas of its own comment.</summary>
public sealed class HandleTakeUpTests
{
    private const double Stroke = 0.2, Cadence = 2.0, Wanted = 0.14, Dt = 1e-3;

    // Half the stroke per twitch: 0.5 x 0.2 m x 2 /s.
    [Fact]
    public void Gathering_starts_at_half_the_stroke_per_twitch() =>
        Assert.Equal(0.2, Gather(Wanted).Speed(0.0, Dt, Wanted), 1e-12);

    // A slack that stays 0.1 m above the wanted one: V = V_i + 0.6 e with V_i growing at 0.3 e.
    [Theory]
    [InlineData(0.1)]
    [InlineData(-0.1)]
    public void Gathering_answers_a_steady_error_by_its_size_and_by_its_sum(double error)
    {
        HandleTakeUp reel = Gather(Wanted + error);
        double speed = 0.0;
        for (int n = 0; n < 1000; n++)
        {
            speed = reel.Speed(n * Dt, Dt, Wanted + error);
        }

        Assert.Equal(0.2 + (0.6 * error) + (0.3 * error * 1.0), speed, 1e-12);
    }

    // A slack that jumps from the wanted one is followed with a time constant of 0.6 s: after it e = 0.1 (1 - 1/e) = 0.06321, and the sum
    // holds 0.3 x 0.1 x 0.6/e = 6.622e-3 m/s. Steps of 1 ms are Euler's: 1e-4 of it.
    [Fact]
    public void Gathering_follows_a_jump_of_the_slack_in_six_tenths_of_a_second()
    {
        HandleTakeUp reel = Gather(Wanted);
        double speed = 0.0;
        for (int n = 0; n < 600; n++)
        {
            speed = reel.Speed(n * Dt, Dt, Wanted + 0.1);
        }

        Assert.Equal(0.2 + (0.6 * 0.0632121) + 6.6218e-3, speed, 5e-5);
    }

    [Fact]
    public void Gathering_never_winds_faster_than_two_metres_a_second_nor_gives_line_back()
    {
        Assert.Equal(2.0, Gather(9.0).Speed(0.0, Dt, 9.0));
        Assert.Equal(0.0, Gather(Wanted - 5.0).Speed(0.0, Dt, Wanted - 5.0));

        // Its sum is held too: after minutes of far too much slack, the wanted one still means no more than 2 m/s.
        HandleTakeUp reel = Gather(Wanted + 1.0);
        for (int n = 0; n < 60; n++)
        {
            reel.Speed(n, 1.0, Wanted + 1.0);
        }

        Assert.InRange(reel.Speed(60.0, 1e-9, Wanted + 1.0), 2.0, 2.0);
        for (int n = 0; n < 20; n++)
        {
            reel.Speed(n, 0.6, Wanted);
        }

        Assert.Equal(2.0, reel.Speed(0.0, 1e-9, Wanted), 1e-6);
    }

    // Pull 0.1 s, return 0.15 s of each half second; 0.3 m a twitch is 2 m/s over the return.
    [Fact]
    public void Per_twitch_the_line_comes_in_during_the_return_and_at_no_other_time()
    {
        var reel = Reel(TakeUpMode.PerTwitch, 0.0);
        foreach ((double time, double speed) in new[] { (0.0, 0.0), (0.0999, 0.0), (0.1001, 2.0), (0.2499, 2.0), (0.2501, 0.0), (0.4999, 0.0), (7.15, 2.0) })
        {
            Assert.Equal(speed, reel.Speed(time, Dt, 0.0), 1e-12);
        }

        double sum = Enumerable.Range(0, 5000).Sum(i => 1e-4 * reel.Speed((i + 0.5) * 1e-4, 1e-4, 0.0));
        Assert.Equal(0.3, sum, 1e-9);
    }

    [Fact]
    public void Steady_and_towed_lines_come_in_at_the_speed_asked_for()
    {
        Assert.Equal(0.35, Reel(TakeUpMode.Steady, 0.0).Speed(0.0, Dt, 5.0));
        Assert.Equal(0.35, Task(TakeUpMode.Gather, 0.0).NewTakeUp(Twitch(), 0.0).Speed(0.0, Dt, 5.0));
    }

    // pi D ratio.
    [Fact]
    public void A_turn_of_the_handle_wins_the_spools_girth_times_its_ratio() =>
        Assert.Equal(Math.PI * 0.034 * 7.1, new ReelSpec(ReelKind.Revolving, 7.1, 0.034, 30.0).TakeUpPerTurnM, 1e-15);

    private static HandleTakeUp Gather(double slack) => Reel(TakeUpMode.Gather, slack);

    private static HandleTakeUp Reel(TakeUpMode mode, double slack) => Task(mode, Stroke).NewTakeUp(Twitch(), slack);

    private static RetrieveTask Task(TakeUpMode mode, double stroke) =>
        new(CadencePerS: Cadence, StrokeM: stroke) { TakeUp = new(mode, SlackM: Wanted, SpeedMS: 0.35, PerTwitchM: 0.3) };

    private static Twitch Twitch() => new(Cadence, 0.1, 0.15, 1.0);
}
