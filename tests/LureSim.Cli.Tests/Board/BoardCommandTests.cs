using System.Text.Json;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Board;

/// <summary>The command <c>board</c> as a person types it.</summary>
public sealed class BoardCommandTests
{
    private static readonly string[] Plank = ["board", "--length", "36 in", "--width", "3 15/16 in", "--thickness", "2 in", "--mass", "22.5 oz"];

    [Fact]
    public void A_board_gives_a_line_to_paste_and_a_piece_to_check()
    {
        Session session = Session.Run([.. Plank, "--material", "balsa", "--offcut", "4 in"]);
        Assert.Equal((ExitCode.Done, ""), (session.Exit, session.Error));
        Assert.Contains("lure.density = \"137 kg/m3\"", session.Out, StringComparison.Ordinal);
        Assert.Contains("0.137 g/cm3", session.Out, StringComparison.Ordinal);
        Assert.Contains("should weigh 2.5 oz (71 g)", session.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.DoesNotContain("?", session.Out, StringComparison.Ordinal);
        Assert.All(session.Out.Split('\n'), line => Assert.True(line.Length <= 100, line));
    }

    [Fact]
    public void The_mass_of_the_whole_on_the_measures_of_a_quarter_is_asked_about()
    {
        JsonElement json = JsonDocument.Parse(Session.Run([.. Plank.Select(w => w == "36 in" ? "9 in" : w), "--material", "balsa", "--json"]).Out).RootElement;
        Assert.True(json.GetProperty("is_doubtful").GetBoolean());
        Assert.Equal(549.2, json.GetProperty("density_kg_m3").GetDouble(), 0.1);
        Assert.Contains(json.GetProperty("questions").EnumerateArray(), q => q.GetProperty("factor").GetDouble() == 0.25 && Math.Abs(q.GetProperty("density_kg_m3").GetDouble() - 137.3) < 0.1);
    }

    [Theory]
    [InlineData("--mass", "22.5", "board: --mass: \"22.5\": it has no unit")]
    [InlineData("--width", "0 in", "board: --width: \"0 in\" is out of range; allowed: 0.1 mm to 20 m")]
    [InlineData("--material", "teak", "board: --material: \"teak\" is not known; allowed: balsa, ")]
    [InlineData("--offcut", "3 in x 2 in", "board: --offcut: \"3 in x 2 in\" is neither a length nor three measures")]
    public void Bad_input_is_refused_in_one_line(string option, string value, string says)
    {
        List<string> words = [.. Plank];
        int at = words.IndexOf(option);
        words.RemoveRange(at < 0 ? words.Count : at, at < 0 ? 0 : 2);
        Session session = Session.Run([.. words, option, value]);
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.StartsWith(says, session.Error, StringComparison.Ordinal);
        Assert.Empty(session.Out);
        Assert.Single(session.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }
}
