using LureSim.Numerics;

namespace LureSim.Model.Lures;

/// <summary>
/// Where a body floats: a point r of the body (axes of <see cref="IHull"/>) lies at height z0 + k . r over the water.
/// </summary>
/// <param name="HeightM">z0, height of the body's origin over the water, m.</param>
/// <param name="TrimRad">theta, nose up positive, rad.</param>
/// <param name="HeelRad">phi, left side up positive, rad.</param>
public readonly record struct Attitude(double HeightM, double TrimRad, double HeelRad = 0.0)
{
    /// <summary>Upright in body axes, k.</summary>
    public Vec3 Up => new(
        Math.Sin(TrimRad), Math.Cos(TrimRad) * Math.Sin(HeelRad), Math.Cos(TrimRad) * Math.Cos(HeelRad));

    /// <summary>Horizontal, toward the nose, in body axes.</summary>
    public Vec3 Forward => new(
        Math.Cos(TrimRad), -Math.Sin(TrimRad) * Math.Sin(HeelRad), -Math.Sin(TrimRad) * Math.Cos(HeelRad));

    /// <summary>Horizontal, to the left, in body axes.</summary>
    public Vec3 Left => new(0.0, Math.Cos(HeelRad), -Math.Sin(HeelRad));

    /// <summary>Height of a body point over the water, m.</summary>
    /// <param name="point">Point in body axes, m.</param>
    public double HeightOf(Vec3 point) => HeightM + Vec3.Dot(Up, point);

    /// <summary>Body axes in the world of this attitude.</summary>
    /// <param name="headingRad">psi, rad.</param>
    internal Frame3 Frame(double headingRad) => Frame(headingRad, TrimRad, HeelRad);

    /// <summary>Body axes in the world.</summary>
    /// <param name="headingRad">psi, rad.</param>
    /// <param name="trimRad">theta, rad.</param>
    /// <param name="heelRad">phi, rad.</param>
    internal static Frame3 Frame(double headingRad, double trimRad, double heelRad)
    {
        (double s, double c) = Math.SinCos(headingRad);
        var a = new Attitude(0.0, trimRad, heelRad);
        Vec3 forward = a.Forward, left = a.Left, up = a.Up;
        return new Frame3(
            new Vec3((c * forward.X) - (s * left.X), (s * forward.X) + (c * left.X), up.X),
            new Vec3((c * forward.Y) - (s * left.Y), (s * forward.Y) + (c * left.Y), up.Y),
            new Vec3((c * forward.Z) - (s * left.Z), (s * forward.Z) + (c * left.Z), up.Z));
    }

    /// <summary>The water line as every section sees it.</summary>
    internal WaterLine WaterLine()
    {
        // At exactly upright the surface is parallel to the sections; a millionth of a radian keeps the cut defined.
        double cos = Math.Cos(TrimRad);
        double size = Math.Max(Math.Abs(cos), 1e-6);
        double sign = cos < 0.0 ? -1.0 : 1.0;
        return new WaterLine(
            sign * Math.Sin(HeelRad), sign * Math.Cos(HeelRad), size, Math.Sin(TrimRad), HeightM);
    }
}

/// <summary>Half-plane of water in the plane of a section: ny y + nz z &lt; Level(x).</summary>
/// <param name="Ny">y of the unit normal out of the water.</param>
/// <param name="Nz">z of it.</param>
/// <param name="Cos">|cos trim|, at least 1e-6.</param>
/// <param name="Sin">sin trim.</param>
/// <param name="HeightM">z0, m.</param>
internal readonly record struct WaterLine(double Ny, double Nz, double Cos, double Sin, double HeightM)
{
    /// <summary>Distance of the water line from the axis at x, m.</summary>
    public double Level(double x) => -(HeightM + (x * Sin)) / Cos;
}
