using System.Text.Json;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Strike;

/// <summary>The command <c>strike</c> as a person types it.</summary>
public sealed class StrikeCommandTests : IDisposable
{
    private static readonly string Edge = Session.Scenario("treble-edge");
    private readonly string _folder = Directory.CreateTempSubdirectory("strike").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("treble-edge", "Recommended:")]
    [InlineData("hollow-mat", "deeper into the plants")]
    [InlineData("small-walker-nylon", "No drag sets both points")]
    public void A_hook_is_set_with_files_and_words(string name, string said)
    {
        Session session = Session.Run("strike", Session.Scenario(name), "--out", _folder, "--plots", "svg");
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains(said, session.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.All(session.Out.Split('\n'), line => Assert.True(line.Length <= 100 || line.StartsWith("Files:", StringComparison.Ordinal), line));
        Assert.All((string[])["summary.json", "series.csv", "strike_drag.csv", "strike_distance.csv", "effective.toml"], f => Assert.True(File.Exists(Path.Combine(_folder, f)), f));
        Assert.NotEmpty(Directory.GetFiles(_folder, "*.svg"));
        Assert.StartsWith("time_s,hook_force_N,", File.ReadLines(Path.Combine(_folder, "series.csv")).First(), StringComparison.Ordinal);
        Assert.Equal(1 + (7 * 10), File.ReadLines(Path.Combine(_folder, "strike_distance.csv")).Count());
    }

    [Fact]
    public void Json_holds_what_scripts_ask_for()
    {
        JsonElement json = JsonDocument.Parse(Session.Run("strike", Edge, "--json").Out).RootElement;
        string[] keys =
        [
            "hook_force_peak_N", "force_per_point_N", "time_to_force_s", "line_stretch_m", "drag_slip_m", "drag_window_low_N", "drag_window_high_N", "lift_limit_kg", "hook_force_static_N", "impulse_Ns",
        ];
        Assert.All(keys, key => Assert.True(json.GetProperty(key).GetDouble() >= 0.0, key));
        Assert.Contains(json.GetProperty("first_to_give").GetString(), (string[])["knot", "line", "leader", "hook-wire", "hook-hold", "rod"]);
        Assert.Equal("sweep", json.GetProperty("style").GetString());
        Assert.True(json.GetProperty("drag_window_low_N").GetDouble() < json.GetProperty("drag_window_high_N").GetDouble());
        Assert.NotEqual(0, json.GetProperty("guesses").GetArrayLength());
    }

    [Theory]
    [InlineData("fish.mass=90 kg", "allowed: 0.05 to 40 kg")]
    [InlineData("strike.points=3", "")]
    [InlineData("strike.points=4", "allowed: 1 to 3")]
    [InlineData("strike.distance=1 m", "allowed: 3 to 60 m")]
    [InlineData("strike.style=yank", "snap")]
    [InlineData("strike.stop_angle=-80 deg", "strike.start_angle")]
    [InlineData("angler.hand_height=3.9 m", "farther out or hold the rod lower", "strike.distance=3 m")]
    public void What_cannot_be_done_is_refused_in_a_line(string set, string said, string beside = "seed=1")
    {
        Session session = Session.Run("strike", Edge, "--set", set, "--set", beside, "--out", _folder, "--plots", "none");
        Assert.Equal(said.Length == 0 ? ExitCode.Done : ExitCode.BadInput, session.Exit);
        Assert.Contains(said, session.Error, StringComparison.Ordinal);
        Assert.Equal(said.Length == 0 ? 0 : 1, session.Error.Split('\n').Count(l => l.Length > 0 && !l.StartsWith("strike:", StringComparison.Ordinal)));
    }

    [Fact]
    public void It_minds_no_fault_of_a_cast_and_says_which_keys_do_not_enter()
    {
        Session session = Session.Run("strike", Edge, "--set", "cast.overhang=9 m", "--set", "reel.ratio=8", "--out", _folder, "--plots", "none");
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains("reel.ratio does not enter strike", session.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Its_guesses_have_bands_whatever_the_threads()
    {
        string one = Doubt("1");
        Assert.Equal(one, Doubt("3"));
        JsonElement bands = JsonDocument.Parse(one).RootElement.GetProperty("doubt").GetProperty("bands");
        Assert.True(bands.GetProperty("hook_force_peak_N").GetProperty("p10").GetDouble() < bands.GetProperty("hook_force_peak_N").GetProperty("p90").GetDouble());

        static string Doubt(string threads) => Session.Run(
            "strike", Edge, "--json", "--quiet", "--doubt", "10", "--threads", threads, "--set", "strike.nodes=6", "--set", "strike.step=2 ms", "--set", "strike.duration=1.1 s").Out;
    }

    [Fact]
    public void It_can_be_swept_with_both_of_its_words()
    {
        Session session = Session.Run("sweep", Edge, "--command", "strike", "--vary", "strike.distance=10 m,30 m", "--vary", "fish.way=stays,fast", "--out", _folder, "--plots", "none");
        Assert.Equal(ExitCode.Done, session.Exit);
        string[] rows = File.ReadAllLines(Path.Combine(_folder, "sweep.csv"));
        Assert.Equal(5, rows.Length);
        Assert.All((string[])["limit", "first_to_give", "hook_force_peak_N"], c => Assert.Contains(c, rows[0].Split(',')));
    }
}
