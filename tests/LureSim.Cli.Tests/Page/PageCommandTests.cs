using System.Text;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Page;

public sealed class PageCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("luresim-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Two_files_make_one_page_with_the_command_that_makes_it_again()
    {
        string[] files = [Session.Scenario("small-walker"), Session.Scenario("hollow-weedless")];
        Session session = Session.Run(["page", .. files, "--set", "retrieve.duration=4 s", "--quick", "--units", "metric", "--out", _folder]);
        Assert.Equal((ExitCode.Done, ""), (session.Exit, session.Error));
        Assert.StartsWith("Page: ", session.Out, StringComparison.Ordinal);
        string html = File.ReadAllText(Path.Combine(_folder, "small-walker.html"), Encoding.UTF8);
        Assert.Contains("Small walker on 30-lb braid with a nylon leader</bdi> and <bdi>Hollow weedless lure in an opening", html, StringComparison.Ordinal);
        Assert.Contains($"luresim page {files[0]} {files[1]} --set &quot;retrieve.duration=4 s&quot; --units metric --quick</code>", html, StringComparison.Ordinal);
        Assert.Contains("Rhythms were left out of this page", html, StringComparison.Ordinal);
        Assert.DoesNotContain(" in)", html[..html.IndexOf("<script", StringComparison.Ordinal)], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no such file", "elsewhere.toml")]
    [InlineData("--units: 'miles' is none of its words", "--units", "miles")]
    [InlineData("retrieve.cadence", "--set", "retrieve.cadence=fast")]
    [InlineData("a folder is due, and the page in it is called small-walker.html", "--out", "x.html")]
    [InlineData("too many for one page; at most 4", "SMALL", "SMALL", "SMALL", "SMALL")]
    public void What_is_wrong_is_one_line(string told, params string[] more)
    {
        string small = Session.Scenario("small-walker");
        Session session = Session.Run(["page", small, .. more.Select(m => m == "SMALL" ? small : m), .. more.Contains("--out") ? Array.Empty<string>() : ["--out", _folder]]);
        Assert.Equal((ExitCode.BadInput, ""), (session.Exit, session.Out));
        Assert.Single(session.Error.Trim().Split('\n'));
        Assert.Contains(told, session.Error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(_folder));
    }

    [Fact]
    public void Stopped_it_leaves_nothing()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Session session = Session.Run(stop.Token, "page", Session.Scenario("small-walker"), "--out", _folder);
        Assert.Equal(ExitCode.Stopped, session.Exit);
        Assert.Empty(Directory.GetFiles(_folder));
    }
}
