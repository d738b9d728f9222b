namespace LureSim.Model.Hands;

/// <summary>A load that is linear in one coordinate about the present midpoint: load - damping x speed - stiffness x (place).</summary>
/// <param name="Load">Constant part, N or N m.</param>
/// <param name="Damping">Slope against speed, for the implicit diagonal.</param>
/// <param name="Stiffness">Slope against place, for the implicit diagonal.</param>
internal readonly record struct DriveLoad(double Load, double Damping, double Stiffness)
{
    /// <summary>Value at a place and speed.</summary>
    public double At(double place, double speed) => Load - (Damping * speed) - (Stiffness * place);
}

/// <summary>
/// One motion of the hands (turning or pushing): e F_0 ramp(t) (1 - v/v_0) up to the stop, then a limited brake that
/// settles at the stop. Written with its slopes, so that a stiff stop does not chatter in the step.
/// </summary>
/// <param name="effort">e F_0, N m or N.</param>
/// <param name="topSpeed">Speed at which no drive is left.</param>
/// <param name="ramp">Rise time, s.</param>
/// <param name="stop">Where and how the motion is braked.</param>
/// <param name="hold">Load that keeps the start in balance; fades as the drive rises.</param>
internal sealed class HandDrive(double effort, double topSpeed, double ramp, Stop stop, double hold)
{
    /// <summary>The load about a midpoint state.</summary>
    public DriveLoad About(double time, double place, double speed)
    {
        double rise = Smooth(time / ramp), brakeShare = Smooth((place - stop.Place) / stop.Window);
        double drive = speed < topSpeed ? effort * rise * (1.0 - brakeShare) : 0.0;
        double load = drive + (hold * (1.0 - rise)), damping = drive / topSpeed, stiffness = 0.0;
        double limit = stop.Limit;
        if (brakeShare > 0.0 && limit > 0.0)
        {
            double k = stop.Inertia * stop.Settling * stop.Settling, c = 2.0 * stop.Inertia * stop.Settling;
            double wish = ((k * (place - stop.Place)) + (c * speed)) / limit;
            double secant = brakeShare * (Math.Abs(wish) > 1e-6 ? Math.Tanh(wish) / wish : 1.0);
            load += secant * k * stop.Place;
            damping += secant * c;
            stiffness = secant * k;
        }

        return new DriveLoad(load, damping, stiffness);
    }

    private static double Smooth(double s)
    {
        s = Math.Clamp(s, 0.0, 1.0);
        return s * s * (3.0 - (2.0 * s));
    }
}

/// <summary>The end of a motion of the hands.</summary>
/// <param name="Place">Where braking begins, rad or m.</param>
/// <param name="Window">Width over which drive gives way to brake.</param>
/// <param name="Inertia">What the brake must settle, kg m2 or kg.</param>
/// <param name="Limit">Largest braking torque or force, N m or N.</param>
/// <param name="Settling">Rate of a critically damped arm, like which the brake settles, rad/s.</param>
internal readonly record struct Stop(double Place, double Window, double Inertia, double Limit, double Settling);
