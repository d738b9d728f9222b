using LureSim.Scenarios.Quantities;
using LureSim.Scenarios.Variation;

namespace LureSim.Scenarios.Tests.Variation;

public class AxisReaderTests
{
    [Theory]
    [InlineData("line.material=braid,nylon", "braid|nylon")]
    [InlineData("line.label=30 lb , 50 lb", "30 lb|50 lb")]
    [InlineData("rod.length=6'6\",7'0\"", "6'6\"|7'0\"")]
    [InlineData("rod.length=\"6 ft 6 in\",\"7 ft\"", "6 ft 6 in|7 ft")]
    [InlineData("reel.ratio=6.3:1,7.1:1", "6.3:1|7.1:1")]
    [InlineData("reel.ratio=7.1:1", "7.1:1")]
    [InlineData("retrieve.hold_distance=true,false", "true|false")]
    [InlineData("retrieve.stroke=15 cm,6 deg", "15 cm|6 deg")]
    [InlineData("lure.hooks[2].x=-40 mm,-50 mm", "-40 mm|-50 mm")]
    [InlineData("lure.ballast=[{ mass = \"1 g\", x = \"0 mm\" }, { mass = \"2 g\", x = \"1 mm\" }],[]", "[{ mass = \"1 g\", x = \"0 mm\" }, { mass = \"2 g\", x = \"1 mm\" }]|[]")]
    [InlineData("line.material+line.film=braid+dry,nylon+wetted", "braid + dry|nylon + wetted")]
    [InlineData("retrieve.cadence=1 /s:2 /s:0.25 /s", "1 /s|1.25 /s|1.5 /s|1.75 /s|2 /s")]
    [InlineData("retrieve.cadence=1 /s:2 /s:0.4 /s", "1 /s|1.4 /s|1.8 /s")]
    [InlineData("retrieve.cadence=60 /min:2 /s:3", "1 /s|1.5 /s|2 /s")]
    [InlineData("retrieve.cadence=2 /s:1 /s:3", "2 /s|1.5 /s|1 /s")]
    [InlineData("retrieve.stroke=4 deg:8 deg:2 deg", "0.06981 rad|0.1047 rad|0.1396 rad")]
    [InlineData("water.temperature=50 F:68 F:9 F", "10 C|15 C|20 C")]
    [InlineData("lure.added_mass_factor=0.5:0.9:0.2", "0.5|0.7|0.9")]
    [InlineData("lure.added_mass_factor=0.5:0.9:n=3", "0.5|0.7|0.9")]
    [InlineData("retrieve.cadence=1 /s:2 /s:1 /s", "1 /s|2 /s")]
    [InlineData("solver.nodes=10:40:10", "10|20|30|40")]
    public void Values_in_order(string text, string labels) =>
        Assert.Equal(labels, string.Join('|', Good(text).Values.Select(v => v.Label)));

    [Theory]
    [InlineData("rod.length=6 ft,7 ft", "rod length, ft")]
    [InlineData("angler.rod_bearing=0 deg:120 deg:5", "rod bearing, deg")]
    [InlineData("retrieve.stroke=6 cm:30 cm:7", "stroke, cm")]
    [InlineData("line.material+line.film=braid+dry,nylon+wetted", "line material + line film")]
    [InlineData("lure.hooks[2].x=-40 mm,-50 mm", "lure hooks[2] x, mm")]
    public void Title_in_words_with_its_unit(string text, string title) => Assert.Equal(title, Good(text).Title);

    [Fact]
    public void Every_value_is_an_override_that_sets_exactly_it()
    {
        ScenarioSource source = ScenarioSource.FromText(Texts.Least);
        foreach (AxisValue value in Good("rod.length=6 ft 6 in:7 ft 6 in:13").Values)
        {
            Assert.Equal(value.Si, source.Resolve(value.Overrides).Setup!.Rod.LengthM);
        }

        AxisValue linked = Good("line.material+line.film=nylon+wetted").Values[0];
        Assert.Equal(["line.material=nylon", "line.film=wetted"], linked.Overrides);
        Assert.Equal("line.length", Assert.Single(Faults("line.length=1 m")).Key);
    }

    [Fact]
    public void Ends_are_kept_to_the_bit_and_steps_are_round()
    {
        IReadOnlyList<AxisValue> values = Good("line.diameter=0.1 mm:0.4 mm:0.1 mm").Values;
        Assert.Equal([Read("0.1 mm"), 0.0002, 0.0003, Read("0.4 mm")], values.Select(v => v.Si));

        static double Read(string text) => Quantity.Read(text, QuantityKind.Length).Si;
    }

    [Fact]
    public void A_range_without_step_is_for_sampling()
    {
        Axis axis = Good("retrieve.cadence=1 /s:3 /s");
        Assert.Empty(axis.Values);
        Assert.True(axis.IsRange && axis.IsNumeric);
        Assert.Equal(["retrieve.cadence=1.5 /s"], axis.At(0.25).Overrides);
        Assert.Equal("nylon", Good("line.material=braid,nylon").At(0.5).Label);
        Assert.Equal(20.0, Good("solver.nodes=10:30").At(0.49).Si);
        Assert.Throws<ArgumentOutOfRangeException>(() => axis.At(1.0));
    }

    [Fact]
    public void Words_are_not_numbers()
    {
        Assert.False(Good("line.material=braid,nylon").IsNumeric);
        Assert.False(Good("retrieve.stroke=15 cm,6 deg").IsNumeric);
        Assert.True(Good("rod.length=7 ft,6 ft").IsNumeric);
        Assert.Equal(15.0, Good("retrieve.stroke=10 cm,15 cm").InUnit(0.15), 1e-12);
    }

    [Theory]
    [InlineData("retrieve.cadense=1 /s,2 /s", "unknown key; did you mean retrieve.cadence?")]
    [InlineData("retrieve.cadence", "KEY=a,b,c or KEY=from:to:step")]
    [InlineData("retrieve.cadence=", "KEY=a,b,c or KEY=from:to:step")]
    [InlineData("retrieve.cadence=1 /s,2 m", "\"m\" does not fit here")]
    [InlineData("retrieve.cadence=1 /s,,2 /s", "an item of the list is empty")]
    [InlineData("retrieve.cadence=1:2:3", "it has no unit")]
    [InlineData("retrieve.cadence=1 /s:9 /s:5", "out of range; allowed: 0.3 to 6 /s")]
    [InlineData("retrieve.cadence=1 /s:2 /s:1", "\"1\" is no count")]
    [InlineData("retrieve.cadence=1 /s:2 /s:0 /s", "must be above zero")]
    [InlineData("retrieve.cadence=1 /s:2 /s:-1 /s", "must be above zero")]
    [InlineData("retrieve.cadence=1 /s:2 /s:3 /s", "is larger than the range")]
    [InlineData("retrieve.cadence=1 /s:2 /s:1 m", "\"m\" does not fit here")]
    [InlineData("retrieve.cadence=1 /s:2 /s:1e-9 /s", "makes more than 1000000 values")]
    [InlineData("retrieve.cadence=1 /s:1 /s:2", "both ends are the same")]
    [InlineData("lure.added_mass_factor=0.5:0.9:3", "larger than the range; a number of values is written n=5")]
    [InlineData("retrieve.stroke=10 cm:6 deg:3", "both ends must be of one kind")]
    [InlineData("line.material=braid:nylon", "it has no ranges, only lists")]
    [InlineData("line.material=braid,wool", "\"wool\" is not known")]
    [InlineData("solver.nodes=10.5,20", "not a whole number")]
    [InlineData("line.diameter=0,3 mm", "it has no unit")]
    [InlineData("line.material+line.film=braid,nylon+dry", "has 1 of 2 linked values")]
    [InlineData("line.material+line.film=braid+moist", "line.film: \"moist\" is not known")]
    [InlineData("lure.hooks[1].q=1 mm", "unknown key; allowed: type")]
    public void What_is_wrong_is_said(string text, string part) =>
        Assert.Contains(Faults(text), f => f.ToString().Contains(part, StringComparison.Ordinal) && f.Place == $"--vary {text}");

    [Fact]
    public void A_key_is_varied_once()
    {
        var faults = new List<ScenarioFault>();
        AxisReader.ReadAll(["rod.length=7 ft", "rod.length+line.film=6 ft+dry"], "--vary", faults);
        Assert.Equal("varied twice", Assert.Single(faults).Message);
    }

    [Fact]
    public void A_grid_counts_like_digits()
    {
        var grid = new Grid([Good("retrieve.cadence=1 /s,2 /s"), Good("line.material=braid,nylon,fluorocarbon")]);
        Assert.Equal(6, grid.Count);
        Assert.Equal(
            ["1 /s braid", "1 /s nylon", "1 /s fluorocarbon", "2 /s braid", "2 /s nylon", "2 /s fluorocarbon"],
            Enumerable.Range(0, 6).Select(i => string.Join(' ', grid.At(i).Select(v => v.Label))));
        Assert.Throws<ArgumentException>(() => new Grid([Good("retrieve.cadence=1 /s:2 /s")]));
        Assert.Equal(1, new Grid([]).Count);
    }

    private static Axis Good(string text)
    {
        var faults = new List<ScenarioFault>();
        Axis? axis = AxisReader.Read(text, "--vary", faults);
        Assert.Empty(faults);
        return axis!;
    }

    private static List<ScenarioFault> Faults(string text)
    {
        var faults = new List<ScenarioFault>();
        Assert.Null(AxisReader.Read(text, "--vary", faults));
        return faults;
    }
}
