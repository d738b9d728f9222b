using System.Text.Json;
using LureSim.Cli.Tests.Support;
using LureSim.Scenarios;
using LureSim.Scenarios.Parts;

namespace LureSim.Cli.Tests.Start;

/// <summary>The command <c>start</c> as a person types it.</summary>
public sealed class StartCommandTests : IDisposable
{
    private static readonly Dictionary<string, string> OptionOf = new()
    {
        ["rods"] = "--rod",
        ["lines"] = "--line",
        ["leaders"] = "--leader",
        ["reels"] = "--reel",
        ["hands"] = "--height",
    };

    private readonly string _folder = Directory.CreateTempSubdirectory("start").FullName;

    private string Own => Path.Combine(_folder, "walker.toml");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_few_words_give_a_file_that_every_command_takes()
    {
        Session session = Session.Run(
            "start", "walker", "--mass", "1/2 oz", "--rod", "7 ft medium-heavy fast", "--line", "30 lb braid", "--leader", "15 in nylon", "--out", Own);
        Assert.Equal((ExitCode.Done, ""), (session.Exit, session.Error));
        Assert.StartsWith($"Wrote {Own}: Walker, 1/2 oz, on 30 lb braid", session.Out, StringComparison.Ordinal);
        Assert.Contains("The lure should rest 3 deg tail-down", session.Out, StringComparison.Ordinal);
        Assert.Contains($"luresim compare {Own} --rods \"6 ft 6 in,7 ft,7 ft 4 in\"", session.Out, StringComparison.Ordinal);
        Assert.All((string[])["check", "trim", "retrieve", "cast"], c => Assert.Equal(ExitCode.Done, Session.Run(c, Own, "--json").Exit));
        Assert.Equal("alternating", JsonDocument.Parse(Session.Run("retrieve", Own, "--json").Out).RootElement.GetProperty("pattern").GetString());
    }

    [Theory]
    [InlineData("start", "small-walker")]
    [InlineData("start", "upright", "14", "g")]
    [InlineData("start", "hollow", "--rod", "2.2 m heavy fast")]
    [InlineData("start", "--leader", "none", "--reel", "spinning", "--height", "boat deck", "--style", "one-handed beginner full", "--water", "sea 18 C", "--cover", "lily pads")]
    public void Whatever_is_left_out_is_guessed_within_a_hundred_columns(params string[] args)
    {
        Session session = Session.Run([.. args, Own]);
        Assert.Equal((ExitCode.Done, ""), (session.Exit, session.Error));
        Assert.All(session.Out.Replace(Own, "walker.toml", StringComparison.Ordinal).Split('\n'), line => Assert.True(line.Length <= 100, line));
        Assert.Empty(ScenarioSource.Read(Own).Errors);
    }

    [Fact]
    public void Every_part_that_is_listed_can_be_typed()
    {
        foreach (Part part in PartLibrary.All)
        {
            string[] typed = OptionOf.TryGetValue(part.Folder.Name, out string? option) ? [option, part.Name] : [part.Name];
            Session session = Session.Run(["start", .. typed, "--out", Own, "--force", "--quiet"]);
            Assert.Equal((part.Path, ExitCode.Done, ""), (part.Path, session.Exit, session.Error));
        }
    }

    [Fact]
    public void A_file_that_is_there_stays_unless_it_is_forced()
    {
        File.WriteAllText(Own, "mine");
        Session refused = Session.Run("start", "walker", "--out", Own);
        Assert.Equal(ExitCode.BadInput, refused.Exit);
        Assert.Contains("is there already: --force replaces it", refused.Error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(Own));
        Assert.Equal(ExitCode.Done, Session.Run("start", "walker", "--out", Own, "--force", "--quiet").Exit);
        Assert.Contains("[lure]", File.ReadAllText(Own), StringComparison.Ordinal);
        Assert.Equal([Own], Directory.GetFiles(_folder));
    }

    [Theory]
    [InlineData("popper", "cannot be computed yet")]
    [InlineData("wlker", "nearest: walker")]
    public void One_line_and_nothing_written(string kind, string said)
    {
        Session session = Session.Run("start", kind, "--out", Own);
        Assert.Equal((ExitCode.BadInput, ""), (session.Exit, session.Out));
        Assert.Contains(said, Assert.Single(session.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(_folder));
    }

    [Fact]
    public void Places_that_cannot_be_written_are_said()
    {
        string[][] bad = [["--out", _folder], ["--out", Path.Combine(_folder, "no", "x.toml")], ["--out", ""], ["--out", "a\0b"], ["one.toml", "two.toml"]];
        Assert.All(bad, b =>
        {
            Session session = Session.Run(["start", "walker", .. b]);
            Assert.Equal(ExitCode.BadInput, session.Exit);
            Assert.Single(session.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        });
    }

    [Fact]
    public void A_part_of_your_own_stands_in_the_file_by_name()
    {
        string rod = Path.Combine(_folder, "my-rod.toml");
        File.WriteAllText(rod, Session.Run("list", "rods/medium-fast").Out);
        Assert.Equal(ExitCode.Done, Session.Run("start", "walker", "--rod", rod, "--out", Own, "--quiet").Exit);
        Assert.Contains("[rod]\nbase = \"my-rod.toml\"\n", File.ReadAllText(Own), StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, Session.Run("check", Own, "--quiet").Exit);
        Assert.Contains("there is no such file", Session.Run("start", "walker", "--rod", "gone.toml", "--out", Own, "--force").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_tells_what_was_guessed_and_what_comes_next()
    {
        JsonElement json = JsonDocument.Parse(Session.Run("start", "slanted", "--mass", "3/4 oz", "--out", Own, "--json").Out).RootElement;
        Assert.Equal(25.0, json.GetProperty("trim_deg").GetDouble(), 1.0);
        Assert.Equal(("slanted", "lures/slanted.toml"), (json.GetProperty("kind").GetString(), json.GetProperty("scaled_from").GetString()));
        JsonElement power = json.GetProperty("guessed").EnumerateArray().First(g => g.GetProperty("key").GetString() == "rod.power");
        Assert.Equal((3.75, 5.5), (power.GetProperty("low_si").GetDouble(), power.GetProperty("high_si").GetDouble()));
        Assert.Equal(3, json.GetProperty("next").GetArrayLength());
    }
}
