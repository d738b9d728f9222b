using System.Globalization;
using CsCheck;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Tests.Quantities;

public class QuantityPropertyTests
{
    private static readonly QuantityKind[] Measured =
    [
        QuantityKind.Length, QuantityKind.Mass, QuantityKind.Force, QuantityKind.Angle, QuantityKind.Time, QuantityKind.Frequency,
        QuantityKind.Speed, QuantityKind.TakeUp, QuantityKind.Temperature, QuantityKind.Density, QuantityKind.Torque, QuantityKind.Modulus,
        QuantityKind.Area, QuantityKind.Salinity, QuantityKind.Ratio, QuantityKind.LineNumber, QuantityKind.AngularSpeed, QuantityKind.Inertia,
        QuantityKind.TorquePerSpeed, QuantityKind.TorquePerSpeedSquared, QuantityKind.ForcePerLength, QuantityKind.AnglePerLength,
    ];

    [Fact]
    public void A_formatted_value_reads_back_to_the_same_bits() =>
        Gen.Select(Gen.Int[0, Measured.Length - 1].Select(i => Measured[i]), Gen.Double[-1e9, 1e9]).Sample((kind, si) =>
        {
            QuantityValue value = Quantity.Read(Quantity.Format(si, kind), kind);
            return value.Error is null && value.Si.Equals(si);
        });

    [Fact]
    public void Feet_and_inches_equal_their_inches() =>
        Gen.Select(Gen.Int[0, 20], Gen.Int[0, 11], Gen.Int[0, 3].Select(i => new[] { "{0} ft {1} in", "{0}'{1}\"", "{0}' {1}", "{0}'-{1}\"" }[i])).Sample((feet, inches, form) =>
        {
            string text = string.Format(CultureInfo.InvariantCulture, form, feet, inches);
            double both = Quantity.Read(text, QuantityKind.Length).Si;
            double one = Quantity.Read($"{(12 * feet) + inches} in", QuantityKind.Length).Si;
            return Math.Abs(both - one) <= 1e-15;
        });

    [Fact]
    public void Mixed_numbers_equal_their_decimals() =>
        Gen.Select(Gen.Int[0, 9], Gen.Int[0, 63], Gen.Int[1, 6].Select(i => 1 << i)).Sample((whole, above, below) =>
        {
            double mixed = Quantity.Read($"{whole} {above}/{below} oz", QuantityKind.Mass).Si;
            string plain = (whole + ((double)above / below)).ToString("R", CultureInfo.InvariantCulture);
            return mixed.Equals(Quantity.Read($"{plain} oz", QuantityKind.Mass).Si);
        });

    [Fact]
    public void Any_text_gives_a_finite_value_or_an_error() =>
        Gen.Select(Gen.Int[0, Measured.Length - 1].Select(i => Measured[i]), Gen.String["0123456789.,/'\"- ftinmozge%:+eE#PE"]).Sample((kind, text) =>
        {
            QuantityValue value = Quantity.Read(text, kind);
            return value.Error is null ? double.IsFinite(value.Si) : double.IsNaN(value.Si);
        });

    [Fact]
    public void The_culture_of_the_machine_does_not_matter()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = new CultureInfo("de-DE");
        try
        {
            Assert.Equal(0.5, Quantity.Read("0.5 m", QuantityKind.Length).Si);
            Assert.Equal("0.5 m", Quantity.Format(0.5, QuantityKind.Length));
            Assert.Equal("0.5 m", Quantity.Show(0.5, QuantityKind.Length, "m"));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
