using LureSim.Numerics;

namespace LureSim.Model.Lures;

/// <summary>How the lure lies and moves at one time, whatever hull computed it. World axes: z up from the water.</summary>
/// <param name="Centre">Centre of gravity, m.</param>
/// <param name="HeadingRad">psi, nose from +x, counter-clockwise seen from above, not wrapped, rad.</param>
/// <param name="PitchRad">theta, axis over the horizontal, nose up positive, rad.</param>
/// <param name="RollRad">phi, left side up positive, rad.</param>
/// <param name="SurgeMS">u, horizontal speed of the centre toward the nose, m/s.</param>
/// <param name="SwayMS">v, horizontal speed of the centre to the lure's left, m/s.</param>
/// <param name="YawRateRadS">r, turning rate about the vertical, rad/s.</param>
/// <param name="Tie">Line tie, m.</param>
/// <param name="Nose">Foremost point of the hull's axis, m.</param>
/// <param name="Frame">Body axes.</param>
/// <param name="WetShare">Volume of the hull under water over all of it, 0 to 1.</param>
internal readonly record struct HullPose(
    Vec3 Centre,
    double HeadingRad,
    double PitchRad,
    double RollRad,
    double SurgeMS,
    double SwayMS,
    double YawRateRadS,
    Vec3 Tie,
    Vec3 Nose,
    Frame3 Frame,
    double WetShare)
{
    /// <summary>World place of a body point, m.</summary>
    /// <param name="fromCentre">From the centre of gravity, body axes, m.</param>
    public Vec3 Place(Vec3 fromCentre) => Centre + Frame.ToWorld(fromCentre);
}
