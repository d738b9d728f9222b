using System.Globalization;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Scenarios.Variation;

namespace LureSim.Studies.Maps;

/// <summary>Reads <c>--map KEY,KEY</c>, each with or without a range.</summary>
public static class MapAxes
{
    /// <summary>What a bare <c>--map</c> draws.</summary>
    public const string Default = "retrieve.cadence,retrieve.stroke";

    private static readonly Dictionary<string, string> Ranges = new(StringComparer.Ordinal)
    {
        ["retrieve.stroke"] = "5 cm:30 cm",
        ["retrieve.slack"] = "2 cm:30 cm",
        ["retrieve.distance"] = "5 m:40 m",
        ["angler.rod_bearing"] = "0 deg:120 deg",
        ["angler.rod_elevation"] = "-40 deg:60 deg",
        ["angler.return_share"] = "0:1",
        ["rod.length"] = "6 ft:8 ft 6 in",
    };

    /// <summary>The two axes, or fewer after faults.</summary>
    /// <param name="text">Text as given.</param>
    /// <param name="rhythm">Range of the rhythm, /s.</param>
    /// <param name="scenario">Scenario, for default ranges; null when it has faults.</param>
    /// <param name="faults">Gets every fault.</param>
    public static IReadOnlyList<Axis> Read(string text, (double From, double To) rhythm, Scenario? scenario, List<ScenarioFault> faults)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(faults);
        string[] parts = text.Split(',', StringSplitOptions.TrimEntries);
        if (parts.Length != 2)
        {
            faults.Add(new("--map", "", $"\"{text}\": two keys are due, for example {Default} or retrieve.cadence,retrieve.slack=2 cm:25 cm"));
            return [];
        }

        IReadOnlyList<Axis> axes = AxisReader.ReadAll(parts.Select(p => WithRange(p, rhythm, scenario)), "--map", faults);
        foreach (Axis axis in axes.Where(a => !a.IsRange || !a.IsNumeric))
        {
            faults.Add(new("--map", axis.Name, $"a range is due: {axis.Name}=from:to"));
        }

        return axes;
    }

    /// <summary>The override at a share of an axis.</summary>
    /// <param name="axis">Axis with a range.</param>
    /// <param name="share">0 to 1.</param>
    public static string At(Axis axis, double share)
    {
        ArgumentNullException.ThrowIfNull(axis);
        return $"{axis.Name}={Quantity.Format(axis.LowSi + (share * (axis.HighSi - axis.LowSi)), axis.Kind)}";
    }

    // Without a table entry: half to double of the scenario's own value, inside what is allowed.
    private static string WithRange(string part, (double From, double To) rhythm, Scenario? scenario)
    {
        if (part.Contains('=', StringComparison.Ordinal))
        {
            return part;
        }

        if (part == RetrieveKeys.Cadence.Path)
        {
            return string.Create(CultureInfo.InvariantCulture, $"{part}={rhythm.From} /s:{rhythm.To} /s");
        }

        if (Ranges.TryGetValue(part, out string? range))
        {
            return $"{part}={range}";
        }

        KeySpec? key = ScenarioSchema.Find(part);
        double own = scenario is null || key is null || !key.ReadBy.HasFlag(Activities.Retrieve) ? double.NaN : key.Lens?.Get(scenario) ?? double.NaN;
        return key is null || !(own > 0.0)
            ? part + "="
            : $"{part}={Quantity.Format(Math.Max(0.5 * own, key.Low), key.Kind)}:{Quantity.Format(Math.Min(2.0 * own, key.High), key.Kind)}";
    }
}
