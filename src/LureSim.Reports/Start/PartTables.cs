using LureSim.Model.Assembly;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Trim;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Parts;
using LureSim.Scenarios.Quantities;
using LureSim.Studies.Start;

namespace LureSim.Reports.Start;

/// <summary>The parts of each folder as a table; every number comes from the part itself, read into a set-up.</summary>
internal static class PartTables
{
    private static readonly ListColumn Name = new("name", "name"), Meaning = new("", "meaning");

    private static readonly ListColumn[] SizeColumns = [new("label", "label_N"), new("material", "material"), new("diameter", "diameter_m")];

    /// <summary>The table of a folder.</summary>
    /// <param name="folder">Folder.</param>
    public static ListTable Of(PartFolder folder) => folder.Name switch
    {
        "lures" => Table(folder, [new("length", "length_m"), new("with hooks", "mass_with_hooks_kg"), new("rests", "trim_deg")], Lure),
        "rods" => Table(folder, [new("length", "length_m"), new("power", "power"), new("action", "action")], Rod),
        "lines" => Table(folder, [.. SizeColumns, new("breaks wet at", "break_N"), new("skin", "film")], Line),
        "leaders" => Table(folder, [new("length", "length_m"), .. SizeColumns], Leader),
        "reels" => Table(folder, [new("spool", "kind"), new("ratio", "ratio"), new("line per turn", "take_up_m"), new("drag", "drag_N")], Reel),
        _ => Table(folder, [new("hand", "hand_height_m"), new("rod", "rod_elevation_deg")], Hands),
    };

    private static ListTable Table(PartFolder folder, ListColumn[] columns, Func<ScenarioResult, ListCell[]> cells) => new(
        folder.Name, $"{Trade.Capital(folder.Meaning)}:", [Name, .. columns, Meaning],
        [.. PartLibrary.In(folder.Name).Select(p => (IReadOnlyList<ListCell>)[new(p.Name), .. cells(PartFacts.Read(p)), new(p.Meaning)])]);

    private static ListCell[] Lure(ScenarioResult read)
    {
        Setup setup = read.Setup!;
        FloatReport rest = Trimming.Rest(setup.Lure, WaterModel.Evaluate(setup.Water));
        return
        [
            new(Quantity.Show(setup.Lure.LengthM, QuantityKind.Length, "in", 2), setup.Lure.LengthM), new(read.Values.Text(LureKeys.MassWithHooks), rest.MassKg),
            new(StartStudy.Angle(rest.TrimRad), rest.TrimRad * 180.0 / Math.PI),
        ];
    }

    private static ListCell[] Rod(ScenarioResult read) => [Given(read, RodKeys.Length), Word(read, RodKeys.Power), Word(read, RodKeys.Action)];

    private static ListCell[] Line(ScenarioResult read)
    {
        LineSpec line = read.Setup!.Line;
        return [.. Size(read, LineKeys.Set, line), new(Quantity.Show(line.BreakN, QuantityKind.Force, "lb", 2), line.BreakN), Word(read, LineKeys.Set.Film)];
    }

    private static ListCell[] Leader(ScenarioResult read) => read.Setup!.Leader is LeaderSpec leader
        ? [Given(read, LeaderKeys.Length), .. Size(read, LeaderKeys.Set, leader.Line)]
        : [.. Enumerable.Repeat(new ListCell("-"), 1 + SizeColumns.Length)];

    private static ListCell[] Size(ScenarioResult read, LineKeySet keys, LineSpec line) =>
        [Given(read, keys.Label), Word(read, keys.Material), new(Quantity.Show(line.DiameterM, QuantityKind.Length, "mm", 2), line.DiameterM)];

    private static ListCell[] Reel(ScenarioResult read)
    {
        ReelSpec reel = read.Setup!.Reel;
        return
        [
            Word(read, ReelKeys.Kind), new(read.Values.Text(ReelKeys.Ratio), reel.Ratio),
            new(Quantity.Show(reel.TakeUpPerTurnM, QuantityKind.Length, "in", 2), reel.TakeUpPerTurnM), Given(read, ReelKeys.Drag),
        ];
    }

    private static ListCell[] Hands(ScenarioResult read) =>
    [
        Given(read, AnglerKeys.HandHeight),
        new(read.Values.Text(AnglerKeys.RodElevation), read.Setup!.Angler.RodElevationRad * 180.0 / Math.PI),
    ];

    private static ListCell Given(ScenarioResult read, KeySpec key) => new(read.Values.Text(key), read.Values.Number(key));

    private static ListCell Word(ScenarioResult read, KeySpec key) => new(read.Values.Text(key));
}
