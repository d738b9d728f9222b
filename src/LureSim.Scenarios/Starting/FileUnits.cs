using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Starting;

/// <summary>The units in which guessed values are written: those in which the person typed.</summary>
/// <param name="IsMetric">Metres and grams, else feet, inches and ounces.</param>
internal sealed record FileUnits(bool IsMetric)
{
    private static readonly Dictionary<KeySpec, (string Metric, string Trade, int Digits)> Units = new()
    {
        [RodKeys.Length] = ("m", "ft", 3),
        [RodKeys.Mass] = ("g", "oz", 2),
        [ReelKeys.Drag] = ("kg", "lb", 2),
        [LeaderKeys.Length] = ("cm", "in", 2),
        [AnglerKeys.HandHeight] = ("m", "in", 2),
        [LureKeys.Length] = ("mm", "in", 3),
        [LureKeys.Diameter] = ("mm", "in", 3),
        [LureKeys.Height] = ("mm", "in", 3),
        [LureKeys.MassWithHooks] = ("g", "oz", 3),
        [RetrieveKeys.Distance] = ("m", "yd", 2),
        [RetrieveKeys.Stroke] = ("cm", "in", 2),
        [RetrieveKeys.Slack] = ("cm", "in", 2),
    };

    /// <summary>The units of most of the texts; feet and ounces where it is even.</summary>
    /// <param name="typed">Keys with what was typed.</param>
    public static FileUnits Of(IEnumerable<(KeySpec Key, string Text)> typed) =>
        new(typed.Where(t => Units.ContainsKey(t.Key)).Sum(t => FamilyOf(t.Key, t.Text) switch { UnitFamily.Metric => 1, UnitFamily.Trade => -1, _ => 0 }) > 0);

    /// <summary>A value as a file holds it.</summary>
    public string Text(KeySpec key, double si)
    {
        (string metric, string trade, int digits) = Units[key];
        return Quantity.Show(si, key.Kind, IsMetric ? metric : trade, digits);
    }

    /// <summary>A text of a part, in the units of the file.</summary>
    public string Convert(KeySpec key, string text) =>
        !Units.ContainsKey(key) || FamilyOf(key, text) == (IsMetric ? UnitFamily.Metric : UnitFamily.Trade) ? text : Text(key, ValueReader.ReadText(key, text).Si);

    private static UnitFamily FamilyOf(KeySpec key, string text) => FamilyOfFile.Of([ValueReader.ReadText(key, text).Unit]);
}
