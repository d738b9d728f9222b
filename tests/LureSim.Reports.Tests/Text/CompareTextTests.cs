using System.Text.Json;
using LureSim.Reports.Compare;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Tests.Support;
using LureSim.Studies.Compare;

namespace LureSim.Reports.Tests.Text;

public sealed class CompareTextTests
{
    [Fact]
    public void Every_measure_has_words() =>
        Assert.Empty(MeasureSets.Measures.Except(MeasureWords.All.Select(w => w.Measure)).Select(m => m.Key));

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(10)]
    public void No_line_is_wider_than_the_terminal(int count)
    {
        string text = CompareText.Build(MadeUpCompare.Result(count), RunNotes.None);
        Assert.All(text.Split('\n'), line => Assert.InRange(line.Length, 0, Closing.Width + 20));
        Assert.EndsWith("measure before you trust it.\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_recommendation_is_three_sentences_and_names_numbers()
    {
        CompareResult result = MadeUpCompare.Result();
        IReadOnlyList<string> three = AdviceText.Sentences(result, Advice.Of(result), Shown.Both);
        Assert.Equal(3, three.Count);
        Assert.Equal("Take the 7 ft 4 in for distance (27.4 against 21.9 m with the 6 ft 6 in)", three[0].Split(';')[0].Split(" and")[0]);
        Assert.StartsWith("You pay for it with ", three[1], StringComparison.Ordinal);
        Assert.Contains(" % more swing weight", three[1], StringComparison.Ordinal);
        Assert.Contains("; take the 6 ft 6 in if you care more for a lighter swing", three[1], StringComparison.Ordinal);
        Assert.StartsWith("You will not notice ", three[2], StringComparison.Ordinal);
        Assert.All(three, s => Assert.EndsWith(".", s, StringComparison.Ordinal));
    }

    [Fact]
    public void Json_holds_every_pair_in_every_row()
    {
        using var stream = new MemoryStream();
        CompareResult result = MadeUpCompare.Result();
        CompareJson.Write(stream, result, RunNotes.None);
        JsonElement json = JsonDocument.Parse(stream.ToArray()).RootElement;
        Assert.Equal(3 * MeasureSets.Measures.Count, json.GetProperty("differences").GetArrayLength());
        JsonElement first = json.GetProperty("differences")[0];
        Assert.Equal(("distance_m", "m", "6 ft 6 in", "7 ft"), (Text(first, "measure"), Text(first, "unit"), Text(first, "a"), Text(first, "b")));
        Assert.Equal(3, json.GetProperty("recommendation").GetArrayLength());
        Assert.Equal(1 + (3 * MeasureSets.Measures.Count), CompareFiles.Csv(result).Trim().Split('\n').Length);
    }

    private static string? Text(JsonElement item, string key) => item.GetProperty(key).GetString();
}
