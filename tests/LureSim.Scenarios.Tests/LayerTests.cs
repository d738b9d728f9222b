using LureSim.Model.Lines;

namespace LureSim.Scenarios.Tests;

public class LayerTests
{
    [Fact]
    public void A_scenario_overrides_its_base_key_by_key()
    {
        using var folder = new Folder();
        folder.Write("deep/base.toml", Texts.Least);
        string path = folder.Write("top.toml", "base = \"deep/base.toml\"\n[rod]\nlength = \"6 ft\"");
        ScenarioResult result = ScenarioSource.Read(path);
        Assert.Empty(result.Errors);
        Assert.Equal(6 * 0.3048, result.Setup!.Rod.LengthM, 1e-15);
        Assert.Equal(4.5, result.Setup.Rod.ThirdLoadN);
        Assert.Equal(0.018, result.Setup.Lure.MassKg, 1e-17);
    }

    [Fact]
    public void A_text_in_place_of_a_table_is_a_parts_file()
    {
        using var folder = new Folder();
        folder.Write("parts/rod.toml", "length = \"2 m\"\nbend_load = \"3 N\"");
        string path = folder.Write("s.toml", "rod = \"parts/rod.toml\"\n" + Texts.Least.Replace("[rod]\nlength = \"7 ft\"\npower = \"medium-heavy\"\n", "", StringComparison.Ordinal));
        ScenarioResult result = ScenarioSource.Read(path);
        Assert.Empty(result.Errors);
        Assert.Equal(2.0, result.Setup!.Rod.LengthM);
        Assert.Equal(3.0, result.Setup.Rod.ThirdLoadN);
    }

    [Fact]
    public void A_table_may_start_from_a_parts_file_and_parts_from_parts()
    {
        using var folder = new Folder();
        folder.Write("parts/a.toml", "length = \"2 m\"\nbend_load = \"3 N\"\nmass = \"100 g\"");
        folder.Write("parts/b.toml", "base = \"a.toml\"\nbend_load = \"4 N\"");
        string path = folder.Write("s.toml", Texts.With("length = \"7 ft\"\npower = \"medium-heavy\"", "base = \"parts/b.toml\"\nlength = \"1.9 m\""));
        ScenarioResult result = ScenarioSource.Read(path);
        Assert.Empty(result.Errors);
        Assert.Equal(1.9, result.Setup!.Rod.LengthM);
        Assert.Equal(4.0, result.Setup.Rod.ThirdLoadN);
        Assert.Equal(0.1 * 0.45, result.Setup.Rod.MassKg, 1e-17);
    }

    [Fact]
    public void Faults_of_a_part_name_the_part()
    {
        using var folder = new Folder();
        folder.Write("parts/rod.toml", "length = \"2 m\"\nbend_load = \"3 N\"\ncolour = \"red\"");
        string path = folder.Write("s.toml", "rod = \"parts/rod.toml\"\n" + Texts.Least.Replace("[rod]\nlength = \"7 ft\"\npower = \"medium-heavy\"\n", "", StringComparison.Ordinal));
        ScenarioFault fault = Assert.Single(ScenarioSource.Read(path).Errors);
        Assert.Equal("parts/rod.toml(3,1)", fault.Place);
        Assert.Equal("rod.colour", fault.Key);
    }

    [Fact]
    public void A_circle_of_files_is_refused()
    {
        using var folder = new Folder();
        folder.Write("a.toml", "base = \"b.toml\"");
        string path = folder.Write("b.toml", "base = \"a.toml\"\n" + Texts.Least);
        Assert.Equal("a.toml(1,8): base: \"b.toml\" builds on itself; a chain of files must end", Assert.Single(ScenarioSource.Read(path).Errors).ToString());
    }

    [Fact]
    public void Another_way_to_size_a_line_replaces_the_one_below()
    {
        ScenarioResult result = Texts.Read(Texts.With("\"braid\"", "\"nylon\""), "line.diameter=0.3 mm");
        Assert.Empty(result.Errors);
        Assert.Equal(3e-4, result.Setup!.Line.DiameterM, 1e-18);
        Assert.Equal(LineSizing.Resolve(LineMaterial.Nylon, 3e-4, null, null, SurfaceFilm.Dry).Spec.BreakN, result.Setup.Line.BreakN, 1e-9);
    }

    [Fact]
    public void In_one_file_label_and_diameter_stand_together()
    {
        ScenarioResult result = Texts.Read(Texts.With("\"braid\"\nlabel = \"50 lb\"", "\"nylon\"\nlabel = \"12 lb\"\ndiameter = \"0.33 mm\""));
        Assert.Equal(3.3e-4, result.Setup!.Line.DiameterM, 1e-18);
        Assert.Equal(LineSizing.Resolve(LineMaterial.Nylon, 3.3e-4, null, 12 * LineLabels.NewtonPerLb, SurfaceFilm.Dry).Spec.BreakN, result.Setup.Line.BreakN, 1e-9);
    }

    [Fact]
    public void Material_none_takes_an_inherited_leader_off()
    {
        string text = Texts.Least + "\n[leader]\nmaterial = \"nylon\"\ndiameter = \"0.43 mm\"\nlength = \"15 in\"";
        Assert.NotNull(Texts.Read(text).Setup!.Leader);
        Assert.Null(Texts.Read(text, "leader.material=none").Setup!.Leader);
    }

    [Fact]
    public void Take_up_stands_for_the_spool()
    {
        double spool = Texts.Read(Texts.Least, "reel.take_up=75 cm/turn", "reel.ratio=7").Setup!.Reel.SpoolDiameterM;
        Assert.Equal(0.75 / (7 * Math.PI), spool, 1e-16);
    }

    [Fact]
    public void A_wrist_angle_becomes_tip_travel()
    {
        double stroke = Texts.Read(Texts.Least, "retrieve.stroke=6 deg", "rod.length=2.1 m", "rod.grip=0.3 m").Retrieve!.StrokeM;
        Assert.Equal(6 * Math.PI / 180 * 1.8, stroke, 1e-15);
    }

    [Fact]
    public void Stations_may_come_from_a_csv_file()
    {
        using var folder = new Folder();
        folder.Write("hull.csv", "x_mm,breadth_mm,height_mm\n-50,4,4\n0,20,22\n50,4,4\n");
        string path = folder.Write("s.toml", Texts.With("\"cigar\"\nlength = \"115 mm\"\ndiameter = \"21 mm\"", "\"stations\"\nstations = \"hull.csv\"").Replace("18 g", "9 g", StringComparison.Ordinal));
        ScenarioResult result = ScenarioSource.Read(path);
        Assert.Empty(result.Errors);
        Assert.Equal(3, result.Setup!.Lure.Stations!.Count);
        Assert.Equal(0.1, result.Setup.Lure.LengthM, 1e-16);
        Assert.Equal(0.022, result.Setup.Lure.HeightM, 1e-17);
    }

    [Fact]
    public void A_broken_csv_file_names_row_and_column()
    {
        using var folder = new Folder();
        folder.Write("hull.csv", "x_mm,breadth_mm,height_mm\n-50,4,4\n0,20,x\n50,4\n");
        string path = folder.Write("s.toml", Texts.With("\"cigar\"\nlength = \"115 mm\"\ndiameter = \"21 mm\"", "\"stations\"\nstations = \"hull.csv\"").Replace("18 g", "9 g", StringComparison.Ordinal));
        string[] places = [.. ScenarioSource.Read(path).Errors.Select(e => $"{e.Place} {e.Key}")];
        Assert.Equal(["hull.csv(3,1) lure.stations[2].height", "hull.csv(4,1) lure.stations", "hull.csv(4,1) lure.stations[3].height"], places);
    }
}
