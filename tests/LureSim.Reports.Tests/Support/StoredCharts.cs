using LureSim.Model.Reels;
using LureSim.Reports.Bend;
using LureSim.Reports.Cadence;
using LureSim.Reports.Cast;
using LureSim.Reports.Compare;
using LureSim.Reports.Cover;
using LureSim.Reports.Crawl;
using LureSim.Reports.Design;
using LureSim.Reports.Doubt;
using LureSim.Reports.Fit;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Pool;
using LureSim.Reports.Retrieve;
using LureSim.Reports.Sayings;
using LureSim.Reports.Strike;
using LureSim.Reports.Sweep;
using LureSim.Reports.Trim;
using LureSim.Studies.Cast;
using LureSim.Studies.Design;

namespace LureSim.Reports.Tests.Support;

/// <summary>Every chart of the product once or more, from made-up data.</summary>
internal static class StoredCharts
{
    private static readonly double[] X = [0.6, 1.0, 1.4, 1.8, 2.2, 2.6, 3.0];

    private static readonly StudyClass[] Classes = [new("alternating", ChartStyle.Green), new("tracking", ChartStyle.Sky)];

    /// <summary>Name of the stored form, the class that builds the chart, and how.</summary>
    public static IReadOnlyList<(string Name, Type Builder, Func<Chart> Build)> All { get; } =
    [
        ("path_top", typeof(TopView), () => TopView.Build(MadeUpRetrieve.Result(), Shown.Both)),
        ("path_top_trade", typeof(TopView), () => TopView.Build(MadeUpRetrieve.Result(), new(UnitChoice.Trade))),
        ("path_top_tow", typeof(TopView), () => TopView.Build(Tow(), Shown.Both)),
        ("pull_slack_turn", typeof(PullSlackTurn), () => PullSlackTurn.Build(MadeUpRetrieve.Result(), Shown.Both)),
        ("pull_slack_turn_trade", typeof(PullSlackTurn), () => PullSlackTurn.Build(MadeUpRetrieve.Result(), new(UnitChoice.Trade))),
        ("side_view_trade", typeof(SideView), () => SideView.Build(MadeUpRetrieve.Result(), new(UnitChoice.Trade))),
        ("side_view", typeof(SideView), () => SideView.Build(MadeUpRetrieve.Result(), Shown.Both)),
        ("attitude_side", typeof(AttitudeSide), () => AttitudeSide.Build(MadeUpRetrieve.Result(), Shown.Both)),
        ("attitude_side_trade", typeof(AttitudeSide), () => AttitudeSide.Build(MadeUpRetrieve.Result(), new(UnitChoice.Trade))),
        ("attitude_side_steep", typeof(AttitudeSide), () => AttitudeSide.Build(Steep(), Shown.Both)),
        ("attitude_time", typeof(AttitudeTime), () => AttitudeTime.Build(MadeUpRetrieve.Result(), Shown.Both)),
        ("attitude_time_trade", typeof(AttitudeTime), () => AttitudeTime.Build(MadeUpRetrieve.Result(), new(UnitChoice.Trade))),
        ("attitude_time_planar", typeof(AttitudeTime), () => AttitudeTime.Build(MadeUpRetrieve.Planar(), Shown.Both)),
        ("loads", typeof(Loads), () => Loads.Build(MadeUpRetrieve.Result(), Shown.Both)),
        ("loads_trade", typeof(Loads), () => Loads.Build(MadeUpRetrieve.Result(), new(UnitChoice.Trade))),
        ("cast_swing", typeof(SwingStrobe), () => SwingStrobe.Build(MadeUpCast.Result(ReelKind.Revolving))),
        ("cast_path", typeof(FlightPath), () => FlightPath.Build(MadeUpCast.Result(ReelKind.Revolving))),
        ("cast_speeds", typeof(CastSpeeds), () => CastSpeeds.Build(MadeUpCast.Result(ReelKind.Revolving))),
        ("cast_speeds_fixed", typeof(CastSpeeds), () => CastSpeeds.Build(MadeUpCast.Result(ReelKind.Fixed))),
        ("cast_release", typeof(ReleaseChart), () => ReleaseChart.Build(MadeUpCast.Result(ReelKind.Revolving))),
        ("cast_energy", typeof(EnergyBars), () => EnergyBars.Build(MadeUpCast.Result(ReelKind.Revolving))),
        ("cast_brake", typeof(BrakeChart), () => BrakeChart.Build(new(MadeUpCast.Result(ReelKind.Revolving), MadeUpCast.Brakes))),
        ("cast_power", typeof(PowerTableChart), () => PowerTableChart.Build(MadeUpCast.Powers())),
        ("cast_across", typeof(CastAcrossChart), () => CastAcrossChart.Build(MadeUpCast.Across())),
        ("cast_across_holes", typeof(CastAcrossChart), () => CastAcrossChart.Build(Holes())),
        ("cast_match", typeof(MatchChart), () => MatchChart.Build(Match())),
        ("bend_curve", typeof(BendCurve), () => BendCurve.Build(MadeUpBend.Report(odd: false), Shown.Both)),
        ("bend_curve_odd", typeof(BendCurve), () => BendCurve.Build(MadeUpBend.Report(odd: true), new(UnitChoice.Trade))),
        ("bend_shapes", typeof(BendShapes), () => BendShapes.Build(MadeUpBend.Report(odd: false), Shown.Both)),
        ("cover", typeof(CoverChart), () => CoverChart.Build(MadeUpCover.Report(), Shown.Both)),
        ("cover_trade", typeof(CoverChart), () => CoverChart.Build(MadeUpCover.Hopeless(), new(UnitChoice.Trade))),
        ("sayings", typeof(SayingsChart), () => SayingsChart.Build(MadeUpSayings.Report())),
        ("saying_longer-rod-casts-further", typeof(SayingChart), () => SayingChart.Build(MadeUpSayings.Further(), Shown.Both).First()),
        ("saying_reeled-straight", typeof(SayingChart), () => SayingChart.Build(MadeUpSayings.Straight(), new(UnitChoice.Trade)).First()),
        ("compare_page", typeof(ComparePage), () => ComparePage.Build(MadeUpCompare.Result(), Shown.Both)),
        ("compare_page_trade", typeof(ComparePage), () => ComparePage.Build(MadeUpCompare.Result(), new(UnitChoice.Trade))),
        ("compare_page_many", typeof(ComparePage), () => ComparePage.Build(MadeUpCompare.Result(10), Shown.Both)),
        ("trim_side", typeof(TrimView), () => TrimView.Build("Made up", MadeUpTrim.Result(), Shown.Both)),
        ("trim_side_trade", typeof(TrimView), () => TrimView.Build("Made up", MadeUpTrim.Result(), new(UnitChoice.Trade))),
        ("trim_righting_trade", typeof(TrimRighting), () => TrimRighting.Build("Made up", MadeUpTrim.Result(), new(UnitChoice.Trade))),
        ("trim_righting", typeof(TrimRighting), () => TrimRighting.Build("Made up", MadeUpTrim.Result(), Shown.Both)),
        ("design_before_after", typeof(BeforeAfterChart), () => BeforeAfterChart.Build("Made up", MadeUpTrim.Result(), MadeUpTrim.Level(), "weight 5 mm forward", Shown.Both)),
        ("design_before_after_trade", typeof(BeforeAfterChart), () => BeforeAfterChart.Build("Made up", MadeUpTrim.Level(), MadeUpTrim.Result(), "weight 0.2 in back", new(UnitChoice.Trade))),
        ("design_pull", typeof(PullTurnChart), () => PullTurnChart.Build("Made up", MadeUpMargin.Result(), Shown.Both)),
        ("design_pull_short_trade", typeof(PullTurnChart), () => PullTurnChart.Build("Made up", MadeUpMargin.Result(reaches: false), new(UnitChoice.Trade))),
        ("design_float_map", typeof(DesignMapCharts), () => DesignMapCharts.Angle("Made up", MadeUpMargin.Map(), Shown.Both)),
        ("design_float_map_trade", typeof(DesignMapCharts), () => DesignMapCharts.Angle("Made up", MadeUpMargin.Map(ChangeKind.BallastUp), new(UnitChoice.Trade))),
        ("design_tow_map", typeof(DesignMapCharts), () => DesignMapCharts.Tow("Made up", MadeUpMargin.Map(), Shown.Both)),
        ("design_tow_map_trade", typeof(DesignMapCharts), () => DesignMapCharts.Tow("Made up", MadeUpMargin.Map(ChangeKind.BallastUp, windows: false), new(UnitChoice.Trade))),
        ("design_tow_map_hooks", typeof(DesignMapCharts), () => DesignMapCharts.Tow("Made up", MadeUpMargin.Map(ChangeKind.HookSize, false, ChangeKind.TieUp), Shown.Both)),
        ("design_tow_map_hooks_across", typeof(DesignMapCharts), () => DesignMapCharts.Tow("Made up", MadeUpMargin.Map(ChangeKind.TieAlong, true, ChangeKind.HookSize), new(UnitChoice.Trade))),
        ("design_float_map_section", typeof(DesignMapCharts), () => DesignMapCharts.Angle("Made up", MadeUpMargin.Map(ChangeKind.Section, false, ChangeKind.Length), Shown.Both)),
        ("design_margin", typeof(MarginMovesChart), () => MarginMovesChart.Build("Made up", MadeUpMargin.Own, MadeUpMargin.Changes, MadeUpMargin.Name)!),
        ("pool_tow", typeof(PoolTowChart), () => PoolTowChart.Build("Made up", MadeUpPool.Result(), Shown.Both)),
        ("pool_tow_trade", typeof(PoolTowChart), () => PoolTowChart.Build("Made up", MadeUpPool.Result(), new(UnitChoice.Trade))),
        ("pool_tow_dives", typeof(PoolTowChart), () => PoolTowChart.Build("Made up", MadeUpPool.Stiff(), Shown.Both)),
        ("pool_push", typeof(PoolPushChart), () => PoolPushChart.Build("Made up", MadeUpPool.Result(), Shown.Both)),
        ("pool_push_trade", typeof(PoolPushChart), () => PoolPushChart.Build("Made up", MadeUpPool.Result(), new(UnitChoice.Trade))),
        ("pool_push_straight", typeof(PoolPushChart), () => PoolPushChart.Build("Made up", MadeUpPool.Stiff(), Shown.Both)),
        ("fit_bands", typeof(FitBandsChart), () => FitBandsChart.Build(MadeUpFit.Report(), Shown.Both)),
        ("fit_tow", typeof(FitTowChart), () => FitTowChart.Build(MadeUpFit.Report(), Shown.Both)),
        ("fit_tow_trade", typeof(FitTowChart), () => FitTowChart.Build(MadeUpFit.Report(), new(UnitChoice.Trade))),
        ("fit_way", typeof(FitWayChart), () => FitWayChart.Build(MadeUpFit.Report(), Shown.Both)),
        ("fit_way_trade", typeof(FitWayChart), () => FitWayChart.Build(MadeUpFit.Report(), new(UnitChoice.Trade))),
        ("fit_rest", typeof(FitMissChart), () => FitMissChart.Build(MadeUpFit.Report(odd: true), Shown.Both)),
        ("fit_rest_walk", typeof(FitMissChart), () => FitMissChart.Build(MadeUpFit.Walk(), Shown.Both)),
        ("crawl", typeof(CrawlChart), () => CrawlChart.Build(MadeUpCrawl.Result(), Shown.Both)),
        ("crawl_trade", typeof(CrawlChart), () => CrawlChart.Build(MadeUpCrawl.Result(), new(UnitChoice.Trade))),
        ("crawl_stuck", typeof(CrawlChart), () => CrawlChart.Build(MadeUpCrawl.Stuck(), Shown.Both)),
        ("pool_swings", typeof(PoolSwingChart), () => PoolSwingChart.Build("Made up", MadeUpPool.Result(), Shown.Both)),
        ("pool_swings_trade", typeof(PoolSwingChart), () => PoolSwingChart.Build("Made up", MadeUpPool.Result(), new(UnitChoice.Trade))),
        ("pool_swings_stiff", typeof(PoolSwingChart), () => PoolSwingChart.Build("Made up", MadeUpPool.Stiff(), Shown.Both)),
        ("strike_force", typeof(StrikeForce), () => StrikeForce.Build(MadeUpStrike.About(MadeUpStrike.Result()), Shown.Both)),
        ("strike_force_sweep", typeof(StrikeForce), () => StrikeForce.Build(MadeUpStrike.About(MadeUpStrike.Result(Model.Hands.StrikeStyle.Sweep, 20.0, 5.0, slips: true)), new(UnitChoice.Trade))),
        ("strike_margins", typeof(MarginBars), () => MarginBars.Build(MadeUpStrike.About(MadeUpStrike.Result()), Shown.Both)),
        ("strike_margins_gives", typeof(MarginBars), () => MarginBars.Build(MadeUpStrike.About(MadeUpStrike.Result(peakN: 70.0)), new(UnitChoice.Trade))),
        ("strike_distance", typeof(StrikeDistance), () => StrikeDistance.Build(MadeUpStrike.Report(), Shown.Both)),
        ("drag_window", typeof(DragWindowChart), () => DragWindowChart.Build(MadeUpStrike.Report(), Shown.Both)),
        ("drag_window_alone", typeof(DragWindowChart), () => DragWindowChart.OfWindowAlone(MadeUpStrike.Report(), Shown.Both)),
        ("drag_window_empty", typeof(DragWindowChart), () => DragWindowChart.Build(MadeUpStrike.Empty(), new(UnitChoice.Trade))),
        ("drag_window_weak", typeof(DragWindowChart), () => DragWindowChart.Build(MadeUpStrike.TooWeak(), Shown.Both)),
        ("cadence", typeof(CadenceChart), () => CadenceChart.Build(MadeUpCadence.TwoWindows())),
        ("cadence_failed", typeof(CadenceChart), () => CadenceChart.Build(MadeUpCadence.HalfFailed())),
        ("across_windows", typeof(AcrossWindows), () => AcrossWindows.Build(MadeUpCadence.Across(numbers: true, twoKeys: false))),
        ("across_windows_two_keys", typeof(AcrossWindows), () => AcrossWindows.Build(MadeUpCadence.Across(numbers: false, twoKeys: true))),
        ("across_glide", typeof(AcrossGlide), () => AcrossGlide.Build(MadeUpCadence.Across(numbers: true, twoKeys: false))),
        ("across_trend", typeof(AcrossTrend), () => AcrossTrend.Build(MadeUpCadence.Across(numbers: true, twoKeys: false))!),
        ("across_trend_two_keys", typeof(AcrossTrend), () => AcrossTrend.Build(MadeUpCadence.Across(numbers: true, twoKeys: true))!),
        ("cadence_map", typeof(CadenceMap), () => CadenceMap.Build(MadeUpCadence.Map(), MapText.Headline(MadeUpCadence.Map(), Shown.Both))),
        ("doubt_glide_width", typeof(DoubtChart), () => MadeUpDoubt.Chart()),
        ("rank_glide_width", typeof(RankChart), Rank),
        ("study_lines", typeof(StudyLines), Lines),
        ("study_bars", typeof(StudyLines), Bars),
        ("study_map", typeof(StudyMap), () => StudyMap.Classes(
            "study_map", "Rhythm and stroke", "Alternating below the edge", "Rhythm, twitches per second", "Stroke, cm",
            Grid((x, y) => x * y < 12 ? -1 : x * y > 40 ? 1 : 0), Classes)),
        ("study_shade", typeof(StudyMap), () => StudyMap.Shade(
            "study_shade", "Ballast and rhythm", "Darker is wider", "Rhythm, twitches per second", "Ballast from the middle, mm",
            Grid((x, y) => x < 0.9 && y > 20 ? double.NaN : x + y), "Glide per twitch, cm")),
    ];

    private static Model.Retrieve.RetrieveResult Tow()
    {
        Model.Retrieve.RetrieveResult twitched = MadeUpRetrieve.Result(pattern: Model.Retrieve.WalkPattern.Tracking);
        return twitched with { Task = twitched.Task with { StrokeM = 0.0 }, Twitches = [] };
    }

    // A lure that stands in the water, its nose out of it.
    private static Model.Retrieve.RetrieveResult Steep() => MadeUpRetrieve.With(MadeUpRetrieve.With(
        MadeUpRetrieve.Result(), "pitch_deg", pitch => 55.0 + (1.3 * pitch)), "nose_z_m", z => z + 0.04);

    // The last is the reference, and a draw of the second failed.
    private static CastAcross Holes()
    {
        CastAcross whole = MadeUpCast.Across();
        return whole with { Cases = [whole.Cases[0], whole.Cases[1] with { Draws = MadeUpCast.Draws(27.0, double.NaN, 41.0) }, .. whole.Cases.Skip(2)], ReferenceIndex = 3 };
    }

    internal static MatchReport Match() => new(
        "Made up", new(0.8, 0.1, 0.04, [new("a", 30.0, 0.78, 31.0), new("b", 34.0, 0.82, 33.0)]), 0.7, [new("lure.tumbling (0.2 to 1)", 0.6, double.NaN)]);

    private static Chart Rank() => RankChart.Build(
        new("glide_width_m", "glide per twitch", "cm", 100.0),
        "Mean over 3 points of 99 runs each",
        [("lure form drag", new(0.4, 0.4, -0.01, 0.008)), ("rod damping", new(-0.8, 0.8, 0.03, -0.02)), ("line modulus", new(0.05, 0.05, 0.001, 0.002))],
        0.2);

    private static Chart Lines() => StudyLines.Build(
        "study_lines", "Which rhythms walk", "Walks from 0.9 to 2.4 twitches a second", "Rhythm, twitches per second",
        [
            new("Glide", "Glide per twitch, cm", [new("braid", X, Of(x => 10 * x), Of(x => 9 * x), Of(x => 12 * x)), new("nylon", X, Of(x => 8 * x))]),
            new("Wrist", "Torque, N m", [new("torque", X, Of(x => 0.4 * x * x))]),
        ],
        [new("alternating", 0.9, 2.4), new("tracking", 2.4, 3.0)], Classes);

    private static Chart Bars()
    {
        double[] y = Of(x => 10 + x);
        y[2] = double.NaN;
        return StudyLines.Build("study_bars", "Distance against rod length", "Bars: 10 to 90 % of casts", "Rod length, ft",
            [new("Distance", "m", [new("cast", X, y, Of(x => 9.8 + x), Of(x => 10.3 + x))], FromZero: false, Doubt: DoubtStyle.Bars)]);
    }

    private static double[] Of(Func<double, double> f) => Array.ConvertAll(X, x => f(x));

    private static StudyGrid Grid(Func<double, double, double> f)
    {
        double[] x = [.. Enumerable.Range(0, 9).Select(i => 0.6 + (0.3 * i))], y = [.. Enumerable.Range(0, 7).Select(i => 5.0 + (3 * i))];
        var values = new double[x.Length, y.Length];
        for (int i = 0; i < x.Length; i++)
        {
            for (int j = 0; j < y.Length; j++)
            {
                values[i, j] = f(x[i], y[j]);
            }
        }

        return new StudyGrid(x, y, values);
    }
}
