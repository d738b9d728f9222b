using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Scenarios.Variation;

namespace LureSim.Studies.Across;

/// <summary>Reads <c>--against</c>: the value that the others are compared with, one for each <c>--across</c>, in the same order.</summary>
/// <param name="faults">Gets every fault.</param>
public sealed class AgainstReader(ICollection<ScenarioFault> faults)
{
    private const string Option = "--against";

    /// <summary>Reads all; null without any, or after faults.</summary>
    /// <param name="texts">Texts as given.</param>
    /// <param name="axes">What differs.</param>
    public IReadOnlyList<AcrossPick>? Read(IReadOnlyList<string> texts, IReadOnlyList<AcrossAxis> axes)
    {
        ArgumentNullException.ThrowIfNull(texts);
        ArgumentNullException.ThrowIfNull(axes);
        if (texts.Count == 0 || axes.Count == 0)
        {
            return null;
        }

        if (texts.Count != axes.Count)
        {
            faults.Add(new(Option, "", $"given {texts.Count} times, --across {axes.Count} times; allowed: one value for each --across, in the same order"));
            return null;
        }

        AcrossPick[] picks = [.. texts.Select((text, i) => ReadOne(text, axes[i])).OfType<AcrossPick>()];
        return picks.Length == axes.Count ? picks : null;
    }

    private AcrossPick? ReadOne(string text, AcrossAxis axis) =>
        axis.Values.FirstOrDefault(v => v.Shown.Label == text)
        ?? (axis.IsLadder ? Length(text, axis) : ReadyComparison.Find(axis.Key.Name) is null ? OfKey(text, axis) : NotListed(text, axis));

    private AcrossPick? Length(string text, AcrossAxis axis)
    {
        if (Quantity.Read(text, QuantityKind.Length).Error is string error)
        {
            faults.Add(new($"{Option} {text}", RodKeys.Length.Path, error));
            return null;
        }

        return Listed(axis, new(RodLadder.Shown(text), []));
    }

    private AcrossPick? OfKey(string text, AcrossAxis axis)
    {
        if (AxisReader.Read($"{axis.Key.Name}={text}", Option, faults) is not Axis read)
        {
            return null;
        }

        if (read.Values.Count != 1)
        {
            faults.Add(new($"{Option} {text}", axis.Key.Name, "one value is due, no list and no range"));
            return null;
        }

        AxisValue value = read.Values[0];
        double number = axis.Key.Unit == read.Unit && read.IsNumeric ? read.InUnit(value.Si) : double.NaN;
        return Listed(axis, new(new(value.Label, number), value.Overrides));
    }

    private AcrossPick? NotListed(string text, AcrossAxis axis)
    {
        faults.Add(new($"{Option} {text}", axis.Key.Name, $"unknown; allowed: {string.Join("; ", axis.Values.Select(v => v.Shown.Label))}"));
        return null;
    }

    // The one of the list with the same number or the same words, else the new one.
    private static AcrossPick Listed(AcrossAxis axis, AcrossPick pick) =>
        axis.Values.FirstOrDefault(v => v.Shown.Label == pick.Shown.Label || OwnValue.Same(v.Shown.Number, pick.Shown.Number)) ?? pick;
}
