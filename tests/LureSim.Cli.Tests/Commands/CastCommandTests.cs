using System.Text.Json;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Commands;

public sealed class CastCommandTests
{
    private static readonly string Small = Session.Scenario("small-walker");

    [Fact]
    public void Json_has_the_keys_that_scripts_rely_on()
    {
        Session session = Session.Run("cast", Small, "--json");
        Assert.Equal(ExitCode.Done, session.Exit);
        JsonElement json = JsonDocument.Parse(session.Out).RootElement;
        string[] keys =
        [
            "distance_m", "distance_p10_m", "distance_p90_m", "line_out_m", "launch_speed_m_s", "launch_angle_deg", "flight_time_s", "loops_thrown",
            "spool_peak_rpm",
        ];
        Assert.All(keys, key => Assert.Equal(JsonValueKind.Number, json.GetProperty(key).ValueKind));
        double low = json.GetProperty("distance_p10_m").GetDouble(), high = json.GetProperty("distance_p90_m").GetDouble();
        Assert.InRange(json.GetProperty("distance_m").GetDouble(), low, high);
    }

    [Fact]
    public void Text_and_files_are_written()
    {
        string folder = Path.Combine(Path.GetTempPath(), "luresim-" + Path.GetRandomFileName());
        try
        {
            Session session = Session.Run("cast", Small, "--out", folder, "--plots", "png");
            Assert.Equal(ExitCode.Done, session.Exit);
            Assert.Contains("8 of 10 casts", session.Out, StringComparison.Ordinal);
            Assert.Contains("power lines", session.Out, StringComparison.Ordinal);
            Assert.All(
                ["cast.csv", "cast.json", "cast_path.png", "cast_release.png", "cast_speeds.png", "cast_swing.png", "effective.toml"],
                name => Assert.True(File.Exists(Path.Combine(folder, name)), name));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Theory]
    [InlineData("cast.overhang=9 m")]
    [InlineData("cast.overhang=0.5")]
    [InlineData("cast.overhng=0.5 m")]
    public void Bad_input_ends_with_2(string set)
    {
        Session session = Session.Run("cast", Small, "--json", "--set", set);
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.Empty(session.Out);
        Assert.Single(session.Error.TrimEnd().Split('\n'));
    }

    [Theory]
    [InlineData("land behind the angler", "cast.release=0.16 s", "air.wind=25 m/s", "air.wind_from=in face")]
    [InlineData("Let go as asked", "cast.release=0 s")]
    [InlineData("Backlash: more than five loops", "cast.release=0 s", "reel.brake_strength=0", "reel.spool_friction=0 N m", "cast.thumb=0 N")]
    [InlineData("more lure than a rod of its power is made for", "rod.power=light", "lure.mass=30 g", "cast.effort=full")]
    [InlineData("no loops", "reel.kind=fixed")]
    [InlineData("it would break", "line.label=2 lb", "line.material=nylon", "lure.mass=12 g", "cast.effort=3")]
    [InlineData("largest", "rod.mass=21 g", "rod.bend_load=0.6 N", "rod.tip_radius_ratio=0.35")]
    [InlineData(" from the hands it carries", "angler.hand_height=4 m", "air.wind=10 m/s", "air.wind_from=from behind")]
    public void Odd_casts_end_in_a_physical_result_that_is_said(string told, params string[] sets)
    {
        Session session = Session.Run(["cast", Small, "--out", Path.Combine(Path.GetTempPath(), "luresim-odd"), "--plots", "none", .. sets.SelectMany(s => new[] { "--set", s })]);
        Assert.Equal((ExitCode.Done, ""), (session.Exit, session.Error));
        Assert.Contains(told, session.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", session.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lure_that_hangs_in_the_water_is_refused_in_one_line()
    {
        Session session = Session.Run("cast", Small, "--json", "--set", "cast.overhang=3 m", "--set", "angler.hand_height=0.6 m", "--set", "angler.rod_elevation=0 deg");
        Assert.Equal((ExitCode.BadInput, ""), (session.Exit, session.Out));
        Assert.Contains("would hang in the water", Assert.Single(session.Error.TrimEnd().Split('\n')), StringComparison.Ordinal);
    }
}
