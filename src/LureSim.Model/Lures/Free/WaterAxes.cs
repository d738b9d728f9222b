using LureSim.Numerics;

namespace LureSim.Model.Lures.Free;

/// <summary>
/// The water as the hull sees it, in body axes: every section is cut along the same direction e_h, with e_v out of the water. With roll these
/// axes turn in the body at the rate beta = (n'_y n_z - n_z' n_y)/n_t^2 = c . omega.
/// </summary>
/// <param name="Height">Z, height of the body's origin over the water, m.</param>
/// <param name="Up">n, upward unit vector in body axes.</param>
internal readonly record struct WaterAxes(double Height, Vec3 Up)
{
    // Exactly upright the surface is parallel to the sections; the cut stays defined.
    private const double LeastTilt = 1e-6;

    /// <summary>n_t, sine of the angle between axis and vertical.</summary>
    public double Tilt { get; } = Math.Max(LeastTilt, Math.Sqrt((Up.Y * Up.Y) + (Up.Z * Up.Z)));

    /// <summary>y of e_v; z of e_h with the opposite sign.</summary>
    public double OutY => Up.Y / Tilt;

    /// <summary>z of e_v; y of e_h.</summary>
    public double OutZ => Up.Z == 0.0 && Up.Y == 0.0 ? 1.0 : Up.Z / Tilt;

    /// <summary>c: beta = c . omega.</summary>
    public Vec3 TurnPerRate
    {
        get
        {
            double per = -Up.X / (Tilt * Tilt);
            return new Vec3(1.0, per * Up.Y, per * Up.Z);
        }
    }
}
