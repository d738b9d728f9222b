using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios.Tests;

/// <summary>
/// Plausible mistakes of people who fill in a scenario (Data/mistakes.toml): each is told in one line, at its place, with its key; and what the line
/// tells them to write is accepted. docs/mistakes.md holds all the lines, to be read aloud.
/// </summary>
public sealed class MistakesTests
{
    private const string Begin = "<!-- mistakes: begin (made by the tests) -->\n", End = "<!-- mistakes: end -->";
    private const int LongestLine = 420;

    // Words of the parser and of the program that mean nothing to an angler.
    private static readonly string[] Jargon = ["TOML", "token", "xpect", "xception", "node", "hoice", "Ratio", "System.", " parse", "null", "bareword", "literal"];

    private static readonly string DataFile = Path.Combine(Folder.Repository, "tests", "LureSim.Scenarios.Tests", "Data", "mistakes.toml");

    private static readonly Node Data = TomlTree.Read(File.ReadAllText(DataFile), new(DataFile, 0), new FaultList())!;

    private static readonly string Good = Data.Find("scenario")!.Text;

    private static readonly int[] All = [.. Enumerable.Range(0, Data.Find("mistake")!.Items.Count)];

    public static TheoryData<int> Rows => [.. All];

    [Fact]
    public void There_are_more_than_a_hundred_and_the_scenario_is_good()
    {
        Assert.InRange(All.Length, 100, 1000);
        Assert.Empty(Texts.Errors(Good));
        Assert.Equal(All.Length, All.Select(r => (Of(r, "from"), Of(r, "typed"))).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_mistake_is_one_line_with_its_place_its_key_and_what_to_do(int row)
    {
        string text = Typed(row), line = Assert.Single(Texts.Errors(text));
        string key = Of(row, "key");
        Assert.Matches(key.Length == 0 ? @"^s\.toml\(\d+,\d+\): " : $@"^s\.toml\(\d+,\d+\): {Regex.Escape(key)}: ", line);
        Assert.Contains(Of(row, "says"), line, StringComparison.Ordinal);
        Assert.Contains(Of(row, "write"), line, StringComparison.Ordinal);
        Assert.InRange(line.Length, 20, LongestLine);
        Assert.All(Jargon, word => Assert.DoesNotContain(word, Told(row, line), StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_place_is_where_the_mistake_is(int row)
    {
        if (Of(row, "typed").Length == 0)
        {
            return; // What is missing is told at its table.
        }

        string line = Assert.Single(Texts.Errors(Typed(row)));
        int told = int.Parse(line[7..line.IndexOf(',', StringComparison.Ordinal)], CultureInfo.InvariantCulture);
        int first = Good[..Good.IndexOf(Of(row, "from"), StringComparison.Ordinal)].Count(c => c == '\n') + 1;
        // A list is one thing over several lines.
        int list = Of(row, "key") == "lure.hooks" ? 3 : 0;
        Assert.InRange(told, first - list, first + (list / 3) + Of(row, "typed").Count(c => c == '\n'));
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void What_the_line_says_to_write_is_accepted(int row)
    {
        string write = Of(row, "write");
        if (write.Length == 0)
        {
            return;
        }

        string typed = Of(row, "typed"), instead = Of(row, "instead") is { Length: > 0 } part ? part : typed, by = Of(row, "as") is { Length: > 0 } other ? other : write;
        Assert.Contains(instead, typed, StringComparison.Ordinal);
        string mended = Good.Replace(Of(row, "from"), typed.Replace(instead, by, StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Empty(Texts.Errors(mended));
    }

    /// <summary>Set LURESIM_WRITE_DOCS=1 to write the page anew.</summary>
    [Fact]
    public void The_page_holds_every_line()
    {
        string path = Path.Combine(Folder.Repository, "docs", "mistakes.md"), page = File.ReadAllText(path);
        int from = page.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length, to = page.IndexOf(End, StringComparison.Ordinal);
        Assert.True(from >= Begin.Length && to >= from, "the page has lost its marks");
        var lines = new StringBuilder("\n| typed | told |\n|---|---|\n");
        foreach (int row in All)
        {
            string typed = Of(row, "typed").Length == 0 ? $"(no {Of(row, "from")})" : Of(row, "typed");
            string told = Texts.Errors(Typed(row))[0];
            lines.Append("| `").Append(Cell(typed)).Append("` | ").Append(Cell(told[(told.IndexOf(')', StringComparison.Ordinal) + 3)..])).Append(" |\n");
        }

        lines.Append('\n');
        if (Environment.GetEnvironmentVariable("LURESIM_WRITE_DOCS") == "1")
        {
            File.WriteAllText(path, page[..from] + lines + page[to..]);
        }
        else
        {
            Assert.Equal(lines.ToString(), page[from..to]);
        }
    }

    // The line without what it repeats of the person's own words.
    private static string Told(int row, string line) => Of(row, "typed") is { Length: > 0 } typed ? line.Replace(typed, "", StringComparison.Ordinal) : line;

    private static string Cell(string text) => text.Replace("\n", " / ", StringComparison.Ordinal).Replace("|", "\\|", StringComparison.Ordinal);

    private static string Typed(int row) => Good.Replace(Of(row, "from"), Of(row, "typed"), StringComparison.Ordinal);

    private static string Of(int row, string name) => Data.Find("mistake")!.Items[row].Find(name)?.Text ?? "";
}
