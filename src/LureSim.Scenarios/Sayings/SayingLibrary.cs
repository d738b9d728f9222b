using System.Reflection;
using System.Text;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios.Sayings;

/// <summary>The sayings that come with the program: copies of the files in <c>scenarios/sayings</c>, at hand in any folder.</summary>
public static class SayingLibrary
{
    private const string Prefix = "sayings/", Ending = ".toml";

    private static readonly Lazy<IReadOnlyList<(string Name, string Text)>> Loaded = new(Load);

    /// <summary>Names of all, in order.</summary>
    public static IReadOnlyList<string> Names => [.. Loaded.Value.Select(s => s.Name)];

    /// <summary>Reads a saying that comes with the program, or a file of one's own.</summary>
    /// <param name="name">Name, or path of a TOML file.</param>
    /// <param name="faults">Gets every fault.</param>
    /// <returns>Null where there are faults.</returns>
    public static Saying? Read(string name, ICollection<ScenarioFault> faults)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(faults);
        if (Loaded.Value.FirstOrDefault(s => s.Name == name) is { Name: not null } shipped)
        {
            return SayingReader.Read(shipped.Text, Prefix + name + Ending, null, faults);
        }

        string? failure = FileText.TryRead(name, out string text);
        if (failure is null)
        {
            return SayingReader.Read(text, name, Path.GetDirectoryName(Path.GetFullPath(name)), faults);
        }

        faults.Add(new(name, "", name.EndsWith(Ending, StringComparison.Ordinal)
            ? failure + NearFile.Hint(name)
            : $"no saying of that name; {(Near(name) is { Length: > 0 } near ? $"did you mean {near}?" : "sayings --list shows all")}"));
        return null;
    }

    // Names that are a slip away, else those that share a word.
    private static string Near(string name)
    {
        string[] words = Words(name);
        IEnumerable<string> near = Nearest.Of(name, Names) is string one ? [one] : Names.Where(n => Words(n).Intersect(words).Any()).Take(3);
        return string.Join(" or ", near);
    }

    private static string[] Words(string name) => [.. name.ToLowerInvariant().Split('-', ' ', '_').Where(w => w.Length > 2)];

    private static (string Name, string Text)[] Load()
    {
        Assembly own = typeof(SayingLibrary).Assembly;
        return
        [
            .. own.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)).Order(StringComparer.Ordinal)
                .Select(n => (n[Prefix.Length..^Ending.Length], Text(own, n))),
        ];
    }

    internal static string Text(Assembly own, string resource)
    {
        using var reader = new StreamReader(own.GetManifestResourceStream(resource)!, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
