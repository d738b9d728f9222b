using LureSim.Numerics;

namespace LureSim.Model.Lures.Free;

/// <summary>Place, attitude and velocity of the free hull at one time.</summary>
/// <param name="Origin">O in world axes, m.</param>
/// <param name="Frame">Body axes in the world.</param>
/// <param name="Velocity">Of O, body axes, m/s.</param>
/// <param name="Rate">omega, body axes, rad/s.</param>
internal readonly record struct FreeMotionState(Vec3 Origin, Frame3 Frame, Vec3 Velocity, Vec3 Rate)
{
    /// <summary>World place of a body point, m.</summary>
    /// <param name="body">Point, body axes, m.</param>
    public Vec3 Place(Vec3 body) => Origin + Frame.ToWorld(body);

    /// <summary>World velocity of a body point, m/s.</summary>
    /// <param name="body">Point, body axes, m.</param>
    public Vec3 VelocityOf(Vec3 body) => Frame.ToWorld(Velocity + Vec3.Cross(Rate, body));

    /// <summary>The water from here.</summary>
    public WaterAxes Water => new(Origin.Z, Frame.Up);
}
