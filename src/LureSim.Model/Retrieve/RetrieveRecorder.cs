using LureSim.Model.Assembly;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Lures;
using LureSim.Numerics;

namespace LureSim.Model.Retrieve;

/// <summary>Collects the channels of a run: forces as means over the output step, everything else at its end.</summary>
internal sealed class RetrieveRecorder
{
    private readonly RetrieveParts _parts;
    private readonly int _stepsPerOutput;
    private readonly ChannelTable _table = new();
    private readonly SnapshotKeeper _snapshots;
    private readonly SettleWatch? _watch;
    private Vec3 _tipForce;
    private Vec3 _tieForce;
    private double _tipTension;
    private double _noseTension;
    private double _span;
    private int _steps;

    /// <summary>Prepares the channels.</summary>
    /// <param name="parts">Parts of the run.</param>
    /// <param name="stepsPerOutput">Base steps per output time.</param>
    public RetrieveRecorder(RetrieveParts parts, int stepsPerOutput)
    {
        ArgumentNullException.ThrowIfNull(parts);
        _parts = parts;
        _stepsPerOutput = stepsPerOutput;
        _snapshots = new SnapshotKeeper(parts);
        _watch = SettleWatch.Of(parts, WarmUpTwitches);
    }

    /// <summary>True when the walk has settled and the run is to end for it.</summary>
    public bool IsSettled => _watch is { IsSettled: true };

    private int WarmUpTwitches
    {
        get
        {
            RetrieveTask r = _parts.Task;
            return (int)Math.Ceiling((Math.Min(r.WarmUpS, 2.0 / 3.0 * r.DurationS) / _parts.Twitch.PeriodS) - 1e-9);
        }
    }

    /// <summary>Records the state at rest.</summary>
    public void RecordStart()
    {
        _span = 1.0;
        Record(0.0, 0.0, 1.0);
    }

    /// <summary>Adds the forces of an accepted step.</summary>
    /// <param name="dt">Step, s.</param>
    public void Accumulate(double dt)
    {
        CoupledStep s = _parts.Step;
        _tipForce += dt * s.TipForce;
        _tieForce += dt * s.TieForce;
        _tipTension += dt * s.TipForce.Length;
        _noseTension += dt * s.TieForce.Length;
        _span += dt;
    }

    /// <summary>Called after each base step; records when an output time is reached.</summary>
    /// <param name="time">t, s.</param>
    /// <param name="speed">Take-up speed, m/s.</param>
    /// <param name="baseStep">Base step, s.</param>
    public void Step(double time, double speed, double baseStep)
    {
        if (++_steps % _stepsPerOutput == 0)
        {
            Record(time, speed, baseStep * _stepsPerOutput);
        }
    }

    /// <summary>Makes the result.</summary>
    /// <param name="failure">Why the run stopped early, or null.</param>
    /// <param name="counters">Solver counters.</param>
    public RetrieveResult Finish(string? failure, SolverCounters counters)
    {
        Series series = _table.ToSeries();
        IReadOnlyList<TwitchRecord> twitches = TwitchReader.Read(series, _parts.Twitch.PeriodS);
        int skip = IsSettled ? twitches.Count - WalkSettling.Twitches : Math.Min(Math.Max(0, twitches.Count - PatternFinder.FewestTwitches), WarmUpTwitches);
        RetrieveSummary summary = new RetrieveSummarizer(_parts, series, twitches, skip).Summarize();
        return new RetrieveResult(_parts.Setup, _parts.Task, _parts.Hull, series, twitches, _snapshots.Choose(series), summary, counters, failure, skip)
        {
            Attitude = _parts.Attitude,
        };
    }

    private void Record(double time, double speed, double outputStep)
    {
        CoupledStep s = _parts.Step;
        LineState line = s.Now;
        HullPose h = s.Lure.Pose;
        double per = 1.0 / _span;
        LineLoads loads = LineLoads.Of(_parts.Mesh, _parts.Medium, s);
        double bearing = Math.Atan2(line.Y[0] - h.Centre.Y, line.X[0] - h.Centre.X);
        (double angle, double rate) = _parts.Swing.Angle(time);
        double length = _parts.Setup.Rod.FreeLengthM;
        _table.BeginRow();
        _table.Add("time_s", "s", "time since the first pull began", time);
        _table.Add("lure_x_m", "m", "centre of gravity, away from the resting rod tip", h.Centre.X);
        _table.Add("lure_y_m", "m", "centre of gravity, to the angler's left", h.Centre.Y);
        _table.Add("heading_deg", "deg", "nose from pointing along -x (at the rod), counter-clockwise from above", Degrees(h.HeadingRad - Math.PI));
        _table.Add("heading_off_line_deg", "deg", "nose from the bearing of the rod tip, -180 to 180", Degrees(Wrap(h.HeadingRad - bearing)));
        _table.Add("nose_x_m", "m", "nose, away from the resting rod tip", h.Nose.X);
        _table.Add("nose_y_m", "m", "nose, to the angler's left", h.Nose.Y);
        _table.Add("lure_z_m", "m", "centre of gravity over the water", h.Centre.Z);
        _table.Add("nose_z_m", "m", "foremost point of the axis over the water", h.Nose.Z);
        _table.Add("pitch_deg", "deg", "axis over the horizontal, nose up positive; the planar hull keeps that at rest", Degrees(h.PitchRad));
        _table.Add("roll_deg", "deg", "turn about the axis, left side up positive; the planar hull keeps that at rest", Degrees(h.RollRad));
        _table.Add("wet_share", "", "volume of the hull under water over all of it; the planar hull keeps that at rest", h.WetShare);
        _table.Add("hook_clearance_m", "m", "shortest distance from the line to the hanger of a hook, at most the hull's length", HookClearance.Of(line, _parts.Mesh.Segments, h, _parts.Setup.Lure, _parts.CentreOfGravity));
        _table.Add("surge_m_s", "m/s", "forward speed of the hull", h.SurgeMS);
        _table.Add("sway_m_s", "m/s", "sideways speed of the hull, to its left", h.SwayMS);
        _table.Add("yaw_rate_rad_s", "rad/s", "yaw rate", h.YawRateRadS);
        _table.Add("nose_height_m", "m", "height of the line tie over the water", h.Tie.Z);
        _table.Add("nose_tension_N", "N", "tension at the line tie, mean over the output step", per * _noseTension);
        _table.Add("tip_tension_N", "N", "tension at the rod tip, mean over the output step", per * _tipTension);
        _table.Add("nose_down_N", "N", "downward pull of line and leader on the nose", (-per * _tieForce.Z) - s.TieWeight);
        _table.Add("line_drag_N", "N", "resultant of the water and air forces on the line", loads.DragN);
        _table.Add("slack_m", "m", "unstretched line out minus straight distance", _parts.SlackM);
        _table.Add("straight_m", "m", "straight distance from rod tip to line tie", _parts.StraightM);
        _table.Add("line_out_m", "m", "unstretched line out", _parts.Mesh.LengthM);
        _table.Add("take_up_m_s", "m/s", "line taken up (or backing away)", speed);
        _table.Add("wetted_line_m", "m", "length of line in the water's surface layer or below", loads.WettedM);
        _table.Add("line_sag_m", "m", "lowest point of the line under the chord from tip to tie", loads.SagM);
        _table.Add("tip_x_m", "m", "bent rod tip", line.X[0]);
        _table.Add("tip_y_m", "m", "bent rod tip", line.Y[0]);
        _table.Add("tip_z_m", "m", "bent rod tip", line.Z[0]);
        _table.Add("rigid_stroke_m", "m", "travel of the unbent tip along its arc", angle * length);
        _table.Add("tip_travel_m", "m", "travel of the bent tip in the stroke", (angle * length) + s.Rod.Now.Bend);
        _table.Add("rod_bend_m", "m", "bend of the tip from the straight rod", Hypot(s.Rod.Now.Bend, s.Rod.Now.SideBend));
        _table.Add("wrist_torque_Nm", "N m", "torque of the hand on the rod in the stroke plane", s.Rod.HandTorque(rate, outputStep, per * _tipForce));
        _table.Add("water_power_W", "W", "power the hull puts into the water", s.Lure.StirW);
        _snapshots.Keep(time, h);
        _watch?.Look(time, _table);
        (_tipForce, _tieForce, _tipTension, _noseTension, _span) = (Vec3.Zero, Vec3.Zero, 0.0, 0.0, 0.0);
    }

    private static double Degrees(double radians) => radians * 180.0 / Math.PI;

    private static double Wrap(double angle) => Math.IEEERemainder(angle, 2.0 * Math.PI);

    private static double Hypot(double a, double b) => Math.Sqrt((a * a) + (b * b));
}
