using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Studies.Across;

namespace LureSim.Studies.Compare;

/// <summary>Reads what is compared: several files, one file with variants of it, or one file with rods of several lengths.</summary>
/// <param name="common">Overrides of all set-ups.</param>
/// <param name="faults">Gets every fault.</param>
public sealed class SetUpReader(IReadOnlyList<string> common, ICollection<ScenarioFault> faults)
{
    /// <summary>What a compared set-up must be whole for.</summary>
    public const Activities Asked = Activities.Retrieve | Activities.Cast;

    /// <summary>Reads the set-ups; fewer after faults.</summary>
    /// <param name="files">Scenario files.</param>
    /// <param name="variants">Texts <c>key=value; key=value</c>, each a variant of the one file.</param>
    /// <param name="rods">List of rod lengths, each perhaps with power and action; empty for none.</param>
    public IReadOnlyList<CompareSetUp> Read(IReadOnlyList<string> files, IReadOnlyList<string> variants, string rods)
    {
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(variants);
        ArgumentNullException.ThrowIfNull(rods);
        string? wrong = files.Count > 1 && (variants.Count > 0 || rods.Length > 0) ? "--with and --rods go with one file"
            : variants.Count > 0 && rods.Length > 0 ? "--with and --rods do not go together; --with \"rod.length=7 ft; rod.power=heavy\" sets several keys"
            : files.Count == 1 && variants.Count == 0 && rods.Length == 0 ? "one file and nothing to compare it with; give another file, or --with \"rod.power=heavy\", or --rods \"6 ft 6 in,7 ft,7 ft 4 in\""
            : null;
        if (wrong is not null)
        {
            faults.Add(new("compare", "", wrong));
            return [];
        }

        ScenarioSource[] sources = [.. files.Select(f => ScenarioSource.Load(f, Asked))];
        ScenarioResult[] own = [.. sources.Select(s => s.Resolve(common))];
        own.SelectMany(o => o.Errors).ToList().ForEach(faults.Add);
        if (own.Any(o => !o.IsValid))
        {
            return [];
        }

        CompareSetUp[] all = rods.Length > 0 ? Rods(sources[0], own[0], rods) : files.Count > 1 ? Files(files, sources) : Variants(sources[0], own[0], variants);
        return Whole(all);
    }

    private CompareSetUp[] Files(IReadOnlyList<string> files, ScenarioSource[] sources)
    {
        string[] stems = [.. files.Select(f => Path.GetFileNameWithoutExtension(f))];
        bool told = stems.Distinct(StringComparer.Ordinal).Count() == stems.Length;
        return Numbered([.. files.Select((f, i) => new CompareSetUp(told ? stems[i] : f, new(sources[i], common)))]);
    }

    private CompareSetUp[] Variants(ScenarioSource source, ScenarioResult own, IReadOnlyList<string> variants)
    {
        string[][] sets = [.. variants.Select(v => v.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))];
        string[] keys = [.. sets.Select(s => string.Join(';', s.Select(Key)))];
        EffectiveScenario values = own.Effective();
        string first = keys.Distinct(StringComparer.Ordinal).Count() == 1
            ? string.Join(", ", sets[0].Select(Key).Select(k => OwnValue.Text(values, k) is string v ? Named(k, v) : "").Where(t => t.Length > 0))
            : "";
        var all = new List<CompareSetUp> { new(first.Length > 0 ? first : "file as it is", new(source, common)) };
        for (int i = 0; i < sets.Length; i++)
        {
            string place = $"--with {variants[i]}";
            if (sets[i].Length == 0)
            {
                faults.Add(new("--with", "", "empty; key=value is due, for example --with \"rod.power=heavy\""));
                continue;
            }

            var setUp = new DrawnSetUp(source, [.. common, .. sets[i]]);
            Tell(setUp.Here, place);
            all.Add(new(string.Join(", ", sets[i].Select(s => Named(Key(s), s[(s.IndexOf('=', StringComparison.Ordinal) + 1)..].Trim()))), setUp));
        }

        return Numbered([.. all]);
    }

    private CompareSetUp[] Rods(ScenarioSource source, ScenarioResult own, string rods)
    {
        var all = new List<CompareSetUp>();
        string[] items = [.. rods.Split(',', StringSplitOptions.TrimEntries)];
        foreach (string item in items)
        {
            if (RodWords.Read(item) is not (string length, IReadOnlyList<string> set))
            {
                faults.Add(new($"--rods {item}", RodKeys.Length.Path, "a length is due, with a power and an action after it if you like, for example \"7 ft medium-heavy fast\""));
                continue;
            }

            var setUp = new DrawnSetUp(source, [.. common, .. set], length);
            Tell(setUp.Here, $"--rods {item}");
            all.Add(new(item, setUp));
        }

        if (items.Length == 1)
        {
            all.Insert(0, new($"{OwnValue.Text(own.Effective(), RodKeys.Length.Path)} (the file's)", new(source, common)));
        }

        return Numbered([.. all]);
    }

    private CompareSetUp[] Whole(CompareSetUp[] all)
    {
        CompareSetUp[] valid = [.. all.Where(s => s.SetUp.Here.IsValid)];
        foreach (CompareSetUp setUp in valid.Where(s => s.SetUp.Here.Retrieve!.IsTow))
        {
            faults.Add(new(setUp.Label, RetrieveKeys.Stroke.Path, "0 is a steady pull, which has no rhythm to compare; a stroke is due here, for example \"20 cm\""));
        }

        if (valid.Select(s => s.SetUp.Here.Setup!.Seed).Distinct().Count() > 1)
        {
            faults.Add(new("compare", TopKeys.Seed.Path, "differs between the set-ups, so they would not get the same luck; --set seed=1 sets one for all"));
        }

        if (all.Length > CompareStudy.Most)
        {
            faults.Add(new("compare", "", $"{all.Length} set-ups; allowed: {CompareStudy.Fewest} to {CompareStudy.Most}"));
        }

        return valid;
    }

    // A fault in a variant is told with the variant as it was typed.
    private void Tell(ScenarioResult here, string place)
    {
        foreach (ScenarioFault fault in here.Errors)
        {
            faults.Add(fault with { Place = place });
        }
    }

    private static CompareSetUp[] Numbered(CompareSetUp[] all) =>
        [.. all.Select((s, i) => all.Take(i).Count(b => b.Label == s.Label) is > 0 and int before ? s with { Label = $"{s.Label} ({before + 1})" } : s)];

    private static string Key(string set) => set.Split('=')[0].Trim();

    private static string Named(string key, string value) => $"{key.Replace('.', ' ').Replace('_', ' ')} {value.Trim('"')}";
}

/// <summary>A rod in words: a length, then perhaps a power and an action.</summary>
internal static class RodWords
{
    /// <summary>Length and overrides of the rest; null when it is none.</summary>
    /// <param name="text">For example <c>7 ft medium-heavy fast</c>.</param>
    public static (string Length, IReadOnlyList<string> Overrides)? Read(string text)
    {
        string[] words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var overrides = new List<string>();
        int last = words.Length;
        for (; last > 1 && Override(words[last - 1]) is string set; last--)
        {
            overrides.Add(set);
        }

        string length = string.Join(' ', words[..last]);
        return length.Length > 0 && Quantity.Read(length, QuantityKind.Length).Error is null ? (length, overrides) : null;
    }

    private static string? Override(string word) =>
        ((KeySpec[])[RodKeys.Power, RodKeys.Action]).FirstOrDefault(k => k.ChoiceOf(word) is not null) is KeySpec key ? $"{key.Path}={word}" : null;
}
