using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Retrieve;
using LureSim.Model.Rods;

namespace LureSim.Reports.Tests.Support;

/// <summary>A zigzag drawn by hand, with plausible numbers: no physics, only something to print.</summary>
internal static class MadeUpRetrieve
{
    private const double Period = 0.5;
    private const double Step = 0.005;
    private const double Hull = 0.11;
    private const double TieX = 0.051, TieZ = -0.003;
    private const double RestPitch = 6.0;

    // Centre of gravity of the made-up lure, from the middle and over the axis.
    private const double CentreX = -0.0033, CentreZ = -0.0013;

    public static RetrieveResult Result(double duration = 15.0, WalkPattern pattern = WalkPattern.Alternating)
    {
        int n = (int)Math.Round(duration / Step) + 1;
        ValueList<double> time = Fill(n, i => i * Step);
        ValueList<double> rigid = Fill(n, i => 0.20 * Stroke(Phase(time[i])));
        ValueList<double> tip = Fill(n, i => Tip(Phase(time[i])));
        ValueList<double> tension = Fill(n, i => 0.9 * Pulse(Phase(time[i]), 0.07, 0.018) + 0.12 * Pulse(Phase(time[i]), 0.13, 0.02));
        ValueList<double> heading = Fill(n, i => Heading(time[i]));
        ValueList<double> x = Fill(n, i => 15 - 0.24 * Travel(time[i]));
        ValueList<double> y = Fill(n, i => 0.03 * Math.Sin(Math.PI * (time[i] / Period - 0.35)));
        ValueList<double> slack = Fill(n, i => 0.02 + 0.16 * (1 - Stroke(Phase(time[i]) - 0.02)));
        ValueList<double> drag = Fill(n, i => 0.03 + 0.3 * Pulse(Phase(time[i]), 0.08, 0.03) + 0.1 * Pulse(Phase(time[i]), 0.2, 0.04));
        ValueList<double> pitch = Fill(n, i => Pitch(Phase(time[i]))), roll = Fill(n, i => Roll(time[i])), height = Fill(n, i => Height(Phase(time[i])));
        Channel[] channels =
        [
            new("time_s", "s", "time", time), new("lure_x_m", "m", "lure", x), new("lure_y_m", "m", "lure", y),
            new("nose_x_m", "m", "nose", Fill(n, i => x[i] - (0.5 * Hull * Math.Cos(heading[i] * Math.PI / 180)))),
            new("nose_y_m", "m", "nose", Fill(n, i => y[i] - (0.5 * Hull * Math.Sin(heading[i] * Math.PI / 180)))),
            new("lure_z_m", "m", "lure", height), new("nose_z_m", "m", "nose", Fill(n, i => height[i] + Over(pitch[i], 0.5 * Hull, 0.0))),
            new("nose_height_m", "m", "tie", Fill(n, i => height[i] + Over(pitch[i], TieX, TieZ))),
            new("pitch_deg", "deg", "pitch", pitch), new("roll_deg", "deg", "roll", roll),
            new("heading_off_line_deg", "deg", "heading", Fill(n, i => Math.IEEERemainder(heading[i], 360.0))),
            new("heading_deg", "deg", "heading", heading), new("tip_x_m", "m", "tip", Fill(n, i => -0.6 * tip[i])),
            new("tip_y_m", "m", "tip", Fill(n, i => 0.1 * tip[i])), new("tip_z_m", "m", "tip", Fill(n, i => 0.5 + 0.4 * tip[i])),
            new("tip_travel_m", "m", "loaded tip", tip), new("rigid_stroke_m", "m", "stroke", rigid),
            new("nose_tension_N", "N", "nose", tension), new("tip_tension_N", "N", "tip", Fill(n, i => 0.06 + (1.25 * tension[i]))),
            new("slack_m", "m", "slack", slack), new("line_drag_N", "N", "drag", drag),
        ];
        var twitches = Enumerable.Range(0, (int)(duration / Period))
            .Select(k => new TwitchRecord(k * Period, (k % 2 == 0 ? 1 : -1) * 1.36, 2.72, 0.04, 0.24, k % 2 == 0 ? 0.05 : -0.05, 0))
            .ToArray();
        Snapshot[] snapshots = duration < 7
            ? []
            : [Shot("pull", 6.07, 12.1, 0.03, 0.3), Shot("slack", 6.20, 12.0, 0.22, 0.1), Shot("turn", 6.35, 11.95, 0.30, 0.0)];
        return new RetrieveResult(Made(), new RetrieveTask(), Outline(), new Series(channels), twitches, snapshots,
            Summary(pattern), new SolverCounters(30000, 3, 62000, 0, 0.41), null, 12);
    }

    /// <summary>The same lure with the attitude of rest from end to end, as the planar hull records it.</summary>
    public static RetrieveResult Planar(double duration = 15.0)
    {
        RetrieveResult result = Result(duration);
        result = result with { Task = result.Task with { Hull = HullFreedom.Planar } };
        return With(With(With(result, "pitch_deg", _ => RestPitch), "roll_deg", _ => 0.0), "nose_z_m", v => 0.1 * v);
    }

    /// <summary>A result with one channel changed.</summary>
    public static RetrieveResult With(RetrieveResult result, string channel, Func<double, double> change) => result with
    {
        Series = new([.. result.Series.Channels.Select(c => c.Name == channel ? c with { Values = [.. c.Values.Select(change)] } : c)]),
    };

    public static RetrieveSummary Summary(WalkPattern pattern) => new()
    {
        Pattern = pattern,
        FlipShare = 1,
        HeadingSwingDeg = 156,
        GlideWidthM = 0.047,
        WidthM = 0.06,
        NoseWidthM = 0.13,
        SheerDeg = 44,
        AwayShare = 0,
        TowSpeedMS = 0,
        AdvancePerTwitchM = 0.24,
        Regularity = 0.97,
        SlackShare = 0.62,
        PullReach = 1.2,
        PullImpulseNs = 0.040,
        NoseTensionPeakN = 0.86,
        LineDragMeanN = 0.062,
        LineDragPeakN = 0.33,
        NoseDownLoadN = 0.004,
        NoseDipM = 0.0012,
        RestTrimDeg = RestPitch,
        PitchMeanDeg = 6.1,
        PitchLowDeg = -9.0,
        PitchHighDeg = 16.0,
        RollTypicalDeg = 14.0,
        RollPeakDeg = 52.0,
        BellyUpShare = 0.0,
        NoseUnderShare = 0.16,
        UnderShare = 0.0,
        DipM = 0.005,
        HookedShare = 0.0,
        LineSagM = 0.31,
        TipForcePeakN = 1.13,
        LoadedTipTravelM = 0.36,
        RodBendShare = 0.06,
        WaterStirW = 0.10,
        HandleTurnsPerS = 0.83,
        DragSlipM = 0.0,
        WristTorquePeakNm = 1.9,
        WristTorqueRmsNm = 0.7,
        MeanSlackM = 0.14,
        WettedLineM = 9.6,
        TwitchesCounted = 18,
        EndDistanceM = 7.8,
    };

    private static Setup Made()
    {
        var line = new LineSpec(LineMaterial.Braid, 3.3e-4, 7.3e-5, 970, 5000, 1e-3, 0, SurfaceFilm.Dry, 220);
        var lure = new LureSpec(LureShape.Cigar, Hull, 0.0205, 0.0205, 0.018, TieX, TieZ, [new BallastSpec(0.004, CentreX * 0.018 / 0.004, CentreZ * 0.018 / 0.004)], []);
        return new Setup("Large walker on straight braid", new WaterSpec(), new AirSpec(), new AnglerSpec(), new HandsSpec(),
            new RodSpec(2.13, 0.3, 15, 0.06), new ReelSpec(ReelKind.Revolving, 7.1, 0.034, 30), line, null, lure);
    }

    private static WalkHull Outline()
    {
        double[] x = [.. Fill(25, i => (Hull * (i / 24.0 - 0.5)) + 0.0033)];
        double[] b = [.. Fill(25, i => 0.0102 * Math.Pow(1 - Math.Pow(Math.Abs(2 * (i / 24.0 - 0.5)), 2.5), 0.6))];
        return new WalkHull(Hull, 0.018, 0.019, 0.029, 0, 2.1e-5, 0.0543, 0.002, [], [], 0, [], [], 0.01, 3.9, 0.1, x, b);
    }

    private static Snapshot Shot(string label, double t, double lureX, double sag, double pull)
    {
        ValueList<double> u = Fill(41, i => i / 40.0);
        double tipX = -0.6 * pull, tipZ = 0.5 + (0.4 * pull);
        ValueList<double> lineX = [.. u.Select(s => tipX + (s * (lureX - 0.05 - tipX)))];
        ValueList<double> lineZ = [.. u.Select(s => Math.Max(-0.02, (tipZ * (1 - s)) - (4 * sag * s * (1 - s))))];
        ValueList<double> rodX = Fill(11, i => -0.86 + ((tipX + 0.86) * i / 10.0));
        ValueList<double> rodZ = Fill(11, i => 1.2 + ((tipZ - 1.2) * i / 10.0) + (0.05 * Math.Sin(Math.PI * i / 10.0)));
        return new Snapshot(t, label, [lineX, Fill(41, _ => 0.0), lineZ], [rodX, Fill(11, _ => 0.0), rodZ], lureX, 0.02, Math.PI + (Heading(t) * Math.PI / 180))
        {
            LureZM = Height(Phase(t)),
            PitchRad = Pitch(Phase(t)) * Math.PI / 180,
            RollRad = Roll(t) * Math.PI / 180,
        };
    }

    private static double Phase(double t) => t - (Period * Math.Floor((t / Period) + 1e-9));

    // Pulled down, then up again further than at rest.
    private static double Pitch(double p) => RestPitch - (15 * Pulse(p, 0.09, 0.03)) + (10 * Pulse(p, 0.22, 0.05));

    // Thrown over by the pull, to the other side each time, and a swing of 0.35 s that dies away.
    private static double Roll(double t) => (Math.Floor((t / Period) + 1e-9) % 2 == 0 ? 81 : -81) * Math.Exp(-Phase(t) / 0.18) * Math.Sin(2 * Math.PI * Phase(t) / 0.35);

    private static double Height(double p) => -0.003 - (0.005 * Pulse(p, 0.10, 0.04)) + (0.003 * Pulse(p, 0.25, 0.05));

    // A point of the upright hull over the centre of gravity.
    private static double Over(double pitchDeg, double x, double z)
    {
        (double sin, double cos) = Math.SinCos(pitchDeg * Math.PI / 180);
        return (sin * (x - CentreX)) + (cos * (z - CentreZ));
    }

    private static double Stroke(double p) =>
        p < 0.1 ? Square(Math.Sin(Math.PI * Math.Max(p, 0) / 0.2)) : p < 0.25 ? Square(Math.Cos(Math.PI * (p - 0.1) / 0.3)) : 0;

    private static double Tip(double p) =>
        p < 0.13 ? 0.33 * Square(Math.Sin(Math.PI * p / 0.26)) : 0.33 * Math.Cos(2 * Math.PI * 4.5 * (p - 0.13)) * Math.Exp(-(p - 0.13) / 0.11);

    private static double Pulse(double p, double at, double width) => p < 0 ? 0 : Math.Exp(-Square((p - at) / width));

    private static double Heading(double t)
    {
        int k = (int)Math.Floor((t / Period) + 1e-9);
        double turn = Smooth((Phase(t) - 0.05) / 0.38);
        return (k % 2 == 0 ? -78 : 78) * (1 - (2 * turn));
    }

    private static double Travel(double t) => Math.Floor((t / Period) + 1e-9) + (0.85 * Smooth((Phase(t) - 0.05) / 0.2)) + (0.15 * Phase(t) / Period);

    private static double Smooth(double u) => u <= 0 ? 0 : u >= 1 ? 1 : u * u * (3 - (2 * u));

    private static double Square(double v) => v * v;

    private static ValueList<double> Fill(int n, Func<int, double> f) => [.. Enumerable.Range(0, n).Select(f)];
}
