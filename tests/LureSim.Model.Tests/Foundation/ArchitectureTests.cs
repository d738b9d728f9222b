using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace LureSim.Model.Tests.Foundation;

/// <summary>Parts own physics, activities choose parts: the arrows inside the model point one way.</summary>
public sealed class ArchitectureTests
{
    private static readonly string[] Parts = ["Foundation", "Media", "Rods", "Hands", "Reels", "Lines", "Lures", "Fish", "Cover"], Activities = ["Retrieve", "Cast", "Trim", "Pool", "Bend", "Strike", "Landing", "Crawl", "Margin"];

    [Fact]
    public void No_part_knows_an_activity_or_the_assembly() => Assert.Empty(Parts.SelectMany(p => Named(p, [.. Activities, "Assembly"])));

    [Fact]
    public void The_assembly_knows_no_activity() => Assert.Empty(Named("Assembly", Activities));

    [Fact]
    public void No_activity_knows_another() => Assert.Empty(Activities.SelectMany(a => Named(a, [.. Activities.Where(other => other != a)])));

    [Fact]
    public void A_forbidden_name_would_be_found() => Assert.NotEmpty(Named("Retrieve", ["Assembly"]));

    // Source lines of a folder that name one of the namespaces.
    private static IEnumerable<string> Named(string folder, string[] namespaces) =>
        from file in Directory.EnumerateFiles(Path.Combine(Model(), folder), "*.cs", SearchOption.AllDirectories)
        from line in File.ReadLines(file)
        where namespaces.Any(n => Regex.IsMatch(line, $@"LureSim\.Model\.{n}\b|\b{n}\.[A-Z]")) && !line.StartsWith("namespace", StringComparison.Ordinal)
        select $"{Path.GetFileName(file)}: {line.Trim()}";

    private static string Model([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "src", "LureSim.Model"));
}
