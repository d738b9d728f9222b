using LureSim.Model;
using LureSim.Model.Strike;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Strike;

/// <summary>
/// Rod and line at the moments of a strike, drawn over the height of a panel. Its level scale is that of the panel's y axis whatever the size of the picture, so that
/// bends and angles look as they are; the x axis of the picture, a time, has no part in it.
/// </summary>
/// <param name="moments">Moments in order of time, at least one.</param>
/// <param name="unit">Unit of the y axis.</param>
/// <param name="isFromAbove">True for a stroke to the side, seen from above.</param>
/// <param name="hookWords">How far off the hook is, said where the line leaves the panel.</param>
internal sealed class RodScene(IReadOnlyList<StrikeMoment> moments, ShownUnit unit, bool isFromAbove, string hookWords) : Annotation
{
    private const EdgeRenderingMode Mode = EdgeRenderingMode.PreferGeometricAccuracy;
    private const double Behind = 0.45, Gap = 14, HookSize = 11;

    /// <summary>Free height under and over what is drawn, m: below for the words about the hook and the bar, above for the numbers at the tips.</summary>
    public const double Below = 0.36, Above = 0.3;

    /// <summary>The moments.</summary>
    public IReadOnlyList<StrikeMoment> Moments => moments;

    /// <summary>How far off the hook is.</summary>
    public string HookWords => hookWords;

    /// <inheritdoc/>
    public override OxyRect GetClippingRect() => XAxis is { } x && YAxis is { } y ? PanelArea.Of(x, y) : OxyRect.Everything;

    /// <inheritdoc/>
    public override void Render(IRenderContext rc)
    {
        base.Render(rc);
        if (XAxis is not { } time || YAxis is not { } height)
        {
            return;
        }

        var place = new Place(PanelArea.Of(time, height), height, unit, moments.Min(m => m.RodX.Min()) - Behind);
        DrawGround(rc, place);
        foreach (StrikeMoment moment in moments.OrderBy(m => m.Name == StrikeMomentName.Peak))
        {
            bool peak = moment.Name == StrikeMomentName.Peak;
            Stroke(rc, place, moment.LineX, moment.LineZ, peak ? Looks.Line : Looks.Line.Pale(0.55), peak ? 4 : 2);
            Stroke(rc, place, moment.RodX, moment.RodZ, peak ? Looks.Rod : Looks.Rod.Pale(0.55), peak ? 7 : 4);
        }

        Tags.Draw(
            rc, ActualFont, place.OverBottom, [.. moments.Select((m, i) => new Tag(i + 1, place.At(m.RodX[^1], m.RodZ[^1]), StrikeNames.Of(m.Name)))],
            [.. moments.SelectMany(m => Tags.Along(place.At(m.RodX, m.RodZ)).Concat(Tags.Along(place.At(m.LineX, m.LineZ))))]);
        DrawHook(rc, place);
        DrawBar(rc, place);
    }

    /// <inheritdoc/>
    protected override HitTestResult? HitTestOverride(HitTestArguments args) => null;

    private void DrawGround(IRenderContext rc, Place place)
    {
        OxyRect area = place.Area;
        double wet = isFromAbove ? area.Top : Math.Clamp(place.At(0.0, 0.0).Y, area.Top, area.Bottom);
        rc.DrawRectangle(area, OxyColors.White, OxyColors.Undefined, 0, Mode);
        rc.DrawRectangle(new OxyRect(area.Left, wet, area.Width, area.Bottom - wet), Looks.Water, OxyColors.Undefined, 0, Mode);
    }

    private static void Stroke(IRenderContext rc, Place place, ValueList<double> x, ValueList<double> z, Look look, double width) =>
        rc.DrawLine(place.At(x, z), look.Color, width, Mode, null, LineJoin.Round);

    // The hook itself where it is in the picture, else how far off it is, under the lines that go there.
    private void DrawHook(IRenderContext rc, Place place)
    {
        ScreenPoint hook = place.At(moments[0].LineX[^1], moments[0].LineZ[^1]);
        double right = place.Area.Right - Gap;
        bool seen = hook.X < right - HookSize;
        if (seen)
        {
            rc.DrawEllipse(new OxyRect(hook.X - HookSize, hook.Y - HookSize, 2 * HookSize, 2 * HookSize), Looks.Lure.Color, Looks.Lure.Color, 1, Mode);
        }

        Write(rc, new(seen ? Math.Min(hook.X + HookSize, right) : right, place.Bottom), seen ? hookWords : hookWords + " →", HorizontalAlignment.Right);
    }

    private void DrawBar(IRenderContext rc, Place place)
    {
        double length = unit.Si < 0.5 ? 3.0 : 1.0, x = place.Area.Left + Gap, end = x + (length * place.Scale);
        rc.DrawLine([new(x, place.Bottom), new(end, place.Bottom)], ChartStyle.Ink, 7, Mode, null, LineJoin.Miter);
        Write(rc, new(end + Gap, place.Bottom), $"{Trade.Fixed(length, 0)} {unit.Name}", HorizontalAlignment.Left);
    }

    private void Write(IRenderContext rc, ScreenPoint at, string words, HorizontalAlignment across) =>
        rc.DrawText(at, words, ChartStyle.Ink, ActualFont, ChartStyle.TextSize, FontWeights.Normal, 0, across, VerticalAlignment.Middle);

    // From metres to the screen: one scale for both directions.
    private readonly record struct Place(OxyRect Area, Axis Height, ShownUnit Unit, double LeftM)
    {
        public double Scale => Math.Abs(Height.Scale);

        public double Bottom => Area.Bottom - Gap - (0.5 * ChartStyle.TextSize);

        public ScreenPoint[] At(ValueList<double> xM, ValueList<double> zM)
        {
            Place place = this;
            return [.. xM.Zip(zM, place.At)];
        }

        // Free of the words at the bottom.
        public OxyRect OverBottom => new(Area.Left, Area.Top, Area.Width, Bottom - ChartStyle.TextSize - Area.Top);

        public ScreenPoint At(double xM, double zM) => new(Area.Left + (Unit.Of(xM - LeftM) * Scale), Height.Transform(Unit.Of(zM)));
    }
}
