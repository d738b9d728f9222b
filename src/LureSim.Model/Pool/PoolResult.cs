using LureSim.Model.Lures;

namespace LureSim.Model.Pool;

/// <summary>How a lure follows its line, the worse the later.</summary>
public enum TowCourse
{
    /// <summary>It points along the line.</summary>
    Straight,

    /// <summary>It points off the line, to one side.</summary>
    Sheers,

    /// <summary>Its nose swings from side to side.</summary>
    Fishtails,

    /// <summary>Its nose, over the water at rest, is pulled under.</summary>
    NoseUnder,

    /// <summary>The whole lure is pulled under.</summary>
    Dives,

    /// <summary>It rolls onto its back.</summary>
    RollsOver,
}

/// <summary>A tow at one speed; means over the end of the way.</summary>
/// <param name="SpeedMS">Speed of the hand, m/s.</param>
/// <param name="Course">How it follows.</param>
/// <param name="SheerDeg">Mean size of the angle between axis and line seen from above, deg.</param>
/// <param name="SideDeg">The same with its sign, nose to the left of the line positive, deg.</param>
/// <param name="SwingDeg">Highest minus lowest, deg.</param>
/// <param name="OffsetM">Line tie beside the way of the hand, left positive, m.</param>
/// <param name="TrimDeg">Trim, nose up positive, deg.</param>
/// <param name="RollDeg">Roll, left side up positive, deg; meaningless where the axis stands near upright.</param>
/// <param name="NoseHeightM">Foremost point of the axis over the water, m.</param>
/// <param name="PullN">Tension of the line, N.</param>
/// <param name="IsSettled">False where the sheer still changes by more than a degree over the counted way.</param>
public sealed record TowRow(
    double SpeedMS, TowCourse Course, double SheerDeg, double SideDeg, double SwingDeg, double OffsetM, double TrimDeg, double RollDeg, double NoseHeightM, double PullN, bool IsSettled);

/// <summary>A push along the axis with a little drift.</summary>
/// <param name="TurnM">Way of the centre of gravity until the heading has turned 45 deg, m; null where it never does.</param>
/// <param name="TurnedDeg">How far the heading has turned in the end, deg, left positive.</param>
/// <param name="OffsetM">Centre of gravity beside the line of the push in the end, left positive, m.</param>
/// <param name="TimeS">Times, s.</param>
/// <param name="XM">Centre of gravity along the push, m.</param>
/// <param name="YM">Centre of gravity beside it, left positive, m.</param>
/// <param name="HeadingDeg">Heading from the push, left positive, not wrapped, deg.</param>
public sealed record PushResult(
    double? TurnM, double TurnedDeg, double OffsetM, ValueList<double> TimeS, ValueList<double> XM, ValueList<double> YM, ValueList<double> HeadingDeg);

/// <summary>A coast-down without drift.</summary>
/// <param name="PerM">k of u0/(1 + k u0 t), fitted until half of the speed is lost, 1/m; null where it does not lose half in two minutes.</param>
/// <param name="HalfM">Way until half of the speed is lost, m; null likewise.</param>
public sealed record CoastResult(double? PerM, double? HalfM);

/// <summary>A lure let go and left alone.</summary>
/// <param name="Release">Where it was let go, away from rest, in the unit of the trace.</param>
/// <param name="PeriodS">Time of a swing to and fro, s; null where it does not swing.</param>
/// <param name="LossShare">What a swing to and fro loses of its size, 0 to 1; null likewise.</param>
/// <param name="TimeS">Times, s.</param>
/// <param name="Trace">Away from rest: deg (roll, nose up) or m (centre of gravity up).</param>
public sealed record SwingResult(double Release, double? PeriodS, double? LossShare, ValueList<double> TimeS, ValueList<double> Trace);

/// <summary>Everything that a pool tells of a lure.</summary>
/// <param name="Lure">Lure.</param>
/// <param name="Task">What was done.</param>
/// <param name="RestTrimDeg">Trim at rest, nose up positive, deg.</param>
/// <param name="RestHeelDeg">Heel at rest, deg.</param>
/// <param name="Tow">Tows, one per speed.</param>
/// <param name="Push">Push.</param>
/// <param name="Coast">Coast-down.</param>
/// <param name="Roll">Let go heeled; its trace stays empty where the lure stands too steep for a roll.</param>
/// <param name="Heave">Let go pressed down.</param>
/// <param name="Pitch">Let go with the nose pressed down.</param>
public sealed record PoolResult(
    LureSpec Lure, PoolTask Task, double RestTrimDeg, double RestHeelDeg, ValueList<TowRow> Tow, PushResult Push, CoastResult Coast, SwingResult Roll, SwingResult Heave, SwingResult Pitch)
{
    /// <summary>The worst course of all tows.</summary>
    public TowCourse Course => Tow.Max(t => t.Course);

    /// <summary>Largest sheer of all tows, deg.</summary>
    public double SheerDeg => Tow.Max(t => t.SheerDeg);
}
