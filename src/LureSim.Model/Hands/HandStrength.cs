namespace LureSim.Model.Hands;

/// <summary>Strength of one motion of the hands.</summary>
/// <param name="Load">Torque or push at rest, N m or N.</param>
/// <param name="TopSpeed">Speed at which none is left, rad/s or m/s.</param>
/// <param name="RampS">Rise time, s.</param>
/// <param name="BrakeShare">Largest braking load over the driving one.</param>
/// <param name="SettlingRadS">Rate at which the braking hands settle, rad/s.</param>
internal readonly record struct HandStrength(double Load, double TopSpeed, double RampS, double BrakeShare, double SettlingRadS)
{
    // Widths over which drive gives way to brake, rad and m.
    private const double TurnWindow = 0.1, PushWindow = 0.05;

    /// <summary>Largest braking load, N m or N.</summary>
    public double BrakeLoad => BrakeShare * Load;

    /// <summary>Turning hands.</summary>
    /// <param name="stopRad">Where they stop, rad.</param>
    /// <param name="inertia">Hands and rod about the turning point, kg m2.</param>
    /// <param name="hold">Torque that keeps the start in balance, N m.</param>
    /// <param name="grasp">How they catch or hold the rod afterwards.</param>
    public HandDrive Turning(double stopRad, double inertia, double hold, Catch grasp) => Drive(stopRad, TurnWindow, inertia, hold, grasp);

    /// <summary>Pushing or pulling hands.</summary>
    /// <param name="travel">Where they stop, m.</param>
    /// <param name="mass">What goes with them, kg.</param>
    /// <param name="grasp">How they catch or hold afterwards.</param>
    public HandDrive Pushing(double travel, double mass, Catch grasp) => Drive(travel, PushWindow, mass, 0.0, grasp);

    private HandDrive Drive(double place, double window, double inertia, double hold, Catch grasp) =>
        new(Load, TopSpeed, RampS, new Stop(place, window, inertia, BrakeLoad, SettlingRadS), hold, grasp);
}
