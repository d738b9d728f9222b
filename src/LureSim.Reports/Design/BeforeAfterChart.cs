using LureSim.Model.Trim;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Trim;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Design;

/// <summary>A lure before and after a change, from the side at its waterline, one over the other at one scale.</summary>
public static class BeforeAfterChart
{
    private const int Height = 1000;

    /// <summary>Builds the picture.</summary>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="before">Lure as it is.</param>
    /// <param name="after">Lure with the change.</param>
    /// <param name="change">What was changed, in words.</param>
    /// <param name="shown">Units.</param>
    public static Chart Build(string title, TrimResult before, TrimResult after, string change, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        ArgumentNullException.ThrowIfNull(shown);
        HullProfile a = before.Profile, b = after.Profile;
        ShownUnit unit = shown.Unit(ShownQuantity.Size, Math.Max(Long(a), Long(b)));
        PlotModel model = ChartStyle.NewModel(Message(before, after), $"{Trade.Capital(change)}: {title}");
        model.PlotType = PlotType.Cartesian;
        double left = unit.Of(Math.Min(Left(a), Left(b))), right = unit.Of(Math.Max(Right(a), Right(b))), room = 0.06 * (right - left);

        // Each view counts its heights from its own water: the upper one is moved by a whole number of steps of the axis.
        double step = Step(right - left), apart = step * Math.Ceiling((unit.Of(Top(b)) - unit.Of(Low(a)) + (1.5 * room)) / step);
        double low = unit.Of(Low(b)) - room, high = unit.Of(Top(a)) + apart + room;
        double middle = 0.5 * (low + high), half = Math.Max(0.5 * (high - low), 0.26 * (right - left));
        LinearAxis up = ChartStyle.NewAxis(AxisPosition.Left, $"Over the water, {unit.Name}", middle - half, middle + half);
        double between = 0.5 * (unit.Of(Top(b)) + unit.Of(Low(a)) + apart);
        up.MajorStep = step;
        up.LabelFormatter = z => Trade.Digits(z > between ? z - apart : z, unit.MostPlaces);
        var panels = new Panels(model, Height, [up]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, $"Toward the nose from the middle, {unit.Name}", left - room, right + room));
        foreach ((HullProfile profile, double raised, double floor, string name) in new[] { (b, 0.0, middle - half, "after"), (a, apart, between, "before") })
        {
            model.Annotations.Add(new RectangleAnnotation { YAxisKey = Panels.Key(0), MinimumY = floor, MaximumY = raised, Fill = Looks.Water, Layer = AnnotationLayer.BelowSeries });
            TrimView.Draw(model, profile, unit, raised);
            panels.Level(0, raised, ChartStyle.Blue);
            panels.Words(0, left - (0.2 * room), raised + (0.35 * unit.Of(Top(profile))) + (0.6 * room), name, ChartStyle.Faint(OxyColors.White, 0.8));
        }

        panels.Header(0, "Side view", TrimView.Legend);
        return new Chart("design_before_after", model, Height: Height);
    }

    private static string Message(TrimResult before, TrimResult after) => $"Floats {Rests(after)} instead of {Rests(before)}";

    private static string Rests(TrimResult trim) => trim.IsUpright ? TrimText.Angle(trim.Rest.TrimRad) : "lying over";

    private static double Step(double width)
    {
        double rough = width / 12.0, ten = Math.Pow(10.0, Math.Floor(Math.Log10(rough)));
        return ten * (rough / ten < 1.5 ? 1.0 : rough / ten < 3.5 ? 2.0 : rough / ten < 7.5 ? 5.0 : 10.0);
    }

    private static double Long(HullProfile p) => Right(p) - Left(p);

    private static double Left(HullProfile p) => Math.Min(p.BackXM.Min(), p.BellyXM.Min());

    private static double Right(HullProfile p) => Math.Max(p.BackXM.Max(), p.BellyXM.Max());

    private static double Top(HullProfile p) => Math.Max(p.BackZM.Max(), p.Marks.Max(m => m.ZM));

    private static double Low(HullProfile p) => Math.Min(Math.Min(p.BellyZM.Min(), p.BackZM.Min()), p.Marks.Min(m => m.ZM));
}
