using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Tests;

/// <summary>Which units a file is written in.</summary>
public sealed class UnitFamilyTests
{
    private const string Metric = "[rod]\nlength = \"2.1 m\"\npower = \"medium\"\n[line]\nmaterial = \"nylon\"\ndiameter = \"0.3 mm\"\n[lure]\nshape = \"cigar\"\nlength = \"110 mm\"\ndiameter = \"2 cm\"\nmass = \"14 grams\"\n";
    private const string Trade = "[rod]\nlength = \"7'\"\npower = \"medium\"\n[line]\nmaterial = \"nylon\"\ndiameter = \"0.3 mm\"\n[lure]\nshape = \"cigar\"\nlength = \"4 1/2 in\"\ndiameter = \"3/4 inch\"\nmass = \"1/2 ounce\"\n";

    [Fact]
    public void A_file_is_called_by_the_units_in_it()
    {
        Assert.Equal(UnitFamily.Metric, Of(Metric));
        Assert.Equal(UnitFamily.Trade, Of(Trade));
        Assert.Equal(UnitFamily.Mixed, Of(Texts.Least));
        Assert.Equal(UnitFamily.Mixed, Of("title = \"x\"\n"));
    }

    [Theory]
    [InlineData("reel.drag", "30 N")]
    [InlineData("reel.drag", "3 kg")]
    [InlineData("reel.take_up", "70 cm/turn")]
    public void A_metric_value_makes_a_file_in_trade_units_mixed(string key, string text) =>
        Assert.Equal(UnitFamily.Mixed, Of($"{Trade}[{key.Split('.')[0]}]\n{key.Split('.')[1]} = \"{text}\"\n"));

    // Times, angles, rhythms and the diameter of a line are written alike everywhere.
    [Fact]
    public void What_everybody_writes_alike_decides_nothing() =>
        Assert.Equal(UnitFamily.Trade, Of($"{Trade}tie = {{ x = \"50 mm\", z = \"0 mm\" }}\nhooks = [{{ size = \"no. 4\", x = \"20 mm\" }}]\n[reel]\nspool_diameter = \"34 mm\"\n[retrieve]\ncadence = \"2 /s\"\nduration = \"10 s\"\n[leader]\nmaterial = \"nylon\"\nlength = \"15 in\"\ndiameter = \"0.4 mm\"\n"));

    [Fact]
    public void Overrides_do_not_change_what_the_file_is_written_in() =>
        Assert.Equal(UnitFamily.Trade, Texts.Read(Trade, "lure.mass=14 g", "rod.length=2.1 m").Units);

    [Fact]
    public void A_file_without_units_takes_after_those_it_builds_on()
    {
        using var folder = new Folder();
        folder.Write("base.toml", Trade);
        string top = folder.Write("top.toml", "base = \"base.toml\"\n[retrieve]\ncadence = \"2 /s\"\n");
        string own = folder.Write("own.toml", "base = \"base.toml\"\n[retrieve]\ndistance = \"20 m\"\n");
        Assert.Equal(UnitFamily.Trade, ScenarioSource.Read(top).Units);
        Assert.Equal(UnitFamily.Metric, ScenarioSource.Read(own).Units);
    }

    [Fact]
    public void Units_are_read_in_any_case()
    {
        Assert.Equal("lb", Quantity.Read("30 LBS.", QuantityKind.Force).Unit);
        Assert.Equal("oz", Quantity.Read("1/2 Ounce", QuantityKind.Mass).Unit);
        Assert.Equal("ft", Quantity.Read("7'6\"", QuantityKind.Length).Unit);
        Assert.Equal("in/turn", Quantity.Read("28 Inches per turn", QuantityKind.TakeUp).Unit);
    }

    private static UnitFamily Of(string text) => Texts.Read(text).Units;
}
