using LureSim.Model.Retrieve;

namespace LureSim.Model.Tests.Retrieve;

/// <summary>
/// Every figure from channels made up by hand: samples each 0.1 s, twitches each 0.5 s, the first one warm-up. The four that count fill the 20 samples
/// 6 to 25, each sample being the mean of the output step before it; what lies before and after is nonsense that must not show.
/// </summary>
public sealed class RetrieveSummarizerTests
{
    private const int From = 6, Count = 20, Samples = 29;
    private const double Nonsense = 777.0, Stroke = 0.2;
    private static readonly RetrieveTask Twitched =
        new(DistanceM: 15.0, CadencePerS: 2.0, StrokeM: Stroke, DurationS: 3.0, WarmUpS: 0.5) { TakeUp = new(SpeedMS: 0.4) };
    private static readonly RetrieveParts Parts = RetrieveCases.Parts(Twitched);
    private static readonly RetrieveSummary Summary = new RetrieveSummarizer(Parts, Series(), Twitches(), 1).Summarize();

    [Fact]
    public void Only_twitches_after_the_warm_up_count()
    {
        Assert.Equal(4, Summary.TwitchesCounted);
        Assert.Equal(WalkPattern.Fouling, Summary.Pattern);
        Assert.Equal(1.0, Summary.FlipShare);
    }

    // Swings of 100, 120, 140 and 160 deg: median 130; mean 130 with a spread of sqrt((30^2 + 10^2 + 10^2 + 30^2)/4) = 22.3607.
    [Fact]
    public void Swing_is_the_median_and_regularity_its_spread_over_the_mean()
    {
        Assert.Equal(130.0, Summary.HeadingSwingDeg, 1e-9);
        Assert.Equal(1.0 - (22.360680 / 130.0), Summary.Regularity, 1e-7);
    }

    // Sideways 0.05, -0.07, 0.06, -0.10; widths 0.08 to 0.14; nose 0.20 to 0.26; advance 0.20 to 0.32, over the stroke of 0.2 m.
    [Fact]
    public void Travel_is_the_mean_over_the_twitches_whichever_side_it_goes()
    {
        Assert.Equal(0.07, Summary.GlideWidthM, 1e-12);
        Assert.Equal(0.11, Summary.WidthM, 1e-12);
        Assert.Equal(0.23, Summary.NoseWidthM, 1e-12);
        Assert.Equal(0.26, Summary.AdvancePerTwitchM, 1e-12);
        Assert.Equal(1.3, Summary.PullReach, 1e-12);
        Assert.Equal(0.045, Summary.PullImpulseNs, 1e-12);
        Assert.Equal(0.0, Summary.TowSpeedMS);
    }

    // Pitch 2 deg but for -18 and 22; roll 30 deg but for 95 and 91 to either side; one sample all under, 0.99 is not; the nose under once.
    [Fact]
    public void Attitude_is_told_by_its_ends_and_by_shares_of_the_time()
    {
        Assert.Equal((-18.0, 22.0), (Summary.PitchLowDeg, Summary.PitchHighDeg));
        Assert.Equal(2.0, Summary.PitchMeanDeg, 1e-12);
        Assert.Equal((30.0, 95.0), (Summary.RollTypicalDeg, Summary.RollPeakDeg));
        Assert.Equal(2.0 / 20.0, Summary.BellyUpShare, 1e-12);
        Assert.Equal(1.0 / 20.0, Summary.UnderShare, 1e-12);
        Assert.Equal(1.0 / 20.0, Summary.NoseUnderShare, 1e-12);
        Assert.Equal(0.006, Summary.DipM, 1e-12);
        Assert.Equal(1.0 / 4.0, Summary.HookedShare, 1e-12);
    }

    // What goes before any walk: all the time under water, belly up, on end.
    [Theory]
    [InlineData("wet_share", 1.0, WalkPattern.Diving)]
    [InlineData("roll_deg", -170.0, WalkPattern.RolledOver)]
    [InlineData("pitch_deg", 61.0, WalkPattern.Standing)]
    [InlineData("pitch_deg", 59.0, WalkPattern.Alternating)]
    public void A_lure_that_dives_rolls_over_or_stands_up_is_called_so_first(string channel, double value, WalkPattern expected) =>
        Assert.Equal(expected, new RetrieveSummarizer(Parts, Series((channel, value)), Clear(), 1).Summarize().Pattern);

    // One twitch in four within reach of a hook, 9 mm of 10, is enough to foul.
    [Fact]
    public void Taut_line_over_a_hook_in_a_quarter_of_the_twitches_fouls()
    {
        Assert.Equal(WalkPattern.Fouling, new RetrieveSummarizer(Parts, Series(), Twitches(), 1).Summarize().Pattern);
        Assert.Equal(WalkPattern.Alternating, new RetrieveSummarizer(Parts, Series(), Clear(), 1).Summarize().Pattern);
    }

    // Fourteen samples of 40 deg to either side, five of 90 and one of -130: (14 x 40 + 5 x 90 + 130)/20; only the last is more than 90 off.
    [Fact]
    public void Sheer_is_the_mean_size_of_the_angle_and_away_what_is_over_a_right_angle()
    {
        Assert.Equal(57.0, Summary.SheerDeg, 1e-12);
        Assert.Equal(1.0 / 20.0, Summary.AwayShare, 1e-12);
    }

    // Three samples below 0.02 N (0, 0.01, 0.0199), one at it, one of 1.1 N.
    [Fact]
    public void Slack_is_less_than_two_hundredths_of_a_newton_at_the_nose()
    {
        Assert.Equal(3.0 / 20.0, Summary.SlackShare, 1e-12);
        Assert.Equal(1.1, Summary.NoseTensionPeakN);
        Assert.Equal(1.6, Summary.TipForcePeakN);
    }

    // Each channel has a base and one or two samples that differ: mean = base + sum of the differences/20.
    [Fact]
    public void Means_and_peaks_are_of_their_own_channels()
    {
        Assert.Equal(0.05 + (0.4 / 20.0), Summary.LineDragMeanN, 1e-12);
        Assert.Equal(0.45, Summary.LineDragPeakN, 1e-12);
        Assert.Equal(0.004 - (0.02 / 20.0), Summary.NoseDownLoadN, 1e-12);
        Assert.Equal(0.003, Summary.NoseDipM, 1e-12);
        Assert.Equal(0.31 + (0.1 / 20.0), Summary.LineSagM, 1e-12);
        Assert.Equal(0.14 + (0.2 / 20.0), Summary.MeanSlackM, 1e-12);
        Assert.Equal(9.6 - (2.0 / 20.0), Summary.WettedLineM, 1e-12);
        Assert.Equal(0.10 + (0.6 / 20.0), Summary.WaterStirW, 1e-12);
        Assert.Equal(0.18 / RetrieveCases.Rod.FreeLengthM, Summary.RodBendShare, 1e-12);
    }

    // pi D ratio = 0.758380 m a turn, 0.5 m/s.
    [Fact]
    public void Handle_turns_are_line_taken_up_over_line_per_turn() => Assert.Equal(0.5 / 0.758380, Summary.HandleTurnsPerS, 1e-6);

    // 19 samples of 1 N m and one of -3: the peak is its size, and rms = sqrt((19 + 9)/20).
    [Fact]
    public void Wrist_torque_counts_by_its_size()
    {
        Assert.Equal(3.0, Summary.WristTorquePeakNm);
        Assert.Equal(Math.Sqrt(1.4), Summary.WristTorqueRmsNm, 1e-12);
    }

    // Highest less lowest within each twitch, both of its ends included: 0.35, 0.24, 0.30 and, at its very end, 0.31.
    [Fact]
    public void Tip_travel_is_the_range_of_the_loaded_tip_in_a_twitch() => Assert.Equal(0.30, Summary.LoadedTipTravelM, 1e-12);

    [Fact]
    public void The_end_distance_is_the_last_sample_whatever_counts() => Assert.Equal(Nonsense, Summary.EndDistanceM);

    // A nose that never sinks below its rest has no dip.
    [Fact]
    public void A_lifted_nose_does_not_dip() =>
        Assert.Equal(0.0, new RetrieveSummarizer(Parts, Series(("nose_height_m", Parts.Hull.TieHeightM + 0.001)), Twitches(), 1).Summarize().NoseDipM);

    // Swings whose spread exceeds their mean are not less than not regular; a lure that never swings is not regular either.
    [Fact]
    public void Regularity_stays_between_nothing_and_one()
    {
        double Regularity(params double[] deg) => new RetrieveSummarizer(Parts, Series(), Twitches(deg), 1).Summarize().Regularity;
        Assert.Equal(0.0, Regularity(0.0, 0.0, 0.0, 90.0));
        Assert.Equal(0.0, Regularity(0.0, 0.0, 0.0, 0.0));
        Assert.Equal(1.0, Regularity(90.0, 90.0, 90.0, 90.0), 1e-12);
    }

    // On a steady pull all samples but the start count, and the angle off the line names the pattern: mean -6 deg of size 8.
    [Fact]
    public void A_steady_pull_is_named_by_its_angle_and_has_no_twitch()
    {
        RetrieveParts parts = RetrieveCases.Parts(Twitched with { StrokeM = 0.0 });
        RetrieveSummary s = new RetrieveSummarizer(parts, Tow(), [], 0).Summarize();
        Assert.Equal(WalkPattern.OneSided, s.Pattern);
        Assert.Equal(8.0, s.SheerDeg, 1e-12);
        Assert.Equal(0.4, s.TowSpeedMS);
        Assert.Equal((0, 0.0, 0.0, 0.0, 0.0), (s.TwitchesCounted, s.PullReach, s.GlideWidthM, s.Regularity, s.LoadedTipTravelM));
        Assert.Equal(5.0, s.LineDragMeanN, 1e-12);
    }

    private static Series Tow()
    {
        // Eight samples after the start: -8 deg seven times and 8 once gives a mean of -6.
        double[] off = [Nonsense, -8, -8, -8, -8, -8, -8, -8, 8];
        Channel Of(string name, Func<int, double> value) => new(name, "", "", [.. off.Select((_, i) => value(i))]);
        return new([Of("time_s", i => 0.1 * i), Of("heading_off_line_deg", i => off[i]), .. Names.Select(n => Of(n, i => i == 0 ? Nonsense : n == "wet_share" ? 0.5 : 5.0))]);
    }

    private static readonly string[] Names =
    [
        "nose_tension_N", "tip_tension_N", "line_drag_N", "nose_down_N", "nose_height_m", "line_sag_m", "slack_m", "wetted_line_m", "water_power_W",
        "rod_bend_m", "take_up_m_s", "wrist_torque_Nm", "tip_travel_m", "straight_m", "pitch_deg", "roll_deg", "wet_share", "nose_z_m", "lure_z_m",
    ];

    private static TwitchRecord[] Twitches(params double[] swingDeg)
    {
        double[] swing = swingDeg.Length > 0 ? swingDeg : [100.0, 120.0, 140.0, 160.0];
        TwitchRecord Of(int k, double sideways, double width, double nose, double advance, double impulse) =>
            new(0.5 * k, (k % 2 == 0 ? 70.0 : -70.0) * Math.PI / 180.0, swing[k - 1] * Math.PI / 180.0, impulse, advance, sideways, 0) { WidthM = width, NoseWidthM = nose, HookClearanceM = k == 3 ? 0.009 : 0.011 };
        return
        [
            new TwitchRecord(0.0, 3.0, Nonsense, Nonsense, Nonsense, Nonsense, 1) { WidthM = Nonsense, NoseWidthM = Nonsense },
            Of(1, 0.05, 0.08, 0.20, 0.20, 0.03),
            Of(2, -0.07, 0.10, 0.22, 0.24, 0.04),
            Of(3, 0.06, 0.12, 0.24, 0.28, 0.05),
            Of(4, -0.10, 0.14, 0.26, 0.32, 0.06),
        ];
    }

    private static TwitchRecord[] Clear() => [.. Twitches().Select(t => t with { HookClearanceM = 1.0 })];

    private static Series Series(params (string Name, double Value)[] instead)
    {
        double rest = Parts.Hull.TieHeightM;
        List<Channel> channels =
        [
            new("time_s", "", "", [.. Enumerable.Range(0, Samples).Select(i => 0.1 * i)]),
            Window("heading_off_line_deg", 40.0, (0, 90), (1, 90), (2, 90), (3, 90), (4, 90), (5, -130), (7, -40), (8, -40), (11, -40)),
            Window("nose_tension_N", 0.3, (0, 0.0), (3, 0.01), (4, 0.0199), (5, 0.02), (9, 1.1)),
            Window("tip_tension_N", 0.4, (9, 1.6)),
            Window("line_drag_N", 0.05, (19, 0.45)),
            Window("nose_down_N", 0.004, (2, -0.016)),
            Window("nose_height_m", rest + 0.001, (6, rest - 0.003), (7, rest + 0.02)),
            Window("line_sag_m", 0.31, (0, 0.41)),
            Window("slack_m", 0.14, (0, 0.34)),
            Window("wetted_line_m", 9.6, (1, 7.6)),
            Window("water_power_W", 0.10, (8, 0.70)),
            Window("rod_bend_m", 0.05, (9, 0.18)),
            Window("take_up_m_s", 0.4, (3, 2.4)),
            Window("wrist_torque_Nm", 1.0, (4, -3.0)),
            Window("straight_m", 8.0),
            Window("pitch_deg", 2.0, (2, -18.0), (3, 22.0)),
            Window("roll_deg", 30.0, (4, -95.0), (5, 91.0), (6, -30.0)),
            Window("wet_share", 0.7, (7, 1.0), (8, 0.99)),
            Window("nose_z_m", 0.004, (2, -0.009)),
            Window("lure_z_m", Parts.Hull.CentreHeightM, (2, Parts.Hull.CentreHeightM - 0.006)),

            // Twitches end on each other's samples: 5 to 10, 10 to 15, 15 to 20, 20 to 25.
            new("tip_travel_m", "", "", Tip()),
        ];
        foreach ((string name, double value) in instead)
        {
            channels[channels.FindIndex(c => c.Name == name)] = Window(name, value);
        }

        return new(channels);
    }

    private static ValueList<double> Tip()
    {
        var tip = new double[Samples];
        Array.Fill(tip, Nonsense, 0, 5);
        Array.Fill(tip, Nonsense, 26, Samples - 26);
        (tip[7], tip[8], tip[12], tip[13], tip[17], tip[25]) = (0.30, -0.05, 0.20, -0.04, 0.30, 0.31);
        return ValueList.Own(tip);
    }

    private static Channel Window(string name, double value, params (int At, double Value)[] others)
    {
        var values = new double[Samples];
        Array.Fill(values, Nonsense);
        Array.Fill(values, value, From, Count);
        foreach ((int at, double other) in others)
        {
            values[From + at] = other;
        }

        return new(name, "", "", ValueList.Own(values));
    }
}
