using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace LureSim.Cli.Tests;

/// <summary>What is shipped is what the pages of dependencies and notices name.</summary>
public sealed partial class DependencyTests
{
    private static readonly string Root = FindRoot();

    public static TheoryData<string, string> Shipped()
    {
        var data = new TheoryData<string, string>();
        foreach ((string name, string version) in Directory.GetFiles(Path.Combine(Root, "src"), "packages.lock.json", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .SelectMany(Packages).Distinct().Order())
        {
            data.Add(name, version);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Each_locked_package_stands_on_the_page_with_its_version(string name, string version) =>
        Assert.True(Rows("dependencies.md").Any(r => Names(r[0]).Contains(name) && r[1] == version), $"{name} {version} is missing in docs/dependencies.md");

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Each_locked_package_has_its_notice(string name, string version)
    {
        Assert.NotEmpty(version);
        string notices = File.ReadAllText(Path.Combine(Root, "docs", "third-party-notices.md"));
        string family = Native().Replace(name, ".NativeAssets");
        Assert.Matches($@"(?<![\w.]){Regex.Escape(family)}(?![\w]|\.\w)", notices);
    }

    [Fact]
    public void The_page_names_no_package_that_is_not_locked()
    {
        string[] locked = [.. Shipped().Select(row => (string)row[0])];
        Assert.Contains("SkiaSharp", locked);
        string page = File.ReadAllText(Path.Combine(Root, "docs", "dependencies.md")).Split("\n## ")[1];
        Assert.All(page.Split('\n').Where(l => l.StartsWith("| ", StringComparison.Ordinal)).Skip(1).SelectMany(l => Names(l.Split('|')[1])), n => Assert.Contains(n, locked));
    }

    [Fact]
    public void Every_restore_is_locked_and_asks_for_known_weaknesses()
    {
        string props = File.ReadAllText(Path.Combine(Root, "src", "Directory.Build.props"));
        foreach (string line in (string[])["<RestoreLockedMode Condition=\"'$(RestoreLockedMode)' == ''\">true<", "<NuGetAudit>true<", "<NuGetAuditMode>all<", "<NuGetAuditLevel>low<"])
        {
            Assert.Contains(line, props, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_notices_of_native_skia_lie_beside_the_program() =>
        Assert.Contains("libpng", File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "THIRD-PARTY-NOTICES-SkiaSharp.txt")), StringComparison.Ordinal);

    private static IEnumerable<(string Name, string Version)> Packages(string file)
    {
        using var json = JsonDocument.Parse(File.ReadAllText(file));
        return
        [
            .. json.RootElement.GetProperty("dependencies").EnumerateObject().SelectMany(target => target.Value.EnumerateObject())
                .Where(p => p.Value.GetProperty("type").GetString() != "Project").Select(p => (p.Name, p.Value.GetProperty("resolved").GetString()!)),
        ];
    }

    private static IEnumerable<string[]> Rows(string page) => File.ReadLines(Path.Combine(Root, "docs", page))
        .Where(l => l.StartsWith("| ", StringComparison.Ordinal)).Select(l => l.Split('|', StringSplitOptions.TrimEntries)[1..]);

    private static string[] Names(string cell) => cell.Split(',', StringSplitOptions.TrimEntries);

    private static string FindRoot([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));

    [GeneratedRegex(@"\.NativeAssets\..*$")]
    private static partial Regex Native();
}
