using LureSim.Model.Lures;
using LureSim.Numerics;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Annotations;

namespace LureSim.Reports.Retrieve;

/// <summary>
/// One instant on the board of <see cref="AttitudeSide"/>: words on top, hull from the side below them, largest section from ahead on the right.
/// The board's unit is about a pixel.
/// </summary>
/// <param name="model">Receives the drawing.</param>
/// <param name="frame">Scales common to all cells.</param>
/// <param name="left">Left edge on the board, px.</param>
/// <param name="top">Upper edge on the board, px.</param>
internal sealed class AttitudeCell(PlotModel model, AttitudeFrame frame, double left, double top)
{
    /// <summary>Width of a cell, px.</summary>
    public const double Usual = 738.0;

    /// <summary>Height of the room below a cell, and of the row of scale bars, px.</summary>
    public const double Below = 26.0, ScaleRow = 48.0;

    // Under this width the roll has a line of its own.
    private const double Narrow = 700.0, SectionWidth = 250.0, TextRow = 34.0;

    /// <summary>Colour of the half toward the back; the belly is white.</summary>
    public static readonly OxyColor Back = OxyColor.FromAColor(190, ChartStyle.Yellow);

    private double Width => frame.CellWidth;

    private double SideWidth => SideWidthOf(frame.CellWidth);

    private double Bottom => top - TextHeightOf(Width) - frame.DrawHeight;

    private double SectionLeft => left + Width - SectionWidth;

    private double SectionMiddle => SectionLeft + (0.5 * SectionWidth);

    private double AxisLevel => Bottom + (0.5 * frame.DrawHeight);

    /// <summary>Width of the side view in a cell, px.</summary>
    /// <param name="width">Width of the cell, px.</param>
    public static double SideWidthOf(double width) => width - SectionWidth - 20.0;

    /// <summary>Height of the words over a cell, px.</summary>
    /// <param name="width">Width of the cell, px.</param>
    public static double TextHeightOf(double width) => ((width < Narrow ? 3.0 : 2.0) * TextRow) + 8.0;

    /// <summary>Draws an instant.</summary>
    /// <param name="at">Instant.</param>
    /// <param name="shown">Units.</param>
    public void Draw(LureInstant at, Shown shown)
    {
        const double degree = Math.PI / 180.0;
        string label = $"{Trade.Capital(at.Label)}, {Trade.Fixed(at.TimeS, 2)} s";
        double wide = TextLayout.Measure(label, ChartStyle.TextSize, FontWeights.Bold).Width;
        Write(label, left, top, HorizontalAlignment.Left, FontWeights.Bold, Math.Min(1.0, Width / wide));
        Write($"{AttitudeWords.Pitch(at.Pose.TrimRad / degree)}, {AttitudeWords.Nose(at.NoseZM, shown)}", left, top - TextRow, HorizontalAlignment.Left);
        Write(AttitudeWords.Roll(at.Pose.HeelRad / degree), left + Width, top - TextHeightOf(Width) + TextRow + 8.0, HorizontalAlignment.Right);
        DrawSide(at);
        DrawSection(at.Pose);
    }

    /// <summary>Draws the scale bars of both views; the cell's upper edge is that of their row.</summary>
    /// <param name="second">Left edge of the second bar, px.</param>
    /// <param name="inches">Whether they are so many inches; else centimetres.</param>
    public void DrawScales(double second, bool inches)
    {
        bool large = frame.Body.LengthM > 0.08;
        (double side, string sideWords) = (inches, large) switch
        {
            (true, true) => (2.0 * UnitTable.InchM, "2 in"),
            (true, false) => (UnitTable.InchM, "1 in"),
            (false, true) => (0.05, "5 cm"),
            _ => (0.02, "2 cm"),
        };
        (double ahead, string aheadWords) = inches ? (0.5 * UnitTable.InchM, "1/2 in") : (0.01, "1 cm");
        Bar(left, side * frame.SideScale, $"side: {sideWords}");
        Bar(second, ahead * frame.SectionScale, $"ahead: {aheadWords}; its left is on the right");
    }

    private void DrawSide(LureInstant at)
    {
        Box(left, left + SideWidth, SideAt(0.0, 0.0).Y);
        double z = at.Pose.HeightM;
        Polygon(frame.Body.FromSide(at.Pose).Select(p => SideAt(p.X, z + p.Y)), Back);
        Vec3 nose = frame.Body.Nose(at.Pose), tie = frame.Body.Tie(at.Pose);
        Stroke([SideAt(nose.X, z + nose.Z), SideAt(nose.X, 0.0)], Looks.Lure.Color, 5.0);
        Stroke([.. frame.LineEnd(at).Select(p => SideAt(p.X, p.Y))], Looks.Line.Color, ChartStyle.LineWidth);
        Dot(SideAt(0.0, z), ChartStyle.Vermilion);
        Dot(SideAt(tie.X, z + tie.Z), ChartStyle.Ink);
    }

    private void DrawSection(Attitude pose)
    {
        double water = frame.SectionScale * frame.Body.WaterOverAxisM(pose);
        Box(SectionLeft, SectionLeft + SectionWidth, Math.Clamp(AxisLevel + water, Bottom, Bottom + frame.DrawHeight));
        Polygon(frame.Body.HalfSection(pose.HeelRad, back: false).Select(SectionAt), OxyColor.FromAColor(190, OxyColors.White));
        Polygon(frame.Body.HalfSection(pose.HeelRad, back: true).Select(SectionAt), Back);
        Dot(SectionAt(frame.Body.CentreFromAhead(pose.HeelRad)), ChartStyle.Vermilion);
        Dot(SectionAt(frame.Body.TieFromAhead(pose.HeelRad)), ChartStyle.Ink);
    }

    // The nose looks to the left, toward the rod, as in the other pictures of a retrieve.
    private DataPoint SideAt(double ahead, double height) => new(
        left + (0.5 * SideWidth) + ((frame.MiddleM - ahead) * frame.SideScale), Bottom + ((height - frame.LowM) * frame.SideScale));

    private DataPoint SectionAt(DataPoint p) => new(SectionMiddle + (p.X * frame.SectionScale), AxisLevel + (p.Y * frame.SectionScale));

    private void Box(double from, double to, double water)
    {
        model.Annotations.Add(Rectangle(from, to, water, Looks.Water, OxyColors.Transparent));
        model.Annotations.Add(Rectangle(from, to, Bottom + frame.DrawHeight, OxyColors.Transparent, ChartStyle.Grey));
    }

    private RectangleAnnotation Rectangle(double from, double to, double upTo, OxyColor fill, OxyColor stroke) => new()
    {
        YAxisKey = Panels.Key(0),
        MinimumX = from,
        MaximumX = to,
        MinimumY = Bottom,
        MaximumY = upTo,
        Fill = fill,
        Stroke = stroke,
        StrokeThickness = stroke == OxyColors.Transparent ? 0.0 : 1.5,
        Layer = AnnotationLayer.BelowSeries,
    };

    private void Polygon(IEnumerable<DataPoint> points, OxyColor fill)
    {
        var shape = new PolygonAnnotation
        {
            YAxisKey = Panels.Key(0),
            Fill = fill,
            Stroke = ChartStyle.Ink,
            StrokeThickness = 2.5,
            LineStyle = LineStyle.Solid,
            LineJoin = LineJoin.Round,
        };
        shape.Points.AddRange(points);
        model.Annotations.Add(shape);
    }

    private void Stroke(IReadOnlyList<DataPoint> points, OxyColor color, double width)
    {
        if (points.Count < 2)
        {
            return;
        }

        var stroke = new PolylineAnnotation { YAxisKey = Panels.Key(0), Color = color, StrokeThickness = width, LineStyle = LineStyle.Solid };
        stroke.Points.AddRange(points);
        model.Annotations.Add(stroke);
    }

    private void Dot(DataPoint at, OxyColor color) => model.Annotations.Add(new PointAnnotation
    {
        YAxisKey = Panels.Key(0),
        X = at.X,
        Y = at.Y,
        Size = 9,
        Shape = MarkerType.Circle,
        Fill = color,
        Stroke = OxyColors.White,
        StrokeThickness = 2,
    });

    private void Bar(double from, double length, string text)
    {
        double y = top - (0.5 * ScaleRow);
        Stroke([new(from, y), new(from + length, y)], ChartStyle.Ink, 7.0);
        Write(text, from + length + 14.0, y + (0.5 * TextRow), HorizontalAlignment.Left);
    }

    private void Write(string text, double x, double y, HorizontalAlignment horizontal, double weight = FontWeights.Normal, double size = 1.0) => model.Annotations.Add(new TextAnnotation
    {
        YAxisKey = Panels.Key(0),
        Text = text,
        TextPosition = new DataPoint(x, y),
        Stroke = OxyColors.Undefined,
        FontSize = size * ChartStyle.TextSize,
        FontWeight = weight,
        TextHorizontalAlignment = horizontal,
        TextVerticalAlignment = VerticalAlignment.Top,
        Padding = new OxyThickness(0),
    });
}
