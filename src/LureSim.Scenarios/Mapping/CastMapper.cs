using LureSim.Model.Cast;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Reels;
using LureSim.Model.Rods;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Mapping;

/// <summary>Tables <c>[cast]</c> and <c>[hands]</c>, and the casting keys of reel, rod and lure, to <see cref="CastSpec"/>.</summary>
internal static class CastMapper
{
    /// <summary>Maps; null when rod, line or lure is missing or refused.</summary>
    public static CastSpec? Map(MapContext c, RodSpec? rod, ReelSpec reel, LineSpec? line, LureSpec? lure)
    {
        HandsSpec hands = Hands(c);
        if (hands.StopRad < hands.StartRad + 0.2)
        {
            c.Fault(HandsKeys.StopAngle, string.Concat(
                $"{MapContext.Show(HandsKeys.StopAngle, hands.StopRad)} is hardly beyond hands.start_angle, {MapContext.Show(HandsKeys.StartAngle, hands.StartRad)}; ",
                $"at least {MapContext.Show(HandsKeys.StopAngle, hands.StartRad + 0.2)} is due"));
        }

        if (rod is null || line is null || lure is null)
        {
            return null;
        }

        OverhangFits(c, rod, hands);
        return new(
            hands,
            c[CastKeys.Overhang],
            Release(c),
            Spool(c, line, reel),
            FixedSpool(c, line),
            Flight(c, line, lure),
            c[RodKeys.CastDamping],
            new CastSolverSpec(c[CastKeys.SwingStep], c[CastKeys.FlightStep], c[CastKeys.NodeSpacing]));
    }

    private static HandsSpec Hands(MapContext c)
    {
        double effort = c[CastKeys.Effort];
        HandsSpec usual = HandsSpec.WithEffort(effort);
        return new(
            effort,
            c[HandsKeys.Torque],
            c[HandsKeys.Speed],
            c[HandsKeys.Inertia],
            c[HandsKeys.Push],
            c[HandsKeys.PushSpeed],
            c[HandsKeys.PushedMass],
            c[HandsKeys.Travel],
            c[HandsKeys.Ramp],
            c[HandsKeys.StartAngle],
            c[HandsKeys.StopAngle],
            c[HandsKeys.BrakeShare],
            c[HandsKeys.Raise],
            Guessed(c, HandsKeys.ReleaseError, new(usual.ReleaseErrorS, 0.004, 0.015)),
            Guessed(c, HandsKeys.Scatter, new(usual.Scatter, 0.03, 0.06)));
    }

    private static ReleaseSpec Release(MapContext c)
    {
        QuantityKind kind = c.Values.KindOf(CastKeys.Release);
        ReleaseMode mode = kind == QuantityKind.Choice ? ReleaseMode.Best : kind == QuantityKind.Angle ? ReleaseMode.AtAngle : ReleaseMode.AtTime;
        return new(mode, c[CastKeys.Release], c[CastKeys.ReleaseLate]);
    }

    private static SpoolSpec Spool(MapContext c, LineSpec line, ReelSpec reel) => new(
        c[SpoolKeys.SpoolInertia],
        SpoolLine(c, line, reel),
        c[SpoolKeys.SpoolWidth],
        c[SpoolKeys.SpoolPacking],
        c[SpoolKeys.MagneticBrake],
        c[SpoolKeys.CentrifugalBrake],
        c[SpoolKeys.SpoolFriction],
        c[CastKeys.Thumb],
        c[CastKeys.ThumbDelay]);

    private static double SpoolLine(MapContext c, LineSpec line, ReelSpec reel)
    {
        double radius = 0.5 * reel.SpoolDiameterM;
        double width = c[SpoolKeys.SpoolWidth], packing = c[SpoolKeys.SpoolPacking];
        double length = Guessed(c, SpoolKeys.LineOnSpool, CastDefaults.SpoolLine(line, radius, width, packing));
        double most = CastDefaults.MostSpoolLineM(line, radius, width, packing);
        if (reel.Kind == ReelKind.Revolving && length > most)
        {
            c.Fault(SpoolKeys.LineOnSpool, string.Concat(
                $"{MapContext.Show(SpoolKeys.LineOnSpool, length)} of this line do not fit on the spool; ",
                $"at most {MapContext.Show(SpoolKeys.LineOnSpool, most)} with its diameter, width and packing"));
        }

        return length;
    }

    private static FixedSpoolSpec FixedSpool(MapContext c, LineSpec line) => new(
        Guessed(c, CastKeys.PickUp, CastDefaults.PickUpFactor(line)), c[CastKeys.RestTension], c[CastKeys.RingFriction]);

    private static FlightSpec Flight(MapContext c, LineSpec line, LureSpec lure) => new(
        Guessed(c, FlightKeys.Tumbling, CastDefaults.TumblingShare(lure)),
        c[FlightKeys.FrontCd],
        c[FlightKeys.SideFactor],
        Guessed(c, CastKeys.LineFriction, CastDefaults.FrictionFactor(line)),
        Guessed(c, CastKeys.WetLine, CastDefaults.WetFactor(line)),
        c.Values.Optional(FlightKeys.AirDragArea));

    // Given, or the default that follows from other values with the range of that guess.
    private static double Guessed(MapContext c, KeySpec key, Ranged usual)
    {
        if (c.Values.Has(key))
        {
            return c[key];
        }

        if (usual.High > usual.Low)
        {
            c.Range(key, usual.Low, usual.High);
        }

        return usual.Value;
    }

    // The rod is raised as far as upright to keep the lure off the water.
    private static void OverhangFits(MapContext c, RodSpec rod, HandsSpec hands)
    {
        double most = c[AnglerKeys.HandHeight] + hands.RaiseM + (0.9 * rod.FreeLengthM) - 0.2;
        if (c[CastKeys.Overhang] > most)
        {
            c.Fault(CastKeys.Overhang, string.Concat(
                $"{MapContext.Show(CastKeys.Overhang, c[CastKeys.Overhang])} below the tip would hang in the water even with the rod upright; ",
                $"at most {MapContext.Show(CastKeys.Overhang, most)} with this rod and hand height"));
        }
    }
}
