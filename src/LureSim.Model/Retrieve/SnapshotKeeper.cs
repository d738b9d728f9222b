using LureSim.Model.Hands;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Lures;
using LureSim.Numerics;

namespace LureSim.Model.Retrieve;

/// <summary>
/// Keeps the shapes of the current twitch and hands out three instants of the first twitch after warm-up: the hardest pull, the
/// slackest line, and the end of the turn.
/// </summary>
internal sealed class SnapshotKeeper
{
    private const int RodPoints = 24;
    private readonly RetrieveParts _parts;
    private readonly double _from;
    private readonly double _to;
    private readonly List<(double Time, HullPose Hull, double[][] Line, double Bend, double Side)> _kept = [];

    /// <summary>Prepares for the twitch after warm-up (or the last complete one of a short run).</summary>
    /// <param name="parts">Parts of the run.</param>
    public SnapshotKeeper(RetrieveParts parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        _parts = parts;
        RetrieveTask r = parts.Task;
        double period = parts.Twitch.PeriodS;
        double warmUp = Math.Min(r.WarmUpS, 2.0 / 3.0 * r.DurationS);
        double first = Math.Ceiling((warmUp / period) - 1e-9) * period;
        _from = Math.Max(0.0, Math.Min(first, Math.Floor((r.DurationS / period) - 1.0) * period));
        _to = _from + period;
    }

    /// <summary>Keeps the shape if it belongs to the chosen twitch.</summary>
    /// <param name="time">t, s.</param>
    /// <param name="hull">Lure.</param>
    public void Keep(double time, in HullPose hull)
    {
        if (time < _from - 1e-9 || time > _to + 1e-9)
        {
            return;
        }

        LineState s = _parts.Step.Now;
        int n = _parts.Mesh.Segments + 1;
        _kept.Add((time, hull, [s.X[..n], s.Y[..n], s.Z[..n]], _parts.Rod.Now.Bend, _parts.Rod.Now.SideBend));
    }

    /// <summary>Three instants in order of time; fewer when the run was shorter than a twitch.</summary>
    /// <param name="series">Channels of the run.</param>
    public IReadOnlyList<Snapshot> Choose(Series series)
    {
        ArgumentNullException.ThrowIfNull(series);
        if (_kept.Count < 3)
        {
            return [];
        }

        ReadOnlySpan<double> tension = series["tip_tension_N"], slack = series["slack_m"], time = series["time_s"];
        int offset = 0;
        while (time[offset] < _kept[0].Time - 1e-9)
        {
            offset++;
        }

        int pull = 0, loose = 0, last = _kept.Count - 2;
        for (int i = 0; i <= last; i++)
        {
            pull = tension[offset + i] > tension[offset + pull] ? i : pull;
            loose = slack[offset + i] > slack[offset + loose] ? i : loose;
        }

        return [.. new[] { (pull, "hardest pull"), (loose, "most slack"), (last, "just before the next pull") }
            .OrderBy(p => p.Item1).Select(p => Take(p.Item1, p.Item2))];
    }

    private Snapshot Take(int index, string label)
    {
        (double time, HullPose hull, double[][] line, double bend, double side) = _kept[index];
        return new Snapshot(time, label, [.. line.Select(ValueList.Own)], [.. Rod(time, line, bend, side).Select(ValueList.Own)], hull.Centre.X, hull.Centre.Y, hull.HeadingRad)
        {
            LureZM = hull.Centre.Z,
            PitchRad = hull.PitchRad,
            RollRad = hull.RollRad,
        };
    }

    /// <summary>The rod for a picture: straight rod plus the shape of a tip-loaded cantilever, s^2 (3 - s)/2.</summary>
    private double[][] Rod(double time, double[][] line, double bend, double side)
    {
        TipFrame tip = _parts.Swing.At(time);
        Vec3 hand = _parts.Swing.Hand;
        Vec3 straight = tip.Position - hand;
        Vec3 bent = (bend * tip.Stroke) + (side * tip.Side);

        // When the angler backs away, hand and tip have moved together.
        Vec3 moved = new Vec3(line[0][0], line[1][0], line[2][0]) - (tip.Position + bent);
        var rod = new[] { new double[RodPoints + 1], new double[RodPoints + 1], new double[RodPoints + 1] };
        for (int i = 0; i <= RodPoints; i++)
        {
            double s = (double)i / RodPoints;
            Vec3 p = hand + moved + (s * straight) + (0.5 * s * s * (3.0 - s) * bent);
            (rod[0][i], rod[1][i], rod[2][i]) = (p.X, p.Y, p.Z);
        }

        return rod;
    }
}
