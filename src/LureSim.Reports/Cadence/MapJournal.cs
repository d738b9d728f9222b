using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using LureSim.Reports.Sweep;
using LureSim.Scenarios.Variation;
using LureSim.Studies.Batches;
using LureSim.Studies.Maps;
using LureSim.Studies.Runs;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Cadence;

/// <summary>
/// The runs of a map as rows of a <see cref="Journal"/>: index (<see cref="MapPlan.IndexOf"/>), and the outcome as JSON, which holds every digit. How many
/// of the possible runs a map needs shows only at its end.
/// </summary>
public static class MapJournal
{
    /// <summary>What stands for a command in the first line.</summary>
    public const string Command = "map";

    private static readonly SweepLayout Layout = new([], [], ["outcome"], [], 1);

    /// <summary>The first line of the journal of a map.</summary>
    /// <param name="effectiveToml">The scenario that it varies, with every default spelled out.</param>
    /// <param name="axes">Its axes.</param>
    /// <param name="plan">How it is drawn.</param>
    public static JournalHeader Header(string effectiveToml, IReadOnlyList<Axis> axes, MapPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        StationaryPlan runs = plan.Runs;
        string drawn = string.Create(
            CultureInfo.InvariantCulture,
            $"{plan.CellsX},{plan.CellsY},{plan.Depth},{plan.OtherDepth},{plan.Starts},{plan.LockShare:R},{runs.WarmUpS:R},{runs.Twitches},{runs.Nodes},{runs.StepS:R}");
        return new(Fingerprint.Of(Command, effectiveToml + "\n" + drawn, axes, null, Layout), Command, plan.RunCount, Shard.Whole, Layout);
    }

    /// <summary>The row of a run.</summary>
    /// <param name="index">Index of the run.</param>
    /// <param name="outcome">What it gave.</param>
    public static string Row(int index, StationaryOutcome outcome) =>
        Layout.Line(index, new([], SweepRow.Done, "", [JsonSerializer.Serialize(outcome, MapJson.Default.StationaryOutcome)], []));

    /// <summary>The outcomes that a journal of a map holds, by index.</summary>
    /// <param name="journal">Journal with the header of this map.</param>
    /// <exception cref="SweepException">A row holds no outcome.</exception>
    public static IReadOnlyDictionary<int, StationaryOutcome> Outcomes(Journal journal)
    {
        ArgumentNullException.ThrowIfNull(journal);
        using FileStream stream = journal.Open();
        var outcomes = new Dictionary<int, StationaryOutcome>();
        foreach (int index in Enumerable.Range(0, journal.Header.Count).Where(journal.Has))
        {
            outcomes[index] = Outcome(journal.Row(stream, index)) ?? throw new SweepException($"'{journal.Path}': run {index} is no outcome of a map of this version");
        }

        return outcomes;
    }

    private static StationaryOutcome? Outcome(string row)
    {
        try
        {
            return JsonSerializer.Deserialize(CsvLine.Split(row)[^1], MapJson.Default.StationaryOutcome);
        }
        catch (JsonException)
        {
            return null;
        }
    }
}

/// <summary>Outcomes as JSON; figures that do not exist are NaN.</summary>
[JsonSourceGenerationOptions(IgnoreReadOnlyProperties = true, NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals, UseStringEnumConverter = true)]
[JsonSerializable(typeof(StationaryOutcome))]
internal sealed partial class MapJson : JsonSerializerContext;
