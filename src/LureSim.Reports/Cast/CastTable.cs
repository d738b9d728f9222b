using LureSim.Model.Cast;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cast;

namespace LureSim.Reports.Cast;

/// <summary>The short table of a cast.</summary>
internal static class CastTable
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>The table as aligned plain text.</summary>
    /// <param name="report">Cast.</param>
    /// <param name="shown">Units.</param>
    public static string Text(CastReport report, Shown shown)
    {
        CastResult c = report.Cast;
        return AlignedTable.Text(
        [
            Far("mean of many casts", c.DistanceMeanM, shown),
            shown.Row("8 of 10 casts", ShownQuantity.Distance, c.DistanceP90M, u => $"{u.Digits(c.DistanceP10M)} to {u.Text(c.DistanceP90M)}"),
            Far("without release error", c.DistanceM, shown),
            Far("line out", c.LineOutM, shown),
            shown.Row("launch speed", ShownQuantity.Speed, c.LaunchSpeedMS),
            new("launch angle", $"{Angle(c.LaunchAngleRad)} deg", "above the horizontal"),
            new("flight time", $"{Trade.Fixed(c.FlightTimeS, 1)} s", $"highest point {shown.Distance(c.ApexM)}"),
            new("release", $"{Trade.Fixed(c.ReleaseTimeS, 2)} s", $"butt {Angle(c.ReleaseAngleRad)} deg from upright, turning at {CastStory.Turns(c.ReleaseTurnRadS)} turns/s"),
            Early(c, shown),
            new("rod bend, largest", $"{Trade.Fixed(100 * c.PeakBendShare, 0)} % of its length", $"stores {shown.Energy(c.PeakBendEnergyJ)}"),
            shown.Row("weight on the hands, peak", ShownQuantity.Torque, c.PeakHandTorqueNm),
            shown.Row("tip pull, peak", ShownQuantity.Pull, c.PeakTensionN),
            .. c.SpoolPeakRpm > 0.0 ? Spool(report, shown) : [],
        ]);
    }

    private static TableRow Early(CastResult c, Shown shown)
    {
        double early = c.DistanceChangeM(-0.01), late = c.DistanceChangeM(0.01);
        return shown.Row("10 ms early, 10 ms late", ShownQuantity.Distance, Math.Max(Math.Abs(early), Math.Abs(late)), u => $"{Signed(u.Of(early))}, {Signed(u.Of(late))} {u.Name}");
    }

    private static IEnumerable<TableRow> Spool(CastReport report, Shown shown)
    {
        CastResult c = report.Cast;
        yield return new("spool, peak", Trade.Rpm(c.SpoolPeakRpm), $"{Trade.Fixed(c.LoopsMean, 1)} loops loose, mean of many casts");
        yield return new("casts that tangle", $"{Trade.Fixed(100.0 * c.TangleShare, 0)} %", "a guess: spools bear 0.6 to 5 loops");
        foreach (BrakePoint b in report.Brakes)
        {
            TableRow far = Far($"brake at {Trade.Fixed(b.Strength, 1)} of matched", b.DistanceMeanM, shown);
            string told = $"{Trade.Fixed(b.LoopsMean, 1)} loops, {Trade.Fixed(100.0 * b.TangleShare, 0)} % tangle";
            yield return far with { Second = far.Second.Length > 0 ? $"{far.Second}, {told}" : told };
        }
    }

    private static TableRow Far(string name, double m, Shown shown) => shown.Row(name, ShownQuantity.Distance, m);

    private static string Angle(double rad) => Trade.Fixed(rad / Degree, 0);

    private static string Signed(double value) => (value > 0.0 ? "+" : "") + Trade.Fixed(value, 1);
}
