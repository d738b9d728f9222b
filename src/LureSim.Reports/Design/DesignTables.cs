using LureSim.Model;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Design;

namespace LureSim.Reports.Design;

/// <summary>The tables of a design as plain text.</summary>
internal static class DesignTables
{
    /// <summary>Hooks that it carries.</summary>
    public static string Hooks(IReadOnlyList<HookRow> hooks, Shown shown)
    {
        var units = new DesignUnits(shown);
        return ColumnTable.Text(
            ["front", "rear", $"hooks, {units.MassUnit}", "angle, deg", $"freeboard, {units.LengthUnit}", $"GM, {units.LengthUnit}", ""],
            [.. hooks.Select(h => (string[])[DesignWords.Size(h.Front), DesignWords.Size(h.Rear), units.Mass(h.HooksKg), .. Float(h.Point, units), $"{Fate(h.Point)}{(h.IsOwn ? ", as it is" : "")}"])]);
    }

    /// <summary>What errors do: each either way.</summary>
    public static string Tolerance(ToleranceTable table, DesignPoint own, Shown shown)
    {
        var units = new DesignUnits(shown);
        var rows = new List<string[]>();
        foreach (ToleranceRow row in table.Rows)
        {
            foreach ((DesignChange change, DesignPoint? point) in ((DesignChange, DesignPoint?)[])[(row.Less, row.LessPoint), (row.More, row.MorePoint)])
            {
                if (point is not null)
                {
                    rows.Add([DesignWords.Change(change, shown), .. Moves(own, point, units), point.Word == own.Word ? "" : Fate(point)]);
                }
            }
        }

        return ColumnTable.Text(["error", .. Heads(units)], rows);
    }

    /// <summary>All errors at once.</summary>
    public static string Worst(ToleranceTable table, Shown shown)
    {
        var units = new DesignUnits(shown);
        string[] Row(string name, Figure<DesignPoint> figure, Func<double?, string> tell) => table.Worst.FirstOrDefault(w => w.Key == figure.Key) is WorstCase w
            ? [name, Value(w.Low, figure, tell), Value(w.High, figure, tell), ""] : [name, "", "", ""];
        return ColumnTable.Text(
            ["all errors at once", "least", "most", ""],
            [
                Row("angle, deg", DesignFigures.Trim, v => Number(v, 1)), Row($"freeboard, {units.LengthUnit}", DesignFigures.Freeboard, units.Length),
                Row($"GM across, {units.LengthUnit}", DesignFigures.Gm, units.Length), Row("side force over critical", DesignFigures.Margin, v => Number(v, 2)),
            ]);
    }

    /// <summary>Changes, ranked.</summary>
    public static string Changes(IReadOnlyList<RankedChange> changes, DesignPoint own, Shown shown)
    {
        var units = new DesignUnits(shown);
        return ColumnTable.Text(
            ["change", .. Heads(units)],
            [.. changes.Select(c => (string[])[DesignWords.Change(c.Change, shown), .. Moves(own, c.After, units), c.After.Word == own.Word ? "" : Fate(c.After)])]);
    }

    /// <summary>Ways to have a wish.</summary>
    public static string Places(BallastAnswer answer, Shown shown)
    {
        var units = new DesignUnits(shown);
        return ColumnTable.Text(
            [
                $"weight, {units.MassUnit}", $"x, {units.LengthUnit}", $"z, {units.LengthUnit}", $"body, {units.MassUnit}", $"freeboard, {units.LengthUnit}", $"GM, {units.LengthUnit}",
                $"room, {units.LengthUnit}", "",
            ],
            [
                .. answer.Places.Select(p => (string[])
                [
                    units.Mass(p.Weight.MassKg), units.Length(p.Weight.XM), units.Length(p.Weight.ZM), units.Mass(p.BodyKg), units.Length(p.Point.FreeboardM), units.Length(p.Point.GmM),
                    units.Length(p.SpareM), p == answer.Chosen ? "taken" : "",
                ]),
            ]);
    }

    /// <summary>Candidates of a search, the lure as it is first.</summary>
    public static string Walks(WalkAnswer walk, Shown shown)
    {
        var units = new DesignUnits(shown);
        string[] Row(string name, WalkCandidate c) =>
        [
            name, units.Mass(c.Move.BallastKg), units.Length(c.Move.BallastXM), units.Length(c.Move.TieZM), c.Move.HookSteps == 0 ? "0" : DesignUnits.Signed(c.Move.HookSteps, v => Trade.Fixed(v, 0)),
            Number(c.Point.TrimDeg, 1), units.Length(c.Check?.GlideM ?? c.GlideM), c.Check is { } k && double.IsFinite(k.LowM) ? $"{units.Length(k.LowM)}-{units.Length(k.HighM)}" : "",
            c.Check is null ? "" : $"{Trade.Fixed(100.0 * c.Check.LockShare, 0)} %", c.Check is { Draws: > 0 } d ? $"{Trade.Fixed(100.0 * d.WalkShare, 0)} %" : "",
            c.Walks ? "walks" : c.Pattern is WalkPattern pattern ? RetrieveFigures.Name(pattern) : DesignWords.Fate(c.Point.Word),
        ];
        return ColumnTable.Text(
            [
                "", $"weight, {units.MassUnit}", $"x, {units.LengthUnit}", $"tie, {units.LengthUnit}", "hooks", "deg", "glide", $"10-90 %, {units.LengthUnit}", "starts", "draws", "",
            ],
            [Row("as it is", walk.Own), .. walk.Candidates.Select((c, i) => Row($"{i + 1}", c))]);
    }

    /// <summary>Before and after.</summary>
    public static string BeforeAfter(DesignPoint before, DesignPoint after, Shown shown)
    {
        var units = new DesignUnits(shown);
        string[] Row(string name, Figure<DesignPoint> figure, Func<double?, string> tell) => [name, Value(before, figure, tell), Value(after, figure, tell), ""];
        return ColumnTable.Text(
            ["", "before", "after", ""],
            [
                Row("angle, deg", DesignFigures.Trim, v => Number(v, 2)), Row($"freeboard, {units.LengthUnit}", DesignFigures.Freeboard, units.Length),
                Row($"GM across, {units.LengthUnit}", DesignFigures.Gm, units.Length),
                [$"mass with hooks, {units.MassUnit}", units.Mass(before.Trim?.Rest.MassKg), units.Mass(after.Trim?.Rest.MassKg), ""],
                Row("side force over critical", DesignFigures.Margin, v => Number(v, 2)), Row("turn at one pull, deg", DesignFigures.Turn, v => Number(v, 0)),
                Row($"glide at one pull, {units.LengthUnit}", DesignFigures.Glide, units.Length),
            ]);
    }

    /// <summary>A number; empty where there is none.</summary>
    public static string Number(double? value, int places) => value is double v && double.IsFinite(v) ? Trade.Fixed(v, places) : "";

    private static string Value(DesignPoint point, Figure<DesignPoint> figure, Func<double?, string> tell) => point.Trim is null ? Fate(point) : tell(figure.Value(point));

    private static string Fate(DesignPoint point) => DesignWords.Fate(point.Word);

    private static string[] Heads(DesignUnits units) =>
        ["angle, deg", $"freeboard, {units.LengthUnit}", $"GM, {units.LengthUnit}", "over critical", "turn, deg", $"glide, {units.LengthUnit}", ""];

    private static string[] Float(DesignPoint p, DesignUnits units) => [Number(p.TrimDeg, 1), units.Length(p.FreeboardM), units.Length(p.GmM)];

    private static string[] Moves(DesignPoint own, DesignPoint p, DesignUnits units)
    {
        string Move(Figure<DesignPoint> figure, Func<double, string> tell) =>
            figure.Value(own) is double a && figure.Value(p) is double b ? DesignUnits.Signed(b - a, tell) : "";
        return
        [
            Move(DesignFigures.Trim, v => Trade.Fixed(v, 1)), Move(DesignFigures.Freeboard, v => units.Length(v)), Move(DesignFigures.Gm, v => units.Length(v)),
            Move(DesignFigures.Margin, v => Trade.Fixed(v, 2)), Move(DesignFigures.Turn, v => Trade.Fixed(v, 0)), Move(DesignFigures.Glide, v => units.Length(v)),
        ];
    }
}
