using System.Text.Json;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Commands;

public sealed class CastAcrossTests : IDisposable
{
    private static readonly string Small = Session.Scenario("small-walker");
    private readonly string _folder = Directory.CreateTempSubdirectory("luresim-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Rods_of_several_lengths_get_bands_and_verdicts_whatever_the_threads()
    {
        Session one = Session.Run("cast", Small, "--across", "rod-length", "--doubt", "20", "--threads", "1", "--json", "--out", _folder, "--plots", "png");
        Assert.Equal(ExitCode.Done, one.Exit);
        JsonElement json = JsonDocument.Parse(one.Out).RootElement, cases = json.GetProperty("cases");

        // Six lengths and the scenario's own between them.
        Assert.Equal(7, cases.GetArrayLength());
        Assert.Equal("6 ft 8 in", json.GetProperty("reference").GetString());
        Assert.Equal(("6 ft 8 in", "6 ft 8 in"), (cases[2].GetProperty("value").GetString(), cases[6].GetProperty("compared_with").GetString()));
        Assert.Contains(cases[3].GetProperty("verdict").GetString(), (string[])["you will notice", "you may notice", "you will not notice"]);
        Assert.True(cases[3].GetProperty("gain_p10_m").GetDouble() < cases[3].GetProperty("gain_p90_m").GetDouble());
        Assert.Equal(21, json.GetProperty("pairs").GetArrayLength());
        Assert.True(File.Exists(Path.Combine(_folder, "cast_across.png")));
        Assert.Equal(21, File.ReadAllLines(Path.Combine(_folder, "cast_across_draws.csv")).Length);
        Assert.Equal(22, File.ReadAllLines(Path.Combine(_folder, "cast_across_pairs.csv")).Length);
        Assert.Equal(one.Out, Session.Run("cast", Small, "--across", "rod-length", "--doubt", "20", "--threads", "2", "--json").Out);
    }

    // Real casts: whatever the guesses, a tenth of an inch is not told from nothing.
    [Theory]
    [InlineData("1", "fixed")]
    [InlineData("2", "fixed")]
    [InlineData("3", "fixed")]
    [InlineData("1", "revolving")]
    public void A_tenth_of_an_inch_of_rod_is_never_noticed_and_a_set_up_against_itself_neither(string seed, string reel)
    {
        Session session = Session.Run(
            "cast", Small, "--across", "rod.length=6 ft 8 in,6 ft 8.1 in,6 ft 8 in", "--doubt", "20", "--set", "seed=" + seed, "--set", "reel.kind=" + reel, "--json");
        JsonElement[] pairs = [.. JsonDocument.Parse(session.Out).RootElement.GetProperty("pairs").EnumerateArray()];
        Assert.Equal(3, pairs.Length);
        Assert.All(pairs, p => Assert.Equal("you will not notice", p.GetProperty("verdict").GetString()));
        JsonElement same = pairs.Single(p => p.GetProperty("b").GetString() == "6 ft 8 in (2)" && p.GetProperty("a").GetString() == "6 ft 8 in");
        Assert.Equal(0.0, same.GetProperty("gain_m").GetDouble());
    }

    // Real casts in a list of two and in one of four, the other way round: the same numbers, digit by digit.
    [Fact]
    public void Two_rods_get_the_same_verdict_whatever_else_is_listed()
    {
        JsonElement Pair(string list, string a, string b) => JsonDocument.Parse(
            Session.Run("cast", Small, "--set", "reel.kind=fixed", "--doubt", "20", "--across", "rod.length=" + list, "--json").Out).RootElement
            .GetProperty("pairs").EnumerateArray().Single(p => p.GetProperty("a").GetString() == a && p.GetProperty("b").GetString() == b);
        JsonElement alone = Pair("6 ft 6 in,7 ft 4 in", "6 ft 6 in", "7 ft 4 in"), among = Pair("7 ft 4 in,8 ft,6 ft 6 in,7 ft", "7 ft 4 in", "6 ft 6 in");
        Assert.Equal(alone.GetProperty("gain_m").GetDouble(), -among.GetProperty("gain_m").GetDouble());
        Assert.Equal(alone.GetProperty("share").GetDouble(), among.GetProperty("share").GetDouble());
        Assert.Equal(alone.GetProperty("verdict").GetString(), among.GetProperty("verdict").GetString());
    }

    [Fact]
    public void Another_reference_and_every_pair_are_shown_on_request()
    {
        Session session = Session.Run(
            "cast", Small, "--across", "line.material=braid,nylon,fluorocarbon", "--against", "nylon", "--pairs", "--doubt", "20", "--out", _folder, "--plots", "none");
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains("Reference: nylon, as asked for", session.Out, StringComparison.Ordinal);
        Assert.Matches("braid +fluorocarbon +[-+0]", session.Out);
        Assert.Contains("10 to 30 casts with each", session.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_is_the_single_cast_with_the_same_value()
    {
        JsonElement across = JsonDocument.Parse(Session.Run("cast", Small, "--across", "cast.overhang=0.3 m,0.5 m", "--against", "0.3 m", "--doubt", "20", "--json").Out).RootElement;
        JsonElement single = JsonDocument.Parse(Session.Run("cast", Small, "--set", "cast.overhang=0.5 m", "--json").Out).RootElement;
        Assert.Equal(single.GetProperty("distance_m").GetDouble(), across.GetProperty("cases")[1].GetProperty("as_it_stands").GetProperty("distance_m").GetDouble());
    }

    [Theory]
    [InlineData("--against and --pairs go with --across", "--against", "7 ft")]
    [InlineData("--against and --pairs go with --across", "--pairs")]
    [InlineData("--against seven feet", "--across", "rod-length", "--against", "seven feet")]
    [InlineData("--against rod.length=80 ft: rod.length: \"80 ft\" is out of range", "--across", "rod.length=6 ft,7 ft", "--against", "80 ft")]
    [InlineData("given 2 times, --across 1 times", "--across", "rod-length", "--against", "7 ft", "--against", "8 ft")]
    public void A_bad_reference_ends_with_2_and_one_clear_line(string told, params string[] options)
    {
        Session session = Session.Run(["cast", Small, "--json", .. options]);
        Assert.Equal((ExitCode.BadInput, ""), (session.Exit, session.Out));
        Assert.Contains(told, session.Error.Split('\n')[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("fishes", "is unknown")]
    [InlineData("leader.length=10 in,12 in", "leader.length does not enter cast")]
    [InlineData("rod.length=6 ft,80 ft", "out of range")]
    [InlineData("cast.overhang=0.2 m:0.8 m", "a range needs a step")]
    [InlineData("hands.torque=20 N m,30", "no unit")]
    public void A_bad_comparison_ends_with_2(string across, string told)
    {
        Session session = Session.Run("cast", Small, "--json", "--across", across);
        Assert.Equal((ExitCode.BadInput, ""), (session.Exit, session.Out));
        Assert.Contains(told, session.Error, StringComparison.Ordinal);
        Assert.Single(session.Error.TrimEnd().Split('\n'));
    }
}
