namespace LureSim.Scenarios.Measured;

/// <summary>A word of a measured file in a cell, as people write it.</summary>
internal static class CellWord
{
    /// <summary>The word of a cell, with a unit behind it (<c>drop cm</c>, <c>weight (g)</c>, <c>drop_in</c>); null where it is none.</summary>
    /// <typeparam name="T">Words.</typeparam>
    /// <param name="names">Words by name, lower case.</param>
    /// <param name="cell">Cell.</param>
    /// <param name="unit">Its unit, or nothing.</param>
    public static T? Find<T>(IReadOnlyDictionary<string, T> names, string cell, out string unit)
        where T : struct
    {
        string text = cell.Replace('_', ' ').Replace('(', ' ').Replace(')', ' ').Replace('[', ' ').Replace(']', ' ').Trim();
        string name = string.Join(' ', text.ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries));
        unit = "";
        if (names.TryGetValue(name, out T word))
        {
            return word;
        }

        int blank = text.LastIndexOf(' ');
        if (blank > 0 && names.TryGetValue(name[..name.LastIndexOf(' ')], out word))
        {
            unit = text[(blank + 1)..];
            return word;
        }

        return null;
    }
}
