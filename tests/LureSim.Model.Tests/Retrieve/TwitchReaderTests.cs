using LureSim.Model.Retrieve;

namespace LureSim.Model.Tests.Retrieve;

/// <summary>Made-up channels cut into twitches.</summary>
public sealed class TwitchReaderTests
{
    private const double Step = 0.005, Period = 0.5;

    [Fact]
    public void One_record_per_complete_twitch()
    {
        IReadOnlyList<TwitchRecord> twitches = TwitchReader.Read(Series(2.2, _ => 0.0), Period);
        Assert.Equal([0.0, 0.5, 1.0, 1.5], twitches.Select(t => t.StartS));

        // Not even its last moment may be missing: the state at 2.0 s closes the fourth twitch.
        Assert.Equal(3, TwitchReader.Read(Series(2.0 - Step, _ => 0.0), Period).Count);
        Assert.Equal(4, TwitchReader.Read(Series(2.0, _ => 0.0), Period).Count);
        Assert.Empty(TwitchReader.Read(Series(0.4, _ => 0.0), Period));
    }

    [Theory]
    [InlineData(1.0 / 3.0)]
    [InlineData(0.7)]
    [InlineData(1.0 / 2.3)]
    public void Periods_that_are_no_multiple_of_the_output_step(double period)
    {
        IReadOnlyList<TwitchRecord> twitches = TwitchReader.Read(Series(10.0, t => 30.0 * Math.Sin(2.0 * Math.PI * t / period)), period);
        Assert.Equal((int)Math.Floor((10.0 / period) + 1e-9), twitches.Count);

        // A sine of one twitch swings by twice its amplitude; samples miss its top by 30 (1 - cos(pi Step/period)) deg at most.
        Assert.All(twitches, t => Assert.Equal(60.0, Degrees(t.SwingRad), 60.0 * (1.0 - Math.Cos(Math.PI * Step / period)) + 1e-9));
    }

    [Fact]
    public void End_heading_is_the_one_just_before_the_next_pull()
    {
        // Off the line by 10 deg per second: the last sample before 0.5 s is at 0.495 s.
        IReadOnlyList<TwitchRecord> twitches = TwitchReader.Read(Series(1.0, t => 10.0 * t), Period);
        Assert.Equal(4.95, Degrees(twitches[0].EndHeadingRad), 1e-9);
        Assert.Equal(9.95, Degrees(twitches[1].EndHeadingRad), 1e-9);
    }

    [Fact]
    public void Impulse_adds_up_the_means_of_the_output_steps()
    {
        IReadOnlyList<TwitchRecord> twitches = TwitchReader.Read(Series(1.0, _ => 0.0, tension: t => t > 0.5 + 1e-9 ? 3.0 : 1.0), Period);
        Assert.Equal(0.5, twitches[0].ImpulseNs, 1e-9);
        Assert.Equal(1.5, twitches[1].ImpulseNs, 1e-9);
    }

    [Fact]
    public void Advance_is_toward_the_rod_and_sideways_to_the_left()
    {
        IReadOnlyList<TwitchRecord> twitches = TwitchReader.Read(Series(1.0, _ => 0.0, x: t => 15.0 - (0.4 * t), y: t => 0.1 * t), Period);
        Assert.All(twitches, t => Assert.Equal(0.2, t.AdvanceM, 1e-9));
        Assert.All(twitches, t => Assert.Equal(0.05, t.SidewaysM, 1e-9));
    }

    // Sines of 1 Hz over a twitch of half a second: the arc from crest to trough shows, though ends may lie level.
    [Fact]
    public void Width_is_peak_to_peak_within_the_twitch()
    {
        IReadOnlyList<TwitchRecord> twitches = TwitchReader.Read(
            Series(1.0, _ => 0.0, y: t => 0.03 * Math.Sin(2.0 * Math.PI * t), nose: t => 0.08 * Math.Cos(2.0 * Math.PI * t)), Period);
        Assert.All(twitches, t => Assert.Equal(0.03, t.WidthM, 1e-9));
        Assert.All(twitches, t => Assert.Equal(0.0, t.SidewaysM, 1e-9));
        Assert.All(twitches, t => Assert.Equal(0.16, t.NoseWidthM, 1e-9));
    }

    // A whole turn in 1 s: the heading off the line jumps from 180 to -180 deg once, the heading itself goes on.
    [Fact]
    public void A_turn_past_the_back_is_counted_once()
    {
        IReadOnlyList<TwitchRecord> twitches = TwitchReader.Read(Series(1.0, t => 360.0 * t + 0.1), Period);
        Assert.Equal(1, twitches.Sum(t => t.BackCrossings));
        Assert.All(twitches, t => Assert.Equal(360.0 * (Period - Step), Degrees(t.SwingRad), 1e-6));
    }

    // A slack line may lie anywhere: only where it pulls does it count, at 0.3 s with 2 mm and not at 0.2 s with 1 mm.
    [Fact]
    public void The_line_is_near_a_hook_only_where_it_is_taut()
    {
        static double Near(double t) => Math.Abs(t - 0.2) < 1e-9 ? 0.001 : Math.Abs(t - 0.3) < 1e-9 ? 0.002 : 0.05;
        IReadOnlyList<TwitchRecord> twitches = TwitchReader.Read(Series(1.0, _ => 0.0, tension: t => t > 0.25 ? 1.0 : 0.0, clearance: Near), Period);
        Assert.Equal(0.002, twitches[0].HookClearanceM);
        Assert.Equal(double.PositiveInfinity, TwitchReader.Read(Series(1.0, _ => 0.0, clearance: Near), Period)[0].HookClearanceM);
    }

    // Over the line and back again is no turn past the back.
    [Fact]
    public void Swinging_through_the_line_is_no_turn()
    {
        IReadOnlyList<TwitchRecord> twitches = TwitchReader.Read(Series(1.0, t => 100.0 * Math.Cos(4.0 * Math.PI * t)), Period);
        Assert.Equal(0, twitches.Sum(t => t.BackCrossings));
    }

    private static Series Series(
        double end, Func<double, double> headingDeg, Func<double, double>? tension = null, Func<double, double>? x = null, Func<double, double>? y = null,
        Func<double, double>? nose = null, Func<double, double>? clearance = null)
    {
        double[] time = [.. Enumerable.Range(0, (int)Math.Round(end / Step) + 1).Select(i => i * Step)];
        Channel Of(string name, Func<double, double> value) => new(name, "", "", [.. time.Select(value)]);
        return new(
        [
            Of("time_s", t => t),
            Of("heading_deg", headingDeg),
            Of("heading_off_line_deg", t => Math.IEEERemainder(headingDeg(t), 360.0)),
            Of("nose_tension_N", tension ?? (_ => 0.0)),
            Of("lure_x_m", x ?? (_ => 15.0)),
            Of("lure_y_m", y ?? (_ => 0.0)),
            Of("nose_y_m", nose ?? (_ => 0.0)),
            Of("hook_clearance_m", clearance ?? (_ => 0.1)),
        ]);
    }

    private static double Degrees(double radians) => radians * 180.0 / Math.PI;
}
