using System.Text;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>The table of all keys as Markdown, for <c>docs/scenario-files.md</c>.</summary>
public static class SchemaDocument
{
    /// <summary>One section per table, one row per key.</summary>
    public static string Markdown()
    {
        var text = new StringBuilder();
        Section(text, "Top level", "", ScenarioSchema.Keys.Where(k => k.Table.Length == 0));
        foreach (string table in ScenarioSchema.Tables)
        {
            Section(text, $"`[{table}]`", $"{table}.", ScenarioSchema.Keys.Where(k => k.Table == table));
            foreach (KeySpec list in ScenarioSchema.Keys.Where(k => k.Table == table && k.Items.Count > 0))
            {
                Section(text, $"Items of `{list.Path}`", "", list.Items);
            }
        }

        return text.ToString();
    }

    private static void Section(StringBuilder text, string title, string prefix, IEnumerable<KeySpec> keys)
    {
        text.Append("\n### ").Append(title).Append("\n\n| key | meaning | allowed | default | guess range |\n|---|---|---|---|---|\n");
        foreach (KeySpec key in keys)
        {
            string name = prefix.Length == 0 ? key.Path : key.Path[prefix.Length..];
            text.Append("| `").Append(prefix.Length == 0 && key.Table.Length > 0 ? key.Name : name).Append("` | ").Append(key.Meaning).Append(" | ")
                .Append(Allowed(key)).Append(" | ").Append(Default(key)).Append(" | ").Append(Guess(key)).Append(" |\n");
        }
    }

    private static string Allowed(KeySpec key)
    {
        string words = string.Join(", ", key.Choices.Select(c => double.IsNaN(c.Low) ? $"`{c.Name}`" : $"`{c.Name}` ({ChoiceText(key, c)})"));
        string range = key.Kind switch
        {
            QuantityKind.Choice => "",
            QuantityKind.Flag => "`true`, `false`",
            QuantityKind.Text => "text",
            QuantityKind.List => "list",
            _ => RangeText.Of(key),
        };
        string other = key.OtherKind is null ? "" : $", or {RangeText.Of(key, other: true)}";
        return words.Length > 0 && range.Length > 0 ? $"{range}{other}; {words}" : $"{words}{range}{other}";
    }

    private static string ChoiceText(KeySpec key, Choice choice)
    {
        KeySpec given = key.Gives ?? key;
        return $"{Quantity.Show(choice.Value, given.Kind, given.Unit)}, {RangeText.Of(choice.Low, choice.High, given.Kind, given.Unit)}";
    }

    private static string Default(KeySpec key) => key.Default is null ? key.Required ? "required" : "" : $"`{key.Default}`";

    private static string Guess(KeySpec key) => key.IsGuess ? RangeText.Of(key.GuessLow, key.GuessHigh, key.Kind, key.Unit) : "";
}
