using LureSim.Model.Lures;
using LureSim.Numerics;
using OxyPlot;

namespace LureSim.Reports.Kit.Charts;

/// <summary>The outside of a lure for pictures, seen square from the side, from above and along its axis from ahead, at any pitch and roll.</summary>
internal sealed class LureBody
{
    private const int Stations = 61, ArcPoints = 49;
    private readonly HullForm _form;
    private readonly Vec3 _centre;
    private readonly Vec3 _tie;

    private LureBody(HullForm form, Vec3 centre, Vec3 tie)
    {
        (_form, _centre, _tie) = (form, centre, tie);
        double[] x = [.. Enumerable.Range(0, Stations).Select(Along)];
        LargestXM = x.MaxBy(at => form.SectionAt(at).AreaM2);
    }

    /// <summary>Where the largest section stands, from the middle of the length toward the nose, m.</summary>
    public double LargestXM { get; }

    /// <summary>L, m.</summary>
    public double LengthM => _form.LengthM;

    /// <summary>Half the side of a square about the axis that holds the largest section, the centre of gravity and the tie, m.</summary>
    public double SectionReachM
    {
        get
        {
            HullSection s = _form.SectionAt(LargestXM);
            double[] reach = [s.HalfBreadthM, s.HalfHeightM + Math.Abs(s.CentreZM), Math.Abs(_tie.Z), Math.Abs(_centre.Z)];
            return reach.Max();
        }
    }

    /// <summary>The body of a lure.</summary>
    /// <param name="lure">Lure.</param>
    public static LureBody Of(LureSpec lure)
    {
        HullForm form = HullShape.Create(lure);
        return new LureBody(form, LureMass.Of(lure, form).Centre, new Vec3(lure.TieXM, 0.0, lure.TieZM));
    }

    /// <summary>A point of the picture from above in world axes.</summary>
    /// <param name="x">Centre of gravity, m.</param>
    /// <param name="y">Centre of gravity, m.</param>
    /// <param name="psi">Nose from +x, counter-clockwise, rad.</param>
    /// <param name="along">Ahead of the centre of gravity, m.</param>
    /// <param name="left">To the hull's left, m.</param>
    public static DataPoint Place(double x, double y, double psi, double along, double left)
    {
        (double sin, double cos) = Math.SinCos(psi);
        return new DataPoint(x + (along * cos) - (left * sin), y + (along * sin) + (left * cos));
    }

    /// <summary>Line tie, level and ahead of the centre of gravity, to its left and over it, m.</summary>
    /// <param name="pose">Pitch and roll; its height is not used.</param>
    public Vec3 Tie(Attitude pose) => Seen(_tie, pose);

    /// <summary>Foremost point of the axis, in the same axes, m.</summary>
    /// <param name="pose">Pitch and roll; its height is not used.</param>
    public Vec3 Nose(Attitude pose) => Seen(new Vec3(0.5 * _form.LengthM, 0.0, 0.0), pose);

    /// <summary>
    /// Silhouette from the side, exact: the eye looks along the sections, so each shows as a stroke across the axis. Closed polygon, tail, back,
    /// nose, belly: level and ahead of the centre of gravity, and over it, m.
    /// </summary>
    /// <param name="pose">Pitch and roll; its height is not used.</param>
    public List<DataPoint> FromSide(Attitude pose)
    {
        (double sin, double cos) = Math.SinCos(pose.TrimRad);
        (double ny, double nz) = Math.SinCos(pose.HeelRad);
        return Closed(x =>
        {
            HullSection s = _form.SectionAt(x);
            return (nz * (s.CentreZM - _centre.Z), s.HalfExtentM(ny, nz));
        }, (x, across) => new DataPoint((cos * (x - _centre.X)) - (sin * across), (sin * (x - _centre.X)) + (cos * across)));
    }

    /// <summary>
    /// Outline from above, its length shortened by cos pitch; what the height of the sections adds at steep pitch is left out. Closed polygon,
    /// tail, left, nose, right: level and ahead of the centre of gravity, and to its left, m.
    /// </summary>
    /// <param name="pose">Pitch and roll; its height is not used.</param>
    public List<DataPoint> FromAbove(Attitude pose)
    {
        (double sin, double cos) = Math.SinCos(pose.TrimRad);
        (double sinRoll, double cosRoll) = Math.SinCos(pose.HeelRad);
        return Closed(x =>
        {
            HullSection s = _form.SectionAt(x);
            return (-sinRoll * (s.CentreZM - _centre.Z), s.HalfExtentM(cosRoll, -sinRoll));
        }, (x, left) => new DataPoint((cos * (x - _centre.X)) + (sin * cosRoll * _centre.Z), left));
    }

    /// <summary>
    /// Half of the largest section, seen along the axis from ahead, about the axis: to the lure's left (the right of the picture) and upward, m.
    /// From its left edge over the back or the belly to its right edge.
    /// </summary>
    /// <param name="rollRad">Roll, left side up positive, rad.</param>
    /// <param name="back">The half toward the back; else that toward the belly.</param>
    public List<DataPoint> HalfSection(double rollRad, bool back)
    {
        HullSection s = _form.SectionAt(LargestXM);
        var points = new List<DataPoint>(ArcPoints);
        for (int i = 0; i < ArcPoints; i++)
        {
            (double sin, double cos) = Math.SinCos(Math.PI * i / (ArcPoints - 1));
            points.Add(FromAhead(rollRad, s.HalfBreadthM * cos, s.CentreZM + ((back ? 1.0 : -1.0) * s.HalfHeightM * sin)));
        }

        return points;
    }

    /// <summary>The line tie in the picture from ahead, about the axis, m.</summary>
    /// <param name="rollRad">Roll, rad.</param>
    public DataPoint TieFromAhead(double rollRad) => FromAhead(rollRad, _tie.Y, _tie.Z);

    /// <summary>The centre of gravity in the picture from ahead, about the axis, m.</summary>
    /// <param name="rollRad">Roll, rad.</param>
    public DataPoint CentreFromAhead(double rollRad) => FromAhead(rollRad, _centre.Y, _centre.Z);

    /// <summary>Where the water cuts the plane of the largest section: over the axis, m; far away where the lure stands on end.</summary>
    /// <param name="pose">Height of the centre of gravity, pitch and roll.</param>
    public double WaterOverAxisM(Attitude pose) =>
        -pose.HeightOf(new Vec3(LargestXM, 0.0, 0.0) - _centre) / Math.Max(Math.Cos(pose.TrimRad), 1e-6);

    private static DataPoint FromAhead(double rollRad, double y, double z)
    {
        (double sin, double cos) = Math.SinCos(rollRad);
        return new DataPoint((cos * y) - (sin * z), (sin * y) + (cos * z));
    }

    private Vec3 Seen(Vec3 point, Attitude pose)
    {
        Vec3 arm = point - _centre;
        return new Vec3(Vec3.Dot(pose.Forward, arm), Vec3.Dot(pose.Left, arm), Vec3.Dot(pose.Up, arm));
    }

    // Bunched toward the ends, where a blunt hull rounds off.
    private double Along(int i) => -0.5 * _form.LengthM * Math.Cos(Math.PI * i / (Stations - 1));

    private List<DataPoint> Closed(Func<double, (double Middle, double Half)> section, Func<double, double, DataPoint> place)
    {
        var there = new List<DataPoint>(2 * Stations);
        var back = new List<DataPoint>(Stations);
        for (int i = 0; i < Stations; i++)
        {
            double x = Along(i);
            (double middle, double half) = section(x);
            there.Add(place(x, middle + half));
            back.Add(place(x, middle - half));
        }

        back.Reverse();
        return [.. there, .. back];
    }
}
