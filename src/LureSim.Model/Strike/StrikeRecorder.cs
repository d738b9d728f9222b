using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Numerics;

namespace LureSim.Model.Strike;

/// <summary>Watches a strike: peaks and times at every step, the series at intervals, rod and line at four moments.</summary>
internal sealed class StrikeRecorder
{
    /// <summary>Pull at the hook from which the line counts as tight, N.</summary>
    public const double TightN = 0.5;

    private readonly StrikeParts _parts;
    private readonly StrikeStep _step;
    private readonly ChannelTable _table = new();
    private readonly Vec3 _toHook;
    private readonly double _tipStart, _turnStart, _fishStart;
    private readonly List<StrikeMoment> _moments = [];
    private readonly double[] _peakQ, _peakX, _peakZ;
    private double _nextRow, _slackS, _sincePeakS;
    private bool _held;

    /// <summary>Begins with the strike at rest.</summary>
    /// <param name="parts">Parts.</param>
    public StrikeRecorder(StrikeParts parts)
    {
        (_parts, _step) = (parts, parts.Step);
        int nodes = _step.Mesh.Segments + 1;
        (_peakQ, _peakX, _peakZ) = (new double[_step.Rod.Now.Q.Length], new double[nodes], new double[nodes]);
        _toHook = (_step.Fish.Now.Place - _step.Rod.TipNow).Unit();
        (_tipStart, _turnStart, _fishStart) = (Away(_step.Rod.TipNow), _step.Rod.Now.Q[1], _step.Fish.Now.Place.X);
        Keep(StrikeMomentName.Start, 0.0);
        Row(0.0);
    }

    /// <summary>First time with a tight line, s; infinity before it.</summary>
    public double FirstPullS { get; private set; } = double.PositiveInfinity;

    /// <summary>First time with the pull that sets all points, s; infinity before it.</summary>
    public double FirstSetS { get; private set; } = double.PositiveInfinity;

    /// <summary>What was largest or summed up.</summary>
    public StrikePeaks Peaks;

    /// <summary>Looks at the strike after a step.</summary>
    /// <param name="time">t, s.</param>
    /// <param name="dt">Step, s.</param>
    public void Accept(double time, double dt)
    {
        double hook = _step.HookN;
        if (hook >= TightN && double.IsPositiveInfinity(FirstPullS))
        {
            FirstPullS = time;
            Keep(StrikeMomentName.Tight, time);
        }

        if (hook >= _parts.Setup.Hook.SettingN)
        {
            FirstSetS = Math.Min(FirstSetS, time);
            Peaks.SetS += dt;
        }

        Sum(hook, time, dt);
        if (!_held && time >= _parts.Task.Stroke.HoldS)
        {
            Hold(time);
        }

        if (time >= _nextRow - (0.5 * dt))
        {
            Row(time);
        }
    }

    /// <summary>The strike as a result.</summary>
    /// <param name="counters">Work of the numbers.</param>
    public StrikeResult Finish(SolverCounters counters)
    {
        if (Peaks.HookN > 0.0)
        {
            _moments.Add(Moment(StrikeMomentName.Peak, Peaks.TimeS, Peaks.HookN, _peakQ, _peakX, _peakZ));
        }

        return new()
        {
            Setup = _parts.Setup,
            Task = _parts.Task,
            Summary = StrikeSummarizer.Summarize(this, _parts),
            Series = _table.ToSeries(),
            Moments = [.. _moments.OrderBy(m => m.TimeS)],
            Counters = counters,
        };
    }

    /// <summary>Share of the time after the peak with slack line.</summary>
    public double SlackShare => _sincePeakS > 0.0 ? _slackS / _sincePeakS : 0.0;

    /// <summary>Line that slipped in all, m.</summary>
    public double SlipM => _step.Clutch.GivenM;

    private void Sum(double hook, double time, double dt)
    {
        double torque = Math.Abs(_step.Rod.HandTorqueNm);
        Peaks.TipN = Math.Max(Peaks.TipN, _step.TipN);
        Peaks.ReelN = Math.Max(Peaks.ReelN, _step.Clutch.ReelForceN);
        Peaks.WholeN = Math.Max(Peaks.WholeN, hook);
        Peaks.HandNm = Math.Max(Peaks.HandNm, torque);
        Peaks.RodNm = Math.Max(Peaks.RodNm, _step.Rod.RodTorqueNm);
        Peaks.FishMS = Math.Max(Peaks.FishMS, _step.Fish.TowardMS);
        (_sincePeakS, _slackS) = (_sincePeakS + dt, _slackS + (hook < TightN ? dt : 0.0));
        if (_held)
        {
            return;
        }

        Peaks.ImpulseNs += hook * dt;
        if (hook > Peaks.HookN)
        {
            (_sincePeakS, _slackS) = (0.0, 0.0);
            Peak(hook, time);
        }
    }

    private void Peak(double hook, double time)
    {
        (Peaks.HookN, Peaks.TimeS, Peaks.TipAtPeakN) = (hook, time, _step.TipN);
        (Peaks.StretchM, Peaks.SlipM) = (LineEnergy.StretchM(_step.Mesh, _step.Now), _step.Clutch.GivenM);
        (Peaks.TravelM, Peaks.TurnRad, Peaks.ButtRad) = (Away(_step.Rod.TipNow) - _tipStart, _step.Rod.Now.Q[1] - _turnStart, _step.Rod.Now.Q[1]);
        (Peaks.Tip, Peaks.Hook) = (_step.Rod.TipNow, _step.Fish.Now.Place);
        _step.Rod.Now.Q.CopyTo(_peakQ, 0);
        _step.Now.X.AsSpan(0, _peakX.Length).CopyTo(_peakX);
        Across.AsSpan(0, _peakZ.Length).CopyTo(_peakZ);
    }

    private void Hold(double time)
    {
        _held = true;
        (Peaks.HeldSlipM, Peaks.HeldFishM) = (_step.Clutch.GivenM, _fishStart - _step.Fish.Now.Place.X);
        Keep(StrikeMomentName.Held, time);
    }

    private void Row(double time)
    {
        _nextRow += _parts.Task.Solver.OutputStepS;
        _table.BeginRow();
        _table.Add("time_s", "s", "time from the first movement of the hands", time);
        _table.Add("hook_force_N", "N", "pull of the line on the hook", _step.HookN);
        _table.Add("tip_force_N", "N", "pull of the line at the rod tip", _step.TipN);
        _table.Add("reel_force_N", "N", "pull of the line at the reel", _step.Clutch.ReelForceN);
        _table.Add("slip_m", "m", "line that has slipped through the drag", _step.Clutch.GivenM);
        _table.Add("slip_speed_m_s", "m/s", "speed at which it slips", _step.Clutch.SpeedMS);
        _table.Add("rod_turn_deg", "deg", "turn of the rod's butt since the start", (_step.Rod.Now.Q[1] - _turnStart) * 180.0 / Math.PI);
        _table.Add("hand_torque_Nm", "N m", "torque of the hands on the rod", _step.Rod.HandTorqueNm);
        _table.Add("tip_travel_m", "m", "travel of the rod tip away from where the hook was", Away(_step.Rod.TipNow) - _tipStart);
        _table.Add("line_stretch_m", "m", "stretch of line and leader", LineEnergy.StretchM(_step.Mesh, _step.Now));
        _table.Add("fish_way_m", "m", "way of the fish toward the angler since the start", _fishStart - _step.Fish.Now.Place.X);
        _table.Add("fish_speed_m_s", "m/s", "speed of the fish toward the angler", _step.Fish.TowardMS);
    }

    private double Away(Vec3 tip) => -Vec3.Dot(tip, _toHook);

    // Line across the stroke's plane: height, or to the side.
    private double[] Across => _parts.Task.Stroke.Plane == StrokePlane.Up ? _step.Now.Z : _step.Now.Y;

    private void Keep(StrikeMomentName name, double time) =>
        _moments.Add(Moment(name, time, _step.HookN, _step.Rod.Now.Q, _step.Now.X.AsSpan(0, _peakX.Length), Across.AsSpan(0, _peakZ.Length)));

    private StrikeMoment Moment(StrikeMomentName name, double time, double hookN, double[] rod, ReadOnlySpan<double> lineX, ReadOnlySpan<double> lineZ)
    {
        bool up = _parts.Task.Stroke.Plane == StrokePlane.Up;
        Vec3[] joints = _step.Rod.Joints(rod);
        return new(name, time, hookN, [.. joints.Select(p => p.X)], [.. joints.Select(p => up ? p.Z : p.Y)], [.. lineX], [.. lineZ]);
    }
}

/// <summary>What was largest or summed up in a strike; the peak is that of the pull on the hook before the hands only hold.</summary>
internal struct StrikePeaks
{
    /// <summary>Pull on the hook at the peak, at the tip then, and the largest of the whole time, N.</summary>
    public double HookN, TipAtPeakN, WholeN;

    /// <summary>Time of the peak, and time with the pull that sets all points, s.</summary>
    public double TimeS, SetS;

    /// <summary>Largest pull at tip and reel, N.</summary>
    public double TipN, ReelN;

    /// <summary>Largest torque of the hands and of the bent rod on them, N m.</summary>
    public double HandNm, RodNm;

    /// <summary>Integral of the pull on the hook, N s.</summary>
    public double ImpulseNs;

    /// <summary>At the peak: stretch of the line, line slipped, travel of the tip, m.</summary>
    public double StretchM, SlipM, TravelM;

    /// <summary>At the peak: turn of the butt since the start, and its angle, rad.</summary>
    public double TurnRad, ButtRad;

    /// <summary>At the peak: tip and hook, m.</summary>
    public Vec3 Tip, Hook;

    /// <summary>When the hands only hold: line slipped, way of the fish toward the angler, m.</summary>
    public double HeldSlipM, HeldFishM;

    /// <summary>Largest speed of the fish toward the angler, m/s.</summary>
    public double FishMS;
}
