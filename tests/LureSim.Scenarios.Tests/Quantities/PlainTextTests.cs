using System.Text.Json;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Tests.Quantities;

public sealed class PlainTextTests
{
    private static readonly JsonSerializerOptions Relaxed = new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    [Theory]
    [InlineData("7'6\" rod, Größe, 釣り, \U0001F41F", "7'6\" rod, Größe, 釣り, \U0001F41F")]
    [InlineData("a\u001b[31mb", "a\\u001B[31mb")]
    [InlineData("a\r\n\tb", "a\\u000D\\u000A\\u0009b")]
    [InlineData("\u007f\u0085\u009b", "\\u007F\\u0085\\u009B")]
    [InlineData("\u202a\u202e\u2066\u2069\u200e\u061c\ufeff\u2028", "\\u202A\\u202E\\u2066\\u2069\\u200E\\u061C\\uFEFF\\u2028")]
    [InlineData("\U000E0041", "\\uDB40\\uDC41")]
    public void What_steers_is_escaped_and_the_rest_stays(string text, string plain)
    {
        Assert.Equal(plain, PlainText.Escape(text));
        Assert.Equal(plain == text, PlainText.Fault(text) is null);
    }

    [Fact]
    public void Half_a_pair_is_escaped() => Assert.Equal("\\uD83D!", PlainText.Escape(new string(['\ud83d', '!'])));

    [Fact]
    public void Line_feeds_may_stay() => Assert.Equal("a\nb\\u000D", PlainText.Escape("a\nb\r", keepLines: true));

    [Fact]
    public void Json_that_goes_through_it_means_the_same()
    {
        const string Text = "a\u202eb\u009b\u2028";
        string json = JsonSerializer.Serialize(Text, Relaxed);
        Assert.Equal(Text, JsonSerializer.Deserialize<string>(PlainText.Escape(json)));
    }
}
