using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Measured;

/// <summary>A measured cast as a person wrote it.</summary>
/// <param name="Label">Lure or number of the cast.</param>
/// <param name="DistanceM">Distance, m.</param>
/// <param name="Overrides">What differs from the scenario.</param>
/// <param name="Place">Where it stands.</param>
public sealed record MeasuredCastText(string Label, double DistanceM, IReadOnlyList<string> Overrides, string Place)
{
    /// <summary>The cast, or null after its faults were added.</summary>
    /// <param name="source">Scenario.</param>
    /// <param name="overrides">Overrides of the command line.</param>
    /// <param name="more">Further overrides.</param>
    /// <param name="faults">Gets every fault.</param>
    public Scenario? Resolve(ScenarioSource source, IReadOnlyList<string> overrides, IReadOnlyList<string> more, List<ScenarioFault> faults)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(faults);
        ScenarioResult result = source.Resolve([.. overrides, .. Overrides, .. more]);
        faults.AddRange(result.Errors.Select(e => e.Place.StartsWith("--set ", StringComparison.Ordinal) ? e with { Place = Place } : e));
        return result.Scenario;
    }
}

/// <summary>
/// Reads <c>--match</c>: a distance, or a small CSV of casts. Its columns: <c>distance</c> (with unit), <c>lure</c> (a parts file beside
/// the CSV, or just a name), and any key of a scenario; an empty or missing cell leaves the scenario's own value.
/// </summary>
public static class MeasuredCasts
{
    private const string Distance = "distance", Lure = "lure";
    private const double Longest = 500.0;

    /// <summary>Reads the option.</summary>
    /// <param name="text">As given.</param>
    /// <param name="faults">Gets every fault.</param>
    public static IReadOnlyList<MeasuredCastText> Read(string text, List<ScenarioFault> faults)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(faults);
        QuantityValue value = Quantity.Read(text, QuantityKind.Length);
        if (value.Error is null)
        {
            return Far("--match", "", value, faults) ? [new("measured", value.Si, [], "--match")] : [];
        }

        if (!File.Exists(text) && !text.EndsWith(".csv", StringComparison.OrdinalIgnoreCase))
        {
            faults.Add(new("--match", "", $"{value.Error}; or the name of a CSV file of measured casts"));
            return [];
        }

        try
        {
            return ReadLines(text, File.ReadAllLines(text), faults);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            faults.Add(new("--match", "", $"\"{text}\": {(File.Exists(text) ? "the file cannot be read" : "there is no such file")}"));
            return [];
        }
    }

    private static List<MeasuredCastText> ReadLines(string file, string[] lines, List<ScenarioFault> faults)
    {
        var casts = new List<MeasuredCastText>();
        string[]? header = null;
        for (int i = 0; i < lines.Length; i++)
        {
            if (lines[i].Trim() is not { Length: > 0 } line || line[0] == '#')
            {
                continue;
            }

            string[] cells = [.. line.Split(',').Select(c => c.Trim())];
            if (header is null)
            {
                header = cells;
                if (!Known(file, i + 1, header, faults))
                {
                    return [];
                }
            }
            else if (Row(file, i + 1, header, cells, faults) is MeasuredCastText cast)
            {
                casts.Add(cast);
            }
        }

        if (casts.Count == 0 && faults.Count == 0)
        {
            faults.Add(new(file, "", "it holds no cast; a header with the column distance and a line per cast are due"));
        }

        return casts;
    }

    private static bool Known(string file, int line, string[] header, List<ScenarioFault> faults)
    {
        int before = faults.Count;
        foreach (string name in header.Where(h => h is not (Distance or Lure) && ScenarioSchema.Find(h) is null))
        {
            faults.Add(new($"{file}({line})", "", $"column \"{name}\" is unknown; {Distance}, {Lure} or a key such as lure.mass is due"));
        }

        foreach (string name in header.GroupBy(h => h).Where(g => g.Count() > 1).Select(g => g.Key))
        {
            faults.Add(new($"{file}({line})", "", $"column \"{name}\" stands there twice"));
        }

        if (!header.Contains(Distance))
        {
            faults.Add(new($"{file}({line})", "", $"the column {Distance} is missing"));
        }

        return faults.Count == before;
    }

    private static MeasuredCastText? Row(string file, int line, string[] header, string[] cells, List<ScenarioFault> faults)
    {
        string place = $"{file}({line})";
        if (cells.Length > header.Length)
        {
            faults.Add(new(place, "", $"{cells.Length} cells in a row; the header has {header.Length} (the decimal mark is a point)"));
            return null;
        }

        string Cell(string column) => Array.IndexOf(header, column) is int at and >= 0 && at < cells.Length ? cells[at] : "";
        QuantityValue distance = Quantity.Read(Cell(Distance), QuantityKind.Length);
        if (distance.Error is not null)
        {
            faults.Add(new(place, Distance, distance.Error));
            return null;
        }

        if (!Far(place, Distance, distance, faults))
        {
            return null;
        }

        string lure = Cell(Lure), part = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(file))!, lure);
        var overrides = new List<string>();
        if (lure.EndsWith(".toml", StringComparison.OrdinalIgnoreCase))
        {
            overrides.Add($"lure={part}");
        }

        overrides.AddRange(header.Where(h => h is not (Distance or Lure) && Cell(h).Length > 0).Select(h => $"{h}={Cell(h)}"));
        return new(lure.Length > 0 ? lure : $"line {line}", distance.Si, overrides, place);
    }

    private static bool Far(string place, string key, QuantityValue value, List<ScenarioFault> faults)
    {
        if (value.Si is > 0.0 and <= Longest)
        {
            return true;
        }

        faults.Add(new(place, key, FormattableString.Invariant($"{value.Si} m; more than 0 and at most {Longest} m are allowed")));
        return false;
    }
}
