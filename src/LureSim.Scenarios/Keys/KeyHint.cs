namespace LureSim.Scenarios.Keys;

/// <summary>The key that a person probably meant.</summary>
internal static class KeyHint
{
    /// <summary>What to say of a key that is none: the one meant, or else what there is.</summary>
    /// <param name="path">Full key as written.</param>
    public static string Unknown(string path)
    {
        if (Meant(path) is string meant)
        {
            return $"unknown key; did you mean {meant}?";
        }

        (string table, _) = Split(path);
        string[] elsewhere = [.. ScenarioSchema.Keys.Where(k => k.Table.Length > 0 && k.Name == path).Select(k => k.Path)];
        return elsewhere.Length > 0 ? $"unknown key; it stands in a table: {string.Join(", ", elsewhere)}"
            : ScenarioSchema.Tables.Contains(table) ? $"unknown key; keys of {table}: {string.Join(", ", Names(table))}"
            : $"unknown key; tables: {string.Join(", ", ScenarioSchema.Tables)}";
    }

    /// <summary>The key meant, or null: by the table of synonyms, by a slip in its name, by the table it belongs in.</summary>
    /// <param name="path">Full key as written.</param>
    public static string? Meant(string path)
    {
        (string table, string name) = Split(path);
        if (table.Length == 0)
        {
            return Synonyms.KeyOf("", name) ?? Nearest.Of(name.ToLowerInvariant(), Top()) ?? Elsewhere(name);
        }

        if (!ScenarioSchema.Tables.Contains(table))
        {
            return (Synonyms.KeyOf("", table) ?? Nearest.Of(table.ToLowerInvariant(), ScenarioSchema.Tables)) is string other && ScenarioSchema.Find($"{other}.{name}") is KeySpec there ? there.Path : null;
        }

        return Synonyms.KeyOf(table, name)
            ?? (Nearest.Of(name.ToLowerInvariant(), Names(table)) is string near ? $"{table}.{near}" : null)
            ?? Elsewhere(name);
    }

    // A name that one other table has, and only one. A crawl is twitched as a walk is: of the two the walk is meant.
    private static string? Elsewhere(string name)
    {
        KeySpec[] all = [.. ScenarioSchema.Keys.Where(k => k.Name == name && k.Table.Length > 0)], apart = [.. all.Where(k => !CrawlKeys.All.Contains(k))];
        KeySpec[] found = apart.Length > 0 ? apart : all;
        return found.Length == 1 ? found[0].Path : null;
    }

    private static IEnumerable<string> Names(string table) => ScenarioSchema.Keys.Where(k => k.Table == table).Select(k => k.Path[(table.Length + 1)..]);

    private static IEnumerable<string> Top() =>
        ScenarioSchema.Keys.Where(k => k.Table.Length == 0).Select(k => k.Path).Concat(ScenarioSchema.Tables).Append(ScenarioSchema.BaseName);

    private static (string Table, string Name) Split(string path) =>
        path.IndexOf('.', StringComparison.Ordinal) is > 0 and int dot ? (path[..dot], path[(dot + 1)..]) : ("", path);
}
