using System.Globalization;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Design;
using nietras.SeparatedValues;

namespace LureSim.Reports.Design;

/// <summary>The tables of a design as CSV, SI.</summary>
internal static class DesignCsv
{
    /// <summary>Hooks that it carries.</summary>
    public static string Hooks(IReadOnlyList<HookRow> hooks) => Table(hooks, (row, h) =>
    {
        row["front"].Set(h.Front is int f ? HookSizes.Name(f) : "");
        row["rear"].Set(h.Rear is int r ? HookSizes.Name(r) : "");
        row["hooks_kg"].Format(h.HooksKg);
        Point(row, h.Point);
    });

    /// <summary>Errors and changes.</summary>
    public static string Changes(IReadOnlyList<(DesignChange Change, DesignPoint After)> changes) => Table(changes, (row, c) =>
    {
        row["change"].Set(DesignWords.Key(c.Change.Kind));
        row["amount"].Format(c.Change.Amount);
        Point(row, c.After);
    });

    /// <summary>Ways to have a wish.</summary>
    public static string Places(BallastAnswer answer) => Table(answer.Places, (row, p) =>
    {
        row["ballast_kg"].Format(p.Weight.MassKg);
        row["ballast_x_m"].Format(p.Weight.XM);
        row["ballast_z_m"].Format(p.Weight.ZM);
        row["body_kg"].Format(p.BodyKg);
        row["ball_room_m"].Format(p.SpareM);
        Point(row, p.Point);
    });

    /// <summary>A map, a row per cell; what does not exist is empty.</summary>
    public static string Map(DesignMap map)
    {
        ILookup<(int, int), WindowCell> windows = (map.Windows?.Cells ?? []).ToLookup(w => (w.Column, w.Row));
        (int Column, int Row)[] cells = [.. Enumerable.Range(0, map.Cells.Count).Select(i => (i % map.Columns.Count, i / map.Columns.Count))];
        return Table(cells, (row, at) =>
        {
            MapCell cell = map.At(at.Column, at.Row);
            Axis(row, map, map.Task.Columns, map.Columns[at.Column]);
            Axis(row, map, map.Task.Rows, map.Rows[at.Row]);
            row["fate"].Set(DesignWords.Fate(cell.Word));
            Number(row, "trim_deg", cell.TrimRad * 180.0 / Math.PI);
            Number(row, "freeboard_m", cell.FreeboardM);
            Number(row, "gm_m", cell.GmM);
            Number(row, "tow_growth_per_s", cell.GrowthPerS);
            Number(row, "critical_shedding", cell.CriticalShedding);
            Number(row, "shedding_margin", cell.SheddingMargin);
            if (map.Windows is not null)
            {
                WindowCell? window = windows[(at.Column, at.Row)].FirstOrDefault();
                Number(row, "walks_from_per_s", window?.FromPerS ?? double.NaN);
                Number(row, "walks_to_per_s", window?.ToPerS ?? double.NaN);
                Number(row, "widest_glide_m", window?.WidestM ?? double.NaN);
                row["patterns"].Set(string.Join(' ', (window?.Patterns ?? []).Select(p => p is WalkPattern known ? RetrieveFigures.Name(known) : "failed")));
            }

            row["reason"].Set(cell.Reason ?? "");
        });
    }

    private static void Axis(SepWriter.Row row, DesignMap map, MapAxis axis, double value)
    {
        row[axis.Key].Format(value);
        if (axis.IsCounted)
        {
            row["hooks"].Set(new MapAxisWords(map, axis, Shown.Both).Hooks(value));
        }
    }

    private static void Point(SepWriter.Row row, DesignPoint point)
    {
        row["fate"].Set(DesignWords.Fate(point.Word));
        foreach (Model.Figure<DesignPoint> figure in DesignFigures.All)
        {
            Number(row, figure.Key, figure.Of(point));
        }
    }

    private static void Number(SepWriter.Row row, string name, double value)
    {
        if (double.IsFinite(value))
        {
            row[name].Format(value);
        }
        else
        {
            row[name].Set("");
        }
    }

    private static string Table<T>(IReadOnlyList<T> items, WriteRow<T> write)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        using (SepWriter writer = Sep.New(',').Writer(o => o with { CultureInfo = CultureInfo.InvariantCulture, Escape = true }).To(text))
        {
            foreach (T item in items)
            {
                using SepWriter.Row row = writer.NewRow();
                write(row, item);
            }
        }

        return text.ToString();
    }

    private delegate void WriteRow<T>(SepWriter.Row row, T item);
}
