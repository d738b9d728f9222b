using LureSim.Model.Cast;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cast;

namespace LureSim.Reports.Cast;

/// <summary>The short table of a cast: the trade's unit, then SI.</summary>
internal static class CastTable
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>The table as aligned plain text.</summary>
    /// <param name="report">Cast.</param>
    public static string Text(CastReport report)
    {
        CastResult c = report.Cast;
        bool revolving = c.SpoolPeakRpm > 0.0;
        return AlignedTable.Text(
        [
            Far("mean of many casts", c.DistanceMeanM),
            new("8 of 10 casts", $"{Feet(c.DistanceP10M)} to {Feet(c.DistanceP90M)} ft", $"{Trade.Fixed(c.DistanceP10M, 1)} to {Trade.Fixed(c.DistanceP90M, 1)} m"),
            Far("without release error", c.DistanceM),
            Far("line out", c.LineOutM),
            new("launch speed", $"{Trade.Fixed(Trade.MilesPerHour(c.LaunchSpeedMS), 0)} mph", $"{Trade.Fixed(c.LaunchSpeedMS, 1)} m/s"),
            new("launch angle", $"{Angle(c.LaunchAngleRad)} deg", "above the horizontal"),
            new("flight time", $"{Trade.Fixed(c.FlightTimeS, 2)} s", $"highest point {Trade.Fixed(c.ApexM, 1)} m"),
            new("release", $"{Trade.Fixed(c.ReleaseTimeS, 3)} s", $"butt {Angle(c.ReleaseAngleRad)} deg from the vertical, turning at {Trade.Fixed(c.ReleaseTurnRadS, 1)} rad/s"),
            new("10 ms early, 10 ms late", $"{Signed(Trade.Feet(c.DistanceChangeM(-0.01)))}, {Signed(Trade.Feet(c.DistanceChangeM(0.01)))} ft", $"{Signed(c.DistanceChangeM(-0.01))}, {Signed(c.DistanceChangeM(0.01))} m"),
            new("rod bend, largest", $"{Trade.Fixed(100 * c.PeakBendShare, 0)} % of its length", $"stores {Trade.Fixed(c.PeakBendEnergyJ, 1)} J"),
            new("hand torque, peak", $"{Trade.Fixed(Trade.PoundInches(c.PeakHandTorqueNm) / 12.0, 0)} lb-ft", $"{Trade.Fixed(c.PeakHandTorqueNm, 0)} N m"),
            new("tip pull, peak", $"{Trade.Digits(Trade.OunceForce(c.PeakTensionN))} oz-force", $"{Trade.Digits(c.PeakTensionN)} N"),
            .. revolving ? Spool(report) : [],
        ]);
    }

    private static IEnumerable<TableRow> Spool(CastReport report)
    {
        CastResult c = report.Cast;
        yield return new("spool, peak", Trade.Rpm(c.SpoolPeakRpm), $"{Trade.Fixed(c.LoopsMean, 1)} loops loose, mean of many casts");
        yield return new("casts that tangle", $"{Trade.Fixed(100.0 * c.TangleShare, 0)} %", "a guess: spools bear 0.6 to 5 loops");
        foreach (BrakePoint b in report.Brakes)
        {
            yield return new(
                $"brake at {Trade.Fixed(b.Strength, 1)} of matched", $"{Feet(b.DistanceMeanM)} ft",
                $"{Trade.Fixed(b.DistanceMeanM, 1)} m, {Trade.Fixed(b.LoopsMean, 1)} loops, {Trade.Fixed(100.0 * b.TangleShare, 0)} % tangle");
        }
    }

    private static TableRow Far(string name, double m) => new(name, $"{Feet(m)} ft", $"{Trade.Fixed(m, 1)} m");

    private static string Feet(double m) => Trade.Fixed(Trade.Feet(m), 0);

    private static string Angle(double rad) => Trade.Fixed(rad / Degree, 0);

    private static string Signed(double value) => (value > 0.0 ? "+" : "") + Trade.Fixed(value, 1);
}
