using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Tests.Quantities;

public class QuantityTests
{
    // Exact definitions: inch 0.0254 m (1959), pound 0.45359237 kg (1959), standard gravity 9.80665 m/s2 (1901).
    private const double Inch = 0.0254;
    private const double Pound = 0.45359237;
    private const double PoundForce = Pound * 9.80665;

    [Theory]
    [InlineData("7 ft 6 in", 90)]
    [InlineData("7ft 6in", 90)]
    [InlineData("7'6\"", 90)]
    [InlineData("7' 6\"", 90)]
    [InlineData("7' 6", 90)]
    [InlineData("7'-6\"", 90)]
    [InlineData("7'6''", 90)]
    [InlineData("7\u20196\u201D", 90)]
    [InlineData("7\u20326\u2033", 90)]
    [InlineData("7 1/2'", 90)]
    [InlineData("7' 6 1/2\"", 90.5)]
    [InlineData("7 feet 6 inches", 90)]
    [InlineData("7.5 ft", 90)]
    [InlineData("15 in", 15)]
    [InlineData("15\"", 15)]
    [InlineData("1 3/8 in", 1.375)]
    [InlineData("1-3/8 in", 1.375)]
    [InlineData("-2 in", -2)]
    [InlineData("-1/2 in", -0.5)]
    [InlineData("-1 1/2 in", -1.5)]
    [InlineData("+1 1/2 in", 1.5)]
    [InlineData("7'11 1/2\"", 95.5)]
    [InlineData("7'0\"", 84)]
    [InlineData("\u22122 in", -2)]
    [InlineData("10 yd", 360)]
    [InlineData("0.29 mm", 0.29 / 25.4)]
    [InlineData("2.54 cm", 1)]
    [InlineData("  2.54e-2   m ", 1)]
    [InlineData("7-6", 90)]
    [InlineData("7-6\"", 90)]
    [InlineData("6'-6\"", 78)]
    [InlineData("7 ft 6", 90)]
    [InlineData("7ft6", 90)]
    [InlineData("7ft6in", 90)]
    [InlineData("7 ft. 6 in.", 90)]
    [InlineData("7 Ft 6 In", 90)]
    [InlineData("7 foot 6", 90)]
    [InlineData("7-foot-6", 90)]
    [InlineData("7 feet, 6 inches", 90)]
    [InlineData("7 feet and 6 inches", 90)]
    [InlineData("7 1/2 ft", 90)]
    [InlineData("7\u00BD ft", 90)]
    [InlineData("7.5'", 90)]
    [InlineData("7`6\"", 90)]
    [InlineData("7\u00B46\u201C", 90)]
    [InlineData("7\u2018 6\u201E", 90)]
    [InlineData("7\u2019 \u2013 6\u201D", 90)]
    [InlineData("\uFF17\uFF46\uFF54", 84)]
    [InlineData("120 yds", 120 * 36)]
    [InlineData("15 Inches", 15)]
    [InlineData("3 M", 3 / 0.0254)]
    public void Lengths_in_the_spellings_of_the_trade(string text, double inches)
    {
        QuantityValue value = Quantity.Read(text, QuantityKind.Length);
        Assert.Null(value.Error);
        Near(inches * Inch, value.Si);
    }

    [Theory]
    [InlineData("5/8 oz", QuantityKind.Mass, 0.625 * Pound / 16)]
    [InlineData("1 3/8 oz", QuantityKind.Mass, 1.375 * Pound / 16)]
    [InlineData(".5 oz", QuantityKind.Mass, 0.5 * Pound / 16)]
    [InlineData("18 g", QuantityKind.Mass, 0.018)]
    [InlineData("30 lb", QuantityKind.Force, 30 * PoundForce)]
    [InlineData("4 kg", QuantityKind.Force, 4 * 9.80665)]
    [InlineData("100 g", QuantityKind.Force, 0.1 * 9.80665)]
    [InlineData("8 oz", QuantityKind.Force, 0.5 * PoundForce)]
    [InlineData("35 N", QuantityKind.Force, 35)]
    [InlineData("180 deg", QuantityKind.Angle, Math.PI)]
    [InlineData("1 rad", QuantityKind.Angle, 1)]
    [InlineData("100 ms", QuantityKind.Time, 0.1)]
    [InlineData("2 /s", QuantityKind.Frequency, 2)]
    [InlineData("120 /min", QuantityKind.Frequency, 2)]
    [InlineData("2 Hz", QuantityKind.Frequency, 2)]
    [InlineData("36 km/h", QuantityKind.Speed, 10)]
    [InlineData("22 in/turn", QuantityKind.TakeUp, 22 * Inch)]
    [InlineData("56 cm/turn", QuantityKind.TakeUp, 0.56)]
    [InlineData("72 F", QuantityKind.Temperature, (72 - 32) / 1.8)]
    [InlineData("22 \u00B0C", QuantityKind.Temperature, 22)]
    [InlineData("295.15 K", QuantityKind.Temperature, 22)]
    [InlineData("10 kn", QuantityKind.Speed, 10 * 1852.0 / 3600.0)]
    [InlineData("10 mph", QuantityKind.Speed, 10 * 63360 * Inch / 3600.0)]
    [InlineData("10 ft/s", QuantityKind.Speed, 120 * Inch)]
    [InlineData("10 in/s", QuantityKind.Speed, 10 * Inch)]
    [InlineData("10 cm/s", QuantityKind.Speed, 0.1)]
    [InlineData("1.14 g/cm3", QuantityKind.Density, 1140)]
    [InlineData("2.2 GPa", QuantityKind.Modulus, 2.2e9)]
    [InlineData("3 N m", QuantityKind.Torque, 3)]
    [InlineData("1 lb ft", QuantityKind.Torque, PoundForce * 12 * Inch)]
    [InlineData("12 lb in", QuantityKind.Torque, PoundForce * 12 * Inch)]
    [InlineData("250 mN m", QuantityKind.Torque, 0.25)]
    [InlineData("3 kg cm", QuantityKind.Torque, 0.03 * 9.80665)]
    [InlineData("2 min", QuantityKind.Time, 120)]
    [InlineData("500 mg", QuantityKind.Mass, 5e-4)]
    [InlineData("2 lb", QuantityKind.Mass, 2 * Pound)]
    [InlineData("1 ft/turn", QuantityKind.TakeUp, 12 * Inch)]
    [InlineData("700 MPa", QuantityKind.Modulus, 7e8)]
    [InlineData("3 mm2", QuantityKind.Area, 3e-6)]
    [InlineData("2 in2", QuantityKind.Area, 2 * Inch * Inch)]
    [InlineData("35 ppt", QuantityKind.Salinity, 35)]
    [InlineData("180 deg/s", QuantityKind.AngularSpeed, Math.PI)]
    [InlineData("15 g cm2", QuantityKind.Inertia, 15e-7)]
    [InlineData("0.5 uN m s", QuantityKind.TorquePerSpeed, 0.5e-6)]
    [InlineData("2 nN m s2", QuantityKind.TorquePerSpeedSquared, 2e-9)]
    [InlineData("0.5 N/m", QuantityKind.ForcePerLength, 0.5)]
    [InlineData("1 lb/ft", QuantityKind.ForcePerLength, PoundForce / (12 * Inch))]
    [InlineData("2 ounces per foot", QuantityKind.ForcePerLength, PoundForce / (8 * 12 * Inch))]
    [InlineData("90 deg/m", QuantityKind.AnglePerLength, 0.5 * Math.PI)]
    [InlineData("3 deg per ft", QuantityKind.AnglePerLength, Math.PI / (60 * 12 * Inch))]
    [InlineData("3 lb 4 oz", QuantityKind.Mass, 3.25 * Pound)]
    [InlineData("3lb4oz", QuantityKind.Mass, 3.25 * Pound)]
    [InlineData("3 lbs. 4 1/2 oz.", QuantityKind.Mass, (3 + (4.5 / 16)) * Pound)]
    [InlineData("3 pounds, 4 ounces", QuantityKind.Mass, 3.25 * Pound)]
    [InlineData("3 lb and 4", QuantityKind.Mass, 3.25 * Pound)]
    [InlineData("0 lb 14 oz", QuantityKind.Mass, 14 * Pound / 16)]
    [InlineData("1 cm2", QuantityKind.Area, 1e-4)]
    [InlineData("35 g/kg", QuantityKind.Salinity, 35)]
    [InlineData("7.1:1", QuantityKind.Ratio, 7.1)]
    [InlineData("7.1", QuantityKind.Ratio, 7.1)]
    [InlineData("25 %", QuantityKind.Ratio, 0.25)]
    [InlineData("40", QuantityKind.WholeNumber, 40)]
    [InlineData("30-lb", QuantityKind.Force, 30 * PoundForce)]
    [InlineData("30lb", QuantityKind.Force, 30 * PoundForce)]
    [InlineData("30#", QuantityKind.Force, 30 * PoundForce)]
    [InlineData("30 lb test", QuantityKind.Force, 30 * PoundForce)]
    [InlineData("3.5 kgf", QuantityKind.Force, 3.5 * 9.80665)]
    [InlineData("\u00BD oz", QuantityKind.Mass, 0.5 * Pound / 16)]
    [InlineData("1\u00BD oz", QuantityKind.Mass, 1.5 * Pound / 16)]
    [InlineData("1\u20444 oz", QuantityKind.Mass, 0.25 * Pound / 16)]
    [InlineData("1/2 ounce", QuantityKind.Mass, 0.5 * Pound / 16)]
    [InlineData("1/2oz", QuantityKind.Mass, 0.5 * Pound / 16)]
    [InlineData("1/2-oz", QuantityKind.Mass, 0.5 * Pound / 16)]
    [InlineData("14 grams", QuantityKind.Mass, 0.014)]
    [InlineData("14g", QuantityKind.Mass, 0.014)]
    [InlineData("14 G", QuantityKind.Mass, 0.014)]
    [InlineData("7.1 : 1", QuantityKind.Ratio, 7.1)]
    [InlineData("7.1 to 1", QuantityKind.Ratio, 7.1)]
    [InlineData("25 percent", QuantityKind.Ratio, 0.25)]
    [InlineData("2 per second", QuantityKind.Frequency, 2)]
    [InlineData("2/s", QuantityKind.Frequency, 2)]
    [InlineData("2 a second", QuantityKind.Frequency, 2)]
    [InlineData("120 per minute", QuantityKind.Frequency, 2)]
    [InlineData("120 bpm", QuantityKind.Frequency, 2)]
    [InlineData("10 knots", QuantityKind.Speed, 10 * 1852.0 / 3600.0)]
    [InlineData("10 kts", QuantityKind.Speed, 10 * 1852.0 / 3600.0)]
    [InlineData("10 MPH", QuantityKind.Speed, 10 * 63360 * Inch / 3600.0)]
    [InlineData("22 inches per turn", QuantityKind.TakeUp, 22 * Inch)]
    [InlineData("22\"/turn", QuantityKind.TakeUp, 22 * Inch)]
    [InlineData("72 deg F", QuantityKind.Temperature, (72 - 32) / 1.8)]
    [InlineData("22c", QuantityKind.Temperature, 22)]
    [InlineData("1 ft-lb", QuantityKind.Torque, PoundForce * 12 * Inch)]
    [InlineData("1 cm^2", QuantityKind.Area, 1e-4)]
    [InlineData("\u201320 degrees", QuantityKind.Angle, -Math.PI / 9)]
    [InlineData("PE 3", QuantityKind.LineNumber, 3)]
    [InlineData("PE0.8", QuantityKind.LineNumber, 0.8)]
    [InlineData("no. 3", QuantityKind.LineNumber, 3)]
    [InlineData("#1.5", QuantityKind.LineNumber, 1.5)]
    public void Other_quantities(string text, QuantityKind kind, double si)
    {
        QuantityValue value = Quantity.Read(text, kind);
        Assert.Null(value.Error);
        Near(si, value.Si);
    }

    // The factor behind rpm has ten digits.
    [Fact]
    public void Sixty_turns_a_minute_are_a_whole_turn_a_second() =>
        Assert.Equal(2.0 * Math.PI, Quantity.Read("60 rpm", QuantityKind.AngularSpeed).Si, 1e-9);

    [Theory]
    [InlineData("0,5 m", "it has a comma")]
    [InlineData("1,000 mm", "it has a comma")]
    [InlineData("1 000 mm", "two numbers in a row")]
    [InlineData("1'000 mm", "feet and inches are written")]
    [InlineData("1'000", "inches after feet must lie between 0 and 12")]
    [InlineData("7'13\"", "inches after feet must lie between 0 and 12")]
    [InlineData("7'12\"", "inches after feet must lie between 0 and 12")]
    [InlineData("7-13", "inches after feet must lie between 0 and 12")]
    [InlineData("7 ft 6 lb", "feet and inches are written")]
    [InlineData("6'6 to 7'", "feet and inches are written")]
    [InlineData("5 to 7 m", "one value is due, not a range")]
    [InlineData("7.5 ft 6 in", "feet in front of inches must be a whole number")]
    [InlineData("-7 ft 6 in", "feet in front of inches must be a whole number")]
    [InlineData("7", "it has no unit")]
    [InlineData("", "it does not start with a number")]
    [InlineData("m", "it does not start with a number")]
    [InlineData("nan m", "it is not a finite number")]
    [InlineData("-inf m", "it is not a finite number")]
    [InlineData("1e999 m", "it is not a finite number")]
    [InlineData("1/0 in", "the fraction divides by zero")]
    [InlineData("1.5/8 in", "a fraction is two whole numbers")]
    [InlineData("1/2/3 in", "a fraction is two whole numbers")]
    [InlineData("5. m", "digits are missing after the decimal point")]
    [InlineData("1.2.3 m", "stray '.'")]
    [InlineData("1_000 m", "stray '_'")]
    [InlineData("3 kg", "\"kg\" does not fit here")]
    [InlineData("3 mi", "\"mi\" does not fit here")]
    [InlineData("3 m extra", "\"m extra\" does not fit here")]
    public void Refused_lengths_say_why_and_what_is_due(string text, string why)
    {
        QuantityValue value = Quantity.Read(text, QuantityKind.Length);
        Assert.NotNull(value.Error);
        Assert.StartsWith($"\"{text}\": ", value.Error, StringComparison.Ordinal);
        Assert.Contains(why, value.Error, StringComparison.Ordinal);
        Assert.EndsWith(Units.Due(QuantityKind.Length), value.Error, StringComparison.Ordinal);
        Assert.True(double.IsNaN(value.Si));
    }

    [Theory]
    [InlineData("3", QuantityKind.LineNumber)]
    [InlineData("PE x", QuantityKind.LineNumber)]
    [InlineData("PE 3 lb", QuantityKind.LineNumber)]
    [InlineData("22 in", QuantityKind.TakeUp)]
    [InlineData("120", QuantityKind.Frequency)]
    [InlineData("0.5 kg", QuantityKind.Ratio)]
    [InlineData("1.5/8 oz", QuantityKind.Mass)]
    [InlineData("40 /s", QuantityKind.WholeNumber)]
    public void Refused_others(string text, QuantityKind kind) => Assert.NotNull(Quantity.Read(text, kind).Error);

    [Fact]
    public void Decimal_feet_are_accepted_with_a_note()
    {
        QuantityValue value = Quantity.Read("9.6 ft", QuantityKind.Length);
        Near(9.6 * 12 * Inch, value.Si);
        Assert.Equal("\"9.6 ft\" is read as decimal feet, 9 ft 7.2 in; 9 ft 6 in would be written 9'6\"", value.Note);
        Assert.Null(Quantity.Read("9 ft", QuantityKind.Length).Note);
        Assert.Equal("\"7.75 ft\" is read as decimal feet, 7 ft 9 in", Quantity.Read("7.75 ft", QuantityKind.Length).Note);
        Assert.Equal("\"7-6\" is read as 7 ft 6 in", Quantity.Read("7-6", QuantityKind.Length).Note);
        Assert.Null(Quantity.Read("9.6 m", QuantityKind.Length).Note);
    }

    // Five roundings of a double (half a unit in the last place each).
    private static void Near(double expected, double actual)
    {
        double tolerance = 5.0 * 1.2e-16 * Math.Abs(expected);
        Assert.Equal(expected, actual, Math.Max(tolerance, double.Epsilon));
    }
}
