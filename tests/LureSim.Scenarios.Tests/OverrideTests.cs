namespace LureSim.Scenarios.Tests;

public class OverrideTests
{
    private const string Hooked = Texts.Least + "\nhooks = [{ size = \"no. 4\", x = \"20 mm\" }, { size = \"no. 4\", x = \"-50 mm\" }]";

    [Fact]
    public void An_override_counts_like_the_file()
    {
        Assert.Equal(SpecText.Of(Texts.Read(Texts.With("7 ft", "6 ft 6 in")).Scenario!), SpecText.Of(Texts.Read(Texts.Least, "rod.length=6 ft 6 in").Scenario!));
        Assert.True(Texts.Read(Texts.Least, "retrieve.hold_distance=true").Retrieve!.HoldDistance);
        Assert.Equal(20, Texts.Read(Texts.Least, "solver.nodes=20").Retrieve!.Solver.Nodes);
        Assert.Equal(0.8, Texts.Read(Texts.Least, "lure.added_mass_factor=0.8").Setup!.Lure.AddedMassFactor);
    }

    // Half of 115 mm, on the axis; either coordinate may stand alone.
    [Theory]
    [InlineData("lure.tie.z=3 mm", 0.0575, 0.003)]
    [InlineData("lure.tie.x=50 mm", 0.050, 0.0)]
    public void A_line_tie_given_by_one_coordinate_keeps_the_other_at_the_nose(string given, double x, double z)
    {
        Model.Lures.LureSpec lure = Texts.Read(Texts.Least, given).Setup!.Lure;
        Assert.Equal(x, lure.TieXM, 1e-12);
        Assert.Equal(z, lure.TieZM, 1e-12);
    }

    // The body displaces 28.39 g. With 28 g a gram of steel, which displaces an eighth of it, is too much; a gram of cork and feather of half the
    // density of water carries a gram more than its own.
    [Theory]
    [InlineData("7.85 g/cm3", false)]
    [InlineData("0.5 g/cm3", true)]
    public void A_hook_weighs_less_by_the_water_it_displaces(string density, bool floats) => Assert.Equal(
        floats, Texts.Read(Texts.Least, "lure.mass=28 g", $"lure.hooks=[{{ mass = \"1 g\", drag_area = \"1 cm2\", x = \"0 mm\", density = \"{density}\" }}]").IsValid);

    [Fact]
    public void The_last_of_two_overrides_wins() =>
        Assert.Equal(3.0, Texts.Read(Texts.Least, "retrieve.cadence=1 /s", "retrieve.cadence=3 /s").Retrieve!.CadencePerS);

    [Fact]
    public void An_override_mends_a_missing_key() =>
        Assert.True(Texts.Read(Texts.With("mass = \"18 g\"", ""), "lure.mass=18 g").IsValid);

    [Fact]
    public void Items_of_lists_count_from_1()
    {
        ScenarioSource source = ScenarioSource.FromText(Hooked);
        Assert.Equal(-0.04, source.Resolve(["lure.hooks[2].x=-40 mm"]).Setup!.Lure.Hooks[1].XM, 1e-17);
        Assert.Equal(-0.05, source.Resolve().Setup!.Lure.Hooks[1].XM, 1e-17);
    }

    [Fact]
    public void Lists_may_be_written_as_TOML() =>
        Assert.Single(Texts.Read(Hooked, "lure.hooks=[{ size = \"no. 2\", x = \"0 mm\" }]").Setup!.Lure.Hooks);

    [Theory]
    [InlineData("rod.length", "--set rod.length: key=value is due, for example --set \"retrieve.cadence=2 /s\"")]
    [InlineData("solver.nodes=4.5", "--set solver.nodes=4.5: solver.nodes: \"4.5\" is not a whole number; allowed: 1 to 400")]
    [InlineData("lure.hooks[3].x=1 mm", "--set lure.hooks[3].x=1 mm: lure.hooks[3].x: there is no such item; lure.hooks has 2, counted from 1")]
    [InlineData("lure.hooks[1].y=1 mm", "--set lure.hooks[1].y=1 mm: lure.hooks[1].y: unknown key; allowed: type, size, diameter, x, z, mass, drag_area, drag_area_along, feather_area, dressing, density")]
    [InlineData("lure.hooks=[{", "--set lure.hooks=[{: the value cannot be read; a list is written [{ x = \"1 mm\" }], a text in quotes")]
    [InlineData("retrieve.cadence=9 /s", "--set retrieve.cadence=9 /s: retrieve.cadence: \"9 /s\" is out of range; allowed: 0.3 to 6 /s")]
    [InlineData("rod=none.toml", "--set rod=none.toml: rod: \"none.toml\": there is no such file; files are looked for beside the one that names them; luresim list rods shows the parts that come with the program")]
    public void A_bad_override_is_named(string given, string expected)
    {
        string[] errors = Texts.Errors(Hooked, given);
        Assert.Equal(expected, string.Join('\n', errors));
    }

    [Fact]
    public void Variants_do_not_disturb_each_other()
    {
        ScenarioSource source = ScenarioSource.FromText(Hooked);
        string plain = SpecText.Of(source.Resolve().Scenario!);
        string[] variants = new string[64];
        Parallel.For(0, variants.Length, i => variants[i] = SpecText.Of(source.Resolve([$"rod.length={2 + (i % 8 * 0.01)} m"]).Scenario!));
        Assert.Equal(8, variants.Distinct().Count());
        Assert.Equal(plain, SpecText.Of(source.Resolve().Scenario!));
    }
}
