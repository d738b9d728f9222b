using LureSim.Model.Lures;
using LureSim.Model.Margin;
using LureSim.Model.Media;
using LureSim.Model.Trim;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Design;

namespace LureSim.Studies.Tests.Design;

/// <summary>Tolerance against moment balance by hand, hooks that it carries, ranked changes.</summary>
public sealed class DesignStudyTests
{
    private const string Text = """
        [rod]
        length = "7 ft"
        power = "medium"
        [line]
        material = "braid"
        label = "30 lb"
        [lure]
        shape = "cigar"
        length = "90 mm"
        diameter = "17.5 mm"
        mass = "10 g"
        ballast = [{ mass = "1.5 g", x = "-9 mm", z = "-5 mm" }]
        hooks = [{ size = "no. 6", x = "20 mm", z = "-8 mm" }, { size = "no. 6", x = "-43 mm", z = "0 mm" }]
        """;

    private static readonly ScenarioResult Scenario = ScenarioSource.FromText(Text).Resolve();

    private static readonly DesignReport Report = DesignStudy.Run(Scenario, null, new MarginTask(), 1, default);

    [Fact]
    public void A_small_error_turns_the_lure_as_moment_balance_says()
    {
        TrimPoint own = Report.Own.Trim!;
        double stiffness = own.Rest.MassKg * own.Rest.GmLongitudinalM, x = -0.009 - own.Rest.CentreOfGravityXM;
        (double less, double more) = Moves(ChangeKind.BallastAlong, DesignFigures.Trim);

        // 1.5 g moved 2 mm; the waterplane is no box, so the two sides differ a little.
        double byHand = -0.0015 * 0.002 / stiffness * 180.0 / Math.PI;
        Assert.Equal(byHand, more, 0.1 * Math.Abs(byHand));
        Assert.Equal(-byHand, less, 0.1 * Math.Abs(byHand));

        // 0.2 g more sinks it by m / (rho Aw), turns it by its arm about the centre of the waterplane, and lifts the weight's own couple.
        double water = WaterModel.Evaluate(Scenario.Setup!.Water).DensityKgM3, sunk = 0.0002 / (water * own.Rest.WaterplaneAreaM2);
        double turned = 0.0002 * (own.Rest.FlotationXM - x) / stiffness;
        Assert.Equal(turned * 180.0 / Math.PI, Moves(ChangeKind.BallastMass, DesignFigures.Trim).More, 0.04);
        double back = -own.Rest.CentreOfGravityXM - own.Rest.FlotationXM;
        Assert.Equal(-sunk + (turned * back), Moves(ChangeKind.BallastMass, DesignFigures.Freeboard).More, 0.1 * sunk);

        // Lower by 2 mm: G sinks by m_w / m of it, and GM grows by as much.
        double lower = 0.0015 / own.Rest.MassKg * 0.002;
        Assert.Equal(lower, Moves(ChangeKind.BallastUp, DesignFigures.Gm).Less, 0.05 * lower);
        Assert.Equal(0.0, Moves(ChangeKind.TieUp, DesignFigures.Trim).More);
    }

    [Fact]
    public void All_errors_at_once_are_worse_than_any_alone()
    {
        foreach (WorstCase worst in Report.Tolerance!.Worst)
        {
            Model.Figure<DesignPoint> figure = DesignFigures.Told.First(f => f.Key == worst.Key);
            double[] alone = [.. Report.Tolerance.Rows.SelectMany(r => new[] { r.LessPoint, r.MorePoint }).OfType<DesignPoint>().Select(figure.Of)];
            Assert.True(figure.Of(worst.Low) < alone.Min() && figure.Of(worst.High) > alone.Max(), worst.Key);
        }
    }

    [Fact]
    public void Hooks_that_it_carries_hold_the_float_of_the_scenario_with_those_hooks()
    {
        HookRow own = Assert.Single(Report.Hooks, h => h.IsOwn);
        Assert.Equal(Report.Own.TrimDeg, own.Point.TrimDeg);
        HookRow larger = Report.Hooks.First(h => h.Front == h.Rear && h.Front is int r && HookSizes.Name(r) == "no. 4");
        ScenarioResult with = ScenarioSource.FromText(Text.Replace("no. 6", "no. 4", StringComparison.Ordinal)).Resolve();
        FloatReport rest = Trimming.Rest(with.Setup!.Lure, WaterModel.Evaluate(with.Setup.Water));
        Assert.Equal(rest.TrimRad, larger.Point.Trim!.Rest.TrimRad, 1e-9);
        Assert.Equal(with.Setup.Lure.Hooks[0].DragAreaM2, larger.Point.Lure.Hooks[0].DragAreaM2, 1e-12);
        Assert.Equal(FloatWord.Sinks, Report.Hooks.Last(h => h.Front is not null && h.Rear is not null).Point.Word);
    }

    [Fact]
    public void Changes_are_ranked_by_what_they_do_to_the_margin()
    {
        double[] moves = [.. Report.Changes.Where(c => c.After.Trim is not null).Select(c => Math.Abs(c.MarginMove ?? 0.0))];
        Assert.Equal(moves.OrderDescending(), moves);
        RankedChange tie = Report.Changes.First(c => c.Change == new DesignChange(ChangeKind.TieAlong, 0.005));
        DesignPoint again = DesignPoint.Whole(Report.Own.Lure with { TieXM = Report.Own.Lure.TieXM + 0.005 }, Report.Water, Report.Task, default);
        Assert.Equal(again.SheddingMargin - Report.Own.SheddingMargin, tie.MarginMove);
        Assert.True(tie.MarginMove > 0.0, "a tie further ahead steadies a tow (Strandhagen, Schoenherr, Kobayashi 1950)");
    }

    [Fact]
    public void Threads_leave_no_trace()
    {
        DesignReport two = DesignStudy.Run(Scenario, new(0.1), new MarginTask(), 2, default), one = DesignStudy.Run(Scenario, new(0.1), new MarginTask(), 1, default);
        Assert.Equal(one.Changes.Select(c => (c.Change, c.MarginMove)), two.Changes.Select(c => (c.Change, c.MarginMove)));
        Assert.Equal(one.After!.SheddingMargin, two.After!.SheddingMargin);
        Assert.Equal(5.7296, one.After.TrimDeg!.Value, 0.05);
    }

    private static (double Less, double More) Moves(ChangeKind kind, Model.Figure<DesignPoint> figure)
    {
        ToleranceRow row = Report.Tolerance!.Rows.First(r => r.Less.Kind == kind);
        return (figure.Of(row.LessPoint!) - figure.Of(Report.Own), figure.Of(row.MorePoint!) - figure.Of(Report.Own));
    }
}
