namespace LureSim.Model.Retrieve;

/// <summary>Turns channels and twitches into the figures of <see cref="RetrieveSummary"/>.</summary>
internal sealed class RetrieveSummarizer
{
    /// <summary>Below this the line at the nose counts as slack, N.</summary>
    public const double SlackTensionN = 0.02;

    // All of a hull under water, but for rounding and the last sliver of a fin.
    private const double AllUnder = 0.995;

    private readonly RetrieveParts _parts;
    private readonly Series _series;
    private readonly IReadOnlyList<TwitchRecord> _counted;
    private readonly int _from;
    private readonly int _to;

    /// <summary>Prepares the figures over the twitches after warm-up.</summary>
    /// <param name="parts">Parts of the run.</param>
    /// <param name="series">Channels.</param>
    /// <param name="twitches">All complete twitches.</param>
    /// <param name="skip">Twitches left out as warm-up.</param>
    public RetrieveSummarizer(RetrieveParts parts, Series series, IReadOnlyList<TwitchRecord> twitches, int skip)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(series);
        ArgumentNullException.ThrowIfNull(twitches);
        (_parts, _series) = (parts, series);
        _counted = [.. twitches.Skip(skip)];
        ReadOnlySpan<double> time = series["time_s"];
        double start = _counted.Count > 0 ? _counted[0].StartS : 0.0;
        double end = _counted.Count > 0 ? _counted[^1].StartS + parts.Twitch.PeriodS : time[^1];
        _from = Math.Min(time.Length - 1, Math.Max(1, After(time, start)));
        int past = After(time, end);
        _to = Math.Max(_from + 1, past < 0 ? time.Length : past);
    }

    /// <summary>Computes every figure.</summary>
    public RetrieveSummary Summarize()
    {
        RetrieveTask r = _parts.Task;
        double advance = Mean(t => t.AdvanceM);
        double sheer = Window("heading_off_line_deg").Average(Math.Abs);
        double under = Share("wet_share", v => v > AllUnder), bellyUp = Share("roll_deg", v => Math.Abs(v) > 90.0);
        double hooked = Mean(t => t.HookClearanceM < _parts.Setup.Lure.HookReachM ? 1.0 : 0.0);
        return new RetrieveSummary
        {
            Pattern = AttitudeFinder.Find(under, bellyUp, Share("pitch_deg", v => v > AttitudeFinder.StandingDeg), hooked) ?? (r.IsTow
                ? PatternFinder.ClassifyTow(sheer, Mean("heading_off_line_deg"))
                : PatternFinder.Classify(_counted, _parts.Hull.M11, _parts.Hull.LengthM)),
            FlipShare = PatternFinder.FlipShare(_counted),
            HeadingSwingDeg = PatternFinder.Median(_counted.Select(t => t.SwingRad)) * 180.0 / Math.PI,
            GlideWidthM = Mean(t => Math.Abs(t.SidewaysM)),
            WidthM = Mean(t => t.WidthM),
            NoseWidthM = Mean(t => t.NoseWidthM),
            SheerDeg = sheer,
            AwayShare = Share("heading_off_line_deg", v => Math.Abs(v) > 90.0),
            TowSpeedMS = r.IsTow ? r.TakeUp.SpeedMS : 0.0,
            AdvancePerTwitchM = advance,
            Regularity = Regularity(),
            SlackShare = Share("nose_tension_N", v => v < SlackTensionN),
            PullReach = r.IsTow ? 0.0 : advance / r.StrokeM,
            PullImpulseNs = Mean(t => t.ImpulseNs),
            NoseTensionPeakN = Highest("nose_tension_N"),
            LineDragMeanN = Mean("line_drag_N"),
            LineDragPeakN = Highest("line_drag_N"),
            NoseDownLoadN = Mean("nose_down_N"),
            NoseDipM = Math.Max(0.0, _parts.Hull.TieHeightM - Lowest("nose_height_m")),
            RestTrimDeg = _parts.Hull.TrimRad * 180.0 / Math.PI,
            PitchMeanDeg = Mean("pitch_deg"),
            PitchLowDeg = Lowest("pitch_deg"),
            PitchHighDeg = Highest("pitch_deg"),
            RollTypicalDeg = PatternFinder.Median(Window("roll_deg").Select(Math.Abs)),
            RollPeakDeg = Window("roll_deg").Max(Math.Abs),
            BellyUpShare = bellyUp,
            NoseUnderShare = Share("nose_z_m", v => v < 0.0),
            UnderShare = under,
            DipM = Math.Max(0.0, _parts.Hull.CentreHeightM - Lowest("lure_z_m")),
            HookedShare = hooked,
            LineSagM = Mean("line_sag_m"),
            TipForcePeakN = Highest("tip_tension_N"),
            LoadedTipTravelM = TravelPerTwitch("tip_travel_m"),
            RodBendShare = Highest("rod_bend_m") / _parts.Setup.Rod.FreeLengthM,
            WaterStirW = Mean("water_power_W"),
            HandleTurnsPerS = Mean("take_up_m_s") / _parts.Setup.Reel.TakeUpPerTurnM,
            DragSlipM = _parts.Step.Clutch?.GivenM ?? 0.0,
            WristTorquePeakNm = Window("wrist_torque_Nm").Max(Math.Abs),
            WristTorqueRmsNm = Math.Sqrt(Window("wrist_torque_Nm").Average(v => v * v)),
            MeanSlackM = Mean("slack_m"),
            WettedLineM = Mean("wetted_line_m"),
            TwitchesCounted = _counted.Count,
            EndDistanceM = _series["straight_m"][^1],
        };
    }

    private double Mean(Func<TwitchRecord, double> value) => _counted.Count > 0 ? _counted.Average(value) : 0.0;

    private static int After(ReadOnlySpan<double> time, double at)
    {
        for (int i = 0; i < time.Length; i++)
        {
            if (time[i] > at + 1e-9)
            {
                return i;
            }
        }

        return -1;
    }

    // An array, because the sums and extremes below run fastest over one.
    private double[] Window(string channel) => _series[channel][_from.._to].ToArray();

    private double Mean(string channel)
    {
        double[] values = Window(channel);
        double sum = values[0];
        for (int i = 1; i < values.Length; i++)
        {
            sum += values[i];
        }

        return sum / values.Length;
    }

    private double Highest(string channel) => Window(channel).Max();

    private double Lowest(string channel) => Window(channel).Min();

    private double Share(string channel, Func<double, bool> test) => Window(channel).Count(test) / (double)(_to - _from);

    private double Regularity()
    {
        double mean = Mean(t => t.SwingRad);
        double spread = Math.Sqrt(Mean(t => (t.SwingRad - mean) * (t.SwingRad - mean)));
        return mean > 0.0 ? Math.Clamp(1.0 - (spread / mean), 0.0, 1.0) : 0.0;
    }

    private double TravelPerTwitch(string channel)
    {
        ReadOnlySpan<double> time = _series["time_s"], value = _series[channel];
        double period = _parts.Twitch.PeriodS;
        double total = 0.0;
        foreach (TwitchRecord twitch in _counted)
        {
            double low = double.MaxValue, high = double.MinValue;
            for (int i = 0; i < time.Length; i++)
            {
                if (time[i] >= twitch.StartS - 1e-9 && time[i] <= twitch.StartS + period + 1e-9)
                {
                    low = Math.Min(low, value[i]);
                    high = Math.Max(high, value[i]);
                }
            }

            total += high - low;
        }

        return _counted.Count > 0 ? total / _counted.Count : 0.0;
    }
}
