using LureSim.Model;
using LureSim.Model.Lures;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Tests.Lures;

/// <summary>Mass from material, walls, coats, ballast in place of wood, rings.</summary>
public sealed class BodyKeyTests
{
    private static readonly string Wood = Texts.With("mass = \"18 g\"", "material = \"basswood\"\nballast = [{ mass = \"6 g\", x = \"-10 mm\", z = \"-4 mm\" }]");

    [Fact]
    public void A_wooden_body_weighs_its_wood_its_coat_and_its_lead()
    {
        ScenarioResult result = Texts.Read(Wood, "lure.coat_thickness=0 mm");
        Assert.Empty(result.Errors);
        Assert.Empty(result.Notes);
        LureSpec lure = result.Setup!.Lure;
        // Cigar: p/(p+1) of its cylinder, p = 2.5 (LureFormTests).
        double volume = 2.5 / 3.5 * Math.PI * 0.25 * 0.021 * 0.021 * 0.115;
        Assert.Equal((415.0 * (volume - (0.006 / 11340.0))) + 0.006, lure.MassKg, 2e-6);
        Assert.Equal(LureBuild.Solid, lure.Build.Kind);
        Assert.True(Texts.Read(Wood).Setup!.Lure.MassKg > lure.MassKg + 0.0005);
    }

    [Fact]
    public void The_range_of_a_material_is_a_guess_and_a_given_density_is_none()
    {
        EffectiveScenario effective = Texts.Read(Wood).Effective();
        EffectiveValue density = effective.Values.Single(v => v.Key == LureBuildKeys.Density);
        Assert.Equal((ValueMark.Guess, 415.0, 332.0, 498.0), (density.Mark, density.Si, Math.Round(density.Low, 9), Math.Round(density.High, 9)));
        Assert.Contains(effective.Guesses, g => g.Key == LureBuildKeys.CoatThickness);
        Assert.Equal(ValueMark.Given, Texts.Read(Wood, "lure.density=400 kg/m3").Effective().Values.Single(v => v.Key == LureBuildKeys.Density).Mark);
    }

    [Theory]
    [InlineData("lure.material=basswood")]
    [InlineData("lure.density=0.31 g/cm3|lure.coat_thickness=0.2 mm|lure.ballast=[{ mass = \"6 g\", x = \"0 mm\", material = \"tungsten\" }]")]
    [InlineData("lure.material=abs|lure.wall=1.6 mm|lure.belly_flat=0.7|lure.thickest=0.4")]
    [InlineData("lure.build=solid|lure.nose_bluntness=4|lure.hooks=[{ type = \"ring\", diameter = \"7 mm\", x = \"0 mm\" }]")]
    public void The_effective_file_reads_back_to_the_same_run(string set)
    {
        ScenarioResult first = Texts.Read(Texts.Least, set.Split('|'));
        Assert.Empty(first.Errors);
        ScenarioResult second = ScenarioSource.FromText(first.Effective().ToToml()).Resolve();
        Assert.Empty(second.Errors);
        Assert.Equal(SpecText.Of(first.Scenario!), SpecText.Of(second.Scenario!));
    }

    [Fact]
    public void Every_guess_of_a_wooden_body_can_be_drawn()
    {
        var source = ScenarioSource.FromText(Wood);
        ScenarioResult plain = source.Resolve();
        foreach (GuessedKey guess in plain.Effective().Guesses.Where(g => LureBuildKeys.All.Contains(g.Key)))
        {
            foreach (double end in new[] { guess.Low, guess.High })
            {
                ScenarioResult drawn = source.Resolve([guess.Override(end)]);
                Assert.Empty(drawn.Errors);
                Assert.NotEqual(SpecText.Of(plain.Scenario!), SpecText.Of(drawn.Scenario!));
            }
        }
    }

    [Fact]
    public void A_later_mass_takes_the_place_of_a_material()
    {
        LureSpec lure = Texts.Read(Wood, "lure.mass=20 g", "lure.build=solid").Setup!.Lure;
        Assert.Equal((0.02, LureBuild.Solid, null), (lure.MassKg, lure.Build.Kind, lure.Build.DensityKgM3));
    }

    [Theory]
    [InlineData("mass = \"18 g\"\nmaterial = \"pine\"", "lure.mass: given beside lure.material, which gives the mass too")]
    [InlineData("mass_with_hooks = \"18 g\"\ndensity = \"300 kg/m3\"", "lure.mass_with_hooks: given beside lure.density")]
    [InlineData("mass = \"18 g\"\nwall = \"1.5 mm\"", "lure.wall: gives the mass with lure.material or lure.density")]
    [InlineData("mass = \"18 g\"\ncoat_thickness = \"0.1 mm\"", "lure.coat_thickness: does not enter a shell of given mass")]
    [InlineData("material = \"abs\"\nwall = \"1.5 mm\"\nbuild = \"solid\"", "lure.wall: a solid body has no wall")]
    [InlineData("material = \"abs\"\nbuild = \"shell\"", "lure.build: a shell of known material is due a wall")]
    [InlineData("material = \"abs\"\nwall = \"10.4 mm\"", "nothing is left inside")]
    [InlineData("material = \"abs\"", "lure.material: 30.01 g to carry, hooks included, but the body displaces at most")]
    [InlineData("material = \"oak\"", "lure.material: \"oak\" is not known; allowed: balsa")]
    [InlineData("density = \"0.4\"", "lure.density: \"0.4\": it has no unit")]
    [InlineData("material = \"pine\"\nballast = [{ mass = \"350 g\", x = \"0 mm\" }]", "lure.ballast: takes 30.9 cm3 of a body of 28.5 cm3")]
    [InlineData("material = \"balsa\"\nballast = [{ mass = \"10 g\", x = \"-57 mm\" }]", "lure.ballast: 10 g at x = -57 mm, z = 0 mm takes 0.882 cm3, but the body has only")]
    [InlineData("mass = \"18 g\"\nhooks = [{ type = \"ring\", size = \"no. 4\", x = \"0 mm\" }]", "a ring has no hook size")]
    [InlineData("mass = \"18 g\"\nhooks = [{ type = \"ring\", x = \"0 mm\" }]", "incomplete; diameter or mass of the ring is due")]
    [InlineData("mass = \"18 g\"\nnose_bluntness = 0.5", "lure.nose_bluntness: \"0.5\" is out of range; allowed: 1.2 to 10")]
    public void What_cannot_be_is_said(string lines, string says) =>
        Assert.Contains(Texts.Errors(Texts.With("mass = \"18 g\"", lines)), e => e.Contains(says, StringComparison.Ordinal));

    [Fact]
    public void A_hole_that_breaks_through_is_noted_with_its_measures()
    {
        ScenarioResult result = Texts.Read(Wood, "lure.ballast=[{ mass = \"9 g\", x = \"-45 mm\", z = \"-4 mm\" }]");
        Assert.Empty(result.Errors);
        Assert.Contains("a ball 11.49 mm thick, but only", Assert.Single(result.Notes).Message, StringComparison.Ordinal);
        Assert.Empty(Texts.Read(Wood, "lure.ballast=[{ mass = \"2 g\", x = \"-45 mm\", z = \"-3 mm\", material = \"tungsten\" }]").Notes);
    }

    // Two turns of 0.7 mm wire on 6.3 mm, steel of 7850.
    [Fact]
    public void A_ring_weighs_its_wire_and_catches_no_line()
    {
        HookSpec ring = Assert.Single(Texts.Read(Texts.Least, "lure.hooks=[{ type = \"ring\", diameter = \"7 mm\", x = \"50 mm\" }]").Setup!.Lure.Hooks);
        double mass = 7850.0 * Math.PI * 0.25 * 0.7e-3 * 0.7e-3 * 2.0 * Math.PI * 6.3e-3;
        Assert.Equal(mass, ring.MassKg, 1e-12);
        Assert.False(ring.HasPoints);
        HookSpec weighed = Assert.Single(Texts.Read(Texts.Least, $"lure.hooks=[{{ type = \"ring\", mass = \"{mass:R} kg\", x = \"50 mm\" }}]").Setup!.Lure.Hooks);
        Assert.Equal(ring.DragAreaM2, weighed.DragAreaM2, 1e-12);
        const string hook = "{ size = \"no. 4\", x = \"0 mm\" }";
        Assert.Equal(
            Texts.Read(Texts.Least, $"lure.hooks=[{hook}]").Setup!.Hook,
            Texts.Read(Texts.Least, $"lure.hooks=[{hook}, {{ type = \"ring\", diameter = \"7 mm\", x = \"50 mm\" }}]").Setup!.Hook);
    }

    [Theory]
    [InlineData("x_mm,breadth_mm,height_mm\n-50,4,4\n0,20,18\n50,2,2\n")]
    [InlineData("x_mm;breadth_mm;height_mm\r\n-50;4;4\r\n0;20,0;18\r\n50;2;2\r\n;;\r\n")]
    [InlineData("\"x (mm)\"\t\"breadth [mm]\"\t\"height mm\"\n-50\t4\t4\n0\t20\t18\n50\t2\t2\n")]
    [InlineData("x_cm,breadth_cm,height_in\n-5,0.4,0.15748031496062992\n0,2,0.7086614173228347\n5,0.2,0.07874015748031496\n")]
    public void Sections_come_from_any_spreadsheet(string csv)
    {
        using var folder = new Folder();
        folder.Write("body.csv", csv);
        string text = Texts.With("shape = \"cigar\"\nlength = \"115 mm\"\ndiameter = \"21 mm\"\nmass = \"18 g\"", "shape = \"stations\"\nstations = \"body.csv\"\nmass = \"9 g\"");
        ScenarioResult result = ScenarioSource.FromText(text, "s.toml", folder.Root).Resolve();
        Assert.Empty(result.Errors);
        ValueList<HullStation> stations = result.Setup!.Lure.Stations!;
        Assert.Equal(3, stations.Count);
        Assert.Equal(0.010, stations[1].HalfBreadthM, 1e-12);
        Assert.Equal(0.009, stations[1].HalfHeightM, 1e-9);
    }
}
