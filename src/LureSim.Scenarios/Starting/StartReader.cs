using LureSim.Model.Rods;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Parts;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Starting;

/// <summary>Turns what a person typed into a plan of a scenario, or into faults, a line each.</summary>
public static class StartReader
{
    // The tip of the rod is kept that far over the water, m; a guess of what nobody dips.
    private const double LeastTipHeightM = 0.15;
    private const double Degree = Math.PI / 180.0;

    private static PhraseReader LureReader => new(null, "walker 1/2 oz", LureKeys.MassWithHooks, LureKeys.Length);

    /// <summary>Reads a request.</summary>
    /// <param name="request">What was typed.</param>
    /// <param name="folder">Where the scenario will lie; files that are named are looked for from there.</param>
    /// <returns>The plan, or null with the faults.</returns>
    public static (StartPlan? Plan, IReadOnlyList<ScenarioFault> Faults) Read(StartRequest request, string folder = ".")
    {
        ArgumentNullException.ThrowIfNull(request);
        var faults = new List<ScenarioFault>();
        Phrase lure = ReadLure(request, faults, out StartKind? kind);
        Phrase hooks = Said("--hooks", request.Hooks, new PhraseReader(null, "treble no. 4", LureItemKeys.HookSize, LureItemKeys.HookType), faults);
        var said = new (string Option, string Folder, string? Text, Phrase Phrase)[]
        {
            Table("--rod", "rods", request.Rod, "7 ft medium-heavy fast", faults, RodKeys.Length, RodKeys.Power, RodKeys.Action),
            Table("--reel", "reels", request.Reel, "7.1:1", faults, ReelKeys.Kind, ReelKeys.Ratio, ReelKeys.TakeUp, ReelKeys.SpoolDiameter, ReelKeys.Drag),
            Table("--line", "lines", request.Line, "30 lb braid", faults, SizeSlots(LineKeys.Set)),
            Table("--leader", "leaders", request.Leader, "15 in of 20 lb nylon", faults, [LeaderKeys.Length, .. SizeSlots(LeaderKeys.Set), LeaderKeys.Knot]),
            Table("--height", "hands", request.Height, "boat deck", faults, AnglerKeys.HandHeight, AnglerKeys.RodElevation),
        };
        Phrase water = Said("--water", request.Water, new PhraseReader(null, "sea 18 C", WaterKeys.Temperature, WaterKeys.Salinity), faults);
        Phrase cover = Said("--cover", request.Cover, new PhraseReader(null, "mat", CoverKeys.Kind), faults);
        Phrase style = Said("--style", request.Style, new PhraseReader(null, "one-handed beginner", CastKeys.Style, CastKeys.Effort, CastKeys.Skill), faults);
        if (faults.Count > 0)
        {
            return (null, faults);
        }

        var units = FileUnits.Of(said.Select(s => s.Phrase).Append(lure).SelectMany(p => p.Texts).Select(t => (t.Key, t.Value)));
        string name = kind!.Name;
        LureDraft draft = Draft(lure, hooks, ref kind);
        List<TableDraft> tables = [.. said.Select(s => Filled(s.Folder, s.Text, s.Phrase, kind!, units))];
        tables[^1] = WithTipOverWater(tables[^1], RodFreeLengthM(tables[0], folder), out string? remark);
        var text = new ScenarioText(
            Title(kind!, lure, tables), units, draft, lure.Texts.GetValueOrDefault(LureKeys.MassWithHooks), lure.Texts.GetValueOrDefault(LureKeys.Length),
            hooks.Texts.Count > 0, [Only("water", water), tables[^1], .. tables[..^1], Only("cast", style), Only("cover", cover), Retrieve(kind!, draft.Scale, units)]);
        return (new(kind!, $"{name}{PartLibrary.Ending}", text, remark is null ? [] : [remark]), []);
    }

    private static Phrase ReadLure(StartRequest request, List<ScenarioFault> faults, out StartKind? kind)
    {
        string[] words = request.Words.Split([' ', ',', '\t'], StringSplitOptions.RemoveEmptyEntries);
        kind = null;
        int used = 0;
        for (int length = Math.Min(2, words.Length); length > 0 && kind is null; length--)
        {
            string name = string.Join('-', words[..length]).ToLowerInvariant();
            if (StartKind.Missing(name) is string missing)
            {
                faults.Add(new("start", "", $"a {string.Join(' ', words[..length])} cannot be computed yet, for {missing}; luresim start walker with its mass and length is right for how far it casts, not for how it works"));
                return Phrase.Nothing;
            }

            kind = StartKind.Find(name);
            used = kind is null ? 0 : length;
        }

        string rest = string.Join(' ', words[used..]);
        if (kind is null && words.Length > 0 && LureReader.Read(rest).Fault is not null)
        {
            string near = Nearest.Of(words[0].ToLowerInvariant(), StartKind.Names) is string n ? $"; nearest: {n}" : "";
            faults.Add(new("start", "", $"\"{words[0]}\" is no kind of lure; known: {string.Join(", ", StartKind.All.Select(k => k.Name))}{near}"));
        }

        kind ??= StartKind.Find(StartKind.Usual);
        string typed = string.Join(' ', new[] { faults.Count > 0 ? "" : rest, request.Mass, request.Length }.Where(t => !string.IsNullOrWhiteSpace(t)));
        CheckAlone("--mass", request.Mass, LureKeys.MassWithHooks, faults);
        CheckAlone("--length", request.Length, LureKeys.Length, faults);
        return faults.Count > 0 ? Phrase.Nothing : Said("start", typed.Length > 0 ? typed : null, LureReader, faults);
    }

    private static void CheckAlone(string option, string? text, KeySpec key, List<ScenarioFault> faults)
    {
        if (text is not null && ValueReader.ReadText(key, text).Error is string error)
        {
            faults.Add(new(option, "", error));
        }
    }

    private static (string Option, string Folder, string? Text, Phrase Phrase) Table(
        string option, string folder, string? text, string example, List<ScenarioFault> faults, params KeySpec[] slots) =>
        (option, folder, text, IsFile(folder, text) ? Phrase.Nothing : Said(option, text, new PhraseReader(folder, example, slots), faults));

    private static Phrase Said(string option, string? text, PhraseReader reader, List<ScenarioFault> faults)
    {
        Phrase phrase = reader.Read(text ?? "");
        if ((phrase.Fault ?? (text is not null && phrase.IsEmpty ? "it says nothing" : null)) is string fault)
        {
            faults.Add(new(option, "", fault));
        }

        return phrase;
    }

    private static bool IsFile(string folder, string? text) => text is not null && text.EndsWith(".toml", StringComparison.OrdinalIgnoreCase)
        && !PartLibrary.In(folder).Any(p => p.Name + PartLibrary.Ending == text);

    private static KeySpec[] SizeSlots(LineKeySet keys) => [keys.Material, keys.Label, keys.Number, keys.Diameter, keys.Film];

    private static LureDraft Draft(Phrase lure, Phrase hooks, ref StartKind? kind)
    {
        double? mass = Given(lure, LureKeys.MassWithHooks), length = Given(lure, LureKeys.Length);
        if (kind!.Name == StartKind.Usual && (mass ?? length) is not null)
        {
            // Bodies of one family, small to large: the one that is nearest needs the least scaling.
            kind = StartKind.All.Take(3).MinBy(k => Math.Abs(Math.Log(LureDraft.Of(k.Part).Sized(mass, mass is null ? length : null).Scale)))!;
        }

        return LureDraft.Of(kind.Part).Sized(mass, length).WithHooks(
            hooks.Texts.GetValueOrDefault(LureItemKeys.HookSize), hooks.Texts.GetValueOrDefault(LureItemKeys.HookType));
    }

    private static double? Given(Phrase phrase, KeySpec key) => phrase.Texts.TryGetValue(key, out string? text) ? ValueReader.ReadText(key, text).Si : null;

    private static TableDraft Filled(string folder, string? text, Phrase said, StartKind kind, FileUnits units)
    {
        PartFolder place = PartLibrary.Folders.First(f => f.Name == folder);
        if (IsFile(folder, text))
        {
            return new(place.Table, [], text);
        }

        string usual = folder switch
        {
            "rods" => kind.Rod,
            "reels" => "casting",
            "lines" => kind.Line,
            "leaders" => kind.Leader,
            _ => "bank",
        };
        return TableDraft.From(said, place, PartLibrary.Find(place.Table, usual)!, units);
    }

    private static double RodFreeLengthM(TableDraft rod, string folder)
    {
        double length = rod.File is null
            ? rod.Si(RodKeys.Length)
            : ScenarioSource.FromText($"rod = {Effective.TomlText.Quote(rod.File)}", directory: folder).Resolve().Values.Number(RodKeys.Length);
        return Math.Max(RodSpec.LeastFreeLengthM, length - RodKeys.Grip.DefaultReading.Si);
    }

    // A low hand cannot point a long rod steeply down.
    private static TableDraft WithTipOverWater(TableDraft hands, double rodM, out string? remark)
    {
        double height = hands.Si(AnglerKeys.HandHeight), elevation = hands.Si(AnglerKeys.RodElevation);
        double least = Math.Asin(Math.Clamp((LeastTipHeightM - height) / rodM, -1.0, 1.0));
        remark = null;
        if (double.IsNaN(least) || elevation >= least)
        {
            return hands;
        }

        DraftValue own = hands.Values.First(v => v.Key == AnglerKeys.RodElevation);
        string raised = Quantity.Show(Math.Ceiling(least / Degree) * Degree, QuantityKind.Angle, "deg", 3);
        if (own.Why is null)
        {
            remark = $"with this rod and hand height the tip would be closer than {Quantity.Show(LeastTipHeightM, QuantityKind.Length, "cm")} to the water; {raised} would keep it clear";
            return hands;
        }

        return hands with { Values = [.. hands.Values.Select(v => v == own ? own with { Text = raised, Why = "the rod is held so low that the tip just stays clear of the water" } : v)] };
    }

    private static TableDraft Only(string table, Phrase said) => new(table, [.. said.Texts.Select(t => new DraftValue(t.Key, t.Value, null))]);

    private static TableDraft Retrieve(StartKind kind, double scale, FileUnits units)
    {
        const string usual = "usual for this kind of lure";
        return new(
            RetrieveKeys.Distance.Table,
            [
                new(RetrieveKeys.Distance, units.Text(RetrieveKeys.Distance, kind.DistanceM), usual),
                new(RetrieveKeys.Cadence, Quantity.Show(kind.CadencePerS, QuantityKind.Frequency, "/s"), usual),
                new(RetrieveKeys.Stroke, units.Text(RetrieveKeys.Stroke, scale * kind.StrokeM), usual),
                new(RetrieveKeys.Slack, units.Text(RetrieveKeys.Slack, scale * kind.SlackM), usual),
            ]);
    }

    private static string Title(StartKind kind, Phrase lure, List<TableDraft> tables)
    {
        string name = char.ToUpperInvariant(kind.Name[0]) + kind.Name[1..].Replace('-', ' ');
        string mass = lure.Texts.TryGetValue(LureKeys.MassWithHooks, out string? text) ? $", {text}" : "";
        TableDraft line = tables.First(t => t.Table == LineKeys.Set.Material.Table);
        string size = line.Values.FirstOrDefault(v => v.Key.Group.Length > 0)?.Text ?? "";
        return line.File is null ? $"{name}{mass}, on {size} {line.Text(LineKeys.Set.Material)}" : $"{name}{mass}";
    }
}
