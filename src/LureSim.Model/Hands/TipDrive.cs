using LureSim.Numerics;

namespace LureSim.Model.Hands;

/// <summary>The rigid rod tip at one time, as the hand moves it.</summary>
/// <param name="Position">Rigid tip, m.</param>
/// <param name="Velocity">Its velocity, m/s.</param>
/// <param name="Stroke">Unit direction in which the rod bends in the stroke plane.</param>
/// <param name="StrokeRate">Rate of that direction, 1/s.</param>
/// <param name="Side">Unit direction across the stroke plane.</param>
/// <param name="DriveMS">Velocity of the rigid tip along the stroke direction; its change excites the bending modes, m/s.</param>
internal readonly record struct TipFrame(
    Vec3 Position, Vec3 Velocity, Vec3 Stroke, Vec3 StrokeRate, Vec3 Side, double DriveMS);

/// <summary>How the hand moves the rigid rod tip.</summary>
internal interface ITipDrive
{
    /// <summary>The rigid tip at a time.</summary>
    /// <param name="timeS">t, s.</param>
    public TipFrame At(double timeS);
}
