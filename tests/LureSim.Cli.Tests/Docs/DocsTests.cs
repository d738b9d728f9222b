using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Docs;

/// <summary>The pages: every link leads somewhere, every page can be reached from the map, and what a page has its reader type is understood.</summary>
public sealed partial class DocsTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("docs").FullName;

    private static IEnumerable<string> Pages => [.. Directory.GetFiles(Path.Combine(Root(), "docs"), "*.md"), Path.Combine(Root(), "README.md"), Path.Combine(Root(), "DEVELOPERS.md")];

    public static TheoryData<string, string> Typed
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (string page in Pages.Where(p => Path.GetFileName(p).StartsWith("for-", StringComparison.Ordinal)))
            {
                foreach (Match m in CommandLine().Matches(File.ReadAllText(page)).Cast<Match>())
                {
                    data.Add(Path.GetFileName(page), m.Groups[1].Value);
                }
            }

            return data;
        }
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Every_link_leads_to_a_file_and_to_a_heading_of_it()
    {
        string[] broken = [.. Pages.SelectMany(page => Links(page).Where(l => !Leads(page, l)).Select(l => $"{Path.GetFileName(page)}: {l}"))];
        Assert.True(broken.Length == 0, string.Join("; ", broken));
    }

    [Fact]
    public void A_link_to_nothing_is_seen()
    {
        string page = Path.Combine(_folder, "a.md");
        File.WriteAllText(page, "# Two words\n[a](b.md) [b](#two-words) [c](#three-words) `[d](e.md)`\n```\n[f](g.md)\n```\n");
        Assert.Equal(["b.md", "#three-words"], Links(page).Where(l => !Leads(page, l)));
    }

    [Fact]
    public void Every_page_can_be_reached_from_the_map_and_the_map_from_the_readme()
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var open = new Queue<string>([Path.Combine(Root(), "docs", "README.md")]);
        while (open.TryDequeue(out string? page))
        {
            if (seen.Add(page))
            {
                foreach (string link in Links(page).Select(l => Target(page, l)).Where(l => l.EndsWith(".md", StringComparison.Ordinal) && File.Exists(l)))
                {
                    open.Enqueue(link);
                }
            }
        }

        Assert.Empty(Directory.GetFiles(Path.Combine(Root(), "docs"), "*.md").Except(seen).Select(Path.GetFileName));
        Assert.Contains("docs/README.md", Links(Path.Combine(Root(), "README.md")));
    }

    [Fact]
    public void The_map_names_every_page_itself()
    {
        string[] named = [.. Links(Path.Combine(Root(), "docs", "README.md"))];
        Assert.Empty(Directory.GetFiles(Path.Combine(Root(), "docs"), "*.md").Select(p => Path.GetFileName(p)!).Except([.. named, "README.md"]));
    }

    [Theory]
    [InlineData("for-anglers.md")]
    [InlineData("for-speakers.md")]
    [InlineData("for-designers.md")]
    [InlineData("for-engineers.md")]
    public void A_page_to_start_from_is_short_and_typed_from(string name)
    {
        string page = File.ReadAllText(Path.Combine(Root(), "docs", name));
        Assert.InRange(page.Split('\n').Length, 10, 50);
        Assert.Contains("luresim", page, StringComparison.Ordinal);
    }

    // With a key that does not exist nothing runs, and the only fault is that key: options, files and what varies were understood.
    [Theory]
    [MemberData(nameof(Typed))]
    public void What_a_reader_types_is_understood(string page, string typed)
    {
        string[] words = [.. Words(typed).Select(Here)];
        if (words[0] is "start" or "bend")
        {
            Assert.Equal(ExitCode.Done, Session.Run([.. words, "--out", Path.Combine(_folder, "new.toml")]).Exit);
            return;
        }

        if (words[0] == "board")
        {
            Assert.Equal(ExitCode.Done, Session.Run(words).Exit);
            return;
        }

        Session session = Session.Run([.. words, "--set", "no.such=1", "--out", Path.Combine(_folder, "out")]);
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.All(session.Error.Trim().Split('\n'), l => Assert.Contains("no.such", l, StringComparison.Ordinal));
        Assert.False(string.IsNullOrEmpty(page));
    }

    private string Here(string word)
    {
        if (word == "walker.toml")
        {
            string file = Path.Combine(_folder, word);
            Assert.Equal(ExitCode.Done, Session.Run("start", "walker", "--out", file).Exit);
            return file;
        }

        return word == "shop.csv" ? Path.Combine(Root(), "scenarios", "bend-test.csv")
            : word.StartsWith("scenarios/", StringComparison.Ordinal) ? Path.Combine(Root(), word) : word;
    }

    private static IEnumerable<string> Words(string typed) =>
        typed.Split('"').SelectMany((part, i) => i % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries));

    // What stands in a fence is no link.
    private static IEnumerable<string> Links(string page) => Link().Matches(Fence().Replace(File.ReadAllText(page), "")).Select(m => m.Groups[1].Value)
        .Where(l => !l.Contains("://", StringComparison.Ordinal));

    private static string Target(string page, string link) => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(page)!, link.Split('#')[0]));

    private static bool Leads(string page, string link)
    {
        string[] parts = link.Split('#');
        string target = parts[0].Length == 0 ? page : Target(page, link);
        return (File.Exists(target) || Directory.Exists(target)) && (parts.Length == 1 || Heading().Matches(File.ReadAllText(target)).Any(m => Anchor(m.Groups[1].Value) == parts[1]));
    }

    // As the usual hosts make them: small letters, marks left out, blanks as hyphens.
    private static string Anchor(string heading) => string.Concat(heading.Trim().ToLowerInvariant().Where(c => char.IsLetterOrDigit(c) || c is ' ' or '-' or '_')).Replace(' ', '-');

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));

    [GeneratedRegex(@"\]\(([^)\s]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"(?ms)^\s*```.*?^\s*```$|`[^`\n]+`")]
    private static partial Regex Fence();

    [GeneratedRegex(@"(?m)^#+ (.+)$")]
    private static partial Regex Heading();

    [GeneratedRegex(@"(?m)^\s*luresim (.+)$")]
    private static partial Regex CommandLine();
}
