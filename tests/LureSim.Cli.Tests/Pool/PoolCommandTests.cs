using System.Text.Json;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Pool;

/// <summary>The command <c>pool</c> as a person types it.</summary>
public sealed class PoolCommandTests : IDisposable
{
    private static readonly string Small = Session.Scenario("small-walker");
    private readonly string _folder = Directory.CreateTempSubdirectory("pool").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("large-walker")]
    [InlineData("hollow-weedless")]
    public void Every_lure_is_measured_with_files_and_words(string name)
    {
        Session session = Session.Run("pool", Session.Scenario(name), "--out", _folder, "--plots", "svg");
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains("Towed on 9.8 ft (3.0 m) of line it comes straight", session.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.All(session.Out.Split('\n'), line => Assert.True(line.Length <= 100 || line.StartsWith("Files:", StringComparison.Ordinal), line));
        string[] files = ["pool.json", "pool_tow.csv", "pool_push.csv", "pool_swings.csv", "effective.toml", "pool_tow.svg", "pool_push.svg", "pool_swings.svg"];
        Assert.All(files, f => Assert.True(File.Exists(Path.Combine(_folder, f)), f));
        Assert.Equal(5, File.ReadAllLines(Path.Combine(_folder, "pool_tow.csv")).Length);
    }

    [Fact]
    public void Json_holds_what_scripts_ask_for_and_less_shed_at_the_stern_sheers()
    {
        JsonElement json = Json("lure.stern_shedding=0"), usual = Json("pool.speeds=50 cm/s, 0.3 m/s");
        Assert.Equal("sheers", json.GetProperty("course").GetString());
        Assert.True(json.GetProperty("tow")[0].GetProperty("sheer_deg").GetDouble() > 10.0);
        Assert.Equal([0.3, 0.5], usual.GetProperty("tow").EnumerateArray().Select(t => t.GetProperty("speed_m_s").GetDouble()));
        Assert.True(json.GetProperty("push_turn_m").GetDouble() < usual.GetProperty("push_turn_m").GetDouble());
        Assert.All((string[])["coast_per_m", "roll_period_s", "heave_period_s"], key => Assert.True(usual.GetProperty(key).GetDouble() > 0.0, key));

        static JsonElement Json(string set) => JsonDocument.Parse(Session.Run("pool", Small, "--json", "--set", set).Out).RootElement;
    }

    [Theory]
    [InlineData("pool.speeds=0.2, 9 m/s", "allowed: 1 to 20 speeds, 0.05 to 2 m/s each")]
    [InlineData("pool.speeds=fast", "does not start with a number")]
    [InlineData("pool.speeds=0.2, 0.4", "it has no unit")]
    [InlineData("pool.hand_height=3 m", "less than pool.tow_line is due")]
    [InlineData("lure.mass=60 g", "would sink")]
    public void What_cannot_be_done_is_refused_in_a_line(string set, string said)
    {
        Session session = Session.Run("pool", Small, "--set", set, "--out", _folder);
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.Contains(said, session.Error, StringComparison.Ordinal);
        Assert.Single(session.Error.TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public void It_minds_no_fault_of_a_cast_and_says_which_keys_do_not_enter()
    {
        Session session = Session.Run("pool", Small, "--set", "cast.overhang=9 m", "--set", "rod.length=8 ft", "--out", _folder, "--plots", "none");
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains("rod.length does not enter pool", session.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Its_guesses_have_bands_whatever_the_threads_and_it_can_be_swept()
    {
        string one = Doubt("1");
        Assert.Equal(one, Doubt("3"));
        JsonElement bands = JsonDocument.Parse(one).RootElement.GetProperty("doubt").GetProperty("bands");
        Assert.True(bands.GetProperty("push_turn_m").GetProperty("p10").GetDouble() < bands.GetProperty("push_turn_m").GetProperty("p90").GetDouble());
        Session session = Session.Run(
            "sweep", Small, "--command", "pool", "--vary", "lure.stern_shedding=0,1", "--set", "pool.tow_distance=2 m", "--out", _folder, "--plots", "none");
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains("push_turn_m", File.ReadLines(Path.Combine(_folder, "sweep.csv")).First(), StringComparison.Ordinal);

        static string Doubt(string threads) =>
            Session.Run("pool", Small, "--json", "--quiet", "--doubt", "10", "--threads", threads, "--set", "pool.tow_distance=1 m", "--set", "pool.speeds=0.5 m/s").Out;
    }
}
