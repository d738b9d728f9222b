using System.Text.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Sayings;
using LureSim.Reports.Tests.Support;

namespace LureSim.Reports.Tests.Text;

public sealed class SayingsTextTests
{
    private static string Flat(Shown shown) => string.Join(' ', SayingsText.Build(MadeUpSayings.Report(), shown).Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    [Fact]
    public void The_table_says_verdict_number_and_who_says_so()
    {
        string text = Flat(Shown.Both);
        Assert.Contains("longer-rod-casts-further holds only when +0.80 m (-0.40 to 3.3) 9 for, 0 against", text, StringComparison.Ordinal);
        Assert.Contains("reeled-straight holds 2.0 deg (0.72 to 3.3) common practice, no source", text, StringComparison.Ordinal);
        Assert.Contains("short-leader cannot be told -67 % (-100 to 0) 4 for, 2 against", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_paragraph_says_where_why_and_what_is_so_instead()
    {
        string text = Flat(Shown.Both);
        Assert.Contains("Holds only when: light lure (not: very long name of a place: heavy lure on thick nylon, two hands, against the wind; cannot be told: no line).", text, StringComparison.Ordinal);
        Assert.Contains("false: no difference that is noticed", text, StringComparison.Ordinal);
        Assert.Contains("No line: 9 of 9 draws have no value (the line broke).", text, StringComparison.Ordinal);
        Assert.Contains("Light lure: moved with it: rod energy 0.8 to 1.3 J; it rests most on cast.effort.", text, StringComparison.Ordinal);
        Assert.Contains("At 2 a second: true in the draws, but with twice the nodes the chance goes from 67 % to 40 %.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Units_are_those_asked_for()
    {
        Assert.Contains("+9.2 ft (7.1 to", Flat(new(UnitChoice.Trade)), StringComparison.Ordinal);
        Assert.Contains("+2.8 m (2.2 to 3.4)", Flat(new(UnitChoice.Metric)), StringComparison.Ordinal);
    }

    // 1e-4 N weigh 0.0102 g.
    [Fact]
    public void A_number_too_small_for_the_decimals_of_its_unit_keeps_two_digits()
    {
        string text = SayingsText.Build(new([MadeUpSayings.Tiny()], 1, new(9)), new(UnitChoice.Metric));
        Assert.Contains("+0.010 g (0.004 to 0.017)", text, StringComparison.Ordinal);
        Assert.DoesNotContain("0 to 0", text.Replace("0.0", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void A_stopped_study_says_so()
    {
        Assert.StartsWith("Sayings put to the test (stopped: 1 of 3)", SayingsText.Build(MadeUpSayings.Stopped(), Shown.Both), StringComparison.Ordinal);
        Assert.Contains("(stopped after 1 of 3)", SayingsChart.Build(MadeUpSayings.Stopped()).Model.Title.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void JSON_and_CSV_hold_a_place_each_without_a_number_that_is_none()
    {
        using var stream = new MemoryStream();
        SayingsJson.Write(stream, MadeUpSayings.Report());
        JsonElement json = JsonDocument.Parse(stream.ToArray()).RootElement;
        JsonElement first = json.GetProperty("sayings")[0];
        Assert.Equal("holds only when", first.GetProperty("verdict").GetString());
        Assert.Equal(["true", "false", "cannot be told"], first.GetProperty("places").EnumerateArray().Select(p => p.GetProperty("word").GetString()));
        Assert.Equal(JsonValueKind.Null, first.GetProperty("places")[2].GetProperty("number").ValueKind);
        string[] rows = SayingsFiles.Csv(MadeUpSayings.Report()).TrimEnd('\n').Split('\n');
        Assert.Equal(6, rows.Length);
        Assert.StartsWith("saying,verdict,test,place,command,figure,claim", rows[0], StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", string.Join('\n', rows), StringComparison.Ordinal);
    }
}
