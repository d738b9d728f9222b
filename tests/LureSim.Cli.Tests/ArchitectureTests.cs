using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace LureSim.Cli.Tests;

/// <summary>What the projects promise about their shape.</summary>
public sealed partial class ArchitectureTests
{
    private static readonly Dictionary<string, string[]> Arrows = new()
    {
        ["LureSim.Numerics"] = [],
        ["LureSim.Model"] = ["LureSim.Numerics"],
        ["LureSim.Studies"] = ["LureSim.Scenarios", "LureSim.Wire"],
        ["LureSim.Scenarios"] = ["LureSim.Model"],
        ["LureSim.Wire"] = ["LureSim.Model"],
        ["LureSim.Browser"] = ["LureSim.Wire"],
        ["LureSim.Reports"] = ["LureSim.Browser", "LureSim.Studies", "LureSim.Wire"],
        ["LureSim.Cli"] = ["LureSim.Reports"],
        ["LureSim.Publish"] = ["LureSim.Reports"],
        ["LureSim.Live"] = ["LureSim.Cli", "LureSim.Wire"],
    };

    [Fact]
    public void Arrows_point_down_only()
    {
        foreach (string project in Directory.GetDirectories(Path.Combine(Root(), "src")))
        {
            string name = Path.GetFileName(project);
            string text = File.ReadAllText(Path.Combine(project, name + ".csproj"));
            string[] found = [.. Reference().Matches(text).Select(m => m.Groups[1].Value).Order(StringComparer.Ordinal)];
            Assert.Equal(Arrows[name], found);
        }
    }

    [Theory]
    [InlineData("LureSim.Numerics")]
    [InlineData("LureSim.Model")]
    [InlineData("LureSim.Studies")]
    [InlineData("LureSim.Wire")]
    public void Models_and_studies_touch_no_file_clock_or_console(string project)
    {
        foreach (string file in Sources(Path.Combine(Root(), "src", project)))
        {
            Assert.False(Forbidden().IsMatch(File.ReadAllText(file)), file);
        }
    }

    [Fact]
    public void Files_of_the_user_are_opened_in_one_place()
    {
        string[] readers = [.. Sources(Path.Combine(Root(), "src")).Where(f => Reader().IsMatch(File.ReadAllText(f))).Select(f => Path.GetFileName(f))];
        // Besides: lists and locks of the program's own output folders, what the system tells of the streams it was started with, and the pictures of a study that
        // the live server has just written into a folder of its own.
        Assert.Equal(["FileText.cs", "OutputFolder.cs", "SetList.cs", "StandardStreams.cs", "StudyRun.cs"], readers.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Files_are_short()
    {
        int[] lines = [.. Sources(Path.Combine(Root(), "src")).Select(f => File.ReadLines(f).Count()).Order()];
        Assert.True(lines[lines.Length / 2] < 120, $"median {lines[lines.Length / 2]}");
        Assert.True(lines[^1] <= 400, $"largest {lines[^1]}");
    }

    [Fact]
    public void The_readme_names_every_command()
    {
        string readme = File.ReadAllText(Path.Combine(Root(), "README.md"));
        string[] commands =
        [
            .. Sources(Path.Combine(Root(), "src", "LureSim.Cli")).SelectMany(f => Command().Matches(File.ReadAllText(f))).Select(m => m.Groups[1].Value),
        ];
        Assert.True(commands.Length >= 2);
        Assert.All(commands, c => Assert.Matches($"`{c}[ `]", readme));
    }

    private static IEnumerable<string> Sources(string folder) => Directory.GetFiles(folder, "*.cs", SearchOption.AllDirectories)
        .Where(f => !f.Contains("/obj/", StringComparison.Ordinal) && !f.Contains("/bin/", StringComparison.Ordinal));

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));

    [GeneratedRegex(@"\bFile\.(ReadAll|ReadLines|Open)")]
    private static partial Regex Reader();

    [GeneratedRegex("""ProjectReference Include="\.\./(LureSim\.\w+)/""")]
    private static partial Regex Reference();

    [GeneratedRegex(@"new Command\(""(\w+)""")]
    private static partial Regex Command();

    [GeneratedRegex(@"\bFile\.|\bDirectory\.|\bConsole\.|\bFileStream\b|DateTime\.|Stopwatch|Environment\.(?!ProcessorCount)|\bnew Random\(\)")]
    private static partial Regex Forbidden();
}
