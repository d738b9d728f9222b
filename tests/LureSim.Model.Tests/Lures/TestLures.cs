using LureSim.Model.Lures;
using LureSim.Model.Media;

namespace LureSim.Model.Tests.Lures;

/// <summary>Invented lures of the tests.</summary>
internal static class TestLures
{
    public static readonly WaterState Water = new(1000.0, 1.0e-3, 0.0727);

    /// <summary>Cigar of 110 mm and 18 g without hooks, centre of gravity 3.3 mm behind the middle and 2.2 mm under the axis.</summary>
    public static LureSpec Cigar() => new(
        LureShape.Cigar, 0.110, 0.0205, 0.0205, 0.018, 0.0506, 0.0, [new BallastSpec(0.006, -0.0099, -0.0066)], []);

    /// <summary>Slim walker with two hooks.</summary>
    public static LureSpec Pencil() => new(
        LureShape.Pencil, 0.09, 0.018, 0.018, 0.008, 0.040, 0.0, [new BallastSpec(0.003, -0.02, -0.004)],
        [new HookSpec(0.001, 0.01, -0.008, 6e-5, 0.127e-6), new HookSpec(0.001, -0.04, -0.002, 6e-5, 0.127e-6)]);

    /// <summary>Wide hollow body, hooks along its back.</summary>
    public static LureSpec Hollow() => new(
        LureShape.Hollow, 0.06, 0.026, 0.020, 0.012, 0.028, 0.0, [new BallastSpec(0.004, -0.01, -0.006)],
        [new HookSpec(0.003, -0.015, 0.005, 2e-4, 0.38e-6)]);
}
