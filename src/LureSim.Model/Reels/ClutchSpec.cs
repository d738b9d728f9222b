namespace LureSim.Model.Reels;

/// <summary>How the drag of a reel slips. The force at which it slips, <see cref="ReelSpec.DragN"/>, is the one of a full spool with line pulled straight
/// off the reel; it grows as R_full/R while the spool empties, and by the rings of a bent rod.</summary>
/// <param name="StaticRatio">r, force that starts it over the force that keeps it going, guess 1.25 (1.05 to 1.6): good drags start within a tenth, old and wet ones stick.</param>
/// <param name="SlowMS">u_s, line speed over which static friction falls to sliding friction, m/s, guess 0.05 (0.02 to 0.15).</param>
/// <param name="RingFriction">mu of the line in the rings, guess 0.10 (0.05 to 0.2); the pull at the tip is e^(mu theta) times the one at the reel while line runs out, theta the turn of the line along the rod.</param>
public sealed record ClutchSpec(
    [property: Parameter("r", "", 1.0, 3.0, GuessLow = 1.05, GuessHigh = 1.6)] double StaticRatio = 1.25,
    [property: Parameter("u_s", "m/s", 0.005, 1.0, Spread = 2.7)] double SlowMS = 0.05,
    [property: Parameter("mu", "", 0.0, 0.5, GuessLow = 0.05, GuessHigh = 0.2)] double RingFriction = 0.1) : ISpec;
