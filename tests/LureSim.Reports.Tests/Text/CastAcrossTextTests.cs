using System.Globalization;
using System.Text;
using System.Text.Json;
using LureSim.Model.Reels;
using LureSim.Reports.Cast;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Tests.Support;
using LureSim.Studies.Cast;

namespace LureSim.Reports.Tests.Text;

/// <summary>What a comparison of casts prints: the same numbers everywhere, and none that contradicts another.</summary>
public sealed class CastAcrossTextTests
{
    private static readonly RunNotes None = new([], []);

    // Two means and a gain, each rounded to 0.1 m: they differ by 0.1 m at most, and none says more where the other says less.
    [Fact]
    public void The_shown_gain_is_the_difference_of_the_shown_means_in_rows_and_pairs()
    {
        int compared = 0, dashes = 0;
        for (int seed = 0; seed < 60; seed++)
        {
            CastAcross result = Drawn(seed, seed % 3 == 0 ? 0.04 : 0.0);
            string[] lines = CastAcrossText.Build(result, None, pairs: true).Split('\n');
            Dictionary<string, string[]> rows = lines.Skip(4).Take(5).Select(Cells).ToDictionary(c => c[0]);
            foreach (string[] pair in lines.Skip(11).Take(10).Select(Cells).Concat(rows.Values.Where(r => r.Length > 4).Select(r => (string[])[result.Reference.Label, r[0], r[3]])))
            {
                if (Mean(rows[pair[0]]) is double from && Mean(rows[pair[1]]) is double to)
                {
                    double gain = Number(pair[2]);
                    Assert.InRange(Math.Abs(gain - (to - from)), 0.0, 0.1 + 1e-9);
                    Assert.True(gain * (to - from) >= 0.0, string.Join(' ', pair));
                    compared++;
                }
                else
                {
                    dashes++;
                }
            }
        }

        Assert.True(compared > 400 && dashes > 20, $"{compared} compared, {dashes} without a mean");
    }

    [Fact]
    public void Json_holds_every_pair_once_and_the_rows_say_the_same()
    {
        CastAcross result = Drawn(1, 0.0);
        JsonElement json = Json(result);
        JsonElement[] cases = [.. json.GetProperty("cases").EnumerateArray()], pairs = [.. json.GetProperty("pairs").EnumerateArray()];
        Assert.Equal("c", json.GetProperty("reference").GetString());
        Assert.Equal("the scenario's own", json.GetProperty("reference_is").GetString());
        Assert.Equal(["a b", "a c", "a d", "a e", "b c", "b d", "b e", "c d", "c e", "d e"], pairs.Select(p => $"{p.GetProperty("a")} {p.GetProperty("b")}"));
        foreach (JsonElement pair in pairs)
        {
            double Mean(string end) => cases.Single(c => c.GetProperty("value").GetString() == pair.GetProperty(end).GetString()).GetProperty("mean_m").GetDouble();
            double share = pair.GetProperty("share").GetDouble();
            Assert.Equal(Mean("b") - Mean("a"), pair.GetProperty("gain_m").GetDouble(), 1e-9);
            Assert.Equal(share >= 2.0 / 3.0 ? "you will notice" : share <= 1.0 / 3.0 ? "you will not notice" : "you may notice", pair.GetProperty("verdict").GetString());
        }

        // From c to e the pair reads as the row does, from a to c the other way round.
        Assert.Equal(pairs[8].GetProperty("share").GetDouble(), cases[4].GetProperty("share").GetDouble());
        Assert.Equal(pairs[1].GetProperty("gain_m").GetDouble(), -cases[0].GetProperty("gain_m").GetDouble());
        Assert.False(cases[2].TryGetProperty("gain_m", out _));
    }

    [Fact]
    public void Failed_draws_are_counted_in_every_output()
    {
        CastAcross whole = MadeUpCast.Across(), result = whole with { Cases = [whole.Cases[0], whole.Cases[1] with { Draws = MadeUpCast.Draws(27.0, double.NaN, 41.0) }, .. whole.Cases.Skip(2)] };
        string text = CastAcrossText.Build(result, None);
        Assert.Contains("Failed draws: mid 1 of 3.", text, StringComparison.Ordinal);
        Assert.Contains("Where a dash stands for the mean", text, StringComparison.Ordinal);
        Assert.Contains("No draw failed.", CastAcrossText.Build(whole, None), StringComparison.Ordinal);
        JsonElement mid = Json(result).GetProperty("cases")[1];
        Assert.Equal((3, 1, JsonValueKind.Null), (mid.GetProperty("draws").GetInt32(), mid.GetProperty("failed_draws").GetInt32(), mid.GetProperty("mean_m").ValueKind));
        string[] rows = CastAcrossCsv.Cases(result).Split('\n');
        Assert.Equal("value,failure,draws,failed_draws,mean_m", string.Join(',', rows[0].Split(',').Take(5)));
        Assert.StartsWith("mid,,3,1,,", rows[2], StringComparison.Ordinal);
    }

    [Fact]
    public void The_reference_is_named_and_said_to_be_the_scenarios_own_or_asked_for()
    {
        CastAcross own = MadeUpCast.Across();
        Assert.Contains("Reference: short, the scenario's own;", CastAcrossText.Build(own, None), StringComparison.Ordinal);
        Assert.Contains("Reference: longest, as asked for;", CastAcrossText.Build(own with { ReferenceIndex = 3, ReferenceIsOwn = false }, None), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_pair_is_shown_on_request_and_for_up_to_three_set_ups()
    {
        CastAcross four = MadeUpCast.Across(), three = four with { Cases = [.. four.Cases.Where(c => c.Cast is not null)] };
        Assert.DoesNotContain("from  ", CastAcrossText.Build(four, None), StringComparison.Ordinal);
        Assert.Matches("mid +longest +-3\\.5", CastAcrossText.Build(four, None, pairs: true));
        Assert.Matches("mid +longest +-3\\.5", CastAcrossText.Build(three, None));
        Assert.Equal(4, CastAcrossCsv.Pairs(four).TrimEnd('\n').Split('\n').Length);
    }

    // A reference without a cast leaves the other pairs.
    [Fact]
    public void Without_a_cast_of_the_reference_nothing_is_compared_with_it()
    {
        CastAcross result = MadeUpCast.Across() with { ReferenceIndex = 2 };
        string text = CastAcrossText.Build(result, None, pairs: true);
        Assert.DoesNotContain("short +30.3.+notice", text, StringComparison.Ordinal);
        Assert.Matches("short +mid +\\+4", text);
        Assert.All(Json(result).GetProperty("cases").EnumerateArray(), c => Assert.False(c.TryGetProperty("verdict", out _)));
    }

    [Theory]
    [InlineData(0.04, "0.0")]
    [InlineData(-0.04, "0.0")]
    [InlineData(0.06, "+0.1")]
    [InlineData(-1.26, "-1.3")]
    public void A_gain_that_rounds_to_nothing_has_no_sign(double gain, string text) => Assert.Equal(text, CastAcrossWords.Gain(gain));

    [Fact]
    public void The_rule_is_told_with_its_numbers()
    {
        string text = CastAcrossText.Build(MadeUpCast.Across(), None).ReplaceLineEndings(" ");
        Assert.Contains("10 to 30 casts with each (common practice, no source)", text, StringComparison.Ordinal);
        Assert.All(text.Split('\n'), line => Assert.True(line.Length > 0));
        Assert.All(CastAcrossText.Build(Drawn(2, 0.0), None, pairs: true).Split('\n'), line => Assert.InRange(line.Length, 0, Closing.Width));
    }

    // Five set-ups, the third the reference; a set-up gains anything from nothing to four metres, and in some a draw fails.
    private static CastAcross Drawn(int seed, double narrow)
    {
        var random = new Random(seed);
        double[] luck = [.. Enumerable.Range(0, 12).Select(_ => 20.0 + (15.0 * random.NextDouble()))];
        CastCase Case(string label, int hole) => new(
            label, MadeUpCast.Result(ReelKind.Fixed), null, Draws(luck, random.NextDouble() * (narrow > 0.0 ? narrow : 4.0), random, hole));
        return new("Made up", "rod length, ft", null, [.. "abcde".Select((c, i) => Case(c.ToString(), seed % 5 == 2 && i == 1 ? 3 : -1))], 2, true);
    }

    private static CastDraw[] Draws(double[] luck, double gain, Random random, int hole) =>
        MadeUpCast.Draws([.. luck.Select((x, i) => i == hole ? double.NaN : x + gain + (gain * random.NextDouble()))]);

    private static JsonElement Json(CastAcross result)
    {
        using var stream = new MemoryStream();
        CastAcrossJson.Write(stream, result, None);
        return JsonDocument.Parse(Encoding.UTF8.GetString(stream.ToArray())).RootElement;
    }

    // Cells lie two blanks or more apart.
    private static string[] Cells(string line) => [.. line.Split("  ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];

    private static double? Mean(string[] row) => row[1] == "-" ? null : Number(row[1].Split(' ')[0]);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
