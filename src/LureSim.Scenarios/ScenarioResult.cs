using LureSim.Model;
using LureSim.Model.Cast;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Mapping;

namespace LureSim.Scenarios;

/// <summary>What reading a scenario gave.</summary>
public sealed class ScenarioResult
{
    private readonly IReadOnlyList<RangedKey> _ranges;

    internal ScenarioResult(
        CastRunSpec? cast,
        ScenarioValues values,
        IReadOnlyList<RangedKey> ranges,
        IReadOnlyList<ScenarioFault> errors,
        IReadOnlyList<ScenarioFault> notes) =>
        (Cast, Values, _ranges, Errors, Notes) = (cast, values, ranges, errors, notes);

    /// <summary>The run, or null when there are errors.</summary>
    public RunSpec? Spec => Cast?.Run;

    /// <summary>The run and its cast, or null when there are errors.</summary>
    public CastRunSpec? Cast { get; }

    /// <summary>Values by key, for mappers of further tables.</summary>
    public ScenarioValues Values { get; }

    /// <summary>All faults, in file order.</summary>
    public IReadOnlyList<ScenarioFault> Errors { get; }

    /// <summary>Accepted, but worth a word.</summary>
    public IReadOnlyList<ScenarioFault> Notes { get; }

    /// <summary>True when there is a run.</summary>
    public bool IsValid => Spec is not null;

    /// <summary>Every value with its origin. Made anew at each call.</summary>
    /// <exception cref="InvalidOperationException">There are errors.</exception>
    public EffectiveScenario Effective() => new(
        Cast ?? throw new InvalidOperationException("A scenario with errors has no effective values."), Values, _ranges);
}
