using LureSim.Model.Assembly;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Lures;
using LureSim.Numerics;

namespace LureSim.Model.Retrieve;

/// <summary>Collects the channels of a run: forces as means over the output step, everything else at its end.</summary>
internal sealed class RetrieveRecorder
{
    private readonly RetrieveParts parts;
    private readonly int stepsPerOutput;
    private readonly ChannelTable table = new();
    private readonly SnapshotKeeper snapshots;
    private Vec3 tipForce;
    private Vec3 tieForce;
    private double tipTension;
    private double noseTension;
    private double span;
    private int steps;

    /// <summary>Prepares the channels.</summary>
    /// <param name="parts">Parts of the run.</param>
    /// <param name="stepsPerOutput">Base steps per output time.</param>
    public RetrieveRecorder(RetrieveParts parts, int stepsPerOutput)
    {
        ArgumentNullException.ThrowIfNull(parts);
        this.parts = parts;
        this.stepsPerOutput = stepsPerOutput;
        snapshots = new SnapshotKeeper(parts);
    }

    /// <summary>Records the state at rest.</summary>
    public void RecordStart()
    {
        span = 1.0;
        Record(0.0, 0.0, 1.0);
    }

    /// <summary>Adds the forces of an accepted step.</summary>
    /// <param name="dt">Step, s.</param>
    public void Accumulate(double dt)
    {
        CoupledStep s = parts.Step;
        tipForce += dt * s.TipForce;
        tieForce += dt * s.TieForce;
        tipTension += dt * s.TipForce.Length;
        noseTension += dt * s.TieForce.Length;
        span += dt;
    }

    /// <summary>Called after each base step; records when an output time is reached.</summary>
    /// <param name="time">t, s.</param>
    /// <param name="speed">Take-up speed, m/s.</param>
    /// <param name="baseStep">Base step, s.</param>
    public void Step(double time, double speed, double baseStep)
    {
        if (++steps % stepsPerOutput == 0)
        {
            Record(time, speed, baseStep * stepsPerOutput);
        }
    }

    /// <summary>Makes the result.</summary>
    /// <param name="failure">Why the run stopped early, or null.</param>
    /// <param name="counters">Solver counters.</param>
    public RetrieveResult Finish(string? failure, SolverCounters counters)
    {
        Series series = table.ToSeries();
        double period = parts.Twitch.PeriodS;
        IReadOnlyList<TwitchRecord> twitches = TwitchReader.Read(series, period);
        RetrieveTask r = parts.Task;
        double warmUp = Math.Min(r.WarmUpS, 2.0 / 3.0 * r.DurationS);
        int skip = Math.Min(Math.Max(0, twitches.Count - PatternFinder.FewestTwitches), (int)Math.Ceiling((warmUp / period) - 1e-9));
        RetrieveSummary summary = new RetrieveSummarizer(parts, series, twitches, skip).Summarize();
        return new RetrieveResult(parts.Setup, parts.Task, parts.Hull, series, twitches, snapshots.Choose(series), summary, counters, failure, skip)
        {
            Attitude = parts.Attitude,
        };
    }

    private void Record(double time, double speed, double outputStep)
    {
        CoupledStep s = parts.Step;
        LineState line = s.Now;
        HullState h = s.HullNow;
        double per = 1.0 / span;
        LineLoads loads = LineLoads.Of(parts.Mesh, parts.Medium, s);
        double power = parts.WalkingHull.Power(h.U, h.V, h.R);
        double bearing = Math.Atan2(line.Y[0] - h.Y, line.X[0] - h.X);
        (double angle, double rate) = parts.Swing.Angle(time);
        double length = parts.Setup.Rod.FreeLengthM;
        table.BeginRow();
        table.Add("time_s", "s", "time since the first pull began", time);
        table.Add("lure_x_m", "m", "centre of gravity, away from the resting rod tip", h.X);
        table.Add("lure_y_m", "m", "centre of gravity, to the angler's left", h.Y);
        table.Add("heading_deg", "deg", "nose from pointing along -x (at the rod), counter-clockwise from above", Degrees(h.Psi - Math.PI));
        table.Add("heading_off_line_deg", "deg", "nose from the bearing of the rod tip, -180 to 180", Degrees(Wrap(h.Psi - bearing)));
        table.Add("nose_x_m", "m", "nose, away from the resting rod tip", h.X + (parts.Hull.NoseM * Math.Cos(h.Psi)));
        table.Add("nose_y_m", "m", "nose, to the angler's left", h.Y + (parts.Hull.NoseM * Math.Sin(h.Psi)));
        table.Add("surge_m_s", "m/s", "forward speed of the hull", h.U);
        table.Add("sway_m_s", "m/s", "sideways speed of the hull, to its left", h.V);
        table.Add("yaw_rate_rad_s", "rad/s", "yaw rate", h.R);
        table.Add("nose_height_m", "m", "height of the line tie over the water", parts.Hull.TieHeightM + h.Zeta);
        table.Add("nose_tension_N", "N", "tension at the line tie, mean over the output step", per * noseTension);
        table.Add("tip_tension_N", "N", "tension at the rod tip, mean over the output step", per * tipTension);
        table.Add("nose_down_N", "N", "downward pull of line and leader on the nose", (-per * tieForce.Z) - s.TieWeight);
        table.Add("line_drag_N", "N", "resultant of the water and air forces on the line", loads.DragN);
        table.Add("slack_m", "m", "unstretched line out minus straight distance", parts.SlackM);
        table.Add("straight_m", "m", "straight distance from rod tip to line tie", parts.StraightM);
        table.Add("line_out_m", "m", "unstretched line out", parts.Mesh.LengthM);
        table.Add("take_up_m_s", "m/s", "line taken up (or backing away)", speed);
        table.Add("wetted_line_m", "m", "length of line in the water's surface layer or below", loads.WettedM);
        table.Add("line_sag_m", "m", "lowest point of the line under the chord from tip to tie", loads.SagM);
        table.Add("tip_x_m", "m", "bent rod tip", line.X[0]);
        table.Add("tip_y_m", "m", "bent rod tip", line.Y[0]);
        table.Add("tip_z_m", "m", "bent rod tip", line.Z[0]);
        table.Add("rigid_stroke_m", "m", "travel of the unbent tip along its arc", angle * length);
        table.Add("tip_travel_m", "m", "travel of the bent tip in the stroke", (angle * length) + s.Rod.Now.Bend);
        table.Add("rod_bend_m", "m", "bend of the tip from the straight rod", Hypot(s.Rod.Now.Bend, s.Rod.Now.SideBend));
        table.Add("wrist_torque_Nm", "N m", "torque of the hand on the rod in the stroke plane", s.Rod.HandTorque(rate, outputStep, per * tipForce));
        table.Add("water_power_W", "W", "power the hull puts into the water", power);
        snapshots.Keep(time, h);
        (tipForce, tieForce, tipTension, noseTension, span) = (Vec3.Zero, Vec3.Zero, 0.0, 0.0, 0.0);
    }

    private static double Degrees(double radians) => radians * 180.0 / Math.PI;

    private static double Wrap(double angle) => Math.IEEERemainder(angle, 2.0 * Math.PI);

    private static double Hypot(double a, double b) => Math.Sqrt((a * a) + (b * b));
}
