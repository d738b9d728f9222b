using LureSim.Model;
using LureSim.Model.Cover;
using LureSim.Model.Hands;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Cover;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Cover;

/// <summary>Three covers: verdicts, changes, and what they rest on.</summary>
public sealed class CoverStudyTests
{
    // Every threshold given, so that no band is left: trebles that go in and hold, a rod that bears, a slow fish.
    private static readonly string[] Sure =
    [
        "strike.set_force=5 N", "strike.tear_force=60 N", "strike.wire_force=60 N", "strike.knot_strength=0.9", "strike.rod_limit=20", "fish.speed=1.5 m/s",
    ];

    [Theory]
    [InlineData("treble-edge.toml")]
    [InlineData("hollow-mat.toml")]
    public void One_thread_and_two_give_the_same_bits(string file)
    {
        ScenarioResult scenario = Read(file);
        string one = Written(CoverStudy.Run(scenario, 1, null, CancellationToken.None).Demand()), two = Written(CoverStudy.Run(scenario, 2, null, CancellationToken.None).Demand());
        Assert.Equal(one, two);
    }

    [Fact]
    public void Each_verdict_has_its_case()
    {
        CoverReport guessed = Report("treble-edge.toml"), sure = Report("treble-edge.toml", Sure);
        Assert.Equal((CoverVerdict.WorksWhen, null), (guessed.Cases[0].Verdict, guessed.Cases[0].Rescue));
        Assert.Equal(CoverVerdict.Works, sure.Cases[0].Verdict);
        Assert.All(sure.Cases[0].Own.Checks, c => Assert.Equal(CoverState.Passes, c.State));
        Assert.Equal(CoverVerdict.DoesNot, sure.Cases[2].Verdict);
        Assert.Equal(CoverState.Fails, sure.Cases[2].Own[CoverCriterion.Lure].State);
        Assert.Equal(CoverState.May, sure.Cases[1].Own[CoverCriterion.Lure].State);
    }

    [Fact]
    public void A_drag_too_loose_fails_and_one_set_on_the_spot_saves_it()
    {
        CoverCase open = Report("treble-edge.toml", [.. Sure, "reel.drag=1 lb"]).Cases[0];
        Assert.Equal(CoverState.Fails, open.Own[CoverCriterion.Sets].State);
        Assert.Equal(CoverVerdict.WorksWhen, open.Verdict);
        Assert.Equal((ChangeKind.Drag, 0), (open.Rescue!.Change.Kind, open.Rescue.After.Count(CoverState.Fails)));
        Assert.InRange(open.Rescue.Change.Si, open.Window.Range.LowN!.Value, open.Window.Range.HighN!.Value);
    }

    [Fact]
    public void Where_nothing_helps_nothing_is_told()
    {
        CoverCase open = Report("treble-edge.toml", [.. Sure, "fish.speed=6 m/s"]).Cases[0];
        Assert.Equal((CoverVerdict.DoesNot, CoverState.Fails), (open.Verdict, open.Own[CoverCriterion.Tight].State));
        Assert.Empty(open.Helps);
    }

    // Again with a quarter of the step and twice the segments: what is told does not hang on the coarse numbers.
    [Theory]
    [InlineData("treble-edge.toml")]
    [InlineData("hollow-mat.toml")]
    public void A_change_that_is_told_really_does_pass(string file)
    {
        ScenarioResult scenario = Read(file);
        var bands = CoverBands.Of(scenario);
        CoverReport report = CoverStudy.Run(scenario, 0, null, CancellationToken.None).Demand();
        Assert.Contains(report.Cases, c => c.Helps.Count > 0);
        foreach (CoverHelp help in report.Cases.SelectMany(c => c.Helps))
        {
            CoverTrial again = CoverCriteria.Weigh(Fine(help.After.Try), bands, CancellationToken.None)!;
            Assert.All(help.Bettered, b => Assert.Equal(b.After.State, again[b.After.Criterion].State));
            Assert.All(help.Bettered, b => Assert.True(b.After.State < b.Before.State));
        }
    }

    // docs/cover.md: peaks of the coarse numbers lie within 0.5 % of fine ones, the rest is theirs; what is weighed are guesses known within a factor of two.
    [Theory]
    [InlineData("treble-edge.toml")]
    [InlineData("hollow-mat.toml")]
    public void Coarse_numbers_are_good_enough(string file)
    {
        ScenarioResult scenario = Read(file);
        var bands = CoverBands.Of(scenario);
        foreach (CoverKind kind in Enum.GetValues<CoverKind>())
        {
            CoverTry own = CoverStudy.Own(scenario, kind);
            double coarse = Peak(own), fine = Peak(Fine(own));
            Assert.InRange(coarse / fine, 0.994, 1.006);
        }

        double Peak(CoverTry tried) => CoverCriteria.Weigh(tried, bands, CancellationToken.None)!.Strike.Summary.HookForcePeakN;
    }

    [Fact]
    public void The_file_has_its_own_plants_and_style_others_have_usual_ones()
    {
        ScenarioResult mat = Read("hollow-mat.toml", "cover.grip=60 N", "cover.line_friction=0.4");
        Assert.Equal((60.0, 0.4), (CoverStudy.Own(mat, CoverKind.Mat).Setup.Cover.GripN, CoverStudy.Own(mat, CoverKind.Mat).Setup.Cover.LineFriction));
        Assert.Equal((CoverSpec.Of(CoverKind.Sparse).GripN, 0.4), (CoverStudy.Own(mat, CoverKind.Sparse).Setup.Cover.GripN, CoverStudy.Own(mat, CoverKind.Sparse).Setup.Cover.LineFriction));
        Assert.Equal(StrikeStyle.Haul, CoverStudy.Own(mat, CoverKind.Open).Task.Stroke.Style);
        ScenarioResult noStyle = Read("hollow-weedless.toml");
        Assert.Equal(StrikeStyle.Snap, CoverStudy.Own(noStyle, CoverKind.Open).Task.Stroke.Style);
        Assert.Equal(StrikeStyle.Haul, CoverStudy.Own(noStyle, CoverKind.Mat).Task.Stroke.Style);
    }

    [Fact]
    public void What_the_reader_gave_has_no_band()
    {
        Ranged one = new(1.0, 1.0, 1.0);
        CoverBands guessed = CoverBands.Of(Read("hollow-mat.toml")), given = CoverBands.Of(Read("hollow-mat.toml", "strike.set_force=12 N", "cover.grip=60 N"));
        Assert.Equal(new Ranged(1.0, 0.5, 2.0), guessed.Set);
        Assert.Equal((one, one), (given.Set, given.GripOf(CoverKind.Mat)));
        Assert.NotEqual(one, given.GripOf(CoverKind.Sparse));
    }

    [Theory]
    [InlineData(20.0, 5.0, 20.0, CoverState.Passes)]
    [InlineData(19.9, 5.0, 20.0, CoverState.May)]
    [InlineData(5.0, 5.0, 20.0, CoverState.May)]
    [InlineData(4.9, 5.0, 20.0, CoverState.Fails)]
    public void The_ends_of_a_band_decide(double have, double low, double high, CoverState state) =>
        Assert.Equal(state, CoverCheck.Of(CoverCriterion.Sets, new(have, have, have), new(10.0, low, high)).State);

    [Theory]
    [InlineData("reel.ratio=8.1")]
    [InlineData("fish.mass=5 lb")]
    [InlineData("fish.speed=3 m/s")]
    [InlineData("fish.drag_area=60 cm2")]
    [InlineData("cover.line_friction=0.5")]
    [InlineData("cover.height=20 cm")]
    [InlineData("cover.lure_friction=0.6")]
    [InlineData("strike.effort=1")]
    [InlineData("lure.tie_z=1 mm", false)]
    public void Keys_that_are_said_to_enter_do(string over, bool enters = true)
    {
        ScenarioResult plain = Read("hollow-mat.toml");
        KeySpec key = ScenarioSchema.Find(over.Split('=')[0]) ?? LureKeys.TieZ;
        Assert.Equal(enters, CoverKeysRead.Reads(key, plain));
        if (enters)
        {
            Assert.NotEqual(Mat(plain), Mat(Read("hollow-mat.toml", over)));
        }

        static string Mat(ScenarioResult scenario)
        {
            CoverTrial t = CoverCriteria.Weigh(CoverStudy.Own(scenario, CoverKind.Mat), CoverBands.Of(scenario), CancellationToken.None)!;
            return string.Join(';', t.Checks) + t.Landing.Plants + t.DueKg;
        }
    }

    [Fact]
    public void A_weedless_lure_crawls_over_the_mat_and_nowhere_else()
    {
        CoverReport hollow = Report("hollow-mat.toml"), trebles = Report("treble-edge.toml");
        Assert.All(trebles.Cases.Append(hollow.Cases[0]).Append(hollow.Cases[1]), c => Assert.Null(c.Crawl));
        Assert.InRange(hollow.Cases[2].Crawl!.Summary.WayPerTwitchM, 0.0, 1.5 * hollow.Cases[2].Crawl!.Task.StrokeM);
    }

    [Fact]
    public void A_wish_to_stop_is_granted()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => CoverStudy.Run(Read("hollow-mat.toml"), 2, null, stop.Token));
    }

    private static ScenarioResult Read(string file, params string[] overrides)
    {
        ScenarioResult scenario = ScenarioSource.Load(Shipped.File(file), Activities.Strike).Resolve(overrides);
        Assert.True(scenario.IsValid, string.Join("; ", scenario.Errors));
        return scenario;
    }

    private static CoverReport Report(string file, params string[] overrides) => CoverStudy.Run(Read(file, overrides), 0, null, CancellationToken.None).Demand();

    private static CoverTry Fine(CoverTry own) => own with
    {
        Task = own.Task with { Solver = own.Task.Solver with { StepS = 0.25 * own.Task.Solver.StepS, Nodes = 2 * own.Task.Solver.Nodes } },
    };

    private static string Written(CoverReport report) => string.Join(
        '\n', report.Cases.Select(c => $"{c.Kind} {c.Verdict} {string.Join(' ', CoverFigures.All.Select(f => f.Of(c).ToString("R", System.Globalization.CultureInfo.InvariantCulture)))} {string.Join(';', c.Helps.Select(h => $"{h.Change} {string.Join(',', h.Bettered)}"))}"));
}
