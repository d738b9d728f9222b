using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Scenarios.Variation;
using LureSim.Studies.Figures;

namespace LureSim.Studies.Across;

/// <summary>Reads <c>--across</c>, the same for every command: a ready-made comparison by name, or an axis as every study takes it.</summary>
/// <param name="command">Command that compares.</param>
/// <param name="scenario">The scenario, or null when it is broken.</param>
/// <param name="faults">Gets every fault.</param>
public sealed class AcrossReader(IFigureSource command, ScenarioResult? scenario, ICollection<ScenarioFault> faults)
{
    private const int MostAxes = 2, MostCases = 200;

    /// <summary>Reads all.</summary>
    /// <param name="texts">Texts as given.</param>
    public IReadOnlyList<AcrossAxis> Read(IReadOnlyList<string> texts)
    {
        ArgumentNullException.ThrowIfNull(texts);
        AcrossAxis[] axes = [.. texts.Select(ReadOne).OfType<AcrossAxis>()];
        int cases = axes.Aggregate(1, (n, a) => Math.Min(n * a.Values.Count, MostCases + 1));
        if (texts.Count > MostAxes)
        {
            faults.Add(new("--across", "", $"given {texts.Count} times; allowed: once or twice"));
        }
        else if (cases > MostCases)
        {
            faults.Add(new("--across", "", $"more than {MostCases} set-ups; use sweep for large grids"));
        }

        return axes;
    }

    private AcrossAxis? ReadOne(string text)
    {
        if (text == RodLadder.Name)
        {
            return Ladder();
        }

        if (ReadyComparison.Find(text) is ReadyComparison ready)
        {
            return ready.Values.Count > 0 ? Words(ready) : FromText(ready.AxisFor(scenario), text);
        }

        if (text.Contains('=', StringComparison.Ordinal))
        {
            return FromText(text, text);
        }

        faults.Add(new("--across", "", $"\"{text}\" is unknown; KEY=list or range, or one of {string.Join(", ", ReadyComparison.Names)}, is due"));
        return null;
    }

    private AcrossAxis Ladder()
    {
        EffectiveScenario? own = scenario?.IsValid == true ? scenario.Effective() : null;
        string? length = own is null ? null : OwnValue.Text(own, RodKeys.Length.Path);
        return new(
            new(RodLadder.Name, "rod length, ft", "ft", true),
            [.. RodLadder.Lengths.Select(l => new AcrossPick(RodLadder.Shown(l), own is null ? [] : RodLadder.Overrides(l, own)))],
            RodLadder.Law)
        {
            Own = length is null ? new(RodLadder.Shown(RodLadder.Lengths[0]), []) : new(RodLadder.Shown(length), RodLadder.Overrides(length, own!)),
        };
    }

    private AcrossAxis? FromText(string axisText, string text)
    {
        if (AxisReader.Read(axisText, "--across", faults) is not Axis axis)
        {
            return null;
        }

        string? unread = scenario?.IsValid == true ? axis.Keys.FirstOrDefault(k => !command.Reads(k, scenario))?.Path : null;
        string? wrong = axis.Values.Count == 0 ? "a range needs a step or a count here"
            : command.Name == "cadence" && axis.Keys.Contains(RetrieveKeys.Cadence) ? "the rhythm is searched anyway; --from and --to set its range"
            : unread is not null ? $"{unread} does not enter {command.Name}"
            : null;
        if (wrong is not null)
        {
            faults.Add(new("--across " + text, axis.Name, wrong));
            return null;
        }

        var across = new AcrossAxis(
            new(axis.Name, axis.Title, axis.Unit, axis.IsNumeric && axis.Kind != QuantityKind.LineNumber),
            [.. axis.Values.Select(v => new AcrossPick(new(v.Label, axis.IsNumeric ? axis.InUnit(v.Si) : double.NaN), v.Overrides))]);
        return scenario?.IsValid == true && OwnValue.Of(axis, scenario.Effective()) is AcrossPick own ? across with { Own = own } : across;
    }

    private static AcrossAxis Words(ReadyComparison ready) => new(
        new(ready.Name, ready.Title, "", false), [.. ready.Values.Select(v => new AcrossPick(new(v.Label, double.NaN), v.Overrides))]);
}
