using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Start;

/// <summary>The page for newcomers: its commands are typed, and what it shows is what they print. LURESIM_WRITE_DOCS=1 writes it anew.</summary>
public sealed partial class StartPageTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("page").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_page_shows_what_its_commands_print()
    {
        string page = File.ReadAllText(Page());
        int typed = 0;
        string fresh = Typed().Replace(page, m =>
        {
            typed++;
            Session session = Shell(m.Groups[1].Value);
            Assert.Equal((ExitCode.Done, ""), (session.Exit, session.Error));
            return $"```\n$ luresim {m.Groups[1].Value}\n{session.Out}```\n";
        });
        fresh = Scenario().Replace(fresh, _ => $"```toml\n{File.ReadAllText(Path.Combine(_folder, "walker.toml"))}```\n");
        Assert.Equal(4, typed);
        if (Environment.GetEnvironmentVariable("LURESIM_WRITE_DOCS") == "1")
        {
            File.WriteAllText(Page(), fresh);
        }
        else
        {
            Assert.Equal(fresh, page);
        }
    }

    [Fact]
    public void The_part_that_it_copies_is_taken()
    {
        Session session = Shell("list rods/medium-fast > my-rod.toml && luresim start walker --rod my-rod.toml --quiet && luresim check walker.toml --quiet");
        Assert.Equal((ExitCode.Done, ""), (session.Exit, session.Error));
        Assert.Contains("base = \"my-rod.toml\"", File.ReadAllText(Path.Combine(_folder, "walker.toml")), StringComparison.Ordinal);
    }

    private Session Shell(string words) => BuiltProgram.Shell($"luresim() {{ {BuiltProgram.Line} \"$@\"; }}; luresim {words}", _folder);

    private static string Page([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "docs", "start.md"));

    [GeneratedRegex(@"```\n\$ luresim (.+)\n[^`]*```\n")]
    private static partial Regex Typed();

    [GeneratedRegex(@"```toml\n[^`]*```\n")]
    private static partial Regex Scenario();
}
