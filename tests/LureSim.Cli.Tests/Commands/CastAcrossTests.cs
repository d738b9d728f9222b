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
        JsonElement cases = JsonDocument.Parse(one.Out).RootElement.GetProperty("cases");
        Assert.Equal(6, cases.GetArrayLength());
        Assert.Equal("6 ft 6 in", cases[2].GetProperty("compared_with").GetString());
        Assert.Contains(cases[2].GetProperty("verdict").GetString(), (string[])["you will notice", "you will not"]);
        Assert.True(cases[2].GetProperty("gain_p10_m").GetDouble() < cases[2].GetProperty("gain_p90_m").GetDouble());
        Assert.True(File.Exists(Path.Combine(_folder, "cast_across.png")));
        Assert.Equal(21, File.ReadAllLines(Path.Combine(_folder, "cast_across_draws.csv")).Length);
        Assert.Equal(one.Out, Session.Run("cast", Small, "--across", "rod-length", "--doubt", "20", "--threads", "2", "--json").Out);
    }

    [Fact]
    public void Words_are_compared_with_the_first_and_the_text_says_so()
    {
        Session session = Session.Run("cast", Small, "--across", "line.material=braid,nylon", "--doubt", "20", "--out", _folder, "--plots", "none");
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains("Gain: of the mean, on the first", session.Out, StringComparison.Ordinal);
        Assert.Contains("16 (scatter/gain)^2", session.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_is_the_single_cast_with_the_same_value()
    {
        JsonElement across = JsonDocument.Parse(Session.Run("cast", Small, "--across", "cast.overhang=0.3 m,0.5 m", "--doubt", "20", "--json").Out).RootElement;
        JsonElement single = JsonDocument.Parse(Session.Run("cast", Small, "--set", "cast.overhang=0.5 m", "--json").Out).RootElement;
        Assert.Equal(single.GetProperty("distance_m").GetDouble(), across.GetProperty("cases")[1].GetProperty("distance_m").GetDouble());
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
