namespace LureSim.Model.Fish;

/// <summary>What the fish does once it feels the hook.</summary>
public enum FishWay
{
    /// <summary>It hangs still in the water.</summary>
    Stays,

    /// <summary>It swims away from the angler.</summary>
    Runs,

    /// <summary>It swims toward the angler.</summary>
    Comes,

    /// <summary>A hook fast in something that does not yield: the upper bound of every force.</summary>
    Fast,
}

/// <summary>The fish: a mass with the drag of water that may swim.</summary>
/// <remarks>Nobody has measured how hard such fish pull on a line; <see cref="PullN"/> and <see cref="SpeedMS"/> are inputs with a wide band.</remarks>
/// <param name="MassKg">M, kg.</param>
/// <param name="DragAreaM2">CdA when drawn head first, m2; usual values by <see cref="FishBody"/>.</param>
/// <param name="AddedMassShare">Added mass of water along its way over M, guess 0.1 (0.05 to 0.3).</param>
/// <param name="DepthM">Height of its body, m; by <see cref="FishBody"/>.</param>
/// <param name="PullN">Thrust at rest, N.</param>
/// <param name="SpeedMS">Speed at which no thrust is left for pulling, m/s, guess 2.5 (1.2 to 4).</param>
/// <param name="ReactionS">Time from the first pull until it swims, s, guess 0.25 (0.1 to 0.5).</param>
public sealed record FishSpec(
    [property: Parameter("M", "kg", 0.05, 40.0)] double MassKg = 1.5,
    [property: Parameter("CdA", "m2", 1e-5, 1.0, GuessLow = 0.001, GuessHigh = 0.006)] double DragAreaM2 = 0.003,
    [property: Parameter("added mass", "", 0.0, 2.0, GuessLow = 0.05, GuessHigh = 0.3)] double AddedMassShare = 0.1,
    [property: Parameter("depth", "m", 0.01, 1.0)] double DepthM = 0.13,
    [property: Parameter("P", "N", 0.0, 1000.0, GuessLow = 5.0, GuessHigh = 25.0)] double PullN = 12.0,
    [property: Parameter("v_top", "m/s", 0.1, 10.0, GuessLow = 1.2, GuessHigh = 4.0)] double SpeedMS = 2.5,
    [property: Parameter("reaction", "s", 0.0, 3.0, GuessLow = 0.1, GuessHigh = 0.5)] double ReactionS = 0.25) : ISpec
{
    /// <summary>What it does.</summary>
    public FishWay Way { get; init; } = FishWay.Runs;
}
