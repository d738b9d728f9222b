using LureSim.Model.Cover;
using LureSim.Model.Fish;
using LureSim.Model.Hands;
using LureSim.Model.Lures;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Tests;

/// <summary>What follows from what in the tables of a strike.</summary>
public sealed class StrikeTests
{
    [Theory]
    [InlineData("", StrikeStyle.Snap, 0.3)]
    [InlineData("cover.kind=mat", StrikeStyle.Haul, 0.3)]
    [InlineData("cover.kind=sparse", StrikeStyle.Snap, 0.3)]
    [InlineData("strike.style=sweep", StrikeStyle.Sweep, 0.0)]
    public void Style_and_slack_follow_from_the_cover(string given, StrikeStyle style, double slackM)
    {
        ScenarioResult read = Read(given);
        Assert.Equal(StrikeStroke.Of(style), read.Strike!.Stroke);
        Assert.Equal(slackM, read.Strike.SlackM);
        Assert.Equal(given.StartsWith("strike", StringComparison.Ordinal) ? ValueMark.Given : ValueMark.Derived, Value(read, StrikeKeys.Style).Mark);
    }

    [Fact]
    public void What_is_given_goes_before_what_follows()
    {
        ScenarioResult read = Read("cover.kind=mat", "strike.style=snap", "strike.torque=30 N m", "strike.slack=0 m", "cover.grip=12 lb", "cover.line_over=0 m", "fish.mass=3 lb 4 oz", "fish.pull=20 N");
        Assert.Equal((StrikeStyle.Snap, 30.0, 0.0), (read.Strike!.Stroke.Style, read.Strike.Stroke.TorqueNm, read.Strike.SlackM));
        Assert.Equal((CoverKind.Mat, 0.0), (read.Setup!.Cover.Kind, read.Setup.Cover.LineOverM));
        Assert.Equal(12 * 4.4482216152605, read.Setup.Cover.GripN, 1e-12);
        Assert.Equal(3.25 * 0.45359237, read.Setup.Fish.MassKg, 1e-15);
        Assert.All([StrikeKeys.Torque, CoverKeys.Grip, FishKeys.Pull], k => Assert.Equal(ValueMark.Given, Value(read, k).Mark));
    }

    // In open water nothing holds: there is nothing to guess.
    [Theory]
    [InlineData("open", 0.0, ValueMark.Derived)]
    [InlineData("sparse", 8.0, ValueMark.Guess)]
    [InlineData("mat", 40.0, ValueMark.Guess)]
    public void The_kind_of_cover_gives_its_forces_with_their_ranges(string kind, double gripN, ValueMark mark)
    {
        ScenarioResult read = Read("cover.kind=" + kind);
        Assert.Equal(gripN, read.Setup!.Cover.GripN);
        Assert.All([CoverKeys.Grip, CoverKeys.LineDrag, CoverKeys.LineTurn, CoverKeys.Weed], k => Assert.Equal(mark, Value(read, k).Mark));
        Assert.Equal(ValueMark.Derived, Value(read, CoverKeys.LineOver).Mark);
    }

    [Theory]
    [InlineData("50 g")]
    [InlineData("1.5 kg")]
    [InlineData("40 kg")]
    public void A_fish_has_the_body_and_the_thrust_of_its_mass_and_every_guess_can_be_set(string mass)
    {
        ScenarioResult read = Read("fish.mass=" + mass);
        FishSpec fish = read.Setup!.Fish;
        Assert.Equal(FishBody.DragAreaM2(fish.MassKg).Value, fish.DragAreaM2);
        Assert.Equal(FishBody.PullN(fish.MassKg).Value, fish.PullN);
        foreach (GuessedKey guess in read.Effective().Guesses.Where(g => g.Key.Table is "fish"))
        {
            Assert.All([guess.Low, guess.High], end => Assert.True(Read("fish.mass=" + mass, guess.Override(end)).IsValid, guess.ToString()));
        }
    }

    [Theory]
    [InlineData("{ size = \"no. 4\", x = \"25 mm\" }, { size = \"no. 2\", x = \"-50 mm\" }", HookKind.ThreePoint, 2, 1.2, 9.0)]
    [InlineData("{ type = \"single\", size = \"1/0\", x = \"25 mm\" }, { size = \"no. 2\", x = \"-50 mm\" }", HookKind.OnePoint, 1, 1.4, 11.5)]
    [InlineData("{ type = \"double\", size = \"4/0\", x = \"0 mm\" }, { mass = \"1 g\", drag_area = \"1 cm2\", x = \"-30 mm\" }", HookKind.TwoPoint, 2, 1.8, 16.0)]
    public void The_largest_hook_takes_hold(string hooks, HookKind kind, int points, double wireMm, double gapMm)
    {
        ScenarioResult read = Texts.Read($"{Texts.Least}\nhooks = [{hooks}]\n");
        HookHold hook = read.Setup!.Hook;
        Assert.Equal((kind, points), (hook.Kind, hook.Points));
        Assert.Equal(10.0 * wireMm, hook.SetN, 1e-12 * hook.SetN);
        Assert.Equal(45.0 * wireMm, hook.HoldN, 1e-12 * hook.HoldN);
        Assert.Equal(HookWire.OpeningN(1e-3 * wireMm, 1e-3 * gapMm).Value, hook.WireN, 1e-12 * hook.WireN);
        EffectiveValue set = Value(read, StrikeKeys.SetForce);
        Assert.Equal((ValueMark.Guess, 5.0 * wireMm, 20.0 * wireMm), (set.Mark, Math.Round(set.Low, 9), Math.Round(set.High, 9)));
    }

    // A skirt has no points; a hook without a size has those of its type, and the forces of no wire in particular.
    [Theory]
    [InlineData("", HookKind.ThreePoint)]
    [InlineData("{ mass = \"1 g\", drag_area = \"1 cm2\", x = \"-30 mm\" }", HookKind.ThreePoint)]
    [InlineData("{ mass = \"1 g\", drag_area = \"1 cm2\", x = \"-30 mm\" }, { type = \"single\", mass = \"1 g\", drag_area = \"1 cm2\", x = \"0 mm\" }", HookKind.OnePoint)]
    public void A_hook_without_a_size_has_the_usual_forces(string hooks, HookKind kind)
    {
        HookHold hook = Texts.Read($"{Texts.Least}\nhooks = [{hooks}]\n").Setup!.Hook;
        Assert.Equal(new HookHold { Kind = kind, Points = (int)HookHold.UsualPoints(kind).Value }, hook);
    }

    [Fact]
    public void A_count_is_drawn_as_a_whole_number()
    {
        GuessedKey points = Read("").Effective().Guesses.Single(g => g.Key == StrikeKeys.Points);
        Assert.Equal((1.0, 3.0), (points.Low, points.High));
        Assert.Equal("strike.points=3", points.Override(2.51));
        Assert.Equal("strike.points=2", points.Override(1.6));
    }

    [Theory]
    [InlineData("strike.stop_angle: -74 deg is hardly beyond strike.start_angle, -74.48 deg; at least -63.03 deg is due", "strike.stop_angle=-74 deg")]
    [InlineData("strike.points: 3 points of a double, the largest hook in lure.hooks; at most 2", "strike.points=3", "lure.hooks=[{ type = \"double\", size = \"4/0\", x = \"0 mm\" }]")]
    [InlineData("leader.length: 157.5 in is longer than the line that is out; it must be shorter than strike.distance, 3.5 m", "strike.distance=3.5 m", "leader.material=nylon", "leader.label=20 lb", "leader.length=4 m")]
    [InlineData("leader.length: 177.2 in is longer than the line that is out; it must be shorter than retrieve.distance, 4 m", "retrieve.distance=4 m", "strike.distance=3.5 m", "leader.material=nylon", "leader.label=20 lb", "leader.length=4.5 m")]
    public void What_contradicts_itself_is_one_line(string told, params string[] overrides)
    {
        string line = Assert.Single(Read(overrides).Errors).ToString();
        Assert.EndsWith(told, line, StringComparison.Ordinal);
    }

    // Line over plants in open water is an override of its own, no contradiction.
    [Fact]
    public void Line_over_plants_may_be_said_of_open_water() => Assert.Equal(4.0, Read("cover.line_over=4 m", "cover.line_drag=0.3 N/m").Setup!.Cover.LineOverM);

    [Theory]
    [InlineData("strike.distance=200 m")]
    [InlineData("fish.way=sulks")]
    [InlineData("cover.grip=-1 N")]
    [InlineData("strike.stop_angle=-1.4 rad")]
    public void A_fault_of_the_strike_is_a_note_of_a_retrieve(string fault)
    {
        var source = ScenarioSource.FromText(Texts.Least, asked: Activities.Strike);
        Assert.Single(source.Resolve([fault]).Errors);
        ScenarioResult taken = ScenarioSource.FromText(Texts.Least, asked: Activities.Retrieve).Resolve([fault]);
        Assert.Empty(taken.Errors);
        Assert.Single(taken.Notes);
        Assert.NotNull(taken.Retrieve);
        Assert.Null(taken.Strike);
        taken.Setup!.Check();
    }

    private static ScenarioResult Read(params string[] overrides) => Texts.Read(Texts.Least, [.. overrides.Where(o => o.Length > 0)]);

    private static EffectiveValue Value(ScenarioResult read, KeySpec key) => read.Effective().Values.Single(v => v.Key == key);
}
