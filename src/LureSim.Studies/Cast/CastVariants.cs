using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Across;
using LureSim.Studies.Doubt;
using LureSim.Studies.Figures;

namespace LureSim.Studies.Cast;

/// <summary>One set-up to be cast.</summary>
/// <param name="Label">Value as people read it.</param>
/// <param name="Setup">Set-up.</param>
/// <param name="Task">Cast.</param>
/// <param name="Drawn">The same with the guesses of a draw; null where the draw makes no valid set-up.</param>
public sealed record CastVariant(string Label, Setup Setup, CastTask Task, Func<int, (Setup Setup, CastTask Task)?> Drawn);

/// <summary>Set-ups to be cast and compared.</summary>
/// <param name="All">Set-ups, the reference among them; fewer after faults.</param>
/// <param name="Reference">Which of them is the reference.</param>
public sealed record CastVariantList(IReadOnlyList<CastVariant> All, int Reference);

/// <summary>The set-ups of a comparison of casts, each with its guesses drawn, the same luck for all: a draw depends on the set-up, the seed, the number
/// of draws and the keys' names, on nothing else that is listed.</summary>
/// <param name="source">Scenario file.</param>
/// <param name="overrides">Overrides of every set-up.</param>
/// <param name="scenario">The scenario with them, valid.</param>
/// <param name="draws">Draws of the guesses.</param>
public sealed class CastVariants(ScenarioSource source, IReadOnlyList<string> overrides, ScenarioResult scenario, int draws)
{
    private static readonly CastSource Figures = new();
    private readonly EffectiveScenario _own = scenario.Effective();
    private readonly GuessDesign _design = new(Math.Max(1, draws), scenario.Setup!.Seed);

    /// <summary>One per combination of the axes, and the reference where it is none of them.</summary>
    /// <param name="axes">What differs.</param>
    /// <param name="against">The reference, a value of each axis; null for what the scenario holds by itself.</param>
    /// <param name="faults">Gets every fault of a set-up.</param>
    public CastVariantList Make(IReadOnlyList<AcrossAxis> axes, IReadOnlyList<AcrossPick>? against, ICollection<ScenarioFault> faults)
    {
        ArgumentNullException.ThrowIfNull(axes);
        ArgumentNullException.ThrowIfNull(faults);
        int ladder = axes.ToList().FindIndex(a => a.IsLadder);
        List<Row> rows = [.. AcrossAxis.Picks(axes).Select(p => Read(p, ladder, "--across"))];
        int reference = rows.FindIndex(against is null ? r => r.Here.IsValid && OwnValue.Same(r.Here.Effective(), _own) : r => r.Picks.SequenceEqual(against));
        if (reference < 0)
        {
            Row added = Read(against ?? [.. axes.Select(a => a.Own)], ladder, against is null ? "--across" : "--against");
            reference = Place(rows, added);
            rows.Insert(reference, added);
        }

        Number(rows);
        rows.ForEach(r => r.Here.Errors.ToList().ForEach(fault => faults.Add(fault with { Place = $"{r.Option} {r.Label}: {fault.Place}" })));
        return new([.. rows.Where(r => r.Here.IsValid).Select(r => new CastVariant(r.Label, r.Here.Setup!, r.Here.Cast!, r.Drawn))], reference);
    }

    // A number goes to its place among rising numbers, all else to the top.
    private static int Place(List<Row> rows, Row added)
    {
        double[] numbers = [.. rows.Select(r => r.Number)];
        bool rising = !double.IsNaN(added.Number) && numbers.Zip(numbers.Skip(1)).All(p => p.First <= p.Second);
        return rising ? numbers.Count(n => n <= added.Number) : 0;
    }

    // The same value listed twice stays two rows that can be told apart.
    private static void Number(List<Row> rows)
    {
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (Row row in rows)
        {
            int count = seen[row.Label] = seen.GetValueOrDefault(row.Label) + 1;
            row.Label = count > 1 ? $"{row.Label} ({count})" : row.Label;
        }
    }

    private Row Read(IReadOnlyList<AcrossPick> picks, int ladder, string option)
    {
        string[] set = [.. picks.Where((_, i) => i != ladder).SelectMany(p => p.Overrides)];
        var here = new DrawnSetUp(source, [.. overrides, .. set], ladder < 0 ? null : picks[ladder].Shown.Label);
        return new()
        {
            Picks = picks,
            Option = option,
            Label = string.Join(", ", picks.Select(p => p.Shown.Label)),
            Here = here.Here,
            Drawn = draw => Drawn(here, _design, draw),
        };
    }

    // The hands are drawn too: which set-up is worth having depends on them, and the reader's are not known.
    internal static (Setup Setup, CastTask Task)? Drawn(DrawnSetUp here, GuessDesign design, int draw, Func<KeySpec, bool>? held = null) =>
        here.Draw(design, Figures, draw, held) is { Cast: CastTask task } whole ? (whole.Setup, task) : null;

    private sealed record Row
    {
        public required IReadOnlyList<AcrossPick> Picks { get; init; }

        public required string Option { get; init; }

        public required string Label { get; set; }

        public required ScenarioResult Here { get; init; }

        public required Func<int, (Setup Setup, CastTask Task)?> Drawn { get; init; }

        public double Number => Picks.Count == 1 ? Picks[0].Shown.Number : double.NaN;
    }
}
