namespace LureSim.References.Ode;

/// <summary>Finds sign changes of the event functions along the steps. Remembers on which side of zero each function
/// is (0: on it), so that a zero met exactly at the end of a step is not met again by the next.</summary>
internal sealed class EventScanner
{
    /// <summary>First sample, as share of a step, while a function leaves zero: short enough that a rebound, however low,
    /// is still rising there, long enough to stand clear of rounding.</summary>
    private const double LeavingSample = 1e-6;

    private readonly IReadOnlyList<OdeEvent> _events;
    private readonly Stepper _stepper;
    private readonly int _samples;
    private readonly double[] _scratch;
    private readonly double[] _g;
    private readonly int[] _side;
    private readonly Found[] _found;
    private double _from;
    private int _sample;

    public EventScanner(OdeProblem problem, Stepper stepper)
    {
        _events = problem.Events;
        _stepper = stepper;
        _samples = problem.EventSamples;
        _scratch = new double[problem.System.Dimension];
        _g = new double[_events.Count];
        _side = new int[_events.Count];
        _found = new Found[_events.Count];
    }

    /// <summary>Crossings of the latest interval in order of time (declaration order where equal).</summary>
    public ReadOnlySpan<Found> Crossings => _found.AsSpan(0, Count);

    /// <summary>False once an event function was NaN or infinite.</summary>
    public bool AllFinite { get; private set; } = true;

    private int Count { get; set; }

    /// <summary>Takes sides anew, without crossings: at the start and after a map.</summary>
    public void Restart(double t, ReadOnlySpan<double> y)
    {
        for (int e = 0; e < _g.Length; e++)
        {
            _side[e] = Sign(Evaluate(e, t, y));
        }
    }

    /// <summary>Marks an event as being on its zero.</summary>
    public void PutOnZero(int e) => _side[e] = 0;

    /// <summary>Looks for jumps across zero at a breakpoint.</summary>
    public void Jump(double t, ReadOnlySpan<double> y)
    {
        Count = 0;
        for (int e = 0; e < _g.Length; e++)
        {
            int side = _side[e], now = Sign(Evaluate(e, t, y));
            _side[e] = now;
            if (side != 0 && now != side)
            {
                Report(e, t, side);
            }
        }
    }

    /// <summary>Prepares for the step just tried.</summary>
    public void BeginStep()
    {
        _from = _stepper.T0;
        _sample = Array.IndexOf(_side, 0) >= 0 ? 0 : 1;
    }

    /// <summary>Searches the next piece of the step; false when there is none.</summary>
    public bool NextInterval()
    {
        if (_g.Length == 0 || _sample > _samples)
        {
            return false;
        }

        Count = 0;
        double share = _sample == 0 ? LeavingSample : (double)_sample / _samples;
        double to = _sample == _samples ? _stepper.T1 : _stepper.T0 + (share * (_stepper.T1 - _stepper.T0));
        _sample++;
        _stepper.At(to, _scratch);
        for (int e = 0; e < _g.Length; e++)
        {
            double before = _g[e];
            int side = _side[e], now = Sign(Evaluate(e, to, _scratch));
            _side[e] = now;
            if (side != 0 && now != side)
            {
                Report(e, now == 0 ? to : Locate(e, before, to), side);
            }
        }

        _from = to;
        return true;
    }

    private static int Sign(double x) => x > 0.0 ? 1 : x < 0.0 ? -1 : 0;

    private double Evaluate(int e, double t, ReadOnlySpan<double> y)
    {
        double g = _events[e].Function(t, y);
        AllFinite &= double.IsFinite(g);
        return _g[e] = g;
    }

    private double Locate(int e, double before, double to)
    {
        double after = _g[e];
        double ulp = Math.BitIncrement(Math.Max(Math.Abs(_from), Math.Abs(to))) - Math.Max(Math.Abs(_from), Math.Abs(to));
        double root = BracketedRoot.Find(new AlongStep(this, e), _from, before, to, after, ulp);

        // The search evaluates through the same scratch; the next piece needs the function at its own start.
        _stepper.At(to, _scratch);
        _g[e] = after;
        return root;
    }

    private void Report(int e, double t, int side)
    {
        Crossing wanted = _events[e].Crossing;
        if (wanted == (side < 0 ? Crossing.Falling : Crossing.Rising))
        {
            return;
        }

        int i = Count++;
        for (; i > 0 && _found[i - 1].Time > t; i--)
        {
            _found[i] = _found[i - 1];
        }

        _found[i] = new Found(e, t, side < 0);
    }

    /// <summary>A crossing.</summary>
    internal readonly record struct Found(int Event, double Time, bool Rising);

    private readonly struct AlongStep(EventScanner scanner, int e) : IScalarFunction
    {
        public double At(double t)
        {
            scanner._stepper.At(t, scanner._scratch);
            return scanner.Evaluate(e, t, scanner._scratch);
        }
    }
}
