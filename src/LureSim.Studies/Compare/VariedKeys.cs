using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Studies.Compare;

/// <summary>Which keys differ between set-ups, and which of these enter nothing that is computed.</summary>
public static class VariedKeys
{
    /// <summary>Keys whose values differ and that at least one set-up gives; what only follows from them is left out.</summary>
    /// <param name="setUps">Set-ups, valid.</param>
    public static IReadOnlyList<KeySpec> Of(IReadOnlyList<CompareSetUp> setUps)
    {
        ArgumentNullException.ThrowIfNull(setUps);
        Dictionary<KeySpec, EffectiveValue>[] values = [.. setUps.Select(s => s.SetUp.Here.Effective().Values.ToDictionary(v => v.Key))];
        return
        [
            .. ScenarioSchema.Keys.Where(k => k.Kind != QuantityKind.Text && setUps.Any(s => s.SetUp.Here.Values.Has(k))
                && values.Select(v => v.TryGetValue(k, out EffectiveValue? value) ? double.IsNaN(value.Si) ? value.Text : Quantity.Format(value.Si, k.Kind) : "").Distinct(StringComparer.Ordinal).Count() > 1),
        ];
    }

    /// <summary>Keys that differ and enter no row.</summary>
    /// <param name="setUps">Set-ups, valid.</param>
    public static IReadOnlyList<KeySpec> Unread(IReadOnlyList<CompareSetUp> setUps) =>
        [.. Of(setUps).Where(k => !MeasureSets.All.Any(m => setUps.Any(s => m.Reads(k, s.SetUp.Here))))];
}
