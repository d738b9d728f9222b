using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Reels;
using LureSim.Model.Rods;
using LureSim.Model.Strike;
using LureSim.Studies.Strike;

namespace LureSim.Reports.Tests.Support;

/// <summary>A strike drawn by hand, with its drag window and its curves: no physics, only something to print.</summary>
internal static class MadeUpStrike
{
    /// <summary>Length of the rod, m: straight at the start, then bent a little more each time.</summary>
    public const double RodM = 2.1;

    private const double StepS = 0.01, DurationS = 1.5, TightS = 0.07, PeakS = 0.2, HeldS = 0.6, HandM = 1.2;

    /// <summary>A strike.</summary>
    /// <param name="style">Style.</param>
    /// <param name="peakN">Largest pull on the hook, N.</param>
    /// <param name="distanceM">Distance, m.</param>
    /// <param name="slips">True where the drag slips.</param>
    public static StrikeResult Result(StrikeStyle style = StrikeStyle.Snap, double peakN = 26.0, double distanceM = 15.0, bool slips = false)
    {
        Setup setup = MadeUpCast.Result(ReelKind.Revolving).Setup with { Hook = new HookHold(2, 12.0, 54.0, 70.0) };
        ValueList<double> time = [.. Enumerable.Range(0, (int)Math.Round(DurationS / StepS) + 1).Select(i => i * StepS)];
        bool side = style == StrikeStyle.Sweep;
        return new()
        {
            Setup = setup,
            Task = new(distanceM, side ? 0.0 : 0.3) { Stroke = StrikeStroke.Of(style) },
            Summary = Summary(peakN, setup.Hook, slips),
            Series = new(
            [
                new("time_s", "s", "time", time), new("hook_force_N", "N", "pull", [.. time.Select(t => Pull(t, peakN))]),
                new("slip_speed_m_s", "m/s", "slip", [.. time.Select(t => slips && t is > 0.15 and < 0.3 ? 0.8 : 0.0)]),
            ]),
            Moments =
            [
                Moment(StrikeMomentName.Start, 0.0, peakN, -1.3, 0.0, distanceM, side), Moment(StrikeMomentName.Tight, TightS, peakN, -1.28, 0.0, distanceM, side),
                Moment(StrikeMomentName.Peak, PeakS, peakN, -0.5, 0.5, distanceM, side), Moment(StrikeMomentName.Held, HeldS, peakN, 0.1, 0.3, distanceM, side),
            ],
            Counters = new(1500, 0, 4000, 0, 0.4),
        };
    }

    /// <summary>A window from 14 to 39 N, a fish at the boat above it.</summary>
    public static StrikeReport Report() => Of(new(14.0, 39.0, WeakPlace.HookHold, DragCase.Boat), DragAdviceReason.Middle, 23.4);

    /// <summary>What sets the hook is too much for the boat.</summary>
    public static StrikeReport Empty() => Of(new(20.0, 15.0, WeakPlace.HookWire, DragCase.Boat), DragAdviceReason.SetThenEase, 20.0, setN: 34.0);

    /// <summary>The knot breaks in the strike before the hook is set.</summary>
    public static StrikeReport Brittle() => Of(new(20.0, null, WeakPlace.Knot, DragCase.Strike), DragAdviceReason.TooWeak, null, setN: 34.0);

    /// <summary>No drag sets the hook, and all thresholds are given.</summary>
    public static StrikeReport TooWeak()
    {
        StrikeReport report = Of(new(null, 50.0, null, DragCase.Strike), DragAdviceReason.CannotSet, null, setN: 120.0);
        return report with { Guesses = StrikeGuesses.None, Window = report.Window with { Bands = [] } };
    }

    /// <summary>Over a mat nothing gives in the strike; the boat asks for less drag.</summary>
    public static StrikeReport Strong() => Of(new(14.0, 45.0, WeakPlace.Rod, DragCase.Boat), DragAdviceReason.Shut, 50.0);

    /// <summary>The first window about another strike.</summary>
    /// <param name="strike">Strike.</param>
    public static StrikeReport About(StrikeResult strike) => Report() with { Strike = strike };

    private static StrikeReport Of(DragRange range, DragAdviceReason reason, double? adviceN, double setN = 24.0)
    {
        StrikeResult strike = Result();
        DragBand[] bands =
        [
            new(ThresholdCase.SetsEasily, 6.0, 54.0, range with { LowN = 7.0 }), new(ThresholdCase.SetsHard, 24.0, 54.0, range with { LowN = null }),
            new(ThresholdCase.HoldsWeakly, 12.0, 24.0, new(14.0, 17.0, WeakPlace.HookHold, DragCase.Boat)), new(ThresholdCase.HoldsStrongly, 12.0, 120.0, range with { HighN = 50.0, Gives = null }),
            new(ThresholdCase.OnePoint, 12.0, 54.0, new(14.0, 10.0, WeakPlace.HookHold, DragCase.Boat)),
        ];
        var window = new DragWindow
        {
            Points = [.. Enumerable.Range(1, 10).Select(i => 5.0 * i).Select(At)],
            Range = range,
            InStrike = range.Case == DragCase.Boat ? range with { HighN = 50.0, Gives = null, Case = DragCase.Strike } : range,
            Bands = [.. bands],
            LockedN = 50.0,
            LabelN = 222.0,
            SettingN = setN,
            BoatFactor = 1.4,
            Advice = new(reason, adviceN is double drag ? At(drag) : null),
        };
        StrikeRemedy[] remedies =
        [
            new(RemedyKind.FullEffort, CurveLine.Own, 15.0, 31.0, false), new(RemedyKind.Haul, CurveLine.Own, 15.0, 1.1 * setN, true), new(RemedyKind.FullHaul, CurveLine.Own, 15.0, 1.3 * setN, true),
            new(RemedyKind.Nearer, CurveLine.Own, 5.0, 1.05 * setN, true), new(RemedyKind.Nearer, CurveLine.Own, 10.0, 1.01 * setN, true), new(RemedyKind.Line, CurveLine.SoakedNylon, 15.0, 20.0, false),
        ];
        return new(
            strike, Dragged(40.0, 50.0), Dragged(4.0, DragStudy.LooseN, slips: true), window, range.LowN is null ? [.. remedies] : [], LandingOfStrike.Run(strike.Setup, strike.Task).Demand(), Curves(strike.Setup))
        {
            Guesses = new(new(setN, 0.5 * setN, 2.0 * setN), [new(WeakPlace.HookHold, 48.0, 240.0), new(WeakPlace.HookWire, 78.0, 218.0), new(WeakPlace.Knot, 110.0, 209.0), new(WeakPlace.Rod, 31.5, 90.0)]),
        };
    }

    private static StrikeResult Dragged(double peakN, double dragN, bool slips = false)
    {
        StrikeResult strike = Result(peakN: peakN, slips: slips);
        return strike with { Setup = strike.Setup with { Reel = strike.Setup.Reel with { DragN = dragN } } };
    }

    private static DragPoint At(double dragN) => new(dragN, Math.Min(1.7 * dragN, 40.0), Math.Min(1.8 * dragN, 42.0), 0.01 * dragN, Math.Max(0.0, 0.5 - (0.02 * dragN)));

    private static StrikeCurves Curves(Setup setup)
    {
        StrikeCurve Line(CurveLine line, double atOneM, double fall) => Curve(setup, line, CurveRod.Own, atOneM, fall);
        StrikeCurve Rod(CurveRod rod, double atOneM, double longer = 0.0) =>
            Curve(setup, CurveLine.Own, rod, atOneM, 0.01) with { Rod = setup.Rod with { LengthM = setup.Rod.LengthM + longer } };
        return new(
            [Line(CurveLine.Own, 31.0, 0.01), Line(CurveLine.Nylon, 27.0, 0.02), Line(CurveLine.SoakedNylon, 26.0, 0.03), Line(CurveLine.Fluorocarbon, 25.9, 0.031)],
            [Rod(CurveRod.Lighter, 33.0), Rod(CurveRod.Heavier, 30.0), Rod(CurveRod.Longer, 29.5, 0.1524)], 222.0, 24.0);
    }

    // The longest distance of fluorocarbon is one that the model did not finish.
    private static StrikeCurve Curve(Setup setup, CurveLine line, CurveRod rod, double atOneM, double fall) => new(line, rod, setup.Line, setup.Rod,
        [.. new[] { 3.0, 6.0, 10.0, 15.0, 22.0, 30.0, 45.0 }.Select(d => line == CurveLine.Fluorocarbon && d > 40.0
            ? new StrikeCurvePoint(d, double.NaN, double.NaN, null, 0.0, 0.0, null)
            : new StrikeCurvePoint(d, atOneM / (1.0 + (2.0 * fall * d)), 8.0, 0.2, 0.01 * d, 0.0, d > 25.0 ? StrikeLimit.Stroke : d < 5.0 ? StrikeLimit.Clutch : StrikeLimit.Hands))]);

    private static StrikeSummary Summary(double peakN, HookHold hook, bool slips) => new()
    {
        HookForcePeakN = peakN,
        PeakTimeS = PeakS,
        HookForceStaticN = 17.0,
        ImpulseNs = 7.3,
        ForcePerPointN = peakN / hook.Points,
        TimeToTightS = TightS,
        TimeToForceS = peakN >= hook.SettingN ? 0.18 : null,
        SetTimeS = peakN >= hook.SettingN ? 0.05 : 0.0,
        LineStretchM = 0.085,
        DragSlipM = slips ? 0.12 : 0.0,
        DragSlipEndM = slips ? 0.14 : 0.0,
        TipTravelM = 0.42,
        RodTurnRad = 0.97,
        TipForcePeakN = peakN + 1.0,
        ReelForcePeakN = 0.9 * peakN,
        HandTorquePeakNm = 20.6,
        RodUse = peakN / 54.0,
        LostToPlantsN = 1.0,
        FishSpeedMS = 2.1,
        FishWayM = 0.63,
        SlackAfterShare = 0.0,
        Limit = slips ? StrikeLimit.Clutch : StrikeLimit.Hands,
        Margins =
        [
            new(WeakPlace.Rod, peakN, 54.0), new(WeakPlace.HookHold, peakN, hook.TearingN), new(WeakPlace.HookWire, peakN, hook.OpeningN),
            new(WeakPlace.Knot, peakN + 1.0, 165.0), new(WeakPlace.Line, peakN + 1.0, 220.0),
        ],
    };

    private static double Pull(double t, double peakN) => t < TightS ? 0.0
        : t < PeakS ? peakN * (t - TightS) / (PeakS - TightS)
        : t < HeldS ? peakN * (1.0 - (0.5 * (t - PeakS) / (HeldS - PeakS))) : 0.3 * peakN;

    // An arc that starts at an angle from the upright and turns toward the fish by another.
    private static StrikeMoment Moment(StrikeMomentName name, double t, double peakN, double angle, double bend, double distanceM, bool side)
    {
        const int joints = 7;
        double hand = side ? 0.0 : HandM, link = RodM / (joints - 1), x = -0.3 * t, z = hand;
        var rodX = new List<double> { x };
        var rodZ = new List<double> { z };
        for (int i = 0; i < joints - 1; i++)
        {
            double at = -angle + (bend * i / 2.0);
            (x, z) = (x + (link * Math.Sin(at)), z + (link * Math.Cos(at)));
            rodX.Add(x);
            rodZ.Add(z);
        }

        double hook = 1.8 + distanceM;
        return new(name, t, Pull(t, peakN), [.. rodX], [.. rodZ], [x, 0.5 * (x + hook), hook], [z, t < PeakS ? 0.3 * z : 0.5 * z, 0.0]);
    }
}
