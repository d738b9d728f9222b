using LureSim.Scenarios;
using LureSim.Scenarios.Effective;

namespace LureSim.Studies.Page;

/// <summary>One scenario of a page: the file with the overrides of the command.</summary>
public sealed class PageFile
{
    private readonly IReadOnlyList<string> _overrides;

    /// <summary>Reads it.</summary>
    /// <param name="path">Path as given.</param>
    /// <param name="overrides">Texts <c>key=value</c>.</param>
    public PageFile(string path, IReadOnlyList<string> overrides)
    {
        ArgumentNullException.ThrowIfNull(overrides);
        _overrides = overrides;
        Source = ScenarioSource.Load(path, Activities.Retrieve);
        Here = Source.Resolve(overrides);
        Own = Here.IsValid ? Here.Effective() : null;
    }

    /// <summary>The file.</summary>
    public ScenarioSource Source { get; }

    /// <summary>What was read; it may have errors.</summary>
    public ScenarioResult Here { get; }

    /// <summary>Its values with their origin; null where there are errors.</summary>
    public EffectiveScenario? Own { get; }

    /// <summary>Overrides of the command.</summary>
    public IReadOnlyList<string> Overrides => _overrides;

    /// <summary>The scenario with more overrides after those of the command.</summary>
    /// <param name="more">Texts <c>key=value</c>.</param>
    public ScenarioResult With(IReadOnlyList<string> more) => Source.Resolve([.. _overrides, .. more]);
}
