using LureSim.Scenarios;

namespace LureSim.Studies.Across;

/// <summary>The comparisons people ask for most, by name.</summary>
/// <param name="Name">Name on the command line.</param>
/// <param name="Title">What differs.</param>
/// <param name="Axis">Text of an axis, or null when <paramref name="Values"/> holds words.</param>
/// <param name="Values">Words with their overrides.</param>
public sealed record ReadyComparison(
    string Name, string Title, string? Axis, IReadOnlyList<(string Label, IReadOnlyList<string> Overrides)> Values)
{
    private const string LureMass = "lure-mass";

    // The same body, lighter and a little heavier; much heavier ones would sink, which the float model refuses.
    private static readonly double[] LureMassShares = [0.7, 0.8, 0.9, 1.0, 1.1];

    private static readonly string[] NoLeader = ["leader.material=none"];

    private static readonly string[] NylonLeader = ["leader.material=nylon", "leader.length=15 in", "leader.diameter=0.43 mm"];

    /// <summary>All, in the order of help.</summary>
    public static IReadOnlyList<ReadyComparison> All { get; } =
    [
        new("line", "line type", null,
        [
            ("braid 20 lb", Line("braid", "20 lb", "dry")), ("braid 30 lb", Line("braid", "30 lb", "dry")), ("braid 50 lb", Line("braid", "50 lb", "dry")),
            ("nylon 10 lb", Line("nylon", "10 lb", "dry")), ("nylon 14 lb", Line("nylon", "14 lb", "dry")),
            ("fluorocarbon 12 lb", Line("fluorocarbon", "12 lb", "dry")),
        ]),
        new("line-film", "line type", null,
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
        Of("distance", "retrieve.distance=5 m,8 m,12 m,18 m,27 m,40 m"),
        Of("rod-bearing", "angler.rod_bearing=0 deg:120 deg:5"),
        Of("rod-elevation", "angler.rod_elevation=-30 deg:45 deg:6"),
        Of("stroke", "retrieve.stroke=6 cm:30 cm:7"),
        Of("slack", "retrieve.slack=4 cm:28 cm:7"),
        Of("return-share", "angler.return_share=0:1:n=5"),
        new("wind", "wind", null,
        [
            ("calm", ["air.wind=0 m/s"]),
            .. new[] { ("4 m/s from behind", "4 m/s", "from behind"), ("8 m/s from behind", "8 m/s", "from behind"), ("4 m/s in the face", "4 m/s", "in face"), ("8 m/s in the face", "8 m/s", "in face") }
                .Select(w => (w.Item1, (IReadOnlyList<string>)["air.wind=" + w.Item2, "air.wind_from=" + w.Item3])),
        ]),
        Of(LureMass, "lure.mass=10 g,12 g"),
        Of("spool", "reel.spool_inertia=4 g cm2,6 g cm2,8 g cm2,12 g cm2,16 g cm2"),
        Of("overhang", "cast.overhang=8 in:32 in:5"),
        Of("effort", "cast.effort=0.3,0.5,0.75,1"),
        Of("style", "cast.style=wrist-flick,one-handed,two-handed"),
        Of("rod-power", "rod.power=ultralight,light,medium-light,medium,medium-heavy,heavy,extra-heavy"),
        Of("brake", "reel.brake_strength=0,0.5,1,1.5,2,4"),
    ];

    /// <summary>All names, rods of several lengths first.</summary>
    public static IEnumerable<string> Names => [RodLadder.Name, .. All.Select(r => r.Name)];

    /// <summary>Text of the axis; some follow the scenario's own value.</summary>
    /// <param name="scenario">The scenario, or null when it is broken.</param>
    public string AxisFor(ScenarioResult? scenario) => Name == LureMass && scenario?.Setup is { } setup
        ? "lure.mass=" + string.Join(",", LureMassShares.Select(share => FormattableString.Invariant($"{1e3 * share * setup.Lure.MassKg:0.##} g")))
        : Axis!;

    /// <summary>The comparison of a name, or null.</summary>
    /// <param name="name">Name.</param>
    public static ReadyComparison? Find(string name) => All.FirstOrDefault(r => r.Name == name);

    private static ReadyComparison Of(string name, string axis) => new(name, "", axis, []);

    private static string[] Line(string material, string label, string film) =>
        ["line.material=" + material, "line.label=" + label, "line.film=" + film];
}
