namespace LureSim.Model.Cast;

/// <summary>
/// Finds release moments: one swing without release is kept at intervals, and a release is forked from it onto a straight
/// line, the rod going on for 80 ms, then a flight from a still tip.
/// </summary>
/// <remarks>The straight line lands up to 7 % too far (12 % with heavy line in a headwind), but at nearly the same best moment.</remarks>
internal sealed class ReleaseSearch
{
    private const double KeepEveryS = 0.010;
    private const double RodAfterReleaseS = 0.080;
    private const double CoarseS = 0.016;
    private const double FineS = 0.001;
    private const double AfterStopS = 0.10;
    private const double LongestSwingS = 1.5;
    private const double LongestFlightS = 30.0;

    private readonly CastSolverSpec _solver;
    private readonly List<CastStepper> _kept = [];
    private readonly CastStepper _fork;
    private readonly int _keepEvery;
    private readonly Dictionary<int, double> _known = [];

    public ReleaseSearch(CastSetup setup)
    {
        _solver = setup.Spec.Cast.Numerics;
        _keepEvery = Math.Max(1, (int)Math.Round(KeepEveryS / _solver.SwingStepS));
        _fork = setup.Start(double.PositiveInfinity);
        Swing(setup);
    }

    /// <summary>Last step at which a release may be tried.</summary>
    public int LastStep { get; private set; }

    /// <summary>True when the swing was ended by the lure hitting the water.</summary>
    public bool EndsInWater { get; private set; }

    /// <summary>Landing places found so far, by step.</summary>
    public IReadOnlyDictionary<int, double> Known => _known;

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

            _fork.Step(_solver.SwingStepS);
        }

        return LastStep;
    }

    /// <summary>The release that lands farthest.</summary>
    public int Best()
    {
        int coarse = StepsOf(CoarseS), fine = StepsOf(FineS), first = FirstForward(coarse), best = first;
        for (int step = first + coarse; step <= LastStep; step += coarse)
        {
            best = Distance(step) > Distance(best) ? step : best;
        }

        for (int stride = coarse / 2; stride >= fine; stride /= 2)
        {
            int low = Math.Max(0, best - stride), high = Math.Min(LastStep, best + stride);
            best = Distance(low) > Distance(best) ? low : best;
            best = Distance(high) > Distance(best) ? high : best;
        }

        return best;
    }

    /// <summary>Where the lure lands when let go at a step, m from the hand's start.</summary>
    public double Distance(int step)
    {
        if (_known.TryGetValue(step, out double known))
        {
            return known;
        }

        int kept = Math.Min(step / _keepEvery, _kept.Count - 1);
        _fork.CopyFrom(_kept[kept]);
        for (int i = kept * _keepEvery; i < step; i++)
        {
            _fork.Step(_solver.SwingStepS);
        }

        return _known[step] = Fly();
    }

    // A lure that still moves backward when let go lands behind a later one; where it never moves forward, all moments are tried.
    private int FirstForward(int coarse)
    {
        int kept = _kept.FindIndex(c => c.Line.Vx[0] > 0.0);
        return kept < 0 ? 0 : Math.Max(0, (kept - 1) * _keepEvery / coarse * coarse);
    }

    private double Fly()
    {
        _fork.Release();
        double start = _fork.TimeS;
        double x = _fork.Line.X[0], z = _fork.Line.Z[0];
        while (_fork.Line.Z[0] > 0.0 && _fork.TimeS - start < LongestFlightS)
        {
            if (!_fork.RodAtRest && _fork.TimeS - start >= RodAfterReleaseS)
            {
                _fork.RestRod();
            }

            (x, z) = (_fork.Line.X[0], _fork.Line.Z[0]);
            _fork.Step(_fork.RodAtRest ? _solver.FlightStepS : _solver.SwingStepS);
        }

        double drop = z - _fork.Line.Z[0];
        return drop > 0.0 ? x + ((_fork.Line.X[0] - x) * z / drop) : x;
    }

    private int StepsOf(double time) => Math.Max(1, (int)Math.Round(time / _solver.SwingStepS));

    private void Swing(CastSetup setup)
    {
        double stop = setup.Spec.Cast.Hands.StopRad, stopped = double.PositiveInfinity;
        CastStepper swing = setup.Start(double.PositiveInfinity);
        for (int step = 0; ; step++)
        {
            if (step % _keepEvery == 0)
            {
                CastStepper copy = setup.Start(double.PositiveInfinity);
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

            swing.Step(_solver.SwingStepS);
        }
    }
}
