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

    [Fact]
    public void A_mean_needs_more_effort_than_the_best_cast_and_has_an_error()
    {
        JsonElement one = Fit("28 m"), mean = Fit("28 m mean of 12"), few = Fit(Write("distance,casts\n28 m,3\n"));
        Assert.True(mean.GetProperty("effort").GetDouble() > one.GetProperty("effort").GetDouble());
        Assert.Equal(JsonValueKind.Null, one.GetProperty("effort_error").ValueKind);
        Assert.Equal(12, mean.GetProperty("casts")[0].GetProperty("mean_of").GetInt32());
        Assert.Equal(mean.GetProperty("effort").GetDouble(), few.GetProperty("effort").GetDouble());
        Assert.Equal(2.0, few.GetProperty("effort_error").GetDouble() / mean.GetProperty("effort_error").GetDouble(), 1e-9);

        static JsonElement Fit(string match)
        {
            Session session = Session.Run("cast", Small, "--json", "--match", match);
            Assert.Equal((ExitCode.Done, ""), (session.Exit, session.Error));
            return JsonDocument.Parse(session.Out).RootElement;
        }
    }

    [Fact]
    public void The_text_says_of_how_many_casts_it_is_the_mean()
    {
        Session session = Session.Run("cast", Small, "--match", "28 m mean of 12", "--out", _folder, "--plots", "none");
        Assert.Contains("12 casts", session.Out, StringComparison.Ordinal);
        Assert.Contains("standard error of the effort", session.Out, StringComparison.Ordinal);
        Assert.Contains("12 measured casts", File.ReadAllText(Path.Combine(_folder, "angler.toml")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_label_that_would_be_a_formula_is_none_in_the_table()
    {
        string csv = Write("lure,distance\n=1+2,27 m\n-3,28 m\n@x,28 m\n");
        Assert.Equal(ExitCode.Done, Session.Run("cast", Small, "--match", csv, "--out", _folder, "--plots", "none", "--quiet").Exit);
        Assert.Equal(["label", "'=1+2", "-3", "'@x"], File.ReadLines(Path.Combine(_folder, "match.csv")).Select(l => l.Split(',')[0]));
    }

    [Theory]
    [InlineData("31", "it has no unit")]
    [InlineData("31,5 m", "decimal")]
    [InlineData("0 m", "more than 0 and at most 500 m")]
    [InlineData("90 m", "it reaches")]
    [InlineData("missing.csv", "there is no such file")]
    [InlineData("31 m mean of", "is no number of casts of a mean")]
    [InlineData("31 m mean of 0", "\"0\" is no number of casts of a mean; a whole number from 1 to 10000 is due")]
    [InlineData("31 m mean of 2.5", "is no number of casts of a mean")]
    [InlineData("31 m, 12 casts", "mean of 12")]
    [InlineData("mean of 12", "it does not start with a number")]
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
    [InlineData("distance,casts\n30 m,many\n", "(2): casts: \"many\" is no number of casts", 1)]
    public void A_bad_csv_ends_with_2_and_its_place(string text, string told, int lines) => Refused(["--match", Write(text)], told, lines);

    [Fact]
    public void Match_and_doubt_do_not_go_together() => Refused(["--match", "28 m", "--doubt", "50"], "goes with neither --doubt nor");

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
