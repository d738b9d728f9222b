namespace LureSim.Scenarios.Tests;

/// <summary>Scenario texts that tests start from.</summary>
internal static class Texts
{
    /// <summary>The least that a scenario must say.</summary>
    public const string Least = """
        [rod]
        length = "7 ft"
        power = "medium-heavy"
        [line]
        material = "braid"
        label = "50 lb"
        [lure]
        shape = "cigar"
        length = "115 mm"
        diameter = "21 mm"
        mass = "18 g"
        """;

    /// <summary>The least, with a line replaced; the line must be there.</summary>
    public static string With(string line, string by) => Least.Contains(line, StringComparison.Ordinal)
        ? Least.Replace(line, by, StringComparison.Ordinal)
        : throw new ArgumentException($"no line '{line}'", nameof(line));

    public static ScenarioResult Read(string text, params string[] overrides) =>
        ScenarioSource.FromText(text, "s.toml").Resolve(overrides);

    public static string[] Errors(string text, params string[] overrides) =>
        [.. Read(text, overrides).Errors.Select(e => e.ToString())];
}
