using CsCheck;

namespace LureSim.Scenarios.Tests;

/// <summary>A damaged file ends in a run or in faults, never in an exception.</summary>
public class MutationTests
{
    private const string Letters = "\"'[]{}=,.#\n\\ 019-eE+_abmnoprx:/\u2019\u00B0";

    private static readonly string Hollow = File.ReadAllText(Path.Combine(Folder.Shipped, "hollow-weedless.toml"));

    [Fact]
    public void Damaged_characters() =>
        Gen.Select(Gen.Int[0, Hollow.Length - 1], Gen.Int[0, 4], Gen.Char[Letters].Array[0, 3]).Array[1, 3].Sample(edits =>
        {
            string text = Hollow;
            foreach ((int at, int cut, char[] add) in edits)
            {
                int from = Math.Min(at, text.Length);
                text = text[..from] + new string(add) + text[Math.Min(from + cut, text.Length)..];
            }

            return RunOrFaults(text);
        });

    [Theory]
    [InlineData("title = \"x\\")]
    [InlineData("title = \"\"\"x\\")]
    [InlineData("title = \"\\u")]
    [InlineData("title = \"\\uD800\"")]
    [InlineData("title = \"\\U00110000\"")]
    [InlineData("title = \"\uD800\"")]
    [InlineData("title = '")]
    [InlineData("# \uDC00")]
    public void A_file_that_breaks_off_in_a_string(string text) => Assert.True(RunOrFaults(text));

    [Fact]
    public void Lines_lost_or_swapped() =>
        Gen.Int[0, Hollow.Count(c => c == '\n')].Array[1, 6].Sample(moves =>
        {
            List<string> lines = [.. Hollow.Split('\n')];
            for (int i = 0; i < moves.Length; i++)
            {
                string line = lines[moves[i] % lines.Count];
                lines.RemoveAt(moves[i] % lines.Count);
                if (i % 2 == 1)
                {
                    lines.Insert(moves[0] % lines.Count, line);
                }
            }

            return RunOrFaults(string.Join('\n', lines));
        });

    private static bool RunOrFaults(string text)
    {
        ScenarioResult result = ScenarioSource.FromText(text).Resolve();
        return result.IsValid
            ? SpecText.Of(result.Scenario!).Length > 0
            : result.Errors.Count > 0 && result.Errors.All(e => !e.ToString().Contains('\n', StringComparison.Ordinal));
    }
}
