using LureSim.Model;
using LureSim.Studies.Across;

namespace LureSim.Studies.Cadence;

/// <summary>One set-up of the comparison.</summary>
/// <param name="Values">One per key.</param>
/// <param name="Result">Rhythms, or null when every run failed.</param>
/// <param name="Failure">Why, or null.</param>
public sealed record AcrossCase(IReadOnlyList<AcrossValue> Values, CadenceResult? Result, string? Failure)
{
    /// <summary>All values in a line.</summary>
    public string Label => string.Join(", ", Values.Select(v => v.Label));

    /// <summary>Finishes a search; a set-up whose every run failed keeps the reason.</summary>
    /// <param name="values">One per key.</param>
    /// <param name="search">Finished search.</param>
    /// <param name="torque">What the wrist sustains.</param>
    public static AcrossCase Of(IReadOnlyList<AcrossValue> values, RhythmSearch search, SustainedTorque torque)
    {
        ArgumentNullException.ThrowIfNull(search);
        Outcome<CadenceResult> outcome = search.Finish(torque);
        return new(values, outcome.Result, outcome.Failure?.Reason);
    }
}

/// <summary>Rhythms of many set-ups.</summary>
/// <param name="Title">What they have in common.</param>
/// <param name="Keys">What differs, one or two.</param>
/// <param name="Cases">Set-ups; the last key changes fastest.</param>
public sealed record AcrossResult(string Title, IReadOnlyList<AcrossKey> Keys, IReadOnlyList<AcrossCase> Cases);
