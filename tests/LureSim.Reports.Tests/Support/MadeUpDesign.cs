using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Trim;

namespace LureSim.Reports.Tests.Support;

/// <summary>Lures to draw templates of, floated by the model.</summary>
internal static class MadeUpDesign
{
    public static LureSpec Cigar { get; } = new(
        LureShape.Cigar, 0.115, 0.021, 0.021, 0.018, 0.0575, 0.0,
        [new BallastSpec(0.0025, -0.012, -0.006), new BallastSpec(0.001, 0.02, -0.005)],
        [new HookSpec(0.0015, 0.028, -0.010, 1e-4, 2e-7), new HookSpec(0.0015, -0.055, 0.0, 1e-4, 2e-7)]);

    /// <summary>A lure given by its stations, higher than wide, with a belly that is not its back, longer than a sheet of paper.</summary>
    public static LureSpec Long { get; } = new(
        LureShape.Stations, 0.36, 0.03, 0.04, 0.12, 0.175, 0.0, [new BallastSpec(0.02, -0.03, -0.012)], [],
        [new(-0.18, 0.004, 0.005, 0.002), new(-0.05, 0.015, 0.02), new(0.06, 0.014, 0.018, -0.002), new(0.18, 0.0, 0.0)]);

    /// <summary>The same as high as a hand.</summary>
    public static LureSpec High { get; } = Long with
    {
        HeightM = 0.16,
        MassKg = 0.3,
        Stations = [new(-0.18, 0.004, 0.02), new(0.0, 0.015, 0.08), new(0.18, 0.0, 0.0)],
    };

    /// <summary>Floats one in fresh water.</summary>
    public static TrimResult Float(LureSpec lure) => Trimming.Run(lure, WaterModel.Evaluate(new WaterSpec()));
}
