namespace LureSim.References.Ode;

/// <summary>Which sign changes of an event function count.</summary>
public enum Crossing
{
    /// <summary>Both.</summary>
    Either,

    /// <summary>From negative to positive.</summary>
    Rising,

    /// <summary>From positive to negative.</summary>
    Falling,
}

/// <summary>Event function g(t, y), finite, continuous between breakpoints and maps.</summary>
/// <param name="t">Time.</param>
/// <param name="y">State.</param>
public delegate double EventFunction(double t, ReadOnlySpan<double> y);

/// <summary>Changes the state at an event, for example at an impact.</summary>
/// <param name="t">Time of the event.</param>
/// <param name="y">State; changed in place.</param>
public delegate void StateMap(double t, Span<double> y);

/// <summary>Something to look for while integrating: a zero of g(t, y) that is reached from one side.</summary>
/// <remarks>
/// A crossing counts when g reaches zero or changes sign; leaving a zero does not count, so a zero that falls exactly on the end
/// of a step fires once, and a run that starts on a zero does not fire there. A touch without sign change counts only if
/// a sample hits it exactly. After a map a rebound shorter than a millionth of the next step is not seen, so a ball whose
/// bounces shrink without end falls through in the end: stop such a run at a least speed. A jump of g at a map is not a crossing; a jump at a breakpoint is.
/// </remarks>
/// <param name="function">g(t, y).</param>
public sealed class OdeEvent(EventFunction function)
{
    private readonly int _stopAt = int.MaxValue;

    /// <summary>g(t, y).</summary>
    public EventFunction Function { get; } = function ?? throw new ArgumentNullException(nameof(function));

    /// <summary>Which sign changes count.</summary>
    public Crossing Crossing { get; init; }

    /// <summary>Occurrence at which the run ends: 1 for a terminal event, <see cref="int.MaxValue"/> (never) if not set.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 1.</exception>
    public int StopAt
    {
        get => _stopAt;
        init
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(value, 1);
            _stopAt = value;
        }
    }

    /// <summary>Applied at each occurrence (also the one that ends the run); integration then restarts from the new state.
    /// It may also switch a mode of the system. Null: the step goes on as if nothing had happened.</summary>
    public StateMap? Map { get; init; }
}
