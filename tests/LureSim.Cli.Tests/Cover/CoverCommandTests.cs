using System.Text.Json;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Cover;

/// <summary>The command <c>cover</c> as a person types it.</summary>
public sealed class CoverCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("cover").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("treble-edge", "THICK MAT: does not work")]
    [InlineData("hollow-mat", "THICK MAT: works when")]
    public void Three_covers_with_files_and_words(string name, string mat)
    {
        Session session = Session.Run("cover", Session.Scenario(name), "--out", _folder, "--plots", "svg");
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.All((string[])["OPEN EDGE:", "SPARSE PLANTS:", mat, "First to give:", "ANYWHERE:", "Care under load:"], words => Assert.Contains(words, session.Out, StringComparison.Ordinal));
        Assert.All(session.Out.Split('\n'), line => Assert.True(line.Length <= 100 || line.StartsWith("Files:", StringComparison.Ordinal), line));
        Assert.All((string[])["cover.json", "cover.csv", "effective.toml", "cover.svg"], f => Assert.True(File.Exists(Path.Combine(_folder, f)), f));
        Assert.Equal(4, File.ReadAllLines(Path.Combine(_folder, "cover.csv")).Length);
    }

    [Fact]
    public void Json_holds_what_scripts_ask_for()
    {
        JsonElement json = JsonDocument.Parse(Session.Run("cover", Session.Scenario("hollow-mat"), "--json").Out).RootElement;
        JsonElement[] covers = [.. json.GetProperty("covers").EnumerateArray()];
        Assert.Equal(["open", "sparse", "mat"], covers.Select(c => c.GetProperty("cover").GetString()));
        Assert.All(covers, c => Assert.True(c.GetProperty("hook_force_peak_N").GetDouble() > 0.0 && c.GetProperty("held_pull_N").GetDouble() > 0.0));
        Assert.All(
            (string[])["verdict", "set_force_N", "drag_window_low_N", "drag_window_high_N", "first_to_give", "through_pull_N", "over_pull_N", "lift_limit_kg", "criteria", "changes"],
            key => Assert.True(covers[2].TryGetProperty(key, out _), key));
    }

    [Fact]
    public void A_key_that_does_not_enter_is_said_so_and_a_wrong_one_is_one_line()
    {
        Session idle = Session.Run("cover", Session.Scenario("hollow-mat"), "--set", "retrieve.cadence=3 /s", "--out", _folder, "--plots", "none");
        Assert.Contains("retrieve.cadence does not enter cover", idle.Out, StringComparison.Ordinal);
        Session wrong = Session.Run("cover", Session.Scenario("hollow-mat"), "--set", "fish.mass=-1 kg");
        Assert.Equal(ExitCode.BadInput, wrong.Exit);
        Assert.Contains("fish.mass", wrong.Error, StringComparison.Ordinal);
        Session near = Session.Run("cover", Session.Scenario("hollow-mat"), "--set", "strike.distance=3 m", "--set", "angler.hand_height=3 m", "--out", Path.Combine(_folder, "near"));
        Assert.Equal((ExitCode.BadInput, 1), (near.Exit, near.Error.TrimEnd('\n').Split('\n').Length));
    }
}
