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
/// One motion of the hands (turning or pushing). Until the line is let go it is F_0 ramp(t) (1 - v/v_0) up to the stop, then a limited brake that
/// settles there. Let go, the drive fades, F_0 ramp (1 - v/v_0) [1 - S(t'/t_f)], and a catch of limited strength takes over,
/// -S((t' - t_d)/t_f) L tanh{[K (x - x_aim) + D v]/L}, K = I w_c^2, D = 2 I w_c: people stop a rod, they do not drive it on. Written with its
/// slopes, so that a stiff stop does not chatter in the step.
/// </summary>
/// <param name="effort">F_0, N m or N.</param>
/// <param name="topSpeed">v_0, speed at which no drive is left.</param>
/// <param name="ramp">Rise time, s.</param>
/// <param name="stop">Where and how the motion is braked before the line is let go.</param>
/// <param name="hold">Load that keeps the start in balance; fades as the drive rises.</param>
/// <param name="grasp">How the motion is caught once the line is let go.</param>
internal sealed class HandDrive(double effort, double topSpeed, double ramp, Stop stop, double hold, Catch grasp)
{
    /// <summary>The load about a midpoint state.</summary>
    public DriveLoad About(double time, double place, double speed, LetGo letGo)
    {
        double since = time - letGo.TimeS, left = 1.0 - ((1.0 - grasp.KeptShare) * Smooth(since / grasp.FadeS));
        double rise = Smooth(time / ramp), stopping = Smooth((place - stop.Place) / stop.Window);
        double drive = speed < topSpeed ? effort * rise * (1.0 - stopping) * left : 0.0;
        var load = new DriveLoad(drive + (hold * (1.0 - rise) * left), drive / topSpeed, 0.0);
        load = Brake(load, stopping * left, stop.Limit, new Settle(stop.Inertia, stop.Settling, stop.Place), place, speed);
        double aim = grasp.Follows ? letGo.Aim : place;
        return Brake(load, Smooth((since - grasp.DelayS) / grasp.FadeS), grasp.Limit, new Settle(stop.Inertia, grasp.Settling, aim), place, speed);
    }

    // The secant of the tanh about the midpoint: exact there, and never steeper than the spring and dashpot themselves.
    private static DriveLoad Brake(DriveLoad load, double share, double limit, Settle settle, double place, double speed)
    {
        if (share <= 0.0 || limit <= 0.0)
        {
            return load;
        }

        double k = settle.Inertia * settle.Rate * settle.Rate, c = 2.0 * settle.Inertia * settle.Rate;
        double wish = ((k * (place - settle.Place)) + (c * speed)) / limit;
        double secant = share * (Math.Abs(wish) > 1e-6 ? Math.Tanh(wish) / wish : 1.0);
        return new(load.Load + (secant * k * settle.Place), load.Damping + (secant * c), load.Stiffness + (secant * k));
    }

    // Smoothstep; 0 before the start, which for a release that has not come is minus infinity.
    private static double Smooth(double s)
    {
        s = Math.Clamp(s, 0.0, 1.0);
        return s * s * (3.0 - (2.0 * s));
    }

    private readonly record struct Settle(double Inertia, double Rate, double Place);
}

/// <summary>The end of a motion of the hands.</summary>
/// <param name="Place">Where braking begins, rad or m.</param>
/// <param name="Window">Width over which drive gives way to brake.</param>
/// <param name="Inertia">What the brake must settle, kg m2 or kg.</param>
/// <param name="Limit">Largest braking torque or force, N m or N.</param>
/// <param name="Settling">Rate of a critically damped arm, like which the brake settles, rad/s.</param>
internal readonly record struct Stop(double Place, double Window, double Inertia, double Limit, double Settling);

/// <summary>How the hands catch the rod once the line is let go.</summary>
/// <param name="FadeS">t_f, time over which the drive fades and the catch rises, s.</param>
/// <param name="DelayS">t_d, start of the catch after the release, s; negative before it.</param>
/// <param name="Limit">L, largest catching torque or force, N m or N.</param>
/// <param name="Settling">w_c, rate like which a critically damped arm settles, rad/s.</param>
/// <param name="Follows">True when it settles where the line points, false when it only slows.</param>
/// <param name="KeptShare">Share of the drive that is left afterwards: 0 in a cast, where the rod is caught; hands that go on holding keep some and need no catch.</param>
internal readonly record struct Catch(double FadeS, double DelayS, double Limit, double Settling, bool Follows, double KeptShare = 0.0)
{
    /// <summary>Hands that tire to a share of their drive and go on holding.</summary>
    /// <param name="fadeS">Time over which they do, s.</param>
    /// <param name="keptShare">Share that is left.</param>
    public static Catch Held(double fadeS, double keptShare) => new(fadeS, 0.0, 0.0, 0.0, false, keptShare);
}

/// <summary>When the line is let go, as far as the hands know.</summary>
/// <param name="TimeS">Time of release, s; positive infinity before it is known.</param>
/// <param name="Aim">Where the rod is to come to rest: the butt's angle from the vertical, rad.</param>
internal readonly record struct LetGo(double TimeS, double Aim)
{
    /// <summary>No release in sight.</summary>
    public static LetGo Never { get; } = new(double.PositiveInfinity, 0.0);
}
