using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Starting;

namespace LureSim.Scenarios.Tests.Starting;

/// <summary>From words to a scenario that is read back.</summary>
public class StartReaderTests
{
    [Fact]
    public void What_was_said_stands_as_it_was_typed_and_the_rest_is_marked()
    {
        StartPlan plan = Plan(new() { Words = "walker", Mass = "1/2 oz", Rod = "7 ft medium-heavy fast", Line = "30 lb braid", Leader = "15 in nylon" });
        string text = plan.Toml(plan.BallastXM);
        Assert.All(
            (string[])["mass_with_hooks = \"1/2 oz\"\n", "length = \"7 ft\"\n", "power = \"medium-heavy\" ", "label = \"30 lb\"\n", "length = \"15 in\"\n", "material = \"nylon\"\n"],
            line => Assert.Contains('\n' + line, text, StringComparison.Ordinal));
        Assert.All(plan.Guesses, g => Assert.Contains(text.Split('\n'), l => l.StartsWith(g.Key.Split('.')[1] + " = ", StringComparison.Ordinal) && l.Contains("# guess; ", StringComparison.Ordinal)));
        Assert.DoesNotContain(plan.Guesses, g => g.Key is "rod.length" or "line.label" or "leader.length" or "lure.mass_with_hooks");
        Assert.Contains(plan.Guesses, g => g.Key == "leader.label" && g.Value == "20 lb");
        Assert.Empty(ScenarioSource.FromText(text).Resolve().Errors);
    }

    [Theory]
    [InlineData("1/4 oz", "small-walker")]
    [InlineData("10 g", "small-walker")]
    [InlineData("14 g", "walker")]
    [InlineData("5/8 oz", "large-walker")]
    [InlineData("1 oz", "large-walker")]
    public void The_mass_picks_the_size_of_a_walker_and_only_of_a_walker(string mass, string kind)
    {
        Assert.Equal((kind, "walker.toml"), (Plan(new() { Words = "walker", Mass = mass }).Kind, Plan(new() { Words = "walker", Mass = mass }).FileName));
        Assert.Equal("slanted", Plan(new() { Words = "slanted", Mass = mass }).Kind);
        Assert.Equal("large-walker", Plan(new() { Words = "large walker " + mass }).Kind);
    }

    [Fact]
    public void Lengths_go_with_the_cube_root_of_the_mass_and_drag_areas_with_its_square()
    {
        StartPlan one = Plan(new() { Words = "hollow" }), eight = Plan(new() { Words = "hollow", Mass = "4.8 oz" });
        Assert.Equal(2.0 * one.LengthM, eight.LengthM, 1e-12);
        Assert.Equal(2.0 * one.BallastXM, eight.BallastXM, 1e-12);
        Assert.Contains("drag_area = \"0.6 cm2\"", one.Toml(0.0), StringComparison.Ordinal);
        Assert.Contains("drag_area = \"2.4 cm2\"", eight.Toml(0.0), StringComparison.Ordinal);
        Assert.Contains("mass = \"9.6 g\", drag_area", eight.Toml(0.0), StringComparison.Ordinal);
    }

    [Fact]
    public void The_file_speaks_the_units_of_the_person()
    {
        string metric = Text(new() { Words = "walker", Mass = "14 g", Leader = "40 cm nylon" }), trade = Text(new() { Words = "walker", Mass = "1/2 oz" });
        Assert.Contains("length = \"2.13 m\"", metric, StringComparison.Ordinal);
        Assert.Contains("stroke = \"17 cm\"", metric, StringComparison.Ordinal);
        Assert.Contains("hand_height = \"1.2 m\"", metric, StringComparison.Ordinal);
        Assert.Contains("hand_height = \"47 in\"", trade, StringComparison.Ordinal);
        Assert.Contains("length = \"7 ft\"", trade, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nylon", "12 lb", "nylon")]
    [InlineData("12 lb fluorocarbon", "12 lb", "fluorocarbon")]
    [InlineData("40 lb", "40 lb", "braid")]
    [InlineData("65-lb-braid", "65 lb", "braid")]
    public void Half_a_line_is_filled_up_from_the_part_that_is_nearest(string line, string label, string material)
    {
        string text = Text(new() { Line = line });
        Assert.Contains($"[line]\nmaterial = \"{material}\"", text, StringComparison.Ordinal);
        Assert.Contains($"label = \"{label}\"", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_diameter_takes_the_label_of_the_part_off()
    {
        string text = Text(new() { Line = "0.30 mm nylon" });
        Assert.Contains("[line]\nmaterial = \"nylon\"\ndiameter = \"0.30 mm\"", text, StringComparison.Ordinal);
        Assert.Contains("film = \"dry\"", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_low_hand_does_not_dip_the_tip()
    {
        StartPlan plan = Plan(new() { Rod = "9 ft medium fast", Height = "wading" });
        ScenarioResult read = ScenarioSource.FromText(plan.Toml(plan.BallastXM)).Resolve();
        Assert.Empty(read.Errors);
        double tip = read.Setup!.Angler.HandHeightM + (read.Setup.Rod.FreeLengthM * Math.Sin(read.Setup.Angler.RodElevationRad));
        Assert.InRange(tip, 0.15, 0.3);
        Assert.Contains("closer than 15 cm to the water", Assert.Single(Plan(new() { Rod = "9 ft", Height = "0.5 m, -10 deg" }).Remarks), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("popper", "its cup")]
    [InlineData("prop lure", "its propellers")]
    [InlineData("winged crawler", "its wings")]
    public void What_cannot_be_computed_is_said_kindly(string kind, string what)
    {
        ScenarioFault fault = Assert.Single(StartReader.Read(new() { Words = kind }).Faults);
        Assert.Contains($"cannot be computed yet, for {what}; luresim start walker", fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("wlker", "nearest: walker")]
    [InlineData("hollo 1/2 oz", "nearest: hollow")]
    [InlineData("spoon", "known: small-walker, walker")]
    [InlineData("walker 1/2 oz 3/8 oz", "one lure mass with hooks too many")]
    [InlineData("walker red", "\"red\" is not understood")]
    public void Unknown_kinds_are_refused(string words, string said)
    {
        (StartPlan? plan, IReadOnlyList<ScenarioFault> faults) = StartReader.Read(new() { Words = words });
        Assert.Null(plan);
        Assert.Contains(said, Assert.Single(faults).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Plants_stand_in_the_file_when_they_are_said()
    {
        StartPlan plan = Plan(new() { Words = "hollow", Cover = "slop" });
        Assert.Contains("[cover]\nkind = \"mat\"\n", plan.Toml(plan.BallastXM), StringComparison.Ordinal);
        plan = Plan(new() { Words = "hollow" });
        Assert.DoesNotContain("[cover]", plan.Toml(plan.BallastXM), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_fault_is_told_and_names_its_option()
    {
        IReadOnlyList<ScenarioFault> faults = StartReader.Read(new() { Mass = "heavy", Rod = "blue", Line = "", Height = "moon", Water = "wine", Cover = "concrete" }).Faults;
        Assert.Equal(["--mass", "--rod", "--line", "--height", "--water", "--cover"], faults.Select(f => f.Place));
    }

    [Fact]
    public void Kinds_hooks_and_parts_that_the_table_of_kinds_names_exist()
    {
        foreach (StartKind kind in StartKind.All)
        {
            StartPlan plan = Plan(new() { Words = kind.Name });
            Assert.Equal((kind.Name, 1.0), (plan.Kind, plan.Scale));
            Assert.Empty(ScenarioSource.FromText(plan.Toml(plan.BallastXM)).Resolve().Errors);
        }

        Assert.All((double[])[0.001, 0.005, 0.01, 0.02, 0.03, 0.05, 0.08, 0.2], m => Assert.All((double[])[2.0, 3.0], p => Assert.Contains(HookTable.Choices, c => c.Name == UsualHooks.Size(p, m))));
    }

    [Fact]
    public void The_parts_carry_the_hooks_that_are_usual_for_their_mass()
    {
        foreach (StartKind kind in StartKind.All)
        {
            LureDraft part = LureDraft.Of(kind.Part);
            Assert.Equal(part.Hooks.Select(h => h.Size), part.Sized(null, null).Hooks.Select(h => h.Size));
        }
    }

    private static StartPlan Plan(StartRequest request)
    {
        (StartPlan? plan, IReadOnlyList<ScenarioFault> faults) = StartReader.Read(request);
        Assert.Empty(faults);
        return plan!;
    }

    private static string Text(StartRequest request)
    {
        StartPlan plan = Plan(request);
        return plan.Toml(plan.BallastXM);
    }
}
