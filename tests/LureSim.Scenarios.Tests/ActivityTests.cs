namespace LureSim.Scenarios.Tests;

/// <summary>A fault stands in the way of those activities that read what is at fault, and of no other.</summary>
public sealed class ActivityTests
{
    [Theory]
    [InlineData("reel.line_on_spool=900 m")]
    [InlineData("cast.overhang=9 m")]
    [InlineData("cast.overhang=3 m")]
    [InlineData("hands.stop_angle=-2 rad")]
    [InlineData("rod.cast_damping=often")]
    public void A_fault_of_the_cast_is_a_note_of_a_retrieve(string fault) => Concerns(fault, Activities.Cast, Activities.Retrieve);

    [Theory]
    [InlineData("retrieve.distance=1 m")]
    [InlineData("retrieve.distance=2 m", "retrieve.slack=2 m")]
    [InlineData("solver.step=1 s")]
    [InlineData("angler.rod_elevation=-80 deg")]
    public void A_fault_of_the_retrieve_is_a_note_of_a_cast(params string[] faults) => Concerns(faults[^1], Activities.Retrieve, Activities.Cast, faults[..^1]);

    [Theory]
    [InlineData("rod.length=9 m")]
    [InlineData("cast.overhand=1 m")]
    public void A_fault_of_the_set_up_or_an_unknown_key_is_one_for_both(string fault)
    {
        Assert.NotEmpty(Read(Activities.Retrieve, fault).Errors);
        Assert.NotEmpty(Read(Activities.Cast, fault).Errors);
    }

    [Fact]
    public void Two_reads_of_one_file_are_equal_and_another_value_is_not()
    {
        string text = Texts.Least + "\nhooks = [{ size = \"no. 2\", x = \"20 mm\" }]\nballast = [{ mass = \"1 g\", x = \"-1 in\" }]\n";
        Scenario one = Texts.Read(text).Scenario!, two = Texts.Read(text).Scenario!;
        Assert.NotSame(one.Setup.Lure.Hooks, two.Setup.Lure.Hooks);
        Assert.Equal(one, two);
        Assert.True(one.GetHashCode() == two.GetHashCode());
        Assert.NotEqual(one, Texts.Read(text, "lure.hooks[1].x=21 mm").Scenario);
    }

    [Theory]
    [InlineData("pool.speeds=0.2, 9 m/s")]
    [InlineData("pool.hand_height=4 m")]
    public void A_fault_of_the_pool_is_a_note_of_a_retrieve(string fault)
    {
        Assert.Null(Read(Activities.Pool, fault).Scenario);
        Assert.Single(Read(Activities.Pool, fault).Errors);
        ScenarioResult taken = Read(Activities.Retrieve, fault);
        Assert.NotNull(taken.Retrieve);
        Assert.Null(taken.Pool);
        Assert.Single(taken.Notes);
    }

    [Fact]
    public void A_lure_alone_floats_and_goes_to_the_pool_without_rod_and_line()
    {
        const string lure = "[lure]\nshape = \"cigar\"\nlength = \"115 mm\"\ndiameter = \"21 mm\"\nmass = \"18 g\"\n";
        ScenarioResult alone = ScenarioSource.FromText(lure, asked: Activities.Rest | Activities.Pool).Resolve();
        Assert.Empty(alone.Errors);
        Assert.Equal(0.115, alone.Setup!.Lure.LengthM);
        Assert.Equal("7 ft", ScenarioSource.FromText(alone.Effective().ToToml()).Resolve().Values.Text(LureSim.Scenarios.Keys.RodKeys.Length));
        Assert.Equal(["line.material", "rod.length", "rod.power"], ScenarioSource.FromText(lure, asked: Activities.Retrieve).Resolve().Errors.Select(e => e.Key).Order());
        Assert.Contains(ScenarioSource.FromText(lure + "[rod]\nlength = \"banana\"\n", asked: Activities.Rest).Resolve().Errors, e => e.Key == "rod.length");
    }

    [Fact]
    public void A_list_of_speeds_that_is_no_text_is_told_once() =>
        Assert.Single(ScenarioSource.FromText(Texts.Least + "\n[pool]\nspeeds = 8\n", asked: Activities.Pool).Resolve().Errors);

    [Theory]
    [InlineData("0.15, 0.3, 0.5, 0.8 m/s", new[] { 0.15, 0.3, 0.5, 0.8 })]
    [InlineData("80 cm/s, 0.3 m/s,30 cm/s", new[] { 0.3, 0.8 })]
    [InlineData("0.5 m/s", new[] { 0.5 })]
    public void Speeds_of_a_tow_have_their_unit_each_or_at_the_last(string text, double[] speeds) =>
        Assert.Equal(speeds, Read(Activities.Pool, "pool.speeds=" + text).Pool!.SpeedsMS);

    private static void Concerns(string fault, Activities its, Activities other, params string[] with)
    {
        ScenarioResult refused = Read(its, [.. with, fault]), taken = Read(other, [.. with, fault]), all = Read(Activities.All, [.. with, fault]);
        Assert.NotEmpty(refused.Errors);
        Assert.Null(refused.Scenario);
        Assert.Equal(refused.Errors, all.Errors);
        Assert.Empty(taken.Errors);
        Assert.Equal(refused.Errors, taken.Notes);
        Assert.Equal(other == Activities.Cast, taken.Retrieve is null);
        Assert.Equal(other == Activities.Retrieve, taken.Cast is null);
        taken.Setup!.Check();
        Assert.Contains("[rod]", taken.Effective().ToToml(), StringComparison.Ordinal);
    }

    private static ScenarioResult Read(Activities asked, params string[] overrides) => ScenarioSource.FromText(Texts.Least, asked: asked).Resolve(overrides);
}
