using System.Globalization;
using LureSim.Model.Lines;

namespace LureSim.Model.Tests.Lines;

public sealed class LineSizingTests
{
    private const double Lb = LineLabels.NewtonPerLb;

    private static LineSizing.Result Resolve(
        LineMaterial m, double? mm = null, double? number = null, double? lb = null,
        SurfaceFilm film = SurfaceFilm.Dry, LineOverrides? overrides = null) =>
        LineSizing.Resolve(m, 1e-3 * mm, number, Lb * lb, film, overrides);

    [Fact]
    public void Braid_number_fixes_the_mass_and_packing_the_circle()
    {
        LineSpec spec = Resolve(LineMaterial.Braid, number: 3).Spec;
        Assert.Equal(600.0 / 9e6, spec.LinearDensityKgM, 12);
        double area = spec.LinearDensityKgM / spec.DensityKgM3;
        Assert.Equal(0.75, area / (Math.PI * spec.DiameterM * spec.DiameterM / 4.0), 12);
        Assert.Equal(50e9 * area, spec.AxialStiffnessN, 6);
        Assert.Equal(0.0, spec.BendingStiffnessNm2);
    }

    [Fact]
    public void Strand_diameter_fixes_mass_and_bending()
    {
        LineSpec spec = Resolve(LineMaterial.Nylon, mm: 0.43, film: SurfaceFilm.Wetted).Spec;
        Assert.Equal(1140 * Math.PI * 0.43e-3 * 0.43e-3 / 4.0, spec.LinearDensityKgM, 15);
        Assert.Equal(1.7e9 * Math.PI * Math.Pow(0.43e-3, 4) / 64.0, spec.BendingStiffnessNm2, 15);
    }

    [Theory]
    [InlineData(LineMaterial.Nylon, 15, 0.40)]
    [InlineData(LineMaterial.Nylon, 20, 0.45)]
    [InlineData(LineMaterial.Fluorocarbon, 15, 0.33)]
    [InlineData(LineMaterial.Fluorocarbon, 20, 0.40)]
    public void A_printed_label_gives_its_printed_diameter(LineMaterial material, double lb, double mm) =>
        Assert.Equal(mm, 1e3 * Resolve(material, lb: lb).Spec.DiameterM, 9);

    [Theory]
    [InlineData(LineMaterial.Nylon, 2.0)]
    [InlineData(LineMaterial.Nylon, 17.0)]
    [InlineData(LineMaterial.Fluorocarbon, 90.0)]
    public void Label_and_diameter_are_inverse(LineMaterial material, double lb) =>
        Assert.Equal(Lb * lb, LineLabels.LabelOfDiameter(material, LineLabels.DiameterOfLabel(material, Lb * lb)), 9);

    [Fact]
    public void Beyond_the_table_strength_grows_as_diameter_squared() =>
        Assert.Equal(2.0, LineLabels.DiameterOfLabel(LineMaterial.Nylon, 240 * Lb) / LineLabels.DiameterOfLabel(LineMaterial.Nylon, 60 * Lb), 12);

    [Theory]
    [InlineData(8)]
    [InlineData(30)]
    [InlineData(50)]
    [InlineData(80)]
    public void Braid_number_of_a_label_lies_between_the_two_tables(double lb)
    {
        (double low, double high) = lb switch { 8 => (0.5, 0.6), 30 => (2.5, 3.0), 50 => (4.0, 4.0), _ => (6.0, 8.0) };
        double number = TextileUnits.ToBraidNumber(Resolve(LineMaterial.Braid, lb: lb).Spec.LinearDensityKgM);
        Assert.InRange(number, low * (1 - 1e-12), high * (1 + 1e-12));
    }

    [Fact]
    public void Label_is_not_break()
    {
        Assert.Equal(49 * Lb, Resolve(LineMaterial.Braid, lb: 30).Spec.BreakN, 9);
        Assert.InRange(Resolve(LineMaterial.Nylon, lb: 20).Spec.BreakN, 0.8 * 20 * Lb, 20 * Lb);
        Assert.True(Resolve(LineMaterial.Fluorocarbon, lb: 20).Spec.BreakN > 20 * Lb);
    }

    // A braid's label of 30 lb: usual break over label 1.3 to 1.8, as strong wet as dry. Nylon of 20 lb: 1.0 to 1.3, of which 0.80 to 0.90 is left wet.
    [Theory]
    [InlineData(LineMaterial.Braid, 30.0, 1.3, 1.8)]
    [InlineData(LineMaterial.Nylon, 20.0, 0.80, 1.17)]
    [InlineData(LineMaterial.Fluorocarbon, 20.0, 1.05, 1.5)]
    public void The_range_of_the_break_is_label_times_break_over_label_times_wet_strength(LineMaterial material, double lb, double low, double high)
    {
        SizedValue value = Resolve(material, lb: lb).Values.Single(v => v.Name == nameof(LineSpec.BreakN));
        Assert.Equal(low * lb * Lb, value.Low, 1e-9);
        Assert.Equal(high * lb * Lb, value.High, 1e-9);
    }

    // 1.1 x 0.85 of a nylon label, 1.15 of a fluorocarbon one.
    [Fact]
    public void A_strand_breaks_at_its_usual_share_of_the_label()
    {
        Assert.Equal(1.1 * 0.85 * 20.0 * Lb, Resolve(LineMaterial.Nylon, lb: 20).Spec.BreakN, 1e-9);
        Assert.Equal(1.15 * 20.0 * Lb, Resolve(LineMaterial.Fluorocarbon, lb: 20).Spec.BreakN, 1e-9);
    }

    [Fact]
    public void Soaking_softens_nylon_and_nothing_else()
    {
        double Ratio(LineMaterial m) => Resolve(m, number: 4, film: SurfaceFilm.Wetted).Spec.AxialStiffnessN
            / Resolve(m, number: 4, film: SurfaceFilm.Dry).Spec.AxialStiffnessN;
        Assert.Equal(1.7 / 3.0, Ratio(LineMaterial.Nylon), 12);
        Assert.Equal(1.0, Ratio(LineMaterial.Braid), 12);
        Assert.Equal(1.0, Ratio(LineMaterial.Fluorocarbon), 12);
    }

    [Fact]
    public void A_printed_braid_diameter_too_small_for_its_label_holds_as_much_as_it_can_pack()
    {
        LineSpec spec = Resolve(LineMaterial.Braid, mm: 0.26, lb: 30).Spec;
        double packing = spec.LinearDensityKgM / spec.DensityKgM3 / (Math.PI * 0.26e-3 * 0.26e-3 / 4.0);
        Assert.Equal(0.26e-3, spec.DiameterM, 15);
        Assert.Equal(0.90, packing, 12);
    }

    [Fact]
    public void Origins_tell_given_derived_and_guess_apart()
    {
        LineSizing.Result r = Resolve(LineMaterial.Braid, number: 3, lb: 30, overrides: new(ModulusPa: 45e9));
        ValueOrigin Origin(string name) => r.Values.Single(v => v.Name == name).Origin;
        Assert.Equal(ValueOrigin.Derived, Origin(nameof(LineSpec.LinearDensityKgM)));
        Assert.Equal(ValueOrigin.Guess, Origin(nameof(LineSpec.DiameterM)));
        Assert.Equal(ValueOrigin.Given, Origin("LabelN"));
        Assert.Equal(ValueOrigin.Derived, Origin(nameof(LineSpec.AxialStiffnessN)));
        Assert.Contains(r.Guesses, g => g.StartsWith("DiameterM = ", StringComparison.Ordinal));
        Assert.DoesNotContain(r.Guesses, g => g.StartsWith("AxialStiffnessN", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(LineMaterial.Braid)]
    [InlineData(LineMaterial.Nylon)]
    [InlineData(LineMaterial.Fluorocarbon)]
    public void Every_value_lies_in_its_range(LineMaterial material)
    {
        foreach (LineSizing.Result r in new[]
        {
            Resolve(material, mm: 0.33), Resolve(material, number: 4), Resolve(material, lb: 25), Resolve(material, mm: 0.42, lb: 30),
        })
        {
            Assert.All(r.Values, v => Assert.True(v.Low <= v.Value && v.Value <= v.High, v.ToString()));
        }
    }

    [Theory]
    [InlineData(LineMaterial.Braid)]
    [InlineData(LineMaterial.Nylon)]
    [InlineData(LineMaterial.Fluorocarbon)]
    public void A_stronger_label_is_never_a_thinner_lighter_or_weaker_line(LineMaterial material)
    {
        LineSpec last = Resolve(material, lb: 2).Spec;
        for (double lb = 2.02; lb < 200; lb *= 1.01)
        {
            LineSpec next = Resolve(material, lb: lb).Spec;
            Assert.True(next.DiameterM > last.DiameterM && next.LinearDensityKgM > last.LinearDensityKgM, $"{lb} lb");
            Assert.True(next.AxialStiffnessN > last.AxialStiffnessN && next.BreakN > last.BreakN, $"{lb} lb");
            last = next;
        }
    }

    [Theory]
    [InlineData(LineMaterial.Nylon, null, null, null)]
    [InlineData(LineMaterial.Nylon, 0.40, 2.0, null)]
    [InlineData(LineMaterial.Nylon, 0.90, null, 10.0)]
    [InlineData(LineMaterial.Fluorocarbon, null, 1.0, 40.0)]
    [InlineData(LineMaterial.Braid, 0.285, 3.0, null)]
    [InlineData(LineMaterial.Braid, 0.90, 1.0, null)]
    [InlineData(LineMaterial.Braid, null, 1.0, 50.0)]
    [InlineData(LineMaterial.Braid, 0.15, null, 60.0)]
    public void Nothing_or_a_contradiction_is_refused(LineMaterial material, double? mm, double? number, double? lb) =>
        Assert.Throws<ArgumentException>(() => Resolve(material, mm, number, lb));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(0.0)]
    [InlineData(3.0)]
    public void A_diameter_out_of_range_is_refused(double mm) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Resolve(LineMaterial.Nylon, mm: mm));

    [Fact]
    public void Packing_cannot_be_stated_beside_number_and_diameter() =>
        Assert.Throws<ArgumentException>(() => Resolve(LineMaterial.Braid, mm: 0.34, number: 3, overrides: new(Packing: 0.7)));

    [Fact]
    public void Messages_do_not_follow_the_culture()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
        try
        {
            var e = Assert.Throws<ArgumentException>(() => Resolve(LineMaterial.Nylon, mm: 0.40, number: 2));
            Assert.Contains("0.235 mm, not 0.4 mm", e.Message, StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
