namespace LureSim.Scenarios.Reading;

/// <summary>Collects faults and hands them out in file order.</summary>
internal sealed class FaultList
{
    private readonly Dictionary<string, int> _counts = [];
    private readonly List<(Place Place, string Key, string Message, Activities Concerns)> _faults = [];

    public int Count => _faults.Count;

    /// <summary>Notes a fault; activities that it does not concern can do without what is at fault.</summary>
    public void Add(Place place, string key, string message, Activities concerns = Activities.All)
    {
        _faults.Add((place, key, message, concerns));
        _counts[place.Source.Name] = _counts.GetValueOrDefault(place.Source.Name) + 1;
    }

    /// <summary>True when a file has more faults than are told: what costs time need not be said of further ones.</summary>
    public bool IsLong(Place place) => _counts.GetValueOrDefault(place.Source.Name) > ScenarioFault.MostTold;

    /// <summary>Whether anything stands in the way of an activity.</summary>
    public bool Concern(Activities activities) => _faults.Exists(f => (f.Concerns & activities) != 0);

    /// <summary>The faults that concern some of these activities, and those that concern others only.</summary>
    public (FaultList Theirs, FaultList Others) Split(Activities activities)
    {
        FaultList theirs = new(), others = new();
        foreach (var fault in _faults)
        {
            ((fault.Concerns & activities) != 0 ? theirs : others)._faults.Add(fault);
        }

        return (theirs, others);
    }

    public void AddRange(FaultList other) => _faults.AddRange(other._faults);

    /// <summary>Sorted by place; equal lines once.</summary>
    public IReadOnlyList<ScenarioFault> ToList() => _faults.Count == 0
        ? []
        : [.. _faults.OrderBy(f => f.Place).Select(f => new ScenarioFault(f.Place.ToString(), f.Key, f.Message)).Distinct()];
}
