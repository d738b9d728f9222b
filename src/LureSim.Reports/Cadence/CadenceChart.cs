using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cadence;
using OxyPlot;

namespace LureSim.Reports.Cadence;

/// <summary>Glide, swing, certainty and wrist over rhythm, with the patterns as bands.</summary>
public static class CadenceChart
{
    /// <summary>Title of every rhythm axis.</summary>
    public const string RhythmTitle = "Rhythm, twitches per second";

    /// <summary>Builds the chart.</summary>
    /// <param name="result">Rhythms of one set-up.</param>
    /// <param name="shown">Units; none = either family.</param>
    public static Chart Build(CadenceResult result, Shown? shown = null)
    {
        ArgumentNullException.ThrowIfNull(result);
        shown ??= Shown.Both;
        ShownUnit glide = GlideUnit(result.Points, shown);
        ShownUnit torque = shown.Unit(ShownQuantity.Torque, result.Torque.HighNm);
        return StudyLines.Build(
            "cadence", CadenceStory.Headline(result), result.Setup.Title, RhythmTitle,
            [
                new("How far it glides across", $"{glide.Name} a twitch", [Figure(result, "glide", o => glide.Of(o.GlideWidthM), Looks.Lure)]),
                new("How far it turns, side to side", "deg", [Figure(result, "swing", o => o.HeadingSwingDeg, Looks.Lure)]),
                new("How sure it is", "share", [Figure(result, "regular swing", o => o.Regularity, Looks.Lure), Locks(result)]),
                new("Weight that the wrist works against", torque.Name, [Figure(result, "works against", o => torque.Of(o.WristTorqueRmsNm), Looks.Hand.Solid), Sustained(result, torque)]),
            ],
            [.. result.Bands().Select(b => new StudySpan(PatternClasses.Name(b.Pattern), b.FromPerS, b.ToPerS))],
            PatternClasses.Of(result.Points.Select(p => p.Pattern)), [1.4, 1.0, 1.0, 1.0]);
    }

    /// <summary>Unit of the glide over several rhythms.</summary>
    /// <param name="points">Rhythms.</param>
    /// <param name="shown">Units.</param>
    internal static ShownUnit GlideUnit(IEnumerable<RhythmPoint> points, Shown shown) => shown.Unit(
        ShownQuantity.Size, points.Select(p => p.Median(o => o.GlideWidthM)).Where(double.IsFinite).DefaultIfEmpty(0.1).Max());

    private static double[] Rhythms(CadenceResult result) => [.. result.Points.Select(p => p.PerS)];

    private static StudyLine Figure(CadenceResult result, string label, Func<RetrieveSummary, double> figure, Look look) => new(
        label, Rhythms(result), [.. result.Points.Select(p => p.Median(figure))],
        [.. result.Points.Select(p => p.Spread(figure).Low)], [.. result.Points.Select(p => p.Spread(figure).High)], look);

    private static StudyLine Locks(CadenceResult result) =>
        new("share of starts that walk", Rhythms(result), [.. result.Points.Select(p => p.LockShare)], Look: Looks.Hand.Solid with { Marker = MarkerType.Square });

    private static StudyLine Sustained(CadenceResult result, ShownUnit unit)
    {
        double[] at = [result.Points[0].PerS, result.Points[^1].PerS];
        SustainedTorque t = result.Torque;
        double[] Level(double nm) => [unit.Of(nm), unit.Of(nm)];
        return new("can keep up (guess, with range)", at, Level(t.Nm), Level(t.LowNm), Level(t.HighNm), Looks.Reference);
    }
}
