using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Scenarios.Variation;
using LureSim.Studies.Cadence;

namespace LureSim.Cli.Commands;

/// <summary>One <c>--across</c>: what differs, and the overrides that set each value.</summary>
/// <param name="Key">What differs.</param>
/// <param name="Values">Value as shown, and overrides.</param>
public sealed record AcrossAxis(AcrossKey Key, IReadOnlyList<(AcrossValue Shown, IReadOnlyList<string> Overrides)> Values);

/// <summary>Reads <c>--across</c>: a ready-made comparison by name, or an axis as every study takes it.</summary>
public static class AcrossAxes
{
    private const int MostAxes = 2, MostCases = 200;

    /// <summary>Reads all.</summary>
    /// <param name="texts">Texts as given.</param>
    /// <param name="faults">Gets every fault.</param>
    public static IReadOnlyList<AcrossAxis> Read(IReadOnlyList<string> texts, List<ScenarioFault> faults)
    {
        ArgumentNullException.ThrowIfNull(texts);
        ArgumentNullException.ThrowIfNull(faults);
        var axes = new List<AcrossAxis>();
        foreach (string text in texts)
        {
            if (ReadOne(text, faults) is AcrossAxis axis)
            {
                axes.Add(axis);
            }
        }

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

    /// <summary>Every combination; the last axis changes fastest.</summary>
    /// <param name="axes">Axes.</param>
    public static IEnumerable<(IReadOnlyList<AcrossValue> Values, IReadOnlyList<string> Overrides)> Combine(IReadOnlyList<AcrossAxis> axes)
    {
        IEnumerable<(IReadOnlyList<AcrossValue> Values, IReadOnlyList<string> Overrides)> all = [([], [])];
        foreach (AcrossAxis axis in axes)
        {
            all = all.SelectMany(a => axis.Values.Select(v => ((IReadOnlyList<AcrossValue>)[.. a.Values, v.Shown], (IReadOnlyList<string>)[.. a.Overrides, .. v.Overrides])));
        }

        return all;
    }

    private static AcrossAxis? ReadOne(string text, List<ScenarioFault> faults)
    {
        if (text.Contains('=', StringComparison.Ordinal))
        {
            return AxisReader.Read(text, "--across", faults) is Axis axis ? FromAxis(axis, text, faults) : null;
        }

        if (ReadyComparison.Find(text) is ReadyComparison ready)
        {
            return ready.Axis is string axisText ? FromAxis(AxisReader.Read(axisText, "--across", faults)!, text, faults) : Words(ready);
        }

        faults.Add(new("--across", "", $"\"{text}\" is unknown; KEY=list or range, or one of {string.Join(", ", ReadyComparison.All.Select(r => r.Name))}, is due"));
        return null;
    }

    private static AcrossAxis? FromAxis(Axis axis, string text, List<ScenarioFault> faults)
    {
        string? wrong = axis.Values.Count == 0 ? "a range needs a step or a count here"
            : axis.Keys.Contains(RetrieveKeys.Cadence) ? "the rhythm is searched anyway; --from and --to set its range"
            : null;
        if (wrong is not null)
        {
            faults.Add(new("--across " + text, axis.Name, wrong));
            return null;
        }

        return new(
            new(axis.Name, axis.Title, axis.Unit, axis.IsNumeric && axis.Kind != QuantityKind.LineNumber),
            [.. axis.Values.Select(v => (new AcrossValue(v.Label, axis.IsNumeric ? axis.InUnit(v.Si) : double.NaN), v.Overrides))]);
    }

    private static AcrossAxis Words(ReadyComparison ready) => new(
        new(ready.Name, ready.Title, "", false), [.. ready.Values.Select(v => (new AcrossValue(v.Label, double.NaN), v.Overrides))]);
}
