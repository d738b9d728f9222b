using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Variation;

/// <summary>Keys that change together: <c>line.material+line.film=braid+dry,fluorocarbon+wetted</c>.</summary>
internal static class LinkedAxis
{
    /// <summary>Reads the list of sets of values.</summary>
    public static Axis? Read(IReadOnlyList<KeySpec> keys, string name, string text, Action<string> fault)
    {
        string[] paths = name.Split('+');
        var values = new List<AxisValue>();
        foreach (string item in AxisText.Split(text, ','))
        {
            List<string> parts = AxisText.Split(item, '+');
            if (parts.Count != keys.Count)
            {
                fault($"\"{item}\" has {parts.Count} of {keys.Count} linked values; they are joined by +, for example a+b,c+d");
                continue;
            }

            var overrides = new List<string>();
            for (int k = 0; k < parts.Count; k++)
            {
                string plain = AxisText.Unquote(parts[k]);
                if (keys[k].Kind != QuantityKind.List && ValueReader.ReadText(keys[k], plain).Error is string error)
                {
                    fault($"{paths[k]}: {error}");
                }

                overrides.Add($"{paths[k]}={plain}");
            }

            values.Add(new(string.Join(" + ", parts), double.NaN, overrides));
        }

        return new(keys, name, QuantityKind.Text, values);
    }
}
