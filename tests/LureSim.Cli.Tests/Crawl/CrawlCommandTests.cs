using System.Text.Json;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Crawl;

/// <summary>The command <c>crawl</c> as a person types it.</summary>
public sealed class CrawlCommandTests : IDisposable
{
    private static readonly string Mat = Session.Scenario("hollow-mat"), Open = Session.Scenario("hollow-weedless");
    private readonly string _folder = Directory.CreateTempSubdirectory("crawl").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_lure_over_a_mat_gives_words_and_files()
    {
        Session session = Session.Run("crawl", Mat, "--set", "crawl.stroke=25 cm", "--out", _folder, "--plots", "svg");
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains("to the opening in", session.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.All(session.Out.Split('\n'), line => Assert.True(line.Length <= 100 || line.StartsWith("Files:", StringComparison.Ordinal), line));
        string[] files = ["crawl.json", "crawl_series.csv", "crawl_twitches.csv", "effective.toml", "crawl.svg"];
        Assert.All(files, f => Assert.True(File.Exists(Path.Combine(_folder, f)), f));
        JsonElement json = JsonDocument.Parse(File.ReadAllText(Path.Combine(_folder, "crawl.json"))).RootElement;
        Assert.Equal(json.GetProperty("twitches").GetInt32() + 1, File.ReadAllLines(Path.Combine(_folder, "crawl_twitches.csv")).Length);
    }

    [Fact]
    public void Json_holds_what_scripts_ask_for_and_smoother_plants_ask_for_less_pull()
    {
        JsonElement usual = Json("cover.line_over=6 m"), smooth = Json("cover.lure_friction=0.2");
        Assert.Equal("arrives", usual.GetProperty("end").GetString());
        double pull = usual.GetProperty("start_pull_N").GetDouble();
        Assert.InRange(smooth.GetProperty("start_pull_N").GetDouble(), 0.5 * pull, 0.52 * pull);
        Assert.Equal(3.0, usual.GetProperty("way_m").GetDouble(), 0.02);

        static JsonElement Json(string set) => JsonDocument.Parse(Session.Run("crawl", Mat, "--json", "--quiet", "--set", "crawl.stroke=25 cm", "--set", set).Out).RootElement;
    }

    [Theory]
    [InlineData("cover.kind=open", "cover.kind: \"open\" has no mat to crawl over; \"mat\" is due")]
    [InlineData("cover.kind=sparse", "cover.kind: \"sparse\" has no mat to crawl over; \"mat\" is due")]
    [InlineData("crawl.to_opening=20 m", "end under the rod tip")]
    [InlineData("crawl.stroke=3 m", "crawl.stroke")]
    public void What_cannot_be_done_is_refused_in_a_line(string set, string said)
    {
        Session session = Session.Run("crawl", Mat, "--set", set, "--out", _folder);
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.Contains(said, session.Error, StringComparison.Ordinal);
        Assert.Single(session.Error.TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public void Open_water_is_refused_though_nothing_is_set() => Assert.Contains("\"open\" has no mat", Session.Run("crawl", Open).Error, StringComparison.Ordinal);

    [Fact]
    public void It_minds_no_fault_of_a_cast_and_says_which_keys_do_not_enter()
    {
        Session session = Session.Run("crawl", Mat, "--set", "cast.overhang=9 m", "--set", "lure.stern_shedding=0.5", "--set", "crawl.duration=2 s", "--out", _folder, "--plots", "none");
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains("lure.stern_shedding does not enter crawl", session.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Its_guesses_have_bands_whatever_the_threads_and_it_can_be_swept()
    {
        string one = Doubt("1");
        Assert.Equal(one, Doubt("3"));
        JsonElement bands = JsonDocument.Parse(one).RootElement.GetProperty("doubt").GetProperty("bands");
        Assert.True(bands.GetProperty("start_pull_N").GetProperty("p10").GetDouble() < bands.GetProperty("start_pull_N").GetProperty("p90").GetDouble());
        Session session = Session.Run("sweep", Mat, "--command", "crawl", "--vary", "crawl.stroke=10 cm,25 cm", "--set", "crawl.duration=5 s", "--out", _folder, "--plots", "none");
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains("way_per_twitch_m", File.ReadLines(Path.Combine(_folder, "sweep.csv")).First(), StringComparison.Ordinal);

        static string Doubt(string threads) => Session.Run("crawl", Mat, "--json", "--quiet", "--doubt", "10", "--threads", threads, "--set", "crawl.duration=2 s").Out;
    }
}
