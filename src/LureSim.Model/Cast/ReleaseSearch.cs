using LureSim.Model.Assembly;

namespace LureSim.Model.Cast;

/// <summary>What a release gives.</summary>
/// <param name="DistanceM">Where the lure lands, m from the hand's start; NaN when it does not come down.</param>
/// <param name="Loops">Most loose line, in loops on the spool.</param>
internal readonly record struct Trial(double DistanceM, double Loops);

/// <summary>
/// Finds release moments: one swing without release is kept at intervals, and a release is forked from it onto the line of the reported cast, same
/// mesh, twice its steps. A straight line, which is cheap, only guides: it throws other loops and lands up to 7 % too far.
/// </summary>
internal sealed class ReleaseSearch
{
    private const double KeepEveryS = 0.010;
    private const double CoarseS = 0.032;
    private const double AfterStopS = 0.10;
    private const double LongestSwingS = 1.5;

    // No lure flies that long; one that hangs on its line does not come down.
    private const double LongestFlightS = 12.0;

    // The straight line: the rod need not go on for long.
    private const double GuideRodS = 0.080;
    private const double GuideSwingS = 0.001;
    private const double GuideFlightS = 0.002;

    private readonly CastSolverSpec _solver;
    private readonly CancellationToken _stop;
    private readonly List<AirStep> _kept = [];
    private readonly AirStep _straight, _curved;
    private readonly int _keepEvery, _lead;
    private readonly Dictionary<int, double> _guides = [];
    private readonly Dictionary<int, Trial> _trials = [];

    public ReleaseSearch(CastParts parts, CancellationToken stop = default)
    {
        (_solver, _stop) = (parts.Task.Solver, stop);
        _keepEvery = Math.Max(1, (int)Math.Round(KeepEveryS / _solver.SwingStepS));
        _lead = (int)Math.Ceiling(Math.Max(0.0, -parts.Setup.Hands.CatchDelayS) / _solver.SwingStepS);
        _straight = parts.Start(double.PositiveInfinity);
        _curved = parts.Start(_solver.NodeSpacingM);
        Swing(parts);
    }

    /// <summary>Last step at which a release may be tried.</summary>
    public int LastStep { get; private set; }

    /// <summary>True when the swing was ended by the lure hitting the water.</summary>
    public bool EndsInWater { get; private set; }

    /// <summary>Releases tried so far, by step.</summary>
    public IReadOnlyDictionary<int, Trial> Trials => _trials;

    /// <summary>Step nearest to a time.</summary>
    public int StepAt(double timeS) => Math.Clamp((int)Math.Round(timeS / _solver.SwingStepS), 0, LastStep);

    /// <summary>First step at which the butt has reached an angle; the last step when it never does.</summary>
    public int StepAtAngle(double angleRad)
    {
        _straight.CopyFrom(_kept[0]);
        for (int step = 0; step < LastStep; step++)
        {
            if (_straight.Rod.Q[1] >= angleRad)
            {
                return step;
            }

            Step(_straight, _solver.SwingStepS);
        }

        return LastStep;
    }

    /// <summary>The release that lands farthest, to a step: the top of a parabola through trials a stride apart.</summary>
    /// <param name="stride">Steps between trials.</param>
    /// <exception cref="ModelException">No release brings the lure down.</exception>
    public int Best(int stride)
    {
        int best = Guide();
        while (Better(best, -stride) || Better(best, stride))
        {
            best += Better(best, stride) ? stride : -stride;
        }

        if (double.IsNaN(Try(best).DistanceM))
        {
            throw new ModelException("No moment of release brings the lure down: the line holds it in the air.", 0.0);
        }

        return Math.Clamp(best + (int)Math.Round(Vertex(best, stride) * stride), 0, LastStep);
    }

    /// <summary>Lets go at a step, on the line of the reported cast.</summary>
    /// <param name="step">Step; those outside the swing are moved to its ends.</param>
    public Trial Try(int step)
    {
        step = Math.Clamp(step, 0, LastStep);
        if (!_trials.TryGetValue(step, out Trial known))
        {
            _trials[step] = known = Fly(Fork(_curved, step), _solver.RodAfterReleaseS, 2.0 * _solver.SwingStepS, 2.0 * _solver.FlightStepS);
        }

        return known;
    }

    /// <summary>The tried step nearest to one.</summary>
    public int Nearest(int step) => _trials.Keys.MinBy(k => (Math.Abs(k - step), k));

    // Where the top lies between two neighbours, in strides from the best trial.
    private double Vertex(int best, int stride)
    {
        if (best - stride < 0 || best + stride > LastStep)
        {
            return 0.0;
        }

        double low = Try(best - stride).DistanceM, top = Try(best).DistanceM, high = Try(best + stride).DistanceM;
        double bend = (2.0 * top) - low - high;
        return bend > 0.0 ? Math.Clamp(0.5 * (high - low) / bend, -0.5, 0.5) : 0.0;
    }

    private bool Better(int step, int by) => step + by >= 0 && step + by <= LastStep && Farther(Try(step + by).DistanceM, Try(step).DistanceM);

    private static bool Farther(double a, double b) => a > b || (double.IsNaN(b) && !double.IsNaN(a));

    // The best moment of the straight line; where that never lands, of the curved one.
    private int Guide()
    {
        int coarse = Math.Max(1, (int)Math.Round(CoarseS / _solver.SwingStepS)), first = FirstForward(coarse);
        int best = Farthest(first, coarse, Straight), half = Math.Max(1, coarse / 2);
        foreach (int near in (int[])[best - half, best + half])
        {
            best = near >= 0 && near <= LastStep && Farther(Straight(near), Straight(best)) ? near : best;
        }

        return double.IsNaN(Straight(best)) ? Farthest(first, coarse, s => Try(s).DistanceM) : best;
    }

    private int Farthest(int first, int stride, Func<int, double> distance)
    {
        int best = first;
        for (int step = first + stride; step <= LastStep; step += stride)
        {
            best = Farther(distance(step), distance(best)) ? step : best;
        }

        return best;
    }

    private double Straight(int step)
    {
        if (!_guides.TryGetValue(step, out double known))
        {
            _guides[step] = known = Fly(Fork(_straight, step), GuideRodS, GuideSwingS, GuideFlightS).DistanceM;
        }

        return known;
    }

    // From the last kept moment at which the hands did not yet prepare for the release.
    private AirStep Fork(AirStep fork, int step)
    {
        int kept = Math.Min(Math.Max(0, step - _lead) / _keepEvery, _kept.Count - 1);
        fork.CopyFrom(_kept[kept]);
        fork.Plan(step * _solver.SwingStepS);
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

    private Trial Fly(AirStep fork, double rodAfterS, double swingStepS, double flightStepS)
    {
        fork.Release();
        double start = fork.TimeS, loops = 0.0;
        double x = fork.Line.X[0], z = fork.Line.Z[0];
        while (fork.Line.Z[0] > 0.0)
        {
            if (fork.TimeS - start >= LongestFlightS)
            {
                return new(double.NaN, loops);
            }

            if (!fork.RodAtRest && fork.TimeS - start >= rodAfterS)
            {
                fork.RestRod();
            }

            (x, z) = (fork.Line.X[0], fork.Line.Z[0]);
            Step(fork, fork.RodAtRest ? flightStepS : swingStepS);
            loops = Math.Max(loops, fork.Reel.LooseM / fork.Reel.LoopM);
        }

        double drop = z - fork.Line.Z[0];
        return new(drop > 0.0 ? x + ((fork.Line.X[0] - x) * z / drop) : x, loops);
    }

    private void Step(AirStep cast, double h)
    {
        _stop.ThrowIfCancellationRequested();
        cast.Step(h);
    }

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
