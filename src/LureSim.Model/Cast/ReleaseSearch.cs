using LureSim.Model.Assembly;
using LureSim.Model.Reels;

namespace LureSim.Model.Cast;

/// <summary>
/// Finds release moments: one swing without release is kept at intervals, and a release is forked from it onto a straight
/// line, the rod going on for 80 ms, then a flight from a still tip.
/// </summary>
/// <remarks>
/// The straight line lands up to 7 % too far (12 % with heavy line in a headwind). On a fixed spool its best moment is that of the curved line. On a
/// revolving spool it is 5 to 15 ms too early: straight line throws other loops, and the thumb that answers them decides the flight. There the curved
/// line, on a coarse mesh, has the last word, and the rod goes on as long as in the reported cast.
/// </remarks>
internal sealed class ReleaseSearch
{
    private const double KeepEveryS = 0.010;
    private const double RodAfterReleaseS = 0.080;
    private const double CoarseS = 0.016;
    private const double FineS = 0.001;
    private const double AfterStopS = 0.10;
    private const double LongestSwingS = 1.5;
    private const double LongestFlightS = 30.0;

    // Mesh and steps of the curved line in the search; distances within 1 % of the reported cast's.
    private const double CurvedFineS = 0.002;
    private const double CurvedSpacingM = 4.0;
    private const double CurvedSwingS = 0.001;
    private const double CurvedFlightS = 0.002;

    private readonly CastSolverSpec _solver;
    private readonly CancellationToken _stop;
    private readonly List<AirStep> _kept = [];
    private readonly AirStep _fork;
    private readonly AirStep? _curved;
    private readonly int _keepEvery;
    private readonly Dictionary<int, double> _straight = [];
    private readonly Dictionary<int, double> _known = [];

    public ReleaseSearch(CastParts parts, CancellationToken stop = default)
    {
        (_solver, _stop) = (parts.Task.Solver, stop);
        _keepEvery = Math.Max(1, (int)Math.Round(KeepEveryS / _solver.SwingStepS));
        _fork = parts.Start(double.PositiveInfinity);
        _curved = parts.Setup.Reel.Kind == ReelKind.Revolving ? parts.Start(CurvedSpacingM) : null;
        Swing(parts);
    }

    /// <summary>Last step at which a release may be tried.</summary>
    public int LastStep { get; private set; }

    /// <summary>True when the swing was ended by the lure hitting the water.</summary>
    public bool EndsInWater { get; private set; }

    /// <summary>Landing places found so far, by step.</summary>
    public IReadOnlyDictionary<int, double> Known => _curved is null ? _straight : _known;

    /// <summary>Step nearest to a time.</summary>
    public int StepAt(double timeS) => Math.Clamp((int)Math.Round(timeS / _solver.SwingStepS), 0, LastStep);

    /// <summary>First step at which the butt has reached an angle; the last step when it never does.</summary>
    public int StepAtAngle(double angleRad)
    {
        _fork.CopyFrom(_kept[0]);
        for (int step = 0; step < LastStep; step++)
        {
            if (_fork.Rod.Q[1] >= angleRad)
            {
                return step;
            }

            Step(_fork, _solver.SwingStepS);
        }

        return LastStep;
    }

    /// <summary>The release that lands farthest.</summary>
    public int Best()
    {
        int coarse = StepsOf(CoarseS), fine = StepsOf(_curved is null ? FineS : CurvedFineS), first = FirstForward(coarse), best = first;
        for (int step = first + coarse; step <= LastStep; step += coarse)
        {
            best = Straight(step) > Straight(best) ? step : best;
        }

        for (int stride = coarse / 2; stride >= fine; stride /= 2)
        {
            int low = Math.Max(0, best - stride), high = Math.Min(LastStep, best + stride);
            best = Distance(low) > Distance(best) ? low : best;
            best = Distance(high) > Distance(best) ? high : best;
        }

        // Halving may stop one fine step beside the top.
        while (Better(best, -fine) || Better(best, fine))
        {
            best += Better(best, fine) ? fine : -fine;
        }

        return best;
    }

    private bool Better(int step, int by) => step + by >= 0 && step + by <= LastStep && Distance(step + by) > Distance(step);

    /// <summary>Where the lure lands when let go at a step, m from the hand's start.</summary>
    public double Distance(int step)
    {
        if (_curved is null)
        {
            return Straight(step);
        }

        if (!_known.TryGetValue(step, out double known))
        {
            _known[step] = known = Fly(Fork(_curved, step), _solver.RodAfterReleaseS, CurvedSwingS, CurvedFlightS);
        }

        return known;
    }

    private double Straight(int step)
    {
        if (!_straight.TryGetValue(step, out double known))
        {
            // Where it only guides the curved line, coarse steps do.
            (double swing, double flight) = _curved is null ? (_solver.SwingStepS, _solver.FlightStepS) : (CurvedSwingS, CurvedFlightS);
            _straight[step] = known = Fly(Fork(_fork, step), RodAfterReleaseS, swing, flight);
        }

        return known;
    }

    private AirStep Fork(AirStep fork, int step)
    {
        int kept = Math.Min(step / _keepEvery, _kept.Count - 1);
        fork.CopyFrom(_kept[kept]);
        for (int i = kept * _keepEvery; i < step; i++)
        {
            Step(fork, _solver.SwingStepS);
        }

        return fork;
    }

    // A lure that still moves backward when let go lands behind a later one; where it never moves forward, all moments are tried.
    private int FirstForward(int coarse)
    {
        int kept = _kept.FindIndex(c => c.Line.Vx[0] > 0.0);
        return kept < 0 ? 0 : Math.Max(0, (kept - 1) * _keepEvery / coarse * coarse);
    }

    private double Fly(AirStep fork, double rodAfterS, double swingStepS, double flightStepS)
    {
        fork.Release();
        double start = fork.TimeS;
        double x = fork.Line.X[0], z = fork.Line.Z[0];
        while (fork.Line.Z[0] > 0.0 && fork.TimeS - start < LongestFlightS)
        {
            if (!fork.RodAtRest && fork.TimeS - start >= rodAfterS)
            {
                fork.RestRod();
            }

            (x, z) = (fork.Line.X[0], fork.Line.Z[0]);
            Step(fork, fork.RodAtRest ? flightStepS : swingStepS);
        }

        double drop = z - fork.Line.Z[0];
        return drop > 0.0 ? x + ((fork.Line.X[0] - x) * z / drop) : x;
    }

    private void Step(AirStep cast, double h)
    {
        _stop.ThrowIfCancellationRequested();
        cast.Step(h);
    }

    private int StepsOf(double time) => Math.Max(1, (int)Math.Round(time / _solver.SwingStepS));

    private void Swing(CastParts parts)
    {
        double stop = parts.Setup.Hands.StopRad, stopped = double.PositiveInfinity;
        AirStep swing = parts.Start(double.PositiveInfinity);
        for (int step = 0; ; step++)
        {
            if (step % _keepEvery == 0)
            {
                AirStep copy = parts.Start(double.PositiveInfinity);
                copy.CopyFrom(swing);
                _kept.Add(copy);
            }

            stopped = swing.Rod.Q[1] >= stop ? Math.Min(stopped, swing.TimeS) : stopped;
            LastStep = step;
            EndsInWater = swing.Line.Z[0] <= 0.0;
            if (swing.TimeS > stopped + AfterStopS || swing.TimeS > LongestSwingS || EndsInWater)
            {
                return;
            }

            Step(swing, _solver.SwingStepS);
        }
    }
}
