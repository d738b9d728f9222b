using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios.Variation;

/// <summary>
/// Reads what a study varies. <c>KEY=a,b,c</c> is a list, each item as <c>--set</c> takes it; <c>KEY=from:to:step</c> a range with
/// a step; <c>KEY=from:to:count</c> a range with a number of values (of keys without units: <c>from:to:n=count</c>);
/// <c>KEY=from:to</c> a range to sample from; <c>KEY1+KEY2=a+b,c+d</c> keys that change together.
/// </summary>
public static class AxisReader
{
    private const string Grammar =
        "KEY=a,b,c or KEY=from:to:step or KEY=from:to:count is due, for example retrieve.cadence=\"1 /s:3 /s:0.25 /s\"";

    /// <summary>Reads all; the same key must not come twice.</summary>
    /// <param name="texts">Texts as given.</param>
    /// <param name="option">Name of the option, for messages.</param>
    /// <param name="faults">Gets every fault.</param>
    /// <returns>The axes that could be read.</returns>
    public static IReadOnlyList<Axis> ReadAll(IEnumerable<string> texts, string option, ICollection<ScenarioFault> faults)
    {
        ArgumentNullException.ThrowIfNull(texts);
        ArgumentNullException.ThrowIfNull(faults);
        var axes = new List<Axis>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (string text in texts)
        {
            if (Read(text, option, faults) is not Axis axis)
            {
                continue;
            }

            axes.Add(axis);
            foreach (string path in axis.Name.Split('+'))
            {
                if (!seen.Add(path))
                {
                    faults.Add(new($"{option} {text}", path, "varied twice"));
                }
            }
        }

        return axes;
    }

    /// <summary>Reads one.</summary>
    /// <param name="text">Text as given.</param>
    /// <param name="option">Name of the option, for messages.</param>
    /// <param name="faults">Gets every fault.</param>
    /// <returns>The axis, or null after a fault.</returns>
    public static Axis? Read(string text, string option, ICollection<ScenarioFault> faults)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(faults);
        string place = $"{option} {text}";
        int equals = text.IndexOf('=', StringComparison.Ordinal);
        if (equals < 1 || equals == text.Length - 1)
        {
            faults.Add(new(place, "", Grammar));
            return null;
        }

        string name = text[..equals].Trim();
        var keys = new List<KeySpec>();
        foreach (string path in name.Split('+'))
        {
            if (FindKey(path, place, faults) is KeySpec key)
            {
                keys.Add(key);
            }
        }

        int before = faults.Count;
        Axis? axis = keys.Count < name.Split('+').Length ? null
            : keys.Count > 1 ? LinkedAxis.Read(keys, name, text[(equals + 1)..], Fault)
            : OfOneKey(keys[0], name, text[(equals + 1)..].Trim(), Fault);
        return faults.Count == before ? axis : null;

        void Fault(string message) => faults.Add(new(place, name, message));
    }

    private static Axis? OfOneKey(KeySpec key, string name, string text, Action<string> fault)
    {
        List<string> items = AxisText.Split(text, ',');
        List<string> fields = AxisText.Split(text, ':');
        bool oneValue = key.Kind is QuantityKind.List or QuantityKind.Text || (items.Count == 1 && ValueReader.ReadText(key, text).Error is null);
        return items.Count == 1 && !oneValue && fields.Count is 2 or 3
            ? RangeAxis.Read(key, name, fields, fault)
            : List(key, name, items, fault);
    }

    private static Axis? List(KeySpec key, string name, List<string> items, Action<string> fault)
    {
        var values = new List<AxisValue>();
        QuantityKind? kind = null;
        foreach (string item in items)
        {
            string plain = AxisText.Unquote(item);
            if (plain.Length == 0)
            {
                fault($"an item of the list is empty; {Grammar}");
                continue;
            }

            QuantityValue value = key.Kind == QuantityKind.List ? QuantityValue.None : ValueReader.ReadText(key, plain);
            if (value.Error is not null)
            {
                fault(value.Error);
            }

            bool number = value.Kind is not (QuantityKind.Choice or QuantityKind.Flag or QuantityKind.Text);
            kind = kind is null || kind == value.Kind ? value.Kind : QuantityKind.Text;
            values.Add(new(plain, number ? value.Si : double.NaN, [$"{name}={plain}"]));
        }

        return new([key], name, kind ?? QuantityKind.Text, values);
    }

    private static KeySpec? FindKey(string path, string place, ICollection<ScenarioFault> faults)
    {
        if (ItemPath.TrySplit(path, out KeySpec? list, out _, out string column))
        {
            KeySpec? item = EntryReader.Column(list!, column);
            if (item is null)
            {
                faults.Add(new(place, path, EntryReader.UnknownColumn(list!, column)));
            }

            return item;
        }

        if (ScenarioSchema.Find(path) is KeySpec key)
        {
            return key;
        }

        faults.Add(new(place, path, KeyHint.Unknown(path)));
        return null;
    }
}
