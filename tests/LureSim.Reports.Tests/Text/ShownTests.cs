using System.Text.RegularExpressions;
using LureSim.Model.Cast;
using LureSim.Model.Crawl;
using LureSim.Model.Landing;
using LureSim.Model.Pool;
using LureSim.Model.Retrieve;
using LureSim.Model.Strike;
using LureSim.Model.Trim;
using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Cadence;
using LureSim.Studies.Doubt;

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

    [Theory]
    [InlineData("glide_width_m", 0.0534, "2.1 in (5.3 cm)")]
    [InlineData("distance_mean_m", 31.2, "102 ft (31 m)")]
    [InlineData("line_drag_mean_N", 0.31, "1.1 oz (32 g)")]
    [InlineData("best_wrist_torque_rms_Nm", 0.86, "7.6 oz at 16 in (219 g at 40 cm)")]
    [InlineData("pull_impulse_Ns", 0.04, "0.14 oz s (4.1 g s)")]
    [InlineData("launch_speed_m_s", 30.0, "98 ft/s (30 m/s)")]
    [InlineData("coast_per_m", 5.7, "1.7 1/ft (5.7 1/m)")]
    [InlineData("energy_hands_J", 8.0, "5.9 ft-lb (8.0 J)")]
    [InlineData("best_per_s", 2.0, "2.0 /s")]
    [InlineData("rest_trim_deg", 2.8, "2.8 deg")]
    [InlineData("flip_share", 0.5, "0.50")]
    public void A_figure_is_told_in_the_units_that_its_key_asks_for(string key, double value, string text) =>
        Assert.Equal(text, Shown.Joined(FigureUnit.Of(Shown.Both, key, value), u => u.Text(value)));

    // SI that nobody reads off a scale must have a word of the trade.
    [Fact]
    public void Every_figure_of_the_product_has_units_in_either_family()
    {
        string[] keys =
        [
            .. RetrieveFigures.All.Select(f => f.Key), .. CastFigures.All.Select(f => f.Key), .. CadenceFigures.All.Select(f => f.Key), .. TrimFigures.All.Select(f => f.Key), .. PoolFigures.All.Select(f => f.Key),
            .. CrawlFigures.All.Select(f => f.Key),
            .. StrikeFigures.All.Select(f => f.Key), .. LandingFigures.All.Select(f => f.Key),
        ];
        string[] shared = ["", "/s", "s", "deg", "W", "Hz", "rpm", "rad/s"];
        foreach (string key in keys)
        {
            ShownUnit[] units = FigureUnit.Of(Shown.Both, key, 0.01);
            Assert.True(units.Length == 2 || shared.Contains(units[0].Name), key);
            Assert.True(units.Length == 2 || !Regex.IsMatch(key, "_(m|N|Nm|J|kg|m3|N_m|m_s)$"), key);
        }
    }

    [Fact]
    public void A_key_in_words_has_no_unit() => Assert.Equal(["glide width", "launch speed", "flip share"], new[] { "glide_width_m", "launch_speed_m_s", "flip_share" }.Select(FigureUnit.Words));

    [Theory]
    [InlineData("cm", 15.0, "5.9 in (15 cm)")]
    [InlineData("ft", 7.0, "7.0 ft (2.1 m)")]
    [InlineData("oz", 0.5, "0.50 oz (14 g)")]
    [InlineData("/s", 2.25, "2.25 /s")]
    [InlineData("", 0.7, "0.7")]
    public void A_number_of_a_key_is_told_in_the_units_of_the_reader(string unit, double value, string text) => Assert.Equal(text, KeyUnit.Text(Shown.Both, unit, value));

    [Fact]
    public void A_guess_is_told_in_the_units_of_the_reader_and_in_its_own_where_they_have_no_digits_for_it()
    {
        GuessName grip = Guess(RodKeys.Grip, 0.2, 0.45), bearing = Guess(SpoolKeys.SpoolFriction, 1e-4, 1e-3);
        Assert.EndsWith("(7.9 to 18 in)", GuessWords.Of(grip, new(UnitChoice.Trade)), StringComparison.Ordinal);
        Assert.EndsWith("(20 to 45 cm)", GuessWords.Of(grip, Shown.Both), StringComparison.Ordinal);
        Assert.Equal(bearing.Label, GuessWords.Of(bearing, new(UnitChoice.Trade)));

        static GuessName Guess(KeySpec key, double low, double high)
        {
            var guess = new GuessedKey(key, 0.5 * (low + high), low, high);
            return new(key.Path, GuessDesign.Label(guess)) { Guess = guess };
        }
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
