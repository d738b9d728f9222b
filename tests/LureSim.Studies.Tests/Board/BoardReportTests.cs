using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Studies.Board;

namespace LureSim.Studies.Tests.Board;

public sealed class BoardReportTests
{
    private static BoardReport Report(string length, string width, string thickness, string mass, string? material = null)
    {
        static QuantityValue Of(string text, QuantityKind kind) => Quantity.Read(text, kind) is { Error: null } value ? value : throw new ArgumentException(text);
        return new(
            new(Of(length, QuantityKind.Length), Of(width, QuantityKind.Length), Of(thickness, QuantityKind.Length), Of(mass, QuantityKind.Mass)),
            material is null ? null : LureBuildKeys.Material.ChoiceOf(material), [0.1, 0.05, 0.02]);
    }

    // 36 x 3 15/16 x 2 in are 283.5 in3, 4645.7 cm3; 22.5 oz are 637.86 g: 0.1373 g/cm3, by exact definitions of inch and ounce.
    [Fact]
    public void A_board_of_the_trade_has_the_density_of_pencil_and_paper()
    {
        BoardReport report = Report("36 in", "3 15/16 in", "2 in", "22.5 oz", "balsa");
        Assert.Equal(22.5 * 28.349523125 / (283.5 * 2.54 * 2.54 * 2.54) * 1000.0, report.DensityKgM3, 1e-9);
        Assert.Equal(137.3, report.DensityKgM3, 0.05);
        Assert.False(report.IsDoubtful);
        Assert.Empty(report.Questions);
        Assert.Equal("balsa", report.Near[0].Name);
        Assert.Equal(report.DensityKgM3 * 1e-4, report.OffcutKg, 1e-12);
    }

    // Each slip made on that board: what it would have been is among the questions.
    [Theory]
    [InlineData("9 in", "3 15/16 in", "2 in", "22.5 oz", "the mass that of the whole board, and are the measures those of a quarter", 4)]
    [InlineData("18 in", "3 15/16 in", "2 in", "22.5 oz", "those of half of it", 2)]
    [InlineData("36 in", "3 15/16 in", "2 in", "5.625 oz", "and is the mass that of a quarter", 0.25)]
    [InlineData("36 in", "10 in", "2 in", "22.5 oz", "one of the measures in cm, not in in (factor 2.54)", 0.394)]
    [InlineData("36 in", "10 in", "5.08 in", "22.5 oz", "two of the measures in cm, not in in (factor 2.54^2)", 0.155)]
    [InlineData("91.44 in", "10 in", "5.08 in", "22.5 oz", "all three measures in cm, not in in (factor 2.54^3)", 0.061)]
    [InlineData("36 cm", "3.9375 cm", "2 cm", "22.5 oz", "all three measures in in, not in cm (factor 2.54^3)", 16.39)]
    [InlineData("36 in", "3 15/16 in", "2 in", "22.5 g", "the mass in oz, not in g (factor 28.35)", 0.0353)]
    [InlineData("36 in", "3 15/16 in", "2 in", "638 oz", "the mass in g, not in oz (factor 28.35)", 28.35)]
    [InlineData("36 in", "3 15/16 in", "2 in", "1.406 oz", "the mass in lb, not in oz (factor 16)", 0.0625)]
    public void A_slip_is_asked_about_with_its_factor(string length, string width, string thickness, string mass, string says, double wrongBy)
    {
        BoardReport report = Report(length, width, thickness, mass, "balsa");
        Assert.Equal(wrongBy, report.DensityKgM3 / 137.3, 0.03 * wrongBy);
        Assert.True(report.IsDoubtful);
        BoardQuestion question = Assert.Single(report.Questions, q => q.Slip.Question.Contains(says, StringComparison.Ordinal));
        Assert.Equal(137.3, question.DensityKgM3, 3.0);
        Assert.All(report.Questions, q => Assert.InRange(q.DensityKgM3, 90.0, 260.0));
    }

    [Fact]
    public void Without_a_material_only_what_no_wood_can_be_is_questioned()
    {
        Assert.Empty(Report("9 in", "3 15/16 in", "2 in", "22.5 oz").Questions);
        Assert.NotEmpty(Report("36 in", "3 15/16 in", "2 in", "638 oz").Questions);
        BoardReport steel = Report("100 mm", "100 mm", "100 mm", "7.85 kg", "maple");
        Assert.True(steel.IsDoubtful && steel.DensityKgM3 > BoardReport.SeaKgM3);
        Assert.Equal(7850.0, steel.DensityKgM3, 1e-6);
    }
}
