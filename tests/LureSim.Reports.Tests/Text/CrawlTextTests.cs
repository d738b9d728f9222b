using System.Text.Json;
using LureSim.Model.Crawl;
using LureSim.Reports.Crawl;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Tests.Support;

namespace LureSim.Reports.Tests.Text;

/// <summary>A crawl in words and as JSON.</summary>
public sealed class CrawlTextTests
{
    private static string Words(CrawlResult crawl)
    {
        string text = CrawlText.Build(crawl, RunNotes.None);
        Assert.All(text.Split('\n'), line => Assert.True(line.Length <= 100 && !line.EndsWith(' '), line));
        Assert.True(text.All(char.IsAscii));
        return text.ReplaceLineEndings(" ");
    }

    [Fact]
    public void What_becomes_of_it_is_said_first()
    {
        Assert.Contains("Comes 3.6 ft (1.1 m) to the opening in 2.6 s and 6 twitches, 7.9 in (20 cm) a twitch.", Words(MadeUpCrawl.Result()), StringComparison.Ordinal);
        Assert.Contains("Comes 3.3 ft (1.0 m) of 3.6 ft (1.1 m) in 2.6 s,", Words(MadeUpCrawl.Late()), StringComparison.Ordinal);
        Assert.Contains("Hardly moves: 5 of 5 twitches lost", Words(MadeUpCrawl.Stuck()), StringComparison.Ordinal);
    }

    [Fact]
    public void Statics_plants_and_hops_are_told_and_that_plants_are_guesses()
    {
        string text = Words(MadeUpCrawl.Result());
        Assert.Contains("4.3 deg over the level: 0.23 oz (6.5 g) at the lure, 40 % of its weight, start it", text, StringComparison.Ordinal);
        Assert.Contains("the tip must pull 2.7 oz (76 g)", text, StringComparison.Ordinal);
        Assert.Contains("a slow stroke of less than 2.6 in (6.7 cm) moves nothing", text, StringComparison.Ordinal);
        Assert.Contains("of the pull at the tip 55 % come to the lure", text, StringComparison.Ordinal);
        Assert.Contains("off the plants for 4 % of the time, up to 0.47 in (1.2 cm) high", text, StringComparison.Ordinal);
        Assert.Contains("are guesses", text, StringComparison.Ordinal);
        Assert.Contains("flies back", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_there_is_not_is_said_in_words()
    {
        string text = Words(MadeUpCrawl.Stuck());
        Assert.Contains("its stroke draws no line at all", text, StringComparison.Ordinal);
        Assert.Contains("No line lies on plants.", text, StringComparison.Ordinal);
        Assert.Contains("It stays on the plants.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("the tip must pull", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_has_the_figures_and_null_for_what_does_not_exist()
    {
        JsonElement json = Json(MadeUpCrawl.Result()), stuck = Json(MadeUpCrawl.Stuck());
        Assert.Equal(("arrives", 2.6, 6), (json.GetProperty("end").GetString(), json.GetProperty("time_to_opening_s").GetDouble(), json.GetProperty("twitches_to_opening").GetInt32()));
        Assert.Equal(0.064, json.GetProperty("start_pull_N").GetDouble());
        Assert.Equal("stuck", stuck.GetProperty("end").GetString());
        Assert.All((string[])["time_to_opening_s", "twitches_to_opening", "least_stroke_m"], key => Assert.Equal(JsonValueKind.Null, stuck.GetProperty(key).ValueKind));
        Assert.Equal("late", Json(MadeUpCrawl.Late()).GetProperty("end").GetString());
    }

    private static JsonElement Json(CrawlResult crawl)
    {
        using var stream = new MemoryStream();
        CrawlFiles.WriteJson(stream, crawl, RunNotes.None);
        return JsonDocument.Parse(stream.ToArray()).RootElement;
    }
}
