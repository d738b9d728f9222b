using LureSim.Reports.Page;

namespace LureSim.Reports.Tests.Page;

public sealed class MarkupTests
{
    // The five signs that HTML gives a meaning in text or between quotes (HTML standard, 13.1.2).
    [Fact]
    public void What_has_a_meaning_in_HTML_is_told_as_a_sign()
    {
        Markup inside = Markup.Tag("p", [("title", "a\"b'c<d>&")], "</p><script>alert(1)</script> & \"q\" 'r'");
        Assert.Equal("<p title=\"a&quot;b&#39;c&lt;d&gt;&amp;\">&lt;/p&gt;&lt;script&gt;alert(1)&lt;/script&gt; &amp; &quot;q&quot; &#39;r&#39;</p>", inside.Html);
    }

    [Fact]
    public void What_steers_is_told_as_an_escape_and_a_name_is_kept_to_itself()
    {
        Assert.Equal("<bdi>\\u202Eabc\\u0007 \u05D0\u05D1 \U0001F41F</bdi>", Markup.Name("\u202Eabc\u0007 \u05D0\u05D1 \U0001F41F").Html);
        Assert.Equal("\\uD83D", Markup.Text("\uD83D").Html);
    }

    [Fact]
    public void JSON_cannot_end_its_element_nor_a_line_of_script()
    {
        string html = Markup.Json("data", "{\"t\":\"</script><!-- & \u2028 \u2029\"}").Html;
        Assert.Equal("<script type=\"application/json\" id=\"data\">{\"t\":\"\\u003c/script\\u003e\\u003c!-- \\u0026 \\u2028 \\u2029\"}</script>", html);
        Assert.Equal("</script><!-- & \u2028 \u2029", System.Text.Json.JsonDocument.Parse(html[(html.IndexOf('>') + 1)..html.LastIndexOf('<')]).RootElement.GetProperty("t").GetString());
    }

    [Theory]
    [InlineData("a</SCRIPT>b")]
    [InlineData("a<!--b")]
    public void A_script_that_would_end_itself_is_refused(string content) => Assert.Throws<ArgumentException>(() => Markup.Raw("script", [], content));

    [Fact]
    public void A_number_stays_with_its_unit_and_what_is_typed_is_code() =>
        Assert.Equal("it glides 3.1\u00A0in (7.9\u00A0cm) in 5\u00A0% of it; <code class=\"typed\">luresim --set</code> &lt;b&gt;", Markup.Prose("it glides 3.1 in (7.9 cm) in 5 % of it; `luresim --set` <b>").Html);

    [Theory]
    [InlineData("scenarios/a.toml", "scenarios/a.toml")]
    [InlineData("retrieve.cadence=1 /s", "\"retrieve.cadence=1 /s\"")]
    [InlineData("it's \"so\" $HOME", "'it'\\''s \"so\" $HOME'")]
    [InlineData("", "\"\"")]
    public void A_word_of_a_command_can_be_typed(string word, string typed) => Assert.Equal(typed, ShellWord.Of(word));
}
