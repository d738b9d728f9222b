namespace LureSim.Model.Lures;

/// <summary>Shape of a hook.</summary>
public enum HookKind
{
    /// <summary>A single hook.</summary>
    OnePoint,

    /// <summary>A double: two points on one shank.</summary>
    TwoPoint,

    /// <summary>A treble: three points on one shank.</summary>
    ThreePoint,
}

/// <summary>
/// What the hook in the fish needs and bears. Nobody has published a force that sets a hook in a fish: needles in skin take 0.5 to 2 N (from memory), a barbed
/// hook more; all forces here are guesses to be given better by the reader, per point: points that must enter at once share the force of the line.
/// </summary>
/// <param name="Points">n, points that share the load; 1 to 3.</param>
/// <param name="SetN">Force with which one point goes in over the barb, N, guess 10 (5 to 20) for wire of 1.0 mm.</param>
/// <param name="HoldN">Force at which one point tears out, N, guess 45 (20 to 100) for wire of 1.0 mm.</param>
/// <param name="WireN">Force at which one point bends open, N, guess 45 (25 to 70); from wire and gap where they are known.</param>
public sealed record HookHold(
    [property: Parameter("n", "", 1, 3)] int Points = 2,
    [property: Parameter("F_set", "N", 0.1, 200.0, GuessLow = 5.0, GuessHigh = 20.0)] double SetN = 10.0,
    [property: Parameter("F_hold", "N", 1.0, 1000.0, GuessLow = 20.0, GuessHigh = 100.0)] double HoldN = 45.0,
    [property: Parameter("F_wire", "N", 1.0, 2000.0, GuessLow = 25.0, GuessHigh = 70.0)] double WireN = 45.0) : ISpec
{
    /// <summary>Shape.</summary>
    public HookKind Kind { get; init; } = HookKind.ThreePoint;

    /// <summary>Points that share the load of a shape: one of a single, both of a double, two of a treble (1 to 3, a guess: the third lies against the jaw or outside).</summary>
    /// <param name="kind">Shape.</param>
    public static Ranged UsualPoints(HookKind kind) => kind == HookKind.ThreePoint ? new(2, 1, 3) : new((int)kind + 1, (int)kind + 1, (int)kind + 1);

    /// <summary>Pull on the line that sets all n points, N.</summary>
    public double SettingN => Points * SetN;

    /// <summary>Pull at which the hold tears, N.</summary>
    public double TearingN => Points * HoldN;

    /// <summary>Pull at which the wire opens, N.</summary>
    public double OpeningN => Points * WireN;
}
