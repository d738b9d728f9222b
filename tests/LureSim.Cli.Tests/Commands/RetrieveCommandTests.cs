using System.Text.Json;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Commands;

public sealed class RetrieveCommandTests : IDisposable
{
    private static readonly string Large = Session.Scenario("large-walker");

    private readonly string _folder = Path.Combine(Path.GetTempPath(), "luresim-" + Path.GetRandomFileName());

    public void Dispose()
    {
        if (Directory.Exists(_folder))
        {
            Directory.Delete(_folder, recursive: true);
        }
    }

    [Fact]
    public void Text_and_all_files_are_written()
    {
        Session session = Session.Run("retrieve", Large, "--out", _folder, "--plots", "png", "--set", "retrieve.duration=4 s");
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains("swing side to side", session.Out, StringComparison.Ordinal);
        Assert.Contains("Care: hooks are sharp", session.Out, StringComparison.Ordinal);
        Assert.Empty(session.Error);
        Assert.Equal(
            ["attitude_side.png", "attitude_time.png", "effective.toml", "loads.png", "luresim.sha256", "path_top.png", "pull_slack_turn.png", "series.csv", "side_view.png", "summary.json"],
            Directory.GetFiles(_folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Json_alone_prints_the_summary_and_writes_nothing()
    {
        Session session = Session.Run("retrieve", Large, "--json", "--set", "retrieve.duration=3 s");
        Assert.Equal(ExitCode.Done, session.Exit);
        JsonElement json = JsonDocument.Parse(session.Out).RootElement;
        string[] keys =
        [
            "pattern", "flip_share", "heading_swing_deg", "glide_width_m", "advance_per_twitch_m", "regularity", "slack_share", "pull_reach",
            "pull_impulse_Ns", "line_drag_mean_N", "line_drag_peak_N", "nose_down_load_N", "line_sag_m", "tip_force_peak_N", "water_stir_W",
            "handle_turns_per_s", "wrist_torque_peak_Nm",
        ];
        Assert.All(keys, key => Assert.True(json.TryGetProperty(key, out _), key));
        Assert.False(Directory.Exists(_folder));
    }

    [Fact]
    public void The_effective_scenario_gives_the_same_run()
    {
        string[] small = ["--plots", "none", "--quiet", "--set", "retrieve.duration=3 s"];
        Session.Run(["retrieve", Large, "--out", _folder, .. small]);
        string first = File.ReadAllText(Path.Combine(_folder, "series.csv"));
        string again = Path.Combine(_folder, "again");
        Session session = Session.Run("retrieve", Path.Combine(_folder, "effective.toml"), "--out", again, "--plots", "none", "--quiet");
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Empty(session.Out);
        Assert.Equal(first, File.ReadAllText(Path.Combine(again, "series.csv")));
    }

    [Fact]
    public void A_broken_scenario_is_told_on_stderr_and_leaves_nothing()
    {
        Session session = Session.Run("retrieve", Large, "--out", _folder, "--set", "lure.mass=-1 g", "--set", "rod.length=0,5 m");
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.Empty(session.Out);
        Assert.Equal(2, session.Error.TrimEnd().Split('\n').Length);
        Assert.False(Directory.Exists(_folder));
    }

    [Fact]
    public void A_missing_file_is_one_line()
    {
        Session session = Session.Run("retrieve", "nowhere.toml", "--out", _folder);
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.Equal("nowhere.toml: there is no such file", session.Error.TrimEnd());
        Assert.False(Directory.Exists(_folder));
    }

    [Fact]
    public void A_folder_that_cannot_be_written_is_one_line()
    {
        File.WriteAllText(_folder, "a file where the folder should be");
        try
        {
            Session session = Session.Run("retrieve", Large, "--out", Path.Combine(_folder, "x"), "--plots", "none", "--set", "retrieve.duration=1 s");
            Assert.Equal(ExitCode.BadInput, session.Exit);
            Assert.StartsWith("cannot write to '", Assert.Single(session.Error.TrimEnd().Split('\n')), StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(_folder);
        }
    }

    [Fact]
    public void A_retrieve_that_runs_out_of_water_says_when_and_keeps_what_it_has()
    {
        Session session = Session.Run("retrieve", Large, "--out", _folder, "--plots", "none", "--set", "retrieve.distance=3 m", "--set", "retrieve.duration=20 s");
        Assert.Equal(ExitCode.NotFinished, session.Exit);
        Assert.Contains("last good time", session.Error, StringComparison.Ordinal);
        Assert.Contains("reached the rod", session.Error, StringComparison.Ordinal);
        Assert.Contains("STOPPED EARLY", session.Out, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(_folder, "series.csv")));
    }

    [Fact]
    public void A_retrieve_whose_energy_account_stays_open_is_no_result()
    {
        Session session = Session.Run(
            "retrieve", Large, "--out", _folder, "--plots", "none", "--set", "retrieve.take_up=per_twitch", "--set", "line.damping_time=0 ms",
            "--set", "retrieve.duration=8 s", "--set", "solver.step=1 ms");
        Assert.Equal(ExitCode.NotFinished, session.Exit);
        Assert.Contains("the energy account stays open by 1.", session.Error, StringComparison.Ordinal);
        Assert.Contains("use a smaller step", session.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Ctrl_C_ends_with_130_and_leaves_nothing()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Session session = Session.Run(stop.Token, "retrieve", Large, "--out", _folder);
        Assert.Equal(ExitCode.Stopped, session.Exit);
        Assert.False(Directory.Exists(_folder));
    }

    [Theory]
    [InlineData]
    [InlineData("retrieve")]
    [InlineData("walk")]
    [InlineData("retrieve", "a.toml", "--colour", "red")]
    [InlineData("retrieve", "a.toml", "--plots", "gif")]
    public void Wrong_usage_goes_to_stderr(params string[] args)
    {
        Session session = Session.Run(args);
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.Empty(session.Out);
        Assert.NotEmpty(session.Error);
    }

    [Fact]
    public void Help_names_every_command()
    {
        Session session = Session.Run("--help");
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.All(["retrieve", "check", "cadence"], c => Assert.Contains(c, session.Out, StringComparison.Ordinal));
    }
}
