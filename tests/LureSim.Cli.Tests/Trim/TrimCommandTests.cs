using System.Text.Json;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Trim;

/// <summary>The command <c>trim</c> as a person types it.</summary>
public sealed class TrimCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trim").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("large-walker")]
    [InlineData("small-walker")]
    [InlineData("hollow-weedless")]
    public void Every_lure_floats_with_files_and_words(string name)
    {
        Session session = Session.Run("trim", Session.Scenario(name), "--out", _folder, "--plots", "svg");
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains("It floats", session.Out, StringComparison.Ordinal);
        Assert.All(session.Out.Split('\n'), line => Assert.True(line.Length <= 100 || line.StartsWith("Files:", StringComparison.Ordinal), line));
        Assert.All(
            (string[])["trim.json", "trim_drafts.csv", "effective.toml", "trim_side.svg", "trim_righting.svg", "template.svg"], f => Assert.True(File.Exists(Path.Combine(_folder, f)), f));
    }

    [Fact]
    public void Json_holds_what_scripts_ask_for()
    {
        JsonElement json = JsonDocument.Parse(Session.Run("trim", Session.Scenario("large-walker"), "--json").Out).RootElement;
        Assert.Equal(2.75, json.GetProperty("trim_deg").GetDouble(), 0.05);
        Assert.Equal(0.0, json.GetProperty("heel_deg").GetDouble());
        Assert.True(json.GetProperty("draft_m").GetDouble() > 0.01 && json.GetProperty("gm_m").GetDouble() > 0.0);
        Assert.True(json.TryGetProperty("nose_height_m", out _));
        Assert.Equal("flat", json.GetProperty("attitude").GetString());
    }

    [Fact]
    public void Tail_ballast_asks_for_six_degrees_and_a_lure_that_lies_over_is_called_so()
    {
        Session slanted = Session.Run("trim", Session.Scenario("hollow-weedless"), "--out", _folder, "--plots", "none");
        Assert.Contains("computed with the hull in six degrees of freedom; the planar one holds for flat floaters", slanted.Out, StringComparison.Ordinal);
        Session over = Session.Run("trim", Session.Scenario("large-walker"), "--set", "lure.ballast[1].z=8 mm", "--out", _folder, "--plots", "none");
        Assert.Contains("no upright position", over.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void It_can_be_swept_and_says_which_keys_do_not_enter()
    {
        Session session = Session.Run(
            "sweep", Session.Scenario("large-walker"), "--command", "trim", "--vary", "lure.ballast[1].x=-12 mm,-20 mm", "--vary", "rod.length=6 ft,7 ft",
            "--out", _folder, "--plots", "none");
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains("rod.length does not enter trim", session.Error, StringComparison.Ordinal);
        string[] rows = File.ReadAllLines(Path.Combine(_folder, "sweep.csv"));
        Assert.Equal(5, rows.Length);
        Assert.Contains("trim_deg", rows[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_lure_that_sinks_is_refused()
    {
        Session session = Session.Run("trim", Session.Scenario("large-walker"), "--set", "lure.mass=60 g", "--out", _folder);
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.Contains("would sink", session.Error, StringComparison.Ordinal);
    }
}
