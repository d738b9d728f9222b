namespace LureSim.Cli.Commands;

/// <summary>The comparisons people ask for most, by name.</summary>
/// <param name="Name">Name on the command line.</param>
/// <param name="Title">What differs.</param>
/// <param name="Axis">Text of an axis, or null when <paramref name="Values"/> holds words.</param>
/// <param name="Values">Words with their overrides.</param>
public sealed record ReadyComparison(
    string Name, string Title, string? Axis, IReadOnlyList<(string Label, IReadOnlyList<string> Overrides)> Values)
{
    private static readonly string[] NoLeader = ["leader.material=none"];

    private static readonly string[] NylonLeader = ["leader.material=nylon", "leader.length=15 in", "leader.diameter=0.43 mm"];

    /// <summary>All, in the order of help.</summary>
    public static IReadOnlyList<ReadyComparison> All { get; } =
    [
        new("line", "line type", null,
        [
            ("braid 30 lb + nylon leader", [.. Line("braid", "30 lb", "dry"), .. NylonLeader]),
            ("braid 30 lb", [.. Line("braid", "30 lb", "dry"), .. NoLeader]),
            ("nylon 14 lb, dry", [.. Line("nylon", "14 lb", "dry"), .. NoLeader]),
            ("nylon 14 lb, wetted", [.. Line("nylon", "14 lb", "wetted"), .. NoLeader]),
            ("fluorocarbon 12 lb, dry", [.. Line("fluorocarbon", "12 lb", "dry"), .. NoLeader]),
            ("fluorocarbon 12 lb, wetted", [.. Line("fluorocarbon", "12 lb", "wetted"), .. NoLeader]),
        ]),
        Of("line-diameter", "line.diameter=0.20 mm:0.40 mm:5"),
        new("leader-length", "leader length", null,
        [
            ("none", NoLeader),
            .. new[] { "8 in", "15 in", "24 in", "40 in" }.Select(l => (l, (IReadOnlyList<string>)["leader.material=nylon", "leader.length=" + l, "leader.diameter=0.43 mm"])),
        ]),
        new("leader-diameter", "leader diameter", null,
        [
            .. new[] { "0.29 mm", "0.36 mm", "0.43 mm", "0.52 mm", "0.60 mm" }.Select(d => (d, (IReadOnlyList<string>)["leader.material=nylon", "leader.length=15 in", "leader.diameter=" + d])),
        ]),
        new("leader-material", "leader material", null,
        [
            ("none", NoLeader), ("nylon, loop", NylonLeader), ("nylon, fixed knot", [.. NylonLeader, "leader.knot=fixed"]),
            ("fluorocarbon, loop", [.. NylonLeader, "leader.material=fluorocarbon", "leader.film=wetted"]),
            ("braid, loop", [.. NylonLeader, "leader.material=braid"]),
        ]),
        Of("rod-length", "rod.length=6 ft 6 in:7 ft 6 in:3"),
        Of("distance", "retrieve.distance=5 m,8 m,12 m,18 m,27 m,40 m"),
        Of("rod-bearing", "angler.rod_bearing=0 deg:120 deg:5"),
        Of("rod-elevation", "angler.rod_elevation=-30 deg:45 deg:6"),
        Of("stroke", "retrieve.stroke=6 cm:30 cm:7"),
        Of("slack", "retrieve.slack=4 cm:28 cm:7"),
        Of("return-share", "angler.return_share=0:1:n=5"),
    ];

    /// <summary>The comparison of a name, or null.</summary>
    /// <param name="name">Name.</param>
    public static ReadyComparison? Find(string name) => All.FirstOrDefault(r => r.Name == name);

    private static ReadyComparison Of(string name, string axis) => new(name, "", axis, []);

    private static string[] Line(string material, string label, string film) =>
        ["line.material=" + material, "line.label=" + label, "line.film=" + film];
}
