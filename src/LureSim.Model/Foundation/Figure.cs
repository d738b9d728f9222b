namespace LureSim.Model;

/// <summary>One number of a result: the only place of its name, its words and how it is read. Files, sweeps, bands, tables and documents follow from the list.</summary>
/// <typeparam name="T">Result.</typeparam>
/// <param name="Key">Name in files: snake case, unit at the end.</param>
/// <param name="Label">Short words for a table.</param>
/// <param name="Meaning">One line for documents.</param>
/// <param name="Value">Reads it; null where the result has no such number.</param>
public sealed record Figure<T>(string Key, string Label, string Meaning, Func<T, double?> Value)
{
    /// <summary>How charts show it, for figures that people ask for first; else null.</summary>
    public Headline? Headline { get; init; }

    /// <summary>The number, NaN where there is none.</summary>
    /// <param name="result">Result.</param>
    public double Of(T result) => Value(result) ?? double.NaN;
}

/// <summary>How charts and sentences show a figure that people ask for first.</summary>
/// <param name="Words">In a sentence, for example <c>glide per twitch</c>.</param>
/// <param name="Unit">Unit on an axis.</param>
/// <param name="Scale">From the figure's own unit to <paramref name="Unit"/>.</param>
public sealed record Headline(string Words, string Unit, double Scale);
