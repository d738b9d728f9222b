using LureSim.Cli.Sweeps;
using LureSim.Scenarios;
using LureSim.Scenarios.Quantities;
using LureSim.Scenarios.Variation;

namespace LureSim.Cli.Commands;

/// <summary>What <c>cast --across</c> compares.</summary>
/// <param name="Title">What differs, with its unit.</param>
/// <param name="IsNumeric">Whether the values can be plotted.</param>
/// <param name="IsLadder">Rods of several lengths, which change more than one key.</param>
/// <param name="Values">Label, number in the key's unit (NaN for words), overrides.</param>
public sealed record CastAcrossAxis(
    string Title, bool IsNumeric, bool IsLadder, IReadOnlyList<(string Label, double Number, IReadOnlyList<string> Overrides)> Values)
{
    private const int MostValues = 40;

    private static readonly double[] LureMassShares = [0.7, 0.8, 0.9, 1.0, 1.1];

    private static readonly (string Name, string Axis)[] Ready =
    [
        ("line-diameter", "line.diameter=0.20 mm:0.40 mm:5"),
        ("spool", "reel.spool_inertia=4 g cm2,6 g cm2,8 g cm2,12 g cm2,16 g cm2"),
        ("overhang", "cast.overhang=8 in:32 in:5"),
        ("effort", "cast.effort=0.5,0.75,1,1.25,1.5"),
    ];

    private static readonly (string Label, IReadOnlyList<string> Overrides)[] Lines =
    [
        ("braid 20 lb", ["line.material=braid", "line.label=20 lb"]),
        ("braid 30 lb", ["line.material=braid", "line.label=30 lb"]),
        ("braid 50 lb", ["line.material=braid", "line.label=50 lb"]),
        ("nylon 10 lb", ["line.material=nylon", "line.label=10 lb"]),
        ("nylon 14 lb", ["line.material=nylon", "line.label=14 lb"]),
        ("fluorocarbon 12 lb", ["line.material=fluorocarbon", "line.label=12 lb"]),
    ];

    private static readonly (string Label, IReadOnlyList<string> Overrides)[] Winds =
    [
        ("calm", ["air.wind=0 m/s"]),
        ("4 m/s from behind", ["air.wind=4 m/s", "air.wind_from=from behind"]),
        ("8 m/s from behind", ["air.wind=8 m/s", "air.wind_from=from behind"]),
        ("4 m/s in the face", ["air.wind=4 m/s", "air.wind_from=in face"]),
        ("8 m/s in the face", ["air.wind=8 m/s", "air.wind_from=in face"]),
    ];

    /// <summary>Names of ready-made comparisons.</summary>
    public static IEnumerable<string> Names => [RodLadder.Name, "line", "wind", "lure-mass", .. Ready.Select(r => r.Name)];

    /// <summary>Reads the option; null after its faults were added.</summary>
    /// <param name="text">As given.</param>
    /// <param name="scenario">The scenario, or null when it is broken.</param>
    /// <param name="faults">Gets every fault.</param>
    public static CastAcrossAxis? Read(string text, ScenarioResult? scenario, List<ScenarioFault> faults)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(faults);
        if (text == RodLadder.Name)
        {
            return new("rod length, ft", true, true, [.. RodLadder.Lengths.Select(l => (l, Quantity.Read(l, QuantityKind.Length).Si / 0.3048, (IReadOnlyList<string>)[]))]);
        }

        if (text is "line" or "wind")
        {
            return new(text == "line" ? "line type" : "wind", false, false, [.. (text == "line" ? Lines : Winds).Select(w => (w.Label, double.NaN, w.Overrides))]);
        }

        string? axis = text == "lure-mass" ? LureMass(scenario)
            : Ready.FirstOrDefault(r => r.Name == text).Axis ?? (text.Contains('=', StringComparison.Ordinal) ? text : null);
        if (axis is not null)
        {
            return AxisReader.Read(axis, "--across", faults) is Axis read ? Of(read, text, scenario, faults) : null;
        }

        faults.Add(new("--across", "", $"\"{text}\" is unknown; KEY=list or range, or one of {string.Join(", ", Names)}, is due"));
        return null;
    }

    // The same body, lighter and a little heavier; much heavier ones would sink, which the float model refuses.
    private static string? LureMass(ScenarioResult? scenario) => scenario?.Setup is { } spec
        ? "lure.mass=" + string.Join(",", LureMassShares.Select(share => FormattableString.Invariant($"{1e3 * share * spec.Lure.MassKg:0.##} g")))
        : "lure.mass=10 g,12 g";

    private static CastAcrossAxis? Of(Axis axis, string text, ScenarioResult? scenario, List<ScenarioFault> faults)
    {
        var figures = new CastFigures();
        string? unread = scenario?.Setup is null ? null : axis.Keys.FirstOrDefault(k => !figures.Reads(k, scenario))?.Path;
        string? wrong = axis.Values.Count == 0 ? "a range needs a step or a count here"
            : axis.Values.Count > MostValues ? $"more than {MostValues} values; use sweep --command cast for large grids"
            : unread is not null ? $"this cast does not read {unread}"
            : null;
        if (wrong is not null)
        {
            faults.Add(new("--across " + text, axis.Name, wrong));
            return null;
        }

        return new(
            axis.Title, axis.IsNumeric && axis.Kind != QuantityKind.LineNumber, false,
            [.. axis.Values.Select(v => (v.Label, axis.IsNumeric ? axis.InUnit(v.Si) : double.NaN, v.Overrides))]);
    }
}
