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
/// <param name="SetN">Force with which one point goes in over the barb, N, guess 10 (5 to 20).</param>
/// <param name="HoldN">Force at which one point tears out, N, guess 45 (20 to 100).</param>
/// <param name="WireN">Force at which one point bends open, N; from wire and gap where they are known.</param>
public sealed record HookHold(
    [property: Parameter("n", "", 1, 3)] int Points = 2,
    [property: Parameter("F_set", "N", 0.1, 200.0, GuessLow = 5.0, GuessHigh = 20.0)] double SetN = 10.0,
    [property: Parameter("F_hold", "N", 1.0, 1000.0, GuessLow = 20.0, GuessHigh = 100.0)] double HoldN = 45.0,
    [property: Parameter("F_wire", "N", 1.0, 2000.0, GuessLow = 25.0, GuessHigh = 70.0)] double WireN = 45.0) : ISpec
{
    /// <summary>Shape.</summary>
    public HookKind Kind { get; init; } = HookKind.ThreePoint;

    /// <summary>Pull on the line that sets all n points, N.</summary>
    public double SettingN => Points * SetN;

    /// <summary>Pull at which the hold tears, N.</summary>
    public double TearingN => Points * HoldN;

    /// <summary>Pull at which the wire opens, N.</summary>
    public double OpeningN => Points * WireN;
}
