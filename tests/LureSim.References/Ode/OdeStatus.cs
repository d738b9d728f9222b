namespace LureSim.References.Ode;

/// <summary>How an integration ended.</summary>
public enum OdeStatus
{
    /// <summary>The last time was reached.</summary>
    Success,

    /// <summary>An event that ends the run happened.</summary>
    TerminalEvent,

    /// <summary>The step limit was used up.</summary>
    TooManySteps,

    /// <summary>The tolerance cannot be met by any step that still moves time.</summary>
    StepTooSmall,

    /// <summary>State, rates or an event function became NaN or infinite.</summary>
    NotFinite,

    /// <summary>The caller cancelled.</summary>
    Cancelled,
}

/// <summary>Sentences for <see cref="OdeStatus"/>.</summary>
public static class OdeStatusText
{
    /// <summary>One sentence that says how the run ended.</summary>
    /// <param name="status">A defined status.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a defined status.</exception>
    public static string Sentence(this OdeStatus status) => status switch
    {
        OdeStatus.Success => "The end time was reached.",
        OdeStatus.TerminalEvent => "An event that ends the run happened.",
        OdeStatus.TooManySteps => "The step limit was used up before the end time; raise it, loosen the tolerance or use a stiff method.",
        OdeStatus.StepTooSmall => "No step that still moves time meets the tolerance; the solution is singular or the tolerance below rounding.",
        OdeStatus.NotFinite => "State, rates or an event function became NaN or infinite; the last finite state is kept.",
        OdeStatus.Cancelled => "The caller cancelled; what was reached is kept.",
        _ => throw new ArgumentOutOfRangeException(nameof(status), status, null),
    };
}
