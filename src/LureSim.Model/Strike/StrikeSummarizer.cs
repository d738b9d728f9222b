using LureSim.Model.Fish;
using LureSim.Model.Hands;
using LureSim.Model.Rods;
using LureSim.Numerics;

namespace LureSim.Model.Strike;

/// <summary>Makes the figures of a strike from what the recorder saw.</summary>
internal static class StrikeSummarizer
{
    // Slip from which the clutch counts as the limit of the pull, m, and angle before the stop from which the stroke counts as ended, rad.
    private const double SlipCountsM = 0.01, StopWindowRad = 0.1;

    /// <summary>The figures.</summary>
    /// <param name="seen">What was seen.</param>
    /// <param name="parts">Parts at the end.</param>
    public static StrikeSummary Summarize(StrikeRecorder seen, StrikeParts parts)
    {
        StrikePeaks p = seen.Peaks;
        RodChain chain = parts.Step.Rod.Chain;
        double bears = RodHold.BearsNm(chain, WeakPlaces.RodBearsN(parts.Setup, parts.Task));
        double use = p.RodNm / bears;
        return new()
        {
            HookForcePeakN = p.HookN,
            PeakTimeS = p.TimeS,
            HookForceStaticN = StaticN(p, parts, chain),
            ImpulseNs = p.ImpulseNs,
            ForcePerPointN = p.HookN / parts.Setup.Hook.Points,
            TimeToTightS = Finite(seen.FirstPullS),
            TimeToForceS = Finite(seen.FirstSetS),
            SetTimeS = p.SetS,
            LineStretchM = p.StretchM,
            DragSlipM = p.HeldSlipM,
            DragSlipEndM = seen.SlipM,
            TipTravelM = p.TravelM,
            RodTurnRad = p.TurnRad,
            TipForcePeakN = p.TipN,
            ReelForcePeakN = p.ReelN,
            HandTorquePeakNm = p.HandNm,
            RodUse = use,
            LostToPlantsN = p.TipAtPeakN - p.HookN,
            FishSpeedMS = parts.Setup.Fish.Way == FishWay.Fast ? 0.0 : p.FishMS,
            FishWayM = p.HeldFishM,
            SlackAfterShare = seen.SlackShare,
            Limit = Limit(p, parts.Task.Stroke),
            Margins = WeakPlaces.Margins(parts.Setup, parts.Task, new(p.WholeN, Math.Max(p.TipN, p.WholeN), use)),
        };
    }

    private static double? Finite(double time) => double.IsFinite(time) ? time : null;

    private static StrikeLimit Limit(StrikePeaks p, StrikeStroke stroke) =>
        p.HeldSlipM > SlipCountsM ? StrikeLimit.Clutch : p.ButtRad > stroke.StopRad - StopWindowRad ? StrikeLimit.Stroke : StrikeLimit.Hands;

    // Against the direction of the line at the peak; a line that never pulled has none.
    private static double StaticN(StrikePeaks p, StrikeParts parts, RodChain chain)
    {
        if (p.HookN <= 0.0)
        {
            return 0.0;
        }

        StrikeStroke stroke = parts.Task.Stroke;
        bool up = stroke.Plane == StrokePlane.Up;
        Vec3 line = (p.Hook - p.Tip).Unit();
        return RodHold.PullN(
            chain, (0.5 * Math.PI) - p.ButtRad, -line.X, up ? line.Z : line.Y, stroke.Effort * stroke.TorqueNm, up ? Physics.GravityMS2 : 0.0);
    }
}
