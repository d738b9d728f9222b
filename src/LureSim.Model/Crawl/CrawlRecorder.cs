using LureSim.Model.Assembly;
using LureSim.Model.Lines.Chain;
using LureSim.Numerics;

namespace LureSim.Model.Crawl;

/// <summary>Collects the channels of a crawl: forces as means over the output step, everything else at its end.</summary>
internal sealed class CrawlRecorder
{
    private readonly CrawlParts _parts;
    private readonly int _stepsPerOutput;
    private readonly ChannelTable _table = new();
    private readonly CrawlStatics _statics;
    private double _nose, _tip, _normal, _plants, _span;
    private int _steps;

    /// <summary>Prepares the channels.</summary>
    /// <param name="parts">Parts of the run.</param>
    /// <param name="stepsPerOutput">Base steps per output time.</param>
    public CrawlRecorder(CrawlParts parts, int stepsPerOutput) =>
        (_parts, _stepsPerOutput, _statics) = (parts, stepsPerOutput, CrawlStatics.Of(parts));

    /// <summary>Records the state at rest.</summary>
    public void RecordStart()
    {
        (_normal, _span) = (_parts.Contact.MassKg * Physics.GravityMS2, 1.0);
        Record(0.0, 0.0);
    }

    /// <summary>Adds the forces of an accepted step.</summary>
    /// <param name="dt">Step, s.</param>
    public void Accumulate(double dt)
    {
        CoupledStep s = _parts.Line.Step;
        _nose += dt * s.TieForce.Length;
        _tip += dt * s.TipForce.Length;
        _normal += dt * _parts.Lure.NormalN;
        _plants += dt * HeldByPlants(s);
        _span += dt;
    }

    /// <summary>Called after each base step; records when an output time is reached, and the last step of all.</summary>
    /// <param name="time">t, s.</param>
    /// <param name="takeUp">Take-up speed, m/s.</param>
    /// <param name="baseStep">Base step, s.</param>
    public void Step(double time, double takeUp, double baseStep)
    {
        if (++_steps % _stepsPerOutput == 0 || _parts.WayM >= _parts.Task.ToOpeningM)
        {
            Record(time, takeUp);
        }
    }

    /// <summary>Makes the result.</summary>
    /// <param name="failure">Why the run stopped early, or null.</param>
    /// <param name="counters">Solver counters.</param>
    public CrawlResult Finish(string? failure, SolverCounters counters)
    {
        Series series = _table.ToSeries();
        return new CrawlResult(_parts.Setup, _parts.Task, series, _statics, CrawlSummary.Of(series, _parts.Task, _parts.Twitch.PeriodS), counters, failure);
    }

    private void Record(double time, double takeUp)
    {
        CoupledStep s = _parts.Line.Step;
        Vec3 tie = _parts.Lure.Pose.Tie, v = _parts.Lure.Velocity;
        double per = 1.0 / _span;
        _table.BeginRow();
        _table.Add("time_s", "s", "time since the first pull began", time);
        _table.Add("way_m", "m", "way of the line tie toward the rod", _parts.WayM);
        _table.Add("side_m", "m", "line tie beside its way, to the angler's left", tie.Y);
        _table.Add("clear_m", "m", "belly over the plants where nothing presses them; negative where it presses them down", _parts.Lure.ClearM);
        _table.Add("speed_m_s", "m/s", "speed of the lure along the plants", Math.Sqrt((v.X * v.X) + (v.Y * v.Y)));
        _table.Add("nose_tension_N", "N", "tension at the line tie, mean over the output step", per * _nose);
        _table.Add("tip_tension_N", "N", "tension at the rod tip, mean over the output step", per * _tip);
        _table.Add("normal_N", "N", "what the plants carry of the lure, mean over the output step", per * _normal);
        _table.Add("plants_N", "N", "what plants hold of the line, added up along it, mean over the output step", per * _plants);
        _table.Add("slack_m", "m", "unstretched line out minus straight distance", _parts.Line.SlackM);
        _table.Add("straight_m", "m", "straight distance from rod tip to line tie", _parts.Line.StraightM);
        _table.Add("line_out_m", "m", "unstretched line out", _parts.Line.Mesh.LengthM);
        _table.Add("take_up_m_s", "m/s", "line taken up", takeUp);
        _table.Add("rod_bend_m", "m", "bend of the tip from the straight rod", Math.Sqrt((s.Rod.Now.Bend * s.Rod.Now.Bend) + (s.Rod.Now.SideBend * s.Rod.Now.SideBend)));
        _table.Add("lowest_m", "m", "lowest point of the line over the water", Lowest(s.Now));
        (_nose, _tip, _normal, _plants, _span) = (0.0, 0.0, 0.0, 0.0, 0.0);
    }

    private double HeldByPlants(CoupledStep s)
    {
        LineMesh mesh = _parts.Line.Mesh;
        double sum = 0.0;
        for (int i = 1; i < mesh.Segments; i++)
        {
            double held = s.Pass.AlongFriction[i];
            if (held > 0.0)
            {
                Vec3 t = s.Pass.Tangent(i);
                double along = (s.Now.VX[i] * t.X) + (s.Now.VY[i] * t.Y) + (s.Now.VZ[i] * t.Z) - (s.Pass.FeedMS * mesh.FeedShare[i]);
                sum += held * Math.Abs(along);
            }
        }

        return sum;
    }

    private double Lowest(LineState s)
    {
        double low = s.Z[0];
        for (int i = 1; i <= _parts.Line.Mesh.Segments; i++)
        {
            low = Math.Min(low, s.Z[i]);
        }

        return low;
    }
}
