using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Crawl;
using LureSim.Model.Pool;
using LureSim.Model.Retrieve;
using LureSim.Model.Strike;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Mapping;

namespace LureSim.Scenarios;

/// <summary>What reading a scenario gave.</summary>
public sealed class ScenarioResult
{
    private readonly IReadOnlyList<RangedKey> _ranges;
    private readonly int _givenRanges;

    internal ScenarioResult(
        Scenario? scenario,
        ScenarioValues values,
        IReadOnlyList<RangedKey> ranges,
        int givenRanges,
        IReadOnlyList<ScenarioFault> errors,
        IReadOnlyList<ScenarioFault> notes) =>
        (Scenario, Values, _ranges, _givenRanges, Errors, Notes) = (scenario, values, ranges, givenRanges, errors, notes);

    /// <summary>What was read, or null when there are errors.</summary>
    public Scenario? Scenario { get; }

    /// <summary>The set-up, or null when there are errors.</summary>
    public Setup? Setup => Scenario?.Setup;

    /// <summary>The retrieve, or null when there are errors.</summary>
    public RetrieveTask? Retrieve => Scenario?.Retrieve;

    /// <summary>The cast, or null when there are errors.</summary>
    public CastTask? Cast => Scenario?.Cast;

    /// <summary>What is done in a pool, or null when there are errors.</summary>
    public PoolTask? Pool => Scenario?.Pool;

    /// <summary>The strike, or null when there are errors.</summary>
    public StrikeTask? Strike => Scenario?.Strike;

    /// <summary>The crawl, or null when there are errors.</summary>
    public CrawlTask? Crawl => Scenario?.Crawl;

    /// <summary>Values by key, for mappers of further tables.</summary>
    public ScenarioValues Values { get; }

    /// <summary>The units that the file is written in, whatever overrides use.</summary>
    public UnitFamily Units { get; internal init; }

    /// <summary>All faults, in file order.</summary>
    public IReadOnlyList<ScenarioFault> Errors { get; }

    /// <summary>Accepted, but worth a word.</summary>
    public IReadOnlyList<ScenarioFault> Notes { get; }

    /// <summary>True when what was asked for can be done.</summary>
    public bool IsValid => Scenario is not null;

    /// <summary>Every value with its origin. Made anew at each call.</summary>
    /// <exception cref="InvalidOperationException">There are errors.</exception>
    public EffectiveScenario Effective() => new(
        Scenario ?? throw new InvalidOperationException("A scenario with errors has no effective values."), Values, _ranges, _givenRanges);
}
