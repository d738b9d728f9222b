namespace LureSim.Scenarios.Measured;

/// <summary>What was done with the lure.</summary>
public enum FitKind
{
    /// <summary>Towed on a line.</summary>
    Tow,

    /// <summary>Pushed: the way until it has turned by 45 deg.</summary>
    Push,

    /// <summary>Pushed straight: its way over time.</summary>
    Coast,

    /// <summary>Filmed from above while it swims by itself: its places over time.</summary>
    Track,

    /// <summary>Let go heeled or pressed down.</summary>
    Swing,

    /// <summary>Laid into a bowl.</summary>
    Bowl,

    /// <summary>Walked under twitches: filmed from above, or counted by eye.</summary>
    Walk,
}

/// <summary>What a line or a column of measurements is about.</summary>
public enum FitWord
{
    /// <summary>Scenario file, beside this one.</summary>
    Scenario,

    /// <summary>What the measurements are called.</summary>
    Title,

    /// <summary>A test begins.</summary>
    Test,

    /// <summary>Whether the hooks were on: 1 or 0.</summary>
    Hooks,

    /// <summary>Another run of the same test begins.</summary>
    Run,

    /// <summary>Error of an angle, rad.</summary>
    AngleError,

    /// <summary>Error of a place, a way or a height, m.</summary>
    PlaceError,

    /// <summary>Error of the drift at a push, rad.</summary>
    DriftError,

    /// <summary>Error of a period, as a share of it.</summary>
    PeriodError,

    /// <summary>Error of a loss, in shares.</summary>
    LossError,

    /// <summary>Mass with hooks, kg.</summary>
    Mass,

    /// <summary>Length of the tow line, m.</summary>
    Line,

    /// <summary>Hand over the water, m.</summary>
    Hand,

    /// <summary>Way of the hand, m.</summary>
    TowDistance,

    /// <summary>Speed of a tow or a push, m/s.</summary>
    Speed,

    /// <summary>Angle between line and axis, rad; NaN: straight.</summary>
    Sheer,

    /// <summary>Nose from side to side, rad.</summary>
    Swing,

    /// <summary>Angle between push and axis, rad.</summary>
    Drift,

    /// <summary>Way until turned by 45 deg, m; infinite: never.</summary>
    Way,

    /// <summary>Time, s.</summary>
    Time,

    /// <summary>Way since the first time, m.</summary>
    Distance,

    /// <summary>Foremost point, m.</summary>
    NoseX,

    /// <summary>Foremost point, m.</summary>
    NoseY,

    /// <summary>Hindmost point, m.</summary>
    TailX,

    /// <summary>Hindmost point, m.</summary>
    TailY,

    /// <summary>Middle of the length, m.</summary>
    MiddleX,

    /// <summary>Middle of the length, m.</summary>
    MiddleY,

    /// <summary>Where the nose points, rad.</summary>
    Heading,

    /// <summary>Which swing: 0 roll, 1 bob, 2 nod.</summary>
    What,

    /// <summary>Time to and fro, s.</summary>
    Period,

    /// <summary>What a swing loses of its size, a share.</summary>
    Loss,

    /// <summary>Heel at which it was let go, rad.</summary>
    Heel,

    /// <summary>How far it was pressed down, m.</summary>
    Press,

    /// <summary>Angle at which it floats, nose up positive, rad.</summary>
    Angle,

    /// <summary>Foremost point over the water, m.</summary>
    NoseHeight,

    /// <summary>Hindmost point over the water, m.</summary>
    TailHeight,

    /// <summary>Depth of the middle section under the water, m.</summary>
    Draft,

    /// <summary>Twitches per second, 1/s.</summary>
    Cadence,

    /// <summary>Twitches in all on a film.</summary>
    Twitches,

    /// <summary>Way toward the rod per twitch, m.</summary>
    Advance,

    /// <summary>Path of the middle of the length, from its leftmost to its rightmost point, m.</summary>
    Width,

    /// <summary>Heading from its leftmost to its rightmost, rad.</summary>
    HeadingSwing,
}
