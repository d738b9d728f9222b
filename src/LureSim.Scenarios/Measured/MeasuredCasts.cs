using System.Globalization;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios.Measured;

/// <summary>A measured cast as a person wrote it.</summary>
/// <param name="Label">Lure or number of the cast.</param>
/// <param name="DistanceM">Distance, m.</param>
/// <param name="MeanOf">Number of casts of which it is the mean, 1 to 10,000; null for one cast, about which nothing more was said.</param>
/// <param name="Overrides">What differs from the scenario.</param>
/// <param name="Place">Where it stands.</param>
public sealed record MeasuredCastText(string Label, double DistanceM, int? MeanOf, IReadOnlyList<string> Overrides, string Place)
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
/// Reads <c>--match</c>: a distance, with <c>mean of 12</c> where it is the mean of so many casts, or a small CSV of casts. Its columns:
/// <c>distance</c> (with unit), <c>casts</c> (of how many it is the mean), <c>lure</c> (a parts file beside the CSV, or just a name), and any
/// key of a scenario; an empty or missing cell leaves the scenario's own value.
/// </summary>
public static class MeasuredCasts
{
    private const string Distance = "distance", Casts = "casts", Lure = "lure", MeanOf = "mean of";
    private const double Longest = 500.0;
    private const int MostCasts = 10_000;

    /// <summary>Reads the option.</summary>
    /// <param name="text">As given.</param>
    /// <param name="faults">Gets every fault.</param>
    public static IReadOnlyList<MeasuredCastText> Read(string text, List<ScenarioFault> faults)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(faults);
        int mean = text.IndexOf(MeanOf, StringComparison.Ordinal);
        QuantityValue value = Quantity.Read(mean < 0 ? text : text[..mean].TrimEnd(), QuantityKind.Length);
        if (value.Error is null)
        {
            int? casts = null;
            return Far("--match", "", value, faults) && (mean < 0 || Count("--match", "", text[(mean + MeanOf.Length)..], faults, out casts))
                ? [new("measured", value.Si, casts, [], "--match")]
                : [];
        }

        if (!Path.Exists(text) && !text.EndsWith(".csv", StringComparison.OrdinalIgnoreCase))
        {
            faults.Add(new("--match", "", $"{value.Error}; or such a mean: \"31 m mean of 12\"; or the name of a CSV file of measured casts"));
            return [];
        }

        if (FileText.TryRead(text, out string lines) is string failure)
        {
            faults.Add(new("--match", "", $"\"{text}\": {failure}"));
            return [];
        }

        return ReadLines(text, lines.ReplaceLineEndings("\n").Split('\n'), faults);
    }

    private static List<MeasuredCastText> ReadLines(string file, string[] lines, List<ScenarioFault> faults)
    {
        var casts = new List<MeasuredCastText>();
        string[]? header = null;
        char mark = CsvCells.MarkOf(lines);
        for (int i = 0; i < lines.Length; i++)
        {
            if (lines[i].Trim() is not { Length: > 0 } line || line[0] == '#')
            {
                continue;
            }

            string[] cells = CsvCells.Split(line, mark);
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
        foreach (string name in header.Where(h => h is not (Distance or Casts or Lure) && ScenarioSchema.Find(h) is null))
        {
            faults.Add(new($"{file}({line})", "", $"column \"{name}\" is unknown; {Distance}, {Casts}, {Lure} or a key such as lure.mass is due"));
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

        int? casts = null;
        if (!Far(place, Distance, distance, faults) || (Cell(Casts).Length > 0 && !Count(place, Casts, Cell(Casts), faults, out casts)))
        {
            return null;
        }

        string lure = Cell(Lure);
        if (PlainText.Fault(lure) is string wrong)
        {
            faults.Add(new(place, Lure, wrong));
            return null;
        }

        string part = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(file))!, lure);
        var overrides = new List<string>();
        if (lure.EndsWith(".toml", StringComparison.OrdinalIgnoreCase))
        {
            overrides.Add($"lure={part}");
        }

        overrides.AddRange(header.Where(h => h is not (Distance or Casts or Lure) && Cell(h).Length > 0).Select(h => $"{h}={Cell(h)}"));
        return new(lure.Length > 0 ? lure : $"line {line}", distance.Si, casts, overrides, place);
    }

    private static bool Count(string place, string key, string text, List<ScenarioFault> faults, out int? casts)
    {
        bool read = int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count is >= 1 and <= MostCasts;
        casts = read ? count : null;
        if (!read)
        {
            faults.Add(new(place, key, $"\"{text.Trim()}\" is no number of casts of a mean; a whole number from 1 to {MostCasts} is due"));
        }

        return read;
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
