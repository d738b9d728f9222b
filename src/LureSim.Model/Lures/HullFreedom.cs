namespace LureSim.Model.Lures;

/// <summary>Which of its motions a floating lure makes.</summary>
public enum HullFreedom
{
    /// <summary>All six: surge, sway, heave, roll, pitch, yaw.</summary>
    Six,

    /// <summary>Surge, sway and yaw, with the nose bobbing on a spring: lures that float within 12 deg of level.</summary>
    Planar,
}
