using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Retrieve;
using LureSim.Model.Rods;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Tests.Support;

/// <summary>Set-ups and outcomes without physics.</summary>
internal static class MadeUp
{
    public static Setup Setup()
    {
        var line = new LineSpec(LineMaterial.Braid, 3.3e-4, 7.3e-5, 970, 5000, 1e-3, 0, SurfaceFilm.Dry, 220);
        var lure = new LureSpec(LureShape.Cigar, 0.11, 0.0205, 0.0205, 0.018, 0.051, 0, [], []);
        return new Setup("Made up", new WaterSpec(), new AirSpec(), new AnglerSpec(), new HandsSpec(), new RodSpec(2.13, 0.3, 15, 0.06),
            new ReelSpec(ReelKind.Revolving, 7.1, 0.034, 30), line, null, lure);
    }

    /// <summary>The same set-up with a fixed spool and a light rod, cast by practised hands.</summary>
    public static Setup Caster() => Setup() with
    {
        Rod = new RodSpec(2.13, 0.45, 3.0, 0.075),
        Reel = new ReelSpec(ReelKind.Fixed, 6.2, 0.045, 30).With(Setup().Line),
    };

    public static StationaryOutcome Outcome(WalkPattern pattern, double glide = 0.05, double torque = 1.0, double regularity = 0.98) =>
        new(Summary with { Pattern = pattern, GlideWidthM = glide, WristTorqueRmsNm = torque, Regularity = regularity });

    private static RetrieveSummary Summary { get; } = new()
    {
        Pattern = WalkPattern.Alternating,
        FlipShare = 1,
        HeadingSwingDeg = 150,
        GlideWidthM = 0.05,
        WidthM = 0.06,
        NoseWidthM = 0.13,
        SheerDeg = 44,
        AwayShare = 0,
        TowSpeedMS = 0,
        AdvancePerTwitchM = 0.2,
        Regularity = 0.98,
        SlackShare = 0.6,
        PullReach = 1.2,
        PullImpulseNs = 0.03,
        NoseTensionPeakN = 0.86,
        LineDragMeanN = 0.062,
        LineDragPeakN = 0.33,
        NoseDownLoadN = 0.001,
        NoseDipM = 0.002,
        RestTrimDeg = 3,
        PitchMeanDeg = 2,
        PitchLowDeg = -2,
        PitchHighDeg = 4,
        RollTypicalDeg = 20,
        RollPeakDeg = 48,
        BellyUpShare = 0,
        NoseUnderShare = 0.1,
        UnderShare = 0,
        DipM = 0.003,
        HookedShare = 0,
        LineSagM = 0.31,
        TipForcePeakN = 1.13,
        LoadedTipTravelM = 0.3,
        RodBendShare = 0.06,
        WaterStirW = 0.10,
        HandleTurnsPerS = 0.83,
        DragSlipM = 0,
        WristTorquePeakNm = 1.9,
        WristTorqueRmsNm = 1,
        MeanSlackM = 0.12,
        WettedLineM = 9.6,
        TwitchesCounted = 24,
        EndDistanceM = 15,
    };

    /// <summary>Alternating inside the given windows, tracking outside.</summary>
    public static Func<Setup, RetrieveTask, StationaryOutcome> Walking(params (double From, double To)[] windows) => (_, task) =>
    {
        double f = task.CadencePerS;
        return Outcome(windows.Any(w => f >= w.From && f <= w.To) ? WalkPattern.Alternating : WalkPattern.Tracking, 0.1 / f, 0.4 * f);
    };
}
