using LureSim.Reports.Kit.Text;

namespace LureSim.Reports.Tests.Text;

public sealed class ShownTests
{
    private const double PoundN = 4.4482216152605;

    // Inch, foot, pound: NIST Handbook 44, appendix C; standard gravity: CGPM 1901; mile, J, ft-lb follow from them.
    [Theory]
    [InlineData(ShownQuantity.Size, 0.0254, "1.0 in", "2.5 cm")]
    [InlineData(ShownQuantity.Size, 0.2388, "9.4 in", "24 cm")]
    [InlineData(ShownQuantity.Size, 0.0032, "0.13 in", "3.2 mm")]
    [InlineData(ShownQuantity.Size, -0.0032, "-0.13 in", "-3.2 mm")]
    [InlineData(ShownQuantity.Distance, 30.48, "100 ft", "30 m")]
    [InlineData(ShownQuantity.Pull, PoundN / 16.0, "1.0 oz", "28 g")]
    [InlineData(ShownQuantity.Pull, 9.80665, "2.2 lb", "1.0 kg")]
    [InlineData(ShownQuantity.Pull, PoundN, "1.0 lb", "454 g")]
    [InlineData(ShownQuantity.Torque, PoundN * 0.4064, "1.0 lb at 16 in", "461 g at 40 cm")]
    [InlineData(ShownQuantity.Torque, 9.80665 * 0.4, "2.2 lb at 16 in", "1.0 kg at 40 cm")]
    [InlineData(ShownQuantity.Speed, 0.3048, "1.0 ft/s", "0.30 m/s")]
    [InlineData(ShownQuantity.Wind, 4.4704, "10 mph", "16 km/h")]
    [InlineData(ShownQuantity.Mass, 0.028349523125, "1.0 oz", "28 g")]
    [InlineData(ShownQuantity.Mass, 0.45359237, "1.0 lb", "454 g")]
    [InlineData(ShownQuantity.Energy, 1.3558179483314, "1.0 ft-lb", "1.4 J")]
    [InlineData(ShownQuantity.Volume, 1.6387064e-5, "1.0 in3", "16 cm3")]
    [InlineData(ShownQuantity.PerDistance, 1.0, "0.30 1/ft", "1.0 1/m")]
    public void A_quantity_reads_in_either_family_and_in_both(ShownQuantity quantity, double si, string trade, string metric)
    {
        Assert.Equal(trade, new Shown(UnitChoice.Trade).Text(quantity, si));
        Assert.Equal(metric, new Shown(UnitChoice.Metric).Text(quantity, si));
        Assert.Equal($"{trade} ({metric})", Shown.Both.Text(quantity, si));
    }

    [Fact]
    public void What_is_too_small_to_tell_is_less_than_the_smallest_number_told()
    {
        Assert.Equal("less than 0.01 oz", new Shown(UnitChoice.Trade).Pull(1e-4));
        Assert.Equal("less than 0.1 g", new Shown(UnitChoice.Metric).Pull(-1e-4));
        Assert.Equal("less than 0.01 oz (0.3 g)", Shown.Both.Pull(1e-4));
        Assert.Equal("less than 0.01 oz (0.3 g)", Shown.Both.Pull(1e-3));
        Assert.Equal("0 oz (0 g)", Shown.Both.Pull(0.0));
    }

    [Fact]
    public void A_range_has_its_unit_once() => Assert.Equal("7.5 to 9.4 in (19 to 24 cm)", Shown.Both.Range(ShownQuantity.Size, 0.19, 0.2388));

    [Fact]
    public void A_thousand_grams_are_a_kilogram() => Assert.Equal("1.0 kg", new Shown(UnitChoice.Metric).Pull(0.9996 * 9.80665));

    [Fact]
    public void A_picture_speaks_one_family_the_metric_one_unless_only_the_other_is_wanted()
    {
        Assert.Equal("cm", Shown.Both.Unit(ShownQuantity.Size, 0.2).Name);
        Assert.Equal("in", new Shown(UnitChoice.Trade).Unit(ShownQuantity.Size, 0.2).Name);
        Assert.Equal("24 cm", Shown.Both.OneFamily.Size(0.2388));
    }

    [Theory]
    [InlineData(0.2388, 1)]
    [InlineData(0.0954, 1)]
    [InlineData(1.234, 0)]
    [InlineData(0.0, 0)]
    public void A_column_has_decimals_for_its_largest_number(double largest, int places) =>
        Assert.Equal(places, new Shown(UnitChoice.Metric).Unit(ShownQuantity.Size, 0.2).Places(largest));
}
