namespace LureSim.Model.Cover;

/// <summary>Plants where the lure is fished.</summary>
public enum CoverKind
{
    /// <summary>Open water, or the open side of an edge.</summary>
    Open,

    /// <summary>Single plants with water between them.</summary>
    Sparse,

    /// <summary>A closed mat on the surface.</summary>
    Mat,
}

/// <summary>
/// Plants between fish and angler: line laid over them is held by friction along it and by turns about stems, the fish by its grip in them, and it brings weed
/// along. No published values; all guesses. Line that the rod lifts off the plants is free of them.
/// </summary>
/// <param name="LineOverM">Length of line, counted from the lure, that crosses plants, m; less is counted where the whole line is shorter.</param>
/// <param name="DragNM">f, hold per metre of line that lies on plants, N/m.</param>
/// <param name="TurnRadM">Turn about stems per metre of such line, rad/m; friction adds mu T for every radian (capstan).</param>
/// <param name="LineFriction">mu of line on wet plants, guess 0.3 (0.15 to 0.5).</param>
/// <param name="HeightM">Height of the plants over the water, m: line higher than that is free.</param>
/// <param name="GripN">Pull that drags the fish through them, N, on top of the water's drag.</param>
/// <param name="WeedKg">Wet weed that comes along with it, kg.</param>
/// <param name="LureFriction">mu_l of a lure on wet plants, guess 0.4 (0.2 to 0.7).</param>
/// <param name="OpeningM">Free water under the line, m: for a lure in an opening from the lure on, for one that crawls toward it the length of the opening ahead.</param>
/// <param name="StiffnessNM">k: what plants carry of a lure per metre that it presses them down, N/m, guess 60 (20 to 200: the water under its belly alone gives 10 to 15).</param>
/// <param name="DampingRatio">zeta of a lure that bobs on them, guess 0.5 (0.2 to 1).</param>
public sealed record CoverSpec(
    [property: Parameter("line over plants", "m", 0.0, 60.0)] double LineOverM = 0.0,
    [property: Parameter("f", "N/m", 0.0, 50.0)] double DragNM = 0.0,
    [property: Parameter("turn", "rad/m", 0.0, 3.0)] double TurnRadM = 0.0,
    [property: Parameter("mu", "", 0.0, 1.5, GuessLow = 0.15, GuessHigh = 0.5)] double LineFriction = 0.3,
    [property: Parameter("height", "m", 0.0, 1.0, GuessLow = 0.02, GuessHigh = 0.2)] double HeightM = 0.08,
    [property: Parameter("grip", "N", 0.0, 1000.0)] double GripN = 0.0,
    [property: Parameter("weed", "kg", 0.0, 30.0)] double WeedKg = 0.0,
    [property: Parameter("mu_l", "", 0.0, 2.0, GuessLow = 0.2, GuessHigh = 0.7)] double LureFriction = 0.4,
    [property: Parameter("opening", "m", 0.0, 30.0)] double OpeningM = 0.0,
    [property: Parameter("k", "N/m", 5.0, 5000.0, GuessLow = 20.0, GuessHigh = 200.0)] double StiffnessNM = 60.0,
    [property: Parameter("zeta", "", 0.0, 2.0, GuessLow = 0.2, GuessHigh = 1.0)] double DampingRatio = 0.5) : ISpec
{
    /// <summary>How well hold per metre, turn, grip and weed of a kind are known: right within this factor (<see cref="Ranged.About"/>); a guess.</summary>
    public const double Spread = 2.5;

    /// <summary>Kind.</summary>
    public CoverKind Kind { get; init; } = CoverKind.Open;

    /// <summary>Usual values of a kind: no published ones.</summary>
    /// <param name="kind">Kind.</param>
    /// <exception cref="ArgumentOutOfRangeException">The kind is not known.</exception>
    public static CoverSpec Of(CoverKind kind) => kind switch
    {
        CoverKind.Open => new(),
        CoverKind.Sparse => new(3.0, 0.2, 0.05, GripN: 8.0, WeedKg: 0.3) { Kind = kind },
        CoverKind.Mat => new(6.0, 0.5, 0.1, GripN: 40.0, WeedKg: 1.5) { Kind = kind },
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "this kind is not known"),
    };
}
