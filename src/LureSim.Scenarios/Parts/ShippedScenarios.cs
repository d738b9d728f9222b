using System.Text;

namespace LureSim.Scenarios.Parts;

/// <summary>The scenarios that come with the program: copies of the files in <c>scenarios</c>, on which the sayings stand in any folder.</summary>
internal static class ShippedScenarios
{
    private const string Prefix = "scenarios/";

    /// <summary>Names with their ending, in order.</summary>
    public static IReadOnlyList<string> Names { get; } =
        [.. typeof(ShippedScenarios).Assembly.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)).Select(n => n[Prefix.Length..]).Order(StringComparer.Ordinal)];

    /// <summary>Text of a scenario; null where none has that name.</summary>
    /// <param name="name">Name with its ending.</param>
    public static string? Find(string name)
    {
        using Stream? stream = typeof(ShippedScenarios).Assembly.GetManifestResourceStream(Prefix + name);
        if (stream is null)
        {
            return null;
        }

        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
