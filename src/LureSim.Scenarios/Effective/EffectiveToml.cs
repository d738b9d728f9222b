using System.Globalization;
using System.Text;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Mapping;
using LureSim.Scenarios.Quantities;
using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios.Effective;

/// <summary>Writes <c>effective.toml</c>: given values and defaults as keys, derived ones as comments, the origin behind each.</summary>
internal static class EffectiveToml
{
    private const int CommentColumn = 44;

    public static string Write(EffectiveScenario scenario)
    {
        var text = new StringBuilder();
        text.Append("# Every value of this run. given: from the scenario; default: a choice; guess: not known well, with its range;\n");
        text.Append("# derived: follows from the others (as a comment). This file reads back to the same run.\n");
        string table = "";
        foreach (EffectiveValue value in scenario.Values)
        {
            if (value.Key.Table != table)
            {
                table = value.Key.Table;
                text.Append("\n[").Append(table).Append("]\n");
            }

            Append(text, value, table);
        }

        AppendRanges(text, scenario.GivenRanges);
        return text.ToString();
    }

    // Exact to the last bit, so that the file reads back to the same bands too.
    private static void AppendRanges(StringBuilder text, IReadOnlyList<RangedKey> ranges)
    {
        text.Append(ranges.Count > 0 ? $"\n[{RangeReader.Name}]\n" : "");
        foreach (RangedKey range in ranges)
        {
            QuantityKind kind = range.Key.Kind;
            text.Append(CultureInfo.InvariantCulture, $"\"{range.Key.Path}\" = \"{Quantity.Format(range.Low, kind)} to {Quantity.Format(range.High, kind)}\"\n");
        }
    }

    private static void Append(StringBuilder text, EffectiveValue value, string table)
    {
        string name = table.Length == 0 ? value.Key.Path : value.Key.Path[(table.Length + 1)..];
        string line = $"{(value.IsLive ? "" : "# ")}{name} = {value.Text}";
        text.Append(line);
        int width = line.Length - (line.LastIndexOf('\n') + 1);
        text.Append(' ', Math.Max(1, CommentColumn - width)).Append("# ").Append(Comment(value)).Append('\n');
    }

    private static string Comment(EffectiveValue value)
    {
        KeySpec key = value.Key;
        string mark = value.Mark switch
        {
            ValueMark.Given => "given",
            ValueMark.Default => "default",
            ValueMark.Derived => "derived",
            _ => $"guess, {RangeText.Of(value.Low, value.High, key.Kind, key.Unit)}",
        };
        bool hasSi = Units.SiName(key.Kind).Length > 0 && !double.IsNaN(value.Si);
        return hasSi ? $"{mark}; {Quantity.Show(value.Si, key.Kind, Units.SiName(key.Kind))}" : mark;
    }
}
