using LureSim.Model;
using LureSim.Model.Pool;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Mapping;

/// <summary>Table <c>[pool]</c> to <see cref="PoolTask"/>.</summary>
internal static class PoolMapper
{
    /// <summary>Maps; refused values stay NaN.</summary>
    public static PoolTask Map(MapContext c)
    {
        if (c[PoolKeys.HandHeight] >= c[PoolKeys.TowLine])
        {
            c.Fault(PoolKeys.HandHeight, $"a line of {MapContext.Show(PoolKeys.TowLine, c[PoolKeys.TowLine])} hangs clear of the water from there; less than pool.tow_line is due");
        }

        return new(
            TowLineM: c[PoolKeys.TowLine],
            HandHeightM: c[PoolKeys.HandHeight],
            TowStiffnessN: c[PoolKeys.TowStiffness],
            TowDampingTimeS: c[PoolKeys.TowDamping],
            TowDistanceM: c[PoolKeys.TowDistance],
            TowHeadingRad: c[PoolKeys.TowHeading],
            PushSpeedMS: c[PoolKeys.PushSpeed],
            PushDriftRad: c[PoolKeys.PushDrift],
            HeelRad: c[PoolKeys.Heel],
            PressM: c[PoolKeys.Press],
            StepS: c[PoolKeys.Step])
        {
            SpeedsMS = Speeds(c),
        };
    }

    private static ValueList<double> Speeds(MapContext c)
    {
        if (c.Values.Given(PoolKeys.Speeds) is { Bad: true })
        {
            return [];
        }

        string text = c.Values.Text(PoolKeys.Speeds);
        string[] items = [.. text.Split(',').Select(i => i.Trim())];
        QuantityValue[] read = [.. items.Select(i => Quantity.Read(WithUnit(i, UnitOf(items[^1])), QuantityKind.Speed))];
        if (read.FirstOrDefault(r => r.Error is not null) is QuantityValue wrong)
        {
            c.Fault(PoolKeys.Speeds, wrong.Error!);
        }
        else if (items.Length > PoolTask.MostSpeeds || read.Any(r => r.Si is < PoolTask.SlowestTowMS or > PoolTask.FastestTowMS))
        {
            string range = RangeText.Of(PoolTask.SlowestTowMS, PoolTask.FastestTowMS, QuantityKind.Speed, "m/s");
            c.Fault(PoolKeys.Speeds, $"\"{text}\" is out of range; allowed: 1 to {PoolTask.MostSpeeds} speeds, {range} each");
        }

        return [.. read.Select(r => r.Si).Distinct().Order()];
    }

    private static string UnitOf(string item) => NumberReader.Take(item, out _, out int used) is null ? item[used..].Trim() : "";

    private static string WithUnit(string item, string unit) => unit.Length == 0 || UnitOf(item).Length > 0 ? item : $"{item} {unit}";
}
