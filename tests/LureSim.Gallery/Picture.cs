namespace LureSim.Gallery;

/// <summary>One picture of <c>plots/</c>.</summary>
/// <param name="File">Its name there.</param>
/// <param name="From">Where the last command writes it, from the folder in which it is typed.</param>
/// <param name="Caption">A sentence or two for an angler.</param>
/// <param name="Typed">Commands that make it, as typed.</param>
internal sealed record Picture(string File, string From, string Caption, params string[] Typed)
{
    /// <summary>What is computed instead of the picture to find out that it is stale: of pictures that take minutes. Null: the picture itself is drawn.</summary>
    public Probe? Probe { get; init; }
}

/// <summary>What a dear picture rests on, in a second or two.</summary>
/// <param name="StoredForm">Stored form of its chart among the tests: how it is drawn.</param>
/// <param name="Typed">Commands whose output tells of the scenario, the model and the study.</param>
internal sealed record Probe(string StoredForm, params string[] Typed);
