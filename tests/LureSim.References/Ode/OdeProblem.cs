namespace LureSim.References.Ode;

/// <summary>An initial value problem: what is integrated, from where to where, what is watched and what is kept.</summary>
public sealed class OdeProblem
{
    private readonly double[] _saveAt = [];
    private readonly double[] _breakpoints = [];
    private readonly int _eventSamples = 8;

    /// <summary>Creates the problem y(start) = initial, to be followed forward to end.</summary>
    /// <param name="system">Right side.</param>
    /// <param name="start">First time, finite.</param>
    /// <param name="end">Last time, finite, above <paramref name="start"/>.</param>
    /// <param name="initial">Initial state, finite, one value per component; copied.</param>
    /// <exception cref="ArgumentException">A value is not finite, the times are out of order or the state has the wrong length.</exception>
    public OdeProblem(IOdeSystem system, double start, double end, ReadOnlySpan<double> initial)
    {
        ArgumentNullException.ThrowIfNull(system);
        Require(double.IsFinite(start) && double.IsFinite(end) && end > start, "start and end must be finite, end after start");
        Require(initial.Length == system.Dimension, $"initial state has {initial.Length} values, the system {system.Dimension}");
        Require(Finite.All(initial), "initial state must be finite");
        System = system;
        Start = start;
        End = end;
        Initial = initial.ToArray();
    }

    /// <summary>Right side.</summary>
    public IOdeSystem System { get; }

    /// <summary>First time.</summary>
    public double Start { get; }

    /// <summary>Last time.</summary>
    public double End { get; }

    /// <summary>State at <see cref="Start"/>.</summary>
    public IReadOnlyList<double> Initial { get; }

    /// <summary>Times at which the state is kept, from the interpolant of the step (no step ends there): ascending, inside
    /// start..end. Where an event with a map falls on such a time, the state before the map is kept.</summary>
    /// <exception cref="ArgumentException">A time is outside, or the list is not ascending.</exception>
    public IReadOnlyList<double> SaveAt
    {
        get => _saveAt;
        init
        {
            _saveAt = [.. value];
            for (int i = 0; i < _saveAt.Length; i++)
            {
                Require(_saveAt[i] >= Start && _saveAt[i] <= End, "save times must lie between start and end");
                Require(i == 0 || _saveAt[i] >= _saveAt[i - 1], "save times must ascend");
            }
        }
    }

    /// <summary>Known times at which the right side (or one of its derivatives) jumps, in any order; those outside
    /// start..end are ignored. The last stage of the step before one is taken one unit in the last place early, so that it
    /// still sees the earlier branch; the step after one starts afresh.</summary>
    /// <exception cref="ArgumentException">A time is not finite.</exception>
    public IReadOnlyList<double> Breakpoints
    {
        get => _breakpoints;
        init
        {
            _breakpoints = [.. value];
            Require(Finite.All(_breakpoints), "breakpoints must be finite");
        }
    }

    /// <summary>Functions whose zeros are looked for.</summary>
    public IReadOnlyList<OdeEvent> Events { get; init; } = [];

    /// <summary>Pieces into which a step's interpolant is cut when looking for sign changes, at least 1. Two crossings of one
    /// event within one piece are not seen.</summary>
    /// <exception cref="ArgumentException">Below 1.</exception>
    public int EventSamples
    {
        get => _eventSamples;
        init
        {
            Require(value >= 1, "at least one event sample per step");
            _eventSamples = value;
        }
    }

    private static void Require(bool holds, string message)
    {
        if (!holds)
        {
            throw new ArgumentException(message);
        }
    }
}
