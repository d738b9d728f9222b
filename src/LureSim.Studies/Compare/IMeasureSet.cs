using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Across;

namespace LureSim.Studies.Compare;

/// <summary>A set-up that is compared.</summary>
/// <param name="Label">As people read it.</param>
/// <param name="SetUp">Valid set-up.</param>
public sealed record CompareSetUp(string Label, DrawnSetUp SetUp);

/// <summary>What one capability has to say about set-ups. A new capability is a class with this, a line in <see cref="MeasureSets"/>, and the words of its
/// measures in Reports.</summary>
public interface IMeasureSet
{
    /// <summary>Its rows.</summary>
    public IReadOnlyList<CompareMeasure> Measures { get; }

    /// <summary>Work for one set-up, in seconds of one core for three set-ups; only progress depends on it.</summary>
    public double Work { get; }

    /// <summary>Whether a key enters any of its rows.</summary>
    /// <param name="key">Key.</param>
    /// <param name="scenario">Valid scenario.</param>
    public bool Reads(KeySpec key, ScenarioResult scenario);

    /// <summary>Measures every set-up. A pure function of each: no set-up sees another.</summary>
    /// <param name="setUps">Set-ups, valid.</param>
    /// <param name="plan">How many draws, how fine.</param>
    /// <param name="progress">Gets the share done, from several threads; may be null.</param>
    /// <param name="stop">Stops.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public Measured Run(IReadOnlyList<CompareSetUp> setUps, ComparePlan plan, Action<double>? progress, CancellationToken stop);
}

/// <summary>Every set of measures, in the order of the table.</summary>
public static class MeasureSets
{
    /// <summary>All.</summary>
    public static IReadOnlyList<IMeasureSet> All { get; } = [new CastMeasures(), new RodMeasures(), new RetrieveMeasures()];

    /// <summary>Rows of all sets, in the order of the table.</summary>
    public static IReadOnlyList<CompareMeasure> Measures { get; } = [.. All.SelectMany(s => s.Measures)];
}
