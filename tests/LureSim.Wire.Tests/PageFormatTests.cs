using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.Json.Nodes;
using LureSim.Model;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Validation.Invariants;

namespace LureSim.Wire.Tests;

/// <summary>The tables of docs/page-format.md are what the code writes. LURESIM_WRITE_DOCS=1 rewrites them.</summary>
public sealed class PageFormatTests
{
    [Fact]
    public void The_document_is_up_to_date()
    {
        string path = Path.Combine(Path.GetDirectoryName(Here())!, "../../docs/page-format.md"), text = File.ReadAllText(path);
        string now = Put(Put(text, "places", Places()), "channels", Channels());
        if (Environment.GetEnvironmentVariable("LURESIM_WRITE_DOCS") == "1")
        {
            File.WriteAllText(path, now);
        }

        Assert.Equal(now, File.ReadAllText(path));
    }

    [Fact]
    public void Every_number_of_a_run_has_its_range() =>
        Assert.All(Rows().Where(r => r.Kind == "number"), r => Assert.True(r.Range.Length > 0, r.Place));

    private static string Places() => string.Concat(
        Rows().Select(r => $"| `{r.Place}` | {r.Kind} | {r.Unit} | {r.Range} |\n").Prepend("| place | kind | unit | allowed |\n|---|---|---|---|\n"));

    private static string Channels()
    {
        Scenario s = Shipped.Read(Shipped.Default, "retrieve.duration=0.5 s");
        IReadOnlyList<Channel> series = s.Run().Series.Channels;
        return string.Concat(Film.Sources.Select(t => $"| `{t.Name}` | {Unit(t.Channel, series)} | {series.Single(c => c.Name == t.Channel).Meaning} |\n")
            .Prepend("| channel | unit | what it is |\n|---|---|---|\n"));
    }

    private static string Unit(string channel, IReadOnlyList<Channel> series) => series.Single(c => c.Name == channel).Unit is var unit && unit == "deg" ? "rad" : unit;

    private static List<(string Place, string Kind, string Unit, string Range)> Rows()
    {
        Scenario s = Shipped.Read(Shipped.Default);
        var rows = new List<(string, string, string, string)>();
        Walk("", JsonNode.Parse(RunJson.Write(s.Setup, s.Retrieve!))!.AsObject(), typeof(RunInput), rows);
        return rows;
    }

    private static void Walk(string place, JsonObject at, Type type, List<(string, string, string, string)> rows)
    {
        foreach ((string name, JsonNode? value) in at)
        {
            PropertyInfo member = type.GetProperties().Single(p => string.Equals(p.Name, name, StringComparison.OrdinalIgnoreCase));
            string here = $"{place}/{name}";
            if (value is JsonObject inner)
            {
                Walk(here, inner, member.PropertyType, rows);
            }
            else if (value is JsonArray { Count: > 0 } list && list[0] is JsonObject item)
            {
                Walk($"{here}/0", item, member.PropertyType.GetGenericArguments()[0], rows);
            }
            else
            {
                rows.Add(Row(here, member));
            }
        }
    }

    private static (string Place, string Kind, string Unit, string Range) Row(string place, PropertyInfo member)
    {
        Type type = Nullable.GetUnderlyingType(member.PropertyType) ?? member.PropertyType;
        ParameterAttribute? p = member.GetCustomAttribute<ParameterAttribute>();
        string kind = type.IsEnum ? "word" : type == typeof(bool) ? "true or false" : p is not null ? "number" : type == typeof(string) || type == typeof(ulong) ? "text" : "list or null";
        string range = type.IsEnum ? string.Join(", ", Enum.GetNames(type)) : p is null ? "" : $"{Text(p.Low)} to {Text(p.High)}";
        return (place, kind, p?.Unit ?? "", range);
    }

    private static string Text(double value) => value.ToString("G6", CultureInfo.InvariantCulture);

    private static string Put(string text, string mark, string table)
    {
        string open = $"<!-- {mark} -->\n", close = $"<!-- /{mark} -->";
        int from = text.IndexOf(open, StringComparison.Ordinal) + open.Length, to = text.IndexOf(close, StringComparison.Ordinal);
        return text[..from] + table + text[to..];
    }

    private static string Here([CallerFilePath] string here = "") => here;
}
