namespace LureSim.Scenarios.Reading;

/// <summary>Collects faults and hands them out in file order.</summary>
internal sealed class FaultList
{
    private readonly List<(Place Place, string Key, string Message)> _faults = [];

    public int Count => _faults.Count;

    public void Add(Place place, string key, string message) => _faults.Add((place, key, message));

    public void AddRange(FaultList other) => _faults.AddRange(other._faults);

    /// <summary>Sorted by place; equal lines once.</summary>
    public IReadOnlyList<ScenarioFault> ToList() => _faults.Count == 0
        ? []
        : [.. _faults.OrderBy(f => f.Place).Select(f => new ScenarioFault(f.Place.ToString(), f.Key, f.Message)).Distinct()];
}
