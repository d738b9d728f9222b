using LureSim.Numerics;

namespace LureSim.Model.Hands;

/// <summary>
/// Plane of a stroke: place = hand + x away + z square. The fish lies toward +x of the world, so that away is its -x; square is up, or +y for a level stroke.
/// </summary>
/// <param name="Hand">Turning point at the start, m.</param>
/// <param name="Away">Level unit vector away from the fish.</param>
/// <param name="Square">Unit vector from which angles of the rod count.</param>
internal readonly record struct StrokeFrame(Vec3 Hand, Vec3 Away, Vec3 Square)
{
    /// <summary>Frame of a plane with the hand over the origin.</summary>
    /// <param name="plane">Plane.</param>
    /// <param name="handHeight">Height of the hand, m.</param>
    public static StrokeFrame Of(StrokePlane plane, double handHeight) => new(
        new(0.0, 0.0, handHeight), new(-1.0, 0.0, 0.0), plane == StrokePlane.Side ? new(0.0, 1.0, 0.0) : new(0.0, 0.0, 1.0));

    /// <summary>A place of the plane in the world, m.</summary>
    /// <param name="x">Away from the hand, m.</param>
    /// <param name="z">Square to it, m.</param>
    public Vec3 Place(double x, double z) => Hand + Vector(x, z);

    /// <summary>A vector of the plane in the world.</summary>
    /// <param name="x">Away.</param>
    /// <param name="z">Square to it.</param>
    public Vec3 Vector(double x, double z) => (x * Away) + (z * Square);
}
