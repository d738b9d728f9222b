using CsCheck;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Tests;

/// <summary>A damaged file ends in a run or in faults, never in an exception.</summary>
public class MutationTests
{
    private const string Letters = "\"'[]{}=,.#\n\\ 019-eE+_abmnoprx:/\u2019\u00B0";

    private const string Garbage = "\"'[]{}=,.# \\ 0123456789-+/:%abcdefgiklmnoprstuxz\u00BD\u2019\u201D";

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
    [InlineData("[lure]\ndensity = \"1100 kg\\n/m3\"")]
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

    // Any text as the value of any key, quoted or bare: at most one line for it, and for what it makes impossible elsewhere, none of them twice.
    [Fact]
    public void Garbage_in_any_key() =>
        Gen.Select(Gen.Int[0, ScenarioSchema.Keys.Count - 1], Gen.Char[Garbage].Array[0, 12], Gen.Bool).Sample((at, chars, quoted) =>
        {
            KeySpec key = ScenarioSchema.Keys[at];
            string value = new(chars), typed = quoted ? $"\"{value.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"" : value;
            string[] lines = key.Table.Length == 0 ? [$"{key.Path} = {typed}"] : [$"[{key.Table}]", $"{key.Name} = {typed}"];
            string text = $"{(key.Table.Length == 0 ? lines[0] + "\n" : "")}base = \"x.toml\"\n{(key.Table.Length == 0 ? "" : string.Join('\n', lines) + "\n")}";
            using var folder = new Folder();
            folder.Write("x.toml", Hollow);
            string[] told = [.. ScenarioSource.Read(folder.Write("s.toml", text)).Errors.Select(e => e.ToString())];
            return told.All(t => !t.Contains('\n', StringComparison.Ordinal) && !t.Contains("xception", StringComparison.Ordinal))
                && told.Count(t => t.Contains($": {key.Path}: ", StringComparison.Ordinal)) <= 1 && told.Distinct().Count() == told.Length;
        }, iter: 1000, threads: 1);

    private static bool RunOrFaults(string text)
    {
        ScenarioResult result = ScenarioSource.FromText(text).Resolve();
        return result.IsValid
            ? SpecText.Of(result.Scenario!).Length > 0
            : result.Errors.Count > 0 && result.Errors.All(e => !e.ToString().Contains('\n', StringComparison.Ordinal));
    }
}
