using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Studies.Cadence;

namespace LureSim.Reports.Cadence;

/// <summary>Glide, swing, certainty and wrist over rhythm, with the patterns as bands.</summary>
public static class CadenceChart
{
    /// <summary>Title of every rhythm axis.</summary>
    public const string RhythmTitle = "rhythm, twitches per second";

    /// <summary>Builds the chart.</summary>
    /// <param name="result">Rhythms of one set-up.</param>
    public static Chart Build(CadenceResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return StudyLines.Build(
            "cadence", result.Setup.Title, CadenceStory.Headline(result), RhythmTitle,
            [
                new("How far it glides across", "cm per twitch", [Figure(result, "glide", o => 100.0 * o.GlideWidthM)]),
                new("How far it turns, side to side", "deg", [Figure(result, "swing", o => o.HeadingSwingDeg)]),
                new("How sure it is", "share", [Figure(result, "regularity of the swing", o => o.Regularity), Locks(result)]),
                new("What the wrist works with", "N m, rms", [Figure(result, "torque", o => o.WristTorqueRmsNm), Sustained(result)]),
            ],
            [.. result.Bands().Select(b => new StudySpan(PatternClasses.Name(b.Pattern), b.FromPerS, b.ToPerS))],
            PatternClasses.Of(result.Points.Select(p => p.Pattern)));
    }

    private static double[] Rhythms(CadenceResult result) => [.. result.Points.Select(p => p.PerS)];

    private static StudyLine Figure(CadenceResult result, string label, Func<RetrieveSummary, double> figure) => new(
        label, Rhythms(result), [.. result.Points.Select(p => p.Median(figure))],
        [.. result.Points.Select(p => p.Spread(figure).Low)], [.. result.Points.Select(p => p.Spread(figure).High)]);

    private static StudyLine Locks(CadenceResult result) =>
        new("share of starts that walk", Rhythms(result), [.. result.Points.Select(p => p.LockShare)]);

    private static StudyLine Sustained(CadenceResult result)
    {
        double[] at = [result.Points[0].PerS, result.Points[^1].PerS];
        SustainedTorque t = result.Torque;
        return new("what it can keep up", at, [t.Nm, t.Nm], [t.LowNm, t.LowNm], [t.HighNm, t.HighNm]);
    }
}
