using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Drawing;
using LureSim.Studies.Doubt;

namespace LureSim.Reports.Tests.Support;

/// <summary>A study of doubt without runs.</summary>
internal static class MadeUpDoubt
{
    public static HeadlineFigure Glide { get; } = new("glide_width_m", "glide per twitch", "cm", 100.0);

    /// <summary>One guess that acts alone, one only beside others, one that drowns in the noise, one that does not enter.</summary>
    public static DoubtStudy Study(double given = 0.021) => new(
        Report(given, 99, 2),
        Report(given, 99, 0) with { Bands = [new("glide_width_m", 0.015, 0.02, 0.026, 99, given)] },
        new(
            120, 1, ["glide_width_m"], [0.004],
            [[new(0.0, 0.0005, 0.012, 0.009)], [new(0.03, -0.02, 0.045, 0.002)], [new(0.001, -0.001, 0.0015, 0.0)], [new(0.0, 0.0, 0.0, 0.0)]]),
        120,
        [
            new("lure.form_drag", "drag of the blunt tail (0.1 to 0.35)"), new("rod.damping", "damping of the rod (0.05 to 0.2)"),
            new("line.modulus", "stiffness of the line (30 to 70 GPa)"), new("rod.grip", "grip (0.2 to 0.45 m)"),
        ],
        [Glide]);

    public static Chart Chart() => DoubtChart.Build(Study().Report, Study().Screen!, Glide, Study().Guesses)!;

    private static DoubtReport Report(double given, int runs, int failed) => new(
        runs, failed, failed > 0 ? "the lure sinks" : "", [KeyValuePair.Create("alternating", 0.75), KeyValuePair.Create("still", 0.25)],
        [new("glide_width_m", 0.01, 0.02, 0.034, runs - failed, given)]);
}
