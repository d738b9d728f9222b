using LureSim.Model.Retrieve;
using LureSim.Numerics;
using LureSim.Reports.Kit.Charts;
using OxyPlot;

namespace LureSim.Reports.Retrieve;

/// <summary>What all cells share, so that they can be compared.</summary>
/// <param name="Body">Lure.</param>
/// <param name="MiddleM">Middle of what is shown, ahead of the centre of gravity, m.</param>
/// <param name="LowM">Lower edge of the side view over the water, m.</param>
/// <param name="SideScale">Side view, px per m.</param>
/// <param name="SectionScale">View from ahead, px per m.</param>
/// <param name="DrawHeight">Height of both views, px.</param>
/// <param name="CellWidth">Width of a cell, px.</param>
internal sealed record AttitudeFrame(LureBody Body, double MiddleM, double LowM, double SideScale, double SectionScale, double DrawHeight, double CellWidth)
{
    /// <summary>Largest height of a view, px.</summary>
    public const double MostHeight = 430.0;

    private const double LeastHeight = 240.0, LineShare = 0.3;

    /// <summary>Height of a cell, px.</summary>
    public double CellHeight => AttitudeCell.TextHeightOf(CellWidth) + DrawHeight + AttitudeCell.Below;

    /// <summary>The frame that holds every instant with a rim.</summary>
    /// <param name="body">Lure.</param>
    /// <param name="instants">Instants.</param>
    /// <param name="cellWidth">Width of a cell, px.</param>
    /// <param name="mostHeight">Largest height of a view, px.</param>
    public static AttitudeFrame Around(LureBody body, IReadOnlyList<LureInstant> instants, double cellWidth = AttitudeCell.Usual, double mostHeight = MostHeight)
    {
        var shown = new AttitudeFrame(body, 0.0, 0.0, 0.0, 0.0, 0.0, cellWidth);
        DataPoint[] points = [new(0.0, 0.0), .. instants.SelectMany(shown.Points)];
        double rim = 0.04 * body.LengthM;
        double back = points.Min(p => p.X) - rim, ahead = points.Max(p => p.X) + rim, low = points.Min(p => p.Y) - rim, high = points.Max(p => p.Y) + rim;
        double scale = Math.Min(AttitudeCell.SideWidthOf(cellWidth) / (ahead - back), mostHeight / (high - low));
        double height = Math.Max(LeastHeight, scale * (high - low));
        low -= 0.5 * ((height / scale) - (high - low));
        return shown with
        {
            MiddleM = 0.5 * (back + ahead),
            LowM = low,
            SideScale = scale,
            SectionScale = LeastHeight / (2.6 * body.SectionReachM),
            DrawHeight = height,
        };
    }

    /// <summary>The last piece of the line before the tie in the vertical plane through the hull's axis: ahead of the centre of gravity and over the water, m.</summary>
    /// <param name="at">Instant; no points where the line was not kept.</param>
    public IReadOnlyList<DataPoint> LineEnd(LureInstant at)
    {
        if (at.Line is not { } shot)
        {
            return [];
        }

        Vec3 tie = Body.Tie(at.Pose);
        (double sin, double cos) = Math.SinCos(shot.HeadingRad);
        return [.. LastPiece(shot, LineShare * Body.LengthM).Select(p => new DataPoint(tie.X + (cos * p.X) + (sin * p.Y), at.Pose.HeightM + tie.Z + p.Z))];
    }

    private IEnumerable<DataPoint> Points(LureInstant at) =>
        [.. Body.FromSide(at.Pose).Select(p => new DataPoint(p.X, p.Y + at.Pose.HeightM)), .. LineEnd(at)];

    // From the tie toward the rod, relative to the tie, m.
    private static List<Vec3> LastPiece(Snapshot shot, double length)
    {
        int last = shot.Line[0].Count - 1;
        Vec3 At(int i) => new(shot.Line[0][i], shot.Line[1][i], shot.Line[2][i]);
        var points = new List<Vec3> { Vec3.Zero };
        for (int i = last; i > 0 && length > 0.0; i--)
        {
            Vec3 piece = At(i - 1) - At(i);
            double share = Math.Min(1.0, length / Math.Max(piece.Length, 1e-12));
            points.Add(points[^1] + (share * piece));
            length -= piece.Length;
        }

        return points;
    }
}
