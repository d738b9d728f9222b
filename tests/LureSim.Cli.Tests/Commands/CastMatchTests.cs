using System.Text.Json;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Commands;

public sealed class CastMatchTests : IDisposable
{
    private static readonly string Small = Session.Scenario("small-walker");
    private readonly string _folder = Directory.CreateTempSubdirectory("luresim-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_part_it_writes_casts_as_far_as_measured()
    {
        Session match = Session.Run("cast", Small, "--match", "28 m", "--out", _folder, "--plots", "none", "--quiet");
        Assert.Equal((ExitCode.Done, ""), (match.Exit, match.Error));
        Session cast = Session.Run("cast", Small, "--json", "--set", $"cast={Path.Combine(_folder, "angler.toml")}");
        Assert.Equal(28.0, JsonDocument.Parse(cast.Out).RootElement.GetProperty("distance_m").GetDouble(), 0.1);
    }

    [Fact]
    public void A_csv_of_casts_gives_one_effort_with_its_scatter()
    {
        string csv = Write("# three casts, made up\nlure,lure.mass,distance\nlight,,27 m\nheavy,14 g,105 ft\nlight,,28.5 m\n");
        Session session = Session.Run("cast", Small, "--match", csv, "--out", _folder, "--plots", "svg");
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains("common effort", session.Out, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(_folder, "cast_match.svg")));
        JsonElement json = JsonDocument.Parse(File.ReadAllText(Path.Combine(_folder, "match.json"))).RootElement;
        Assert.Equal(3, json.GetProperty("casts").GetArrayLength());
        Assert.True(json.GetProperty("distance_scatter").GetDouble() > 0.0);
        Assert.Equal(4, File.ReadAllLines(Path.Combine(_folder, "match.csv")).Length);
    }

    [Theory]
    [InlineData("31", "it has no unit")]
    [InlineData("31,5 m", "decimal")]
    [InlineData("0 m", "more than 0 and at most 500 m")]
    [InlineData("90 m", "it reaches")]
    [InlineData("missing.csv", "there is no such file")]
    public void A_bad_distance_ends_with_2(string distance, string told) => Refused(["--match", distance], told);

    [Theory]
    [InlineData("lure,distanse\na,3 m\n", "(1): column \"distanse\" is unknown", 2)]
    [InlineData("lure\na\n", "(1): the column distance is missing", 1)]
    [InlineData("distance,lure.mas\n3 m,10 g\n", "column \"lure.mas\" is unknown", 1)]
    [InlineData("distance,distance\n3 m,4 m\n", "stands there twice", 1)]
    [InlineData("distance\n3\n", "(2): distance: ", 1)]
    [InlineData("distance,lure.mass\n3 m,12,5 g\n", "3 cells in a row", 1)]
    [InlineData("distance,lure.mass\n30 m,12\n", "(2): lure.mass: ", 1)]
    [InlineData("distance,lure\n30 m,none.toml\n", "there is no such file", 1)]
    [InlineData("\n# nothing\n", "it holds no cast", 1)]
    public void A_bad_csv_ends_with_2_and_its_place(string text, string told, int lines) => Refused(["--match", Write(text)], told, lines);

    [Fact]
    public void Match_and_doubt_do_not_go_together() => Refused(["--match", "28 m", "--doubt", "50"], "goes with neither --doubt nor", 2);

    private static void Refused(string[] options, string told, int lines = 1)
    {
        Session session = Session.Run(["cast", Small, "--json", .. options]);
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.Empty(session.Out);
        Assert.Contains(told, session.Error, StringComparison.Ordinal);
        Assert.Equal(lines, session.Error.TrimEnd().Split('\n').Length);
    }

    private string Write(string text)
    {
        string path = Path.Combine(_folder, "casts.csv");
        File.WriteAllText(path, text);
        return path;
    }
}
