using LureSim.Numerics;

namespace LureSim.Model.Lures;

/// <summary>What lies under water at one attitude, and the waterplane.</summary>
/// <param name="VolumeM3">Displaced volume V, m3.</param>
/// <param name="Centre">Centre of buoyancy in body axes, m (the origin when nothing is immersed).</param>
/// <param name="WaterplaneAreaM2">Aw, m2.</param>
/// <param name="FlotationXM">Centroid of the waterplane along the horizontal forward direction from the body's origin, m.</param>
/// <param name="InertiaLongM4">Second moment of the waterplane about its transverse centroid axis, m4.</param>
/// <param name="InertiaTransM4">Second moment about its lengthwise centroid axis, m4.</param>
internal readonly record struct Immersion(
    double VolumeM3,
    Vec3 Centre,
    double WaterplaneAreaM2,
    double FlotationXM,
    double InertiaLongM4,
    double InertiaTransM4)
{
    /// <summary>BM lengthwise = I / V, m.</summary>
    public double BmLongM => InertiaLongM4 / VolumeM3;

    /// <summary>BM across = I / V, m.</summary>
    public double BmTransM => InertiaTransM4 / VolumeM3;

    /// <summary>
    /// Integrates exact section cuts along the hull. The length is split where sections change between dry, cut and
    /// wet (near upright the surface crosses the hull within a short piece), each piece has its own strips, bunched
    /// toward its ends.
    /// </summary>
    /// <param name="hull">Hull.</param>
    /// <param name="attitude">Attitude.</param>
    /// <param name="strips">Strips per piece, at least 4.</param>
    public static Immersion Of(IHull hull, Attitude attitude, int strips = 201) => Of(hull, attitude, strips, HullPieces.FineHalvings);

    /// <summary>The same with the ends of the pieces found as finely as asked for.</summary>
    internal static Immersion Of(IHull hull, Attitude attitude, int strips, int halvings)
    {
        ArgumentNullException.ThrowIfNull(hull);
        ArgumentOutOfRangeException.ThrowIfLessThan(strips, 4);
        WaterLine water = attitude.WaterLine();
        Span<double> pieces = stackalloc double[HullPieces.MaxEnds];
        int ends = HullPieces.Find(hull, water, pieces, halvings);
        var sums = new ImmersionSums(attitude);
        for (int i = 1; i < ends; i++)
        {
            sums.AddPiece(hull, water, pieces[i - 1], pieces[i], strips);
        }

        return sums.Result();
    }
}
