using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Page;
using LureSim.Reports.Tests.Support;
using LureSim.Studies.Page;

namespace LureSim.Reports.Tests.Page;

public sealed partial class PageBuilderTests
{
    private const string Hostile = "</title></script><script>alert('x')</script><img src=x onerror=\"y\"> & \u05E9\u05DC\u05D5\u05DD \U0001F41F `z`";
    private static readonly PageEngine Solver = new([("solver.bin", "QUJD")]);

    [Fact]
    public void A_title_with_markup_script_and_other_writing_is_text_everywhere()
    {
        PageFile file = MadeUpPage.File("small-walker", "title=" + Hostile);
        string html = Build(MadeUpPage.Result(file, MadeUpPage.File("hollow-weedless")), Solver);
        Assert.DoesNotContain("<img", html, StringComparison.Ordinal);
        Assert.DoesNotContain("alert('x')</script>", html, StringComparison.Ordinal);
        Assert.Equal(3, Regex.Count(html, "<script"));
        Assert.Contains("<bdi>&lt;/title&gt;&lt;/script&gt;&lt;script&gt;alert(&#39;x&#39;)", html, StringComparison.Ordinal);
        Assert.Equal(Hostile, Data(html).GetProperty("title").GetString());
        Assert.Equal(Hostile, Data(html).GetProperty("run").GetProperty("setup").GetProperty("title").GetString());
    }

    // CSP level 3, 6.7.2: the hash is of the element's content as it stands in the page, in UTF-8.
    [Fact]
    public void The_policy_names_the_one_script_and_the_one_style_and_lets_nothing_else_in()
    {
        string html = Build(MadeUpPage.Result(MadeUpPage.File("small-walker")), Solver);
        string policy = System.Net.WebUtility.HtmlDecode(Policy().Match(html).Groups[1].Value);
        Assert.Contains($"script-src '{Hash(Module().Match(html).Groups[1].Value)}' 'wasm-unsafe-eval' blob:", policy, StringComparison.Ordinal);
        Assert.Contains($"style-src '{Hash(Style().Match(html).Groups[1].Value)}'", policy, StringComparison.Ordinal);
        Assert.StartsWith("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe-inline", policy, StringComparison.Ordinal);
        Assert.DoesNotMatch(InlineCode(), html[..html.IndexOf("<script", StringComparison.Ordinal)]);
    }

    [Fact]
    public void The_page_asks_for_nothing_outside_itself_and_is_the_same_twice()
    {
        PageResult result = MadeUpPage.Result(MadeUpPage.File("small-walker"));
        string html = Build(result, Solver);
        Assert.Equal(html, Build(MadeUpPage.Result(MadeUpPage.File("small-walker")), Solver));

        // A name of a kind of element, and one that stands where scripts made from blobs want an address and that no network knows (RFC 2606).
        Assert.All(Address().Matches(html), m => Assert.Contains(m.Value, (string[])["http://www.w3.org/2000/svg", "https://page.invalid/"]));
        Assert.Equal(["data:,"], Reference().Matches(html).Select(m => m.Groups[1].Value));
        Assert.DoesNotContain("@import", html, StringComparison.Ordinal);
    }

    public static TheoryData<string> Shipped => [.. MadeUpPage.Shipped.Select(f => Path.GetFileNameWithoutExtension(f)!)];

    // Under 6 MB with room for a solver of 4 MB (2.7 MB gzipped, a third more in base64).
    [Theory]
    [MemberData(nameof(Shipped))]
    public void Every_shipped_scenario_makes_a_page_whose_text_needs_no_script(string name)
    {
        string html = Build(MadeUpPage.Result(MadeUpPage.File(name)), Solver);
        Assert.InRange(Encoding.UTF8.GetByteCount(html), 50_000, 2_000_000);
        string text = html[..html.IndexOf("<script", StringComparison.Ordinal)];
        foreach (string id in (string[])["walk", "try", "setup", "did", "why", "rhythms", "changes", "float", "cast", "strike", "numbers", "limits", "care", "guesses", "words", "command"])
        {
            Assert.Contains($"<section id=\"{id}\"", text, StringComparison.Ordinal);
        }

        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
        Assert.Single(Regex.Matches(text, "power lines"));
        JsonElement data = Data(html), run = data.GetProperty("runs")[0];
        Assert.Equal(["own", "tried"], data.GetProperty("runs").EnumerateArray().Select(r => r.GetProperty("id").GetString()));
        Assert.Equal(25, run.GetProperty("hull").GetProperty("stations").GetArrayLength());
        Assert.Equal(8, data.GetProperty("controls").GetArrayLength());
        Assert.All(data.GetProperty("controls").EnumerateArray(), c => Assert.Empty(c.GetProperty("stops")[c.GetProperty("own").GetInt32()].GetProperty("set").EnumerateArray()));
    }

    // The bound that a page must keep; a solver cut to what it uses is 3 to 5 MB in base64.
    [Fact]
    public void With_the_solver_that_the_program_carries_a_page_of_several_files_stays_under_6_MB()
    {
        string html = Build(MadeUpPage.Result([.. ((string[])["small-walker", "large-walker", "hollow-weedless", "steep-walker"]).Select(n => MadeUpPage.File(n))]), PageEngine.Carried);
        Assert.InRange(Encoding.UTF8.GetByteCount(html), 2_000_000, 5_900_000);
        Assert.Contains("<script type=\"text/plain\" id=\"engine-dotnet.js\">", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_solver_the_page_says_so_and_carries_no_sliders()
    {
        string html = Build(MadeUpPage.Result(MadeUpPage.File("large-walker")), PageEngine.None);
        Assert.Contains("made without the solver inside", html, StringComparison.Ordinal);
        Assert.False(Data(html).TryGetProperty("controls", out _));
    }

    [Fact]
    public void A_run_that_failed_is_told_in_words()
    {
        PageFile file = MadeUpPage.File("large-walker");
        PageRun run = MadeUpPage.Run(file);
        string part = Build(new([MadeUpPage.Case(file, 0, run with { Failure = "the state stopped being finite" })], [], true), Solver);
        Assert.Contains("The model stopped early: the state stopped being finite. What follows is what it had until then.", part, StringComparison.Ordinal);
        string nothing = Build(new([MadeUpPage.Case(file, 0, run with { Result = null, Film = null, Failure = "the lure finds no float" })], [], true), Solver);
        Assert.Contains("The model could not compute this retrieve: the lure finds no float.", nothing, StringComparison.Ordinal);
        Assert.Empty(Data(nothing).GetProperty("runs").EnumerateArray());
    }

    // Wide and narrow of two drawings, each told in words; every figure of the strike is in the table beside them.
    [Fact]
    public void The_strike_is_drawn_told_and_tabled()
    {
        string html = Build(MadeUpPage.Result(MadeUpPage.File("treble-edge")), Solver);
        string section = html[html.IndexOf("<section id=\"strike\"", StringComparison.Ordinal)..];
        section = section[..section.IndexOf("</section>", StringComparison.Ordinal)];
        string[] words = [.. Told().Matches(section).Select(m => m.Groups[1].Value)];
        Assert.Equal(4, words.Length);
        Assert.All(words[..2], w => Assert.Equal("The hook gets 5.8 lb (2.7 kg) after 0.20 s: enough for both points", w));
        Assert.All(words[2..], w => Assert.StartsWith("3.1 to 8.8 lb (1.4 to 4.0 kg) of drag sets both points", w, StringComparison.Ordinal));
        Assert.Contains("<th scope=\"row\">pull on the hook, largest</th>", section, StringComparison.Ordinal);
        Assert.InRange(Encoding.UTF8.GetByteCount(section), 5_000, 60_000);
    }

    [Fact]
    public void A_page_without_strikes_has_no_section_about_them()
    {
        PageFile file = MadeUpPage.File("large-walker");
        PageCase without = MadeUpPage.Case(file, 0, MadeUpPage.Run(file)) with { Strike = null };
        Assert.DoesNotContain("id=\"strike\"", Build(new([without], [], true), Solver), StringComparison.Ordinal);
        Assert.Contains("No strike was computed: too near.", Build(new([without with { StrikeFault = "too near" }], [], true), Solver), StringComparison.Ordinal);
    }

    // By the rules of the kit: the trade's unit first, or one family alone.
    [Theory]
    [InlineData(UnitChoice.Trade, "tip of a stiff rod by 5.9\u00A0in within")]
    [InlineData(UnitChoice.Metric, "tip of a stiff rod by 15\u00A0cm within")]
    [InlineData(UnitChoice.Both, "tip of a stiff rod by 5.9\u00A0in (15\u00A0cm) within")]
    public void Units_are_those_asked_for(UnitChoice units, string told) =>
        Assert.Contains(told, Encoding.UTF8.GetString(PageBuilder.Build(MadeUpPage.Result(MadeUpPage.File("small-walker")), new(units), "luresim page", PageEngine.None)), StringComparison.Ordinal);

    private static string Build(PageResult result, PageEngine engine) => Encoding.UTF8.GetString(PageBuilder.Build(result, Shown.Both, "luresim page x.toml", engine));

    private static JsonElement Data(string html) => JsonDocument.Parse(Json().Match(html).Groups[1].Value).RootElement;

    private static string Hash(string text) => "sha256-" + Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    [GeneratedRegex("Content-Security-Policy\" content=\"([^\"]*)\"")]
    private static partial Regex Policy();

    [GeneratedRegex("<script type=\"module\">(.*?)</script>", RegexOptions.Singleline)]
    private static partial Regex Module();

    [GeneratedRegex("<style>(.*?)</style>", RegexOptions.Singleline)]
    private static partial Regex Style();

    [GeneratedRegex("id=\"data\">(.*?)</script>", RegexOptions.Singleline)]
    private static partial Regex Json();

    [GeneratedRegex("\\s(style|on[a-z]+)=")]
    private static partial Regex InlineCode();

    [GeneratedRegex("<svg class=\"(?:wide|narrow)\"[^>]* aria-label=\"([^\"]*)\"")]
    private static partial Regex Told();

    [GeneratedRegex("https?://[^\\s'\"`)]*")]
    private static partial Regex Address();

    [GeneratedRegex("<[a-z]+[^>]*\\s(?:href|src)=\"([^\"]*)\"")]
    private static partial Regex Reference();
}
