using LureSim.Scenarios.Parts;

namespace LureSim.Scenarios.Starting;

/// <summary>A kind of lure that a scenario can start from, with the set-up and the retrieve that usually go with it (common practice, no source).</summary>
/// <param name="Name">Name as typed.</param>
/// <param name="Lure">Its part in <c>lures</c>.</param>
/// <param name="Rod">Usual rod, a part.</param>
/// <param name="Line">Usual line, a part.</param>
/// <param name="Leader">Usual leader, a part.</param>
/// <param name="DistanceM">Distance at which the retrieve starts, m.</param>
/// <param name="CadencePerS">Twitches per second.</param>
/// <param name="StrokeM">Tip travel of a twitch with the lure as its part is, m; it goes with the lure's length.</param>
/// <param name="SlackM">Slack that is kept, m, likewise.</param>
internal sealed record StartKind(
    string Name, string Lure, string Rod, string Line, string Leader, double DistanceM, double CadencePerS, double StrokeM, double SlackM)
{
    /// <summary>The kind where none is named.</summary>
    public const string Usual = "walker";

    private static readonly (string Typed, string Kind)[] OtherNames =
    [
        ("stickbait", Usual), ("pencil", Usual), ("cigar", Usual), ("medium-walker", Usual), ("middle-walker", Usual), ("small", "small-walker"), ("large", "large-walker"),
        ("big-walker", "large-walker"), ("slanted-walker", "slanted"), ("upright-walker", "upright"), ("steep", "upright"), ("steep-walker", "upright"), ("frog", "hollow"),
        ("weedless", "hollow"), ("hollow-weedless", "hollow"), ("hollow-frog", "hollow"), ("flat", Usual), ("flat-walker", Usual), ("lure", Usual),
    ];

    // What such a lure has that no model here computes.
    private static readonly (string Typed, string Missing)[] OutOfScope =
    [
        ("popper", "its cup"), ("chugger", "its cup"), ("prop", "its propellers"), ("prop-lure", "its propellers"),
        ("propeller", "its propellers"), ("crawler", "its wings"), ("winged-crawler", "its wings"), ("wings", "its wings"), ("buzzbait", "its blade"),
    ];

    /// <summary>All kinds, in the order of lists.</summary>
    public static IReadOnlyList<StartKind> All { get; } =
    [
        new("small-walker", "small-walker", "medium-fast", "20-lb-braid", "15-in-20-lb-nylon", 15, 2, 0.12, 0.09),
        new(Usual, "walker", "medium-heavy-fast", "30-lb-braid", "15-in-20-lb-nylon", 15, 2, 0.17, 0.12),
        new("large-walker", "large-walker", "medium-heavy-fast", "50-lb-braid", "none", 15, 2, 0.20, 0.14),
        new("slanted", "slanted", "medium-heavy-fast", "50-lb-braid", "none", 15, 2, 0.20, 0.10),
        new("upright", "upright", "medium-heavy-fast", "50-lb-braid", "none", 15, 2, 0.20, 0.10),
        new("hollow", "hollow", "heavy-fast", "65-lb-braid", "none", 8, 1.8, 0.12, 0.12),
    ];

    /// <summary>The part of the lure.</summary>
    public Part Part => PartLibrary.Find("lure", Lure)!;

    /// <summary>The kind of that name, or null.</summary>
    /// <param name="name">In small letters, with hyphens.</param>
    public static StartKind? Find(string name)
    {
        string own = OtherNames.FirstOrDefault(o => o.Typed == name).Kind ?? name;
        return All.FirstOrDefault(k => k.Name == own);
    }

    /// <summary>What a kind that cannot be computed has that is missing here, or null.</summary>
    /// <param name="name">In small letters, with hyphens.</param>
    public static string? Missing(string name) => OutOfScope.FirstOrDefault(o => o.Typed == name).Missing;

    /// <summary>All words that name a kind.</summary>
    public static IEnumerable<string> Names => [.. All.Select(k => k.Name), .. OtherNames.Select(o => o.Typed)];
}
