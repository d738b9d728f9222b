using LureSim.Model.Retrieve;
using LureSim.Scenarios;

namespace LureSim.Validation.Invariants;

/// <summary>The shipped scenarios, found upwards from the test's own folder.</summary>
internal static class Shipped
{
    public static string[] Files { get; } = [.. Directory.GetFiles(Folder(), "*.toml").Order(StringComparer.Ordinal)];

    /// <summary>The scenario that the README starts with.</summary>
    public static string Default => Named("large-walker.toml");

    /// <summary>A shipped file by its name.</summary>
    public static string Named(string name) => Files.Single(f => Path.GetFileName(f) == name);

    public static Scenario Read(string file, params string[] overrides) =>
        ScenarioSource.Read(file, overrides).Scenario ?? throw new InvalidOperationException($"{file} is not valid");

    /// <summary>Its retrieve, to the end or as far as it goes.</summary>
    public static RetrieveResult Run(this Scenario scenario) => RetrieveRun.Run(scenario.Setup, scenario.Retrieve!).DemandAny();

    private static string Folder()
    {
        string? at = AppContext.BaseDirectory;
        while (at is not null && !File.Exists(Path.Combine(at, "LureSim.sln")))
        {
            at = Path.GetDirectoryName(at);
        }

        return Path.Combine(at ?? throw new InvalidOperationException("The tests run inside the repository."), "scenarios");
    }
}
