using LureSim.Scenarios.Parts;

namespace LureSim.Scenarios.Tests.Parts;

/// <summary>The parts that come with the program, and how a scenario takes them.</summary>
public class PartLibraryTests
{
    public static TheoryData<string> Paths => [.. PartLibrary.All.Select(p => p.Path)];

    [Fact]
    public void What_the_program_carries_along_are_the_files_of_the_project()
    {
        string root = Path.Combine(Folder.Repository, PartLibrary.Place);
        string[] files = [.. Directory.GetFiles(root, "*.toml", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(root, f)).Order(StringComparer.Ordinal)];
        Assert.True(files.Length > 20);
        Assert.Equal(files, PartLibrary.All.Select(p => p.Path).Order(StringComparer.Ordinal));
        Assert.All(PartLibrary.All, p => Assert.Equal(File.ReadAllText(Path.Combine(root, p.Path)), p.Text));
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public void Every_part_is_read_by_its_file_and_by_its_name(string path)
    {
        Part part = PartLibrary.All.First(p => p.Path == path);
        string table = part.Folder.Table;
        string others = string.Join('\n', ((string[])["rod = \"medium-fast\"", "line = \"30-lb-braid\"", "lure = \"walker\""]).Where(l => !l.StartsWith(table, StringComparison.Ordinal)));
        using var folder = new Folder();
        folder.Write($"mine/{part.Name}.toml", part.Text);
        string[] named = [$"mine/{part.Name}.toml", part.Name, part.Path];
        ScenarioResult[] read = [.. named.Select(n => ScenarioSource.Read(folder.Write("s.toml", $"{table} = \"{n}\"\n{others}")))];
        Assert.All(read, r => Assert.Empty(r.Errors));
        Assert.All(read, r => Assert.Equal(read[0].Setup, r.Setup));
        Assert.StartsWith("#", part.Text, StringComparison.Ordinal);
        Assert.NotEqual("", part.Meaning);
    }

    [Fact]
    public void A_part_may_be_changed_key_by_key()
    {
        ScenarioResult read = ScenarioSource.FromText("line = \"30-lb-braid\"\nlure = \"walker\"\n[rod]\nbase = \"medium-heavy-fast\"\nlength = \"2 m\"").Resolve();
        Assert.Empty(read.Errors);
        Assert.Equal(2.0, read.Setup!.Rod.LengthM);
        Assert.Equal(4.5, read.Setup.Rod.ThirdLoadN);
    }

    [Fact]
    public void A_file_of_the_person_goes_before_the_part_of_that_name()
    {
        using var folder = new Folder();
        folder.Write("casting", "ratio = 5.5");
        ScenarioResult read = ScenarioSource.Read(folder.Write("s.toml", "reel = \"casting\"\nrod = \"medium-fast\"\nline = \"30-lb-braid\"\nlure = \"walker\""));
        Assert.Empty(read.Errors);
        Assert.Equal(5.5, read.Setup!.Reel.Ratio);
    }

    [Fact]
    public void A_name_that_is_neither_is_refused_and_the_list_is_named()
    {
        ScenarioResult read = ScenarioSource.FromText("rod = \"medium-hevy\"\nline = \"30-lb-braid\"\nlure = \"walker\"").Resolve();
        ScenarioFault fault = Assert.Single(read.Errors);
        Assert.Equal("rod", fault.Key);
        Assert.Contains("there is no such file", fault.Message, StringComparison.Ordinal);
        Assert.EndsWith("luresim list rods shows the parts that come with the program", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_of_one_table_do_not_serve_another()
    {
        Assert.NotNull(PartLibrary.Find("rod", "medium-fast"));
        Assert.Null(PartLibrary.Find("line", "medium-fast"));
        Assert.Null(PartLibrary.Find("", "medium-fast"));
        Assert.Equal("rods/medium-fast.toml", Assert.Single(PartLibrary.Named("rods/medium-fast.toml")).Path);
        Assert.Empty(PartLibrary.Named("nothing"));
    }
}
