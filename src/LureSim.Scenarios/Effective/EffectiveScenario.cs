using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Mapping;
using LureSim.Scenarios.Quantities;
using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios.Effective;

/// <summary>A scenario with every default spelled out.</summary>
public sealed class EffectiveScenario
{
    private readonly Scenario _scenario;
    private readonly ScenarioValues _values;
    private readonly IReadOnlyList<RangedKey> _ranges;

    // The first ranges stand in the files; the others follow from words and other values.
    internal EffectiveScenario(Scenario scenario, ScenarioValues values, IReadOnlyList<RangedKey> ranges, int givenRanges)
    {
        (_scenario, _values, _ranges, GivenRanges) = (scenario, values, ranges, [.. ranges.Take(givenRanges)]);
        var all = new List<EffectiveValue>();
        foreach (KeySpec key in ScenarioSchema.Keys)
        {
            if (key.Table != LeaderKeys.Length.Table || scenario.Setup.Leader is not null || key == LeaderKeys.Set.Material)
            {
                Add(all, key);
            }
        }

        Values = all;
    }

    /// <summary>All values, in the order of the schema.</summary>
    public IReadOnlyList<EffectiveValue> Values { get; }

    /// <summary>Ranges that files gave.</summary>
    internal IReadOnlyList<RangedKey> GivenRanges { get; }

    /// <summary>The guesses with their ranges.</summary>
    public IReadOnlyList<GuessedKey> Guesses =>
        [.. Values.Where(v => v.Mark == ValueMark.Guess).Select(v => new GuessedKey(v.Key, v.Si, v.Low, v.High, !v.IsLive))];

    /// <summary>The whole as a scenario file that reads back to the same run.</summary>
    public string ToToml() => EffectiveToml.Write(this);

    private void Add(List<EffectiveValue> all, KeySpec key)
    {
        if (_values.Has(LureFormKeys.Outline) && DrawnBodies.IsReplaced(key))
        {
            all.AddRange(DrawnBodies.Of(key, _scenario.Setup.Lure));
            return;
        }

        double? read = key.Lens?.Get(_scenario);
        double si = read ?? double.NaN;
        if (_values.Given(key) is Entry given)
        {
            si = read ?? given.Value.Si;
            Choice? word = ValueReader.FindChoice(key, given.Text);
            RangedKey? doubted = GivenRanges.FirstOrDefault(r => r.Key == key) is RangedKey range ? range : word is not null && !double.IsNaN(word.Low) && key.Kind != QuantityKind.Choice
                ? new(key, word.Low, word.High)
                : _ranges.FirstOrDefault(r => r.Key == key);
            all.Add(new(
                key, TomlText.Of(given), si, given.Layer == ScenarioSource.MadeLayer ? ValueMark.Default : doubted is null ? ValueMark.Given : ValueMark.Guess, doubted?.Low ?? double.NaN, doubted?.High ?? double.NaN, true));
        }
        else if (key.Default is not null && !GroupHasAnother(key))
        {
            si = read ?? key.DefaultReading.Si;
            all.Add(new(
                key, TomlText.OfDefault(key), si, key.IsGuess ? ValueMark.Guess : ValueMark.Default, key.GuessLow, key.GuessHigh, true));
        }
        else if (!double.IsNaN(si))
        {
            RangedKey? range = _ranges.FirstOrDefault(r => r.Key == key);
            string text = key.Choices.FirstOrDefault(c => c.Value == si && key.Kind == QuantityKind.Choice)?.Name ?? Quantity.Show(si, key.Kind, key.Unit);
            all.Add(new(
                key, TomlText.Quote(text), si, range is null ? ValueMark.Derived : ValueMark.Guess, range?.Low ?? double.NaN, range?.High ?? double.NaN, false));
        }
    }

    private bool GroupHasAnother(KeySpec key)
    {
        foreach (KeySpec other in ScenarioSchema.Keys)
        {
            if (key.Group.Length > 0 && other != key && other.Group == key.Group && _values.Has(other))
            {
                return true;
            }
        }

        return false;
    }
}
