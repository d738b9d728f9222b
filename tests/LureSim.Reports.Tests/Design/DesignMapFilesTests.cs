using System.Text.Json;
using LureSim.Reports.Design;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Tests.Support;
using LureSim.Studies.Design;

namespace LureSim.Reports.Tests.Design;

/// <summary>Maps as text, JSON and CSV: axes by name, SI in files, units of the reader in words.</summary>
public sealed class DesignMapFilesTests
{
    [Fact]
    public void A_table_has_a_row_for_each_cell_with_its_values_in_si_and_hooks_by_their_sizes()
    {
        DesignMap map = MadeUpMargin.Map(ChangeKind.HookSize, windows: false, ChangeKind.TieUp);
        string[] lines = DesignCsv.Map(map).TrimEnd('\n').Split('\n');
        Assert.StartsWith("tie_z_m,hook_steps,hooks,fate,trim_deg,freeboard_m,gm_m,", lines[0], StringComparison.Ordinal);
        Assert.Equal(1 + (13 * map.Rows.Count), lines.Length);
        Assert.Contains("1/0 + no. 2", DesignCsv.Map(map), StringComparison.Ordinal);
        string[] first = lines[1].Split(',');
        Assert.Equal(map.Columns[0], double.Parse(first[0], System.Globalization.CultureInfo.InvariantCulture), 1e-12);
        Assert.Equal(["-4", "no. 6 + no. 10"], first[1..3]);
    }

    [Theory]
    [InlineData(ChangeKind.BallastAlong, ChangeKind.BallastMass, "ballast_x_m,ballast_kg,fate,")]
    [InlineData(ChangeKind.BallastAlong, ChangeKind.BallastUp, "ballast_x_m,ballast_z_m,fate,")]
    [InlineData(ChangeKind.Length, ChangeKind.Section, "length_m,breadth_m,fate,")]
    [InlineData(ChangeKind.TieAlong, ChangeKind.TieUp, "tie_x_m,tie_z_m,fate,")]
    public void Columns_are_named_by_the_axes(ChangeKind columns, ChangeKind rows, string head) =>
        Assert.StartsWith(head, DesignCsv.Map(MadeUpMargin.Map(rows, true, columns)), StringComparison.Ordinal);

    [Fact]
    public void The_summary_names_both_axes_with_their_ends_and_the_lure_as_it_is()
    {
        using var stream = new MemoryStream();
        DesignMapFiles.WriteJson(stream, "Made up", MadeUpMargin.Map(ChangeKind.HookSize, true, ChangeKind.Length), RunNotes.None);
        JsonElement json = JsonDocument.Parse(stream.ToArray()).RootElement;
        Assert.Equal(("length", "hooks"), (json.GetProperty("column_axis").GetString(), json.GetProperty("row_axis").GetString()));
        Assert.Equal(MadeUpDesign.Cigar.LengthM, json.GetProperty("own_length_m").GetDouble());
        Assert.Equal(0.8 * MadeUpDesign.Cigar.LengthM, json.GetProperty("from_length_m").GetDouble(), 1e-12);
        Assert.Equal(-4.0, json.GetProperty("from_hook_steps").GetDouble());
        Assert.Equal(json.GetProperty("to_hook_steps").GetDouble() - json.GetProperty("from_hook_steps").GetDouble() + 1.0, json.GetProperty("rows").GetDouble());
        Assert.Equal(13, json.GetProperty("columns").GetInt32());
    }

    [Theory]
    [InlineData(ChangeKind.TieUp, ChangeKind.HookSize, "height of the line tie", "size of the hooks no. 6 + no. 10 to 5/0 + 3/0 (now 1/0 + no. 2)")]
    [InlineData(ChangeKind.Length, ChangeKind.Section, "length 92.0 mm to 143.8 mm (now 115.0 mm)", "section 16.8 mm to 26.3 mm of breadth, the height along with it (now 21.0 mm). The mass kept.")]
    [InlineData(ChangeKind.BallastAlong, ChangeKind.BallastMass, "place of the weight 35.0 mm behind the middle", "mass of the weight 1.00 g to 6.00 g (now 2.50 g). The total mass kept.")]
    public void The_text_tells_axes_ends_and_where_the_lure_is_now(ChangeKind columns, ChangeKind rows, string first, string second)
    {
        string text = DesignMapFiles.Text("Made up", MadeUpMargin.Map(rows, true, columns), RunNotes.None);
        Assert.All(text.Split('\n'), l => Assert.True(l.Length <= 100, l));
        string flat = string.Join(' ', text.Split(['\n', ' '], StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("Columns: " + first, flat, StringComparison.Ordinal);
        Assert.Contains("Rows: " + second, flat, StringComparison.Ordinal);
        Assert.Contains("at every 3rd column and every 3rd row", flat, StringComparison.Ordinal);
    }
}
