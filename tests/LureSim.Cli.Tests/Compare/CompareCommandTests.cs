using System.Text.Json;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Compare;

public sealed class CompareCommandTests : IDisposable
{
    private static readonly string Small = Session.Scenario("small-walker");
    private readonly string _folder = Directory.CreateTempSubdirectory("luresim-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    // The whole of it, as the README has a buyer type it into an empty folder; the CSV is the sample of a bend test.
    [Fact]
    public void The_commands_of_the_README_end_in_a_recommendation_with_every_difference_and_a_page()
    {
        string[][] typed = [.. File.ReadLines(Path.Combine(Path.GetDirectoryName(Small)!, "..", "README.md")).Where(l => l.StartsWith("luresim ", StringComparison.Ordinal)).Select(Words)];
        Assert.Equal(["start", "compare", "bend"], typed.Select(t => t[0]));
        string walker = Path.Combine(_folder, "walker.toml"), results = Path.Combine(_folder, "results");
        Assert.Equal(ExitCode.Done, Session.Run([.. typed[0], "--out", walker]).Exit);
        Assert.Equal(ExitCode.Done, Session.Run([.. typed[2].Select(w => w == "shop.csv" ? Path.Combine(Path.GetDirectoryName(Small)!, "bend-test.csv") : w), "--out", Path.Combine(_folder, "bend")]).Exit);
        Session session = Session.Run([.. typed[1].Select(w => w == "walker.toml" ? walker : w), "--out", results, "--plots", "png", "--json"]);
        Assert.Equal((ExitCode.Done, ""), (session.Exit, session.Error));
        JsonElement json = JsonDocument.Parse(session.Out).RootElement;
        JsonElement[] differences = [.. json.GetProperty("differences").EnumerateArray()];
        Assert.InRange(json.GetProperty("recommendation").GetArrayLength(), 3, 4);
        Assert.Equal(0, differences.Length % 3);
        Assert.All(differences, d => Assert.Contains(d.GetProperty("verdict").GetString(), (string[])["you will notice", "you may notice", "you will not notice", "cannot be told"]));
        Assert.All(differences, d => Assert.NotEqual("", d.GetProperty("reason").GetString()));
        JsonElement far = differences.Single(d => d.GetProperty("measure").GetString() == "distance_m" && d.GetProperty("a").GetString() == "6 ft 6 in" && d.GetProperty("b").GetString() == "7 ft 4 in");
        Assert.Equal("you will notice", far.GetProperty("verdict").GetString());
        Assert.InRange(far.GetProperty("difference").GetDouble(), far.GetProperty("low").GetDouble(), far.GetProperty("high").GetDouble());
        string[] files = [.. Directory.GetFiles(results).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];
        Assert.Equal(["compare.csv", "compare.json", "compare_page.png", "effective_1.toml", "effective_2.toml", "effective_3.toml", "luresim.sha256"], files);
    }

    [Theory]
    [InlineData("one file and nothing to compare it with")]
    [InlineData("rod.power", "--with", "rod.power=mighty")]
    [InlineData("a length is due", "--rods", "seven feet,8 ft")]
    [InlineData("do not go together", "--rods", "7 ft", "--with", "rod.power=heavy")]
    [InlineData("no such file", "elsewhere.toml")]
    public void What_is_wrong_is_one_line(string told, params string[] more)
    {
        Session session = Session.Run(["compare", Small, .. more, "--out", _folder]);
        Assert.Equal((ExitCode.BadInput, ""), (session.Exit, session.Out));
        Assert.Single(session.Error.Trim().Split('\n'));
        Assert.Contains(told, session.Error, StringComparison.OrdinalIgnoreCase);
        Assert.Empty(Directory.GetFiles(_folder));
    }

    [Fact]
    public void A_stop_leaves_nothing()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Equal(ExitCode.Stopped, Session.Run(stop.Token, "compare", Small, "--rods", "6 ft,7 ft", "--out", _folder).Exit);
        Assert.Empty(Directory.GetFiles(_folder));
    }

    // Words of a command line, quoted ones whole.
    private static string[] Words(string line) => [.. line.Split('"').SelectMany((part, i) => i % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Skip(1)];
}
