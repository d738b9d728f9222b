using LureSim.Model.Lines;
using LureSim.Model.Reels;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Mapping;

/// <summary>Table <c>[reel]</c> and the keys of its spools in <c>[cast]</c> to <see cref="ReelSpec"/>.</summary>
internal static class ReelMapper
{
    /// <summary>Maps; refused values stay NaN. Without a line the spools stay as they come.</summary>
    public static ReelSpec Map(MapContext c, LineSpec? line)
    {
        double kind = c[ReelKeys.Kind];
        var reel = new ReelSpec(
            Kind: double.IsNaN(kind) ? ReelKind.Revolving : (ReelKind)(int)kind, Ratio: c[ReelKeys.Ratio], SpoolDiameterM: SpoolDiameterM(c), DragN: c[ReelKeys.Drag])
        {
            Clutch = new(StaticRatio: c[ReelKeys.DragStart], RingFriction: c[ReelKeys.RingFriction]),
        };
        return line is null ? reel : reel with { Spool = Spool(c, line, reel), FixedSpool = FixedSpool(c, line) };
    }

    private static SpoolSpec Spool(MapContext c, LineSpec line, ReelSpec reel)
    {
        double law = c[SpoolKeys.Brake];
        bool inNumbers = c.Values.Has(SpoolKeys.MagneticBrake) || c.Values.Has(SpoolKeys.CentrifugalBrake);
        var spool = new SpoolSpec(
            InertiaKgM2: c[SpoolKeys.SpoolInertia],
            WidthM: c[SpoolKeys.SpoolWidth],
            Packing: c[SpoolKeys.SpoolPacking],
            Brake: double.IsNaN(law) ? BrakeLaw.Quadratic : (BrakeLaw)(int)law,
            BrakeStrength: c.Values.Optional(SpoolKeys.BrakeStrength) ?? (inNumbers ? 0.0 : 1.0),
            MagneticNms: c.Values.Optional(SpoolKeys.MagneticBrake) ?? 0.0,
            CentrifugalNms2: c.Values.Optional(SpoolKeys.CentrifugalBrake) ?? 0.0,
            FrictionNm: c[SpoolKeys.SpoolFriction],
            RingDragN: c[CastKeys.RingDrag],
            ThumbPressN: c[CastKeys.Thumb],
            ThumbFriction: c[CastKeys.ThumbFriction],
            ThumbDelayS: c[CastKeys.ThumbDelay],
            ThumbFullM: c[CastKeys.ThumbFull]);
        double radius = 0.5 * reel.SpoolDiameterM, most = spool.MostLineM(line, radius);
        double length = c.Guessed(SpoolKeys.LineOnSpool, spool.UsualLine(line, radius));
        if (reel.Kind == ReelKind.Revolving && length > most)
        {
            // Under a drag that slips there is as much as fits.
            c.Fault(SpoolKeys.LineOnSpool, string.Concat(
                $"{MapContext.Show(SpoolKeys.LineOnSpool, length)} of this line do not fit on the spool; ",
                $"at most {MapContext.Show(SpoolKeys.LineOnSpool, most)} with its diameter, width and packing"), Activities.Cast | Activities.Strike);
        }

        return spool with { LineM = length };
    }

    private static FixedSpoolSpec FixedSpool(MapContext c, LineSpec line) => new(
        PickUpFactor: c.Guessed(CastKeys.PickUp, FixedSpoolSpec.UsualPickUp(line.Material)),
        RestTensionN: c.Guessed(CastKeys.RestTension, FixedSpoolSpec.UsualRest(line.DiameterM)),
        RingFactor: c[CastKeys.RingFriction]);

    private static double SpoolDiameterM(MapContext c)
    {
        if (!c.Values.Has(ReelKeys.TakeUp))
        {
            return c[ReelKeys.SpoolDiameter];
        }

        if (c.Values.Has(ReelKeys.SpoolDiameter))
        {
            c.Fault(ReelKeys.TakeUp, "given beside reel.spool_diameter; give one of the two");
        }

        double diameter = c[ReelKeys.TakeUp] / (Math.PI * c[ReelKeys.Ratio]);
        KeySpec spool = ReelKeys.SpoolDiameter;
        if (diameter < spool.Low || diameter > spool.High)
        {
            c.Fault(ReelKeys.TakeUp, string.Concat(
                $"with a ratio of {MapContext.Show(ReelKeys.Ratio, c[ReelKeys.Ratio])} it means a spool of {MapContext.Show(spool, diameter)}; ",
                $"allowed: {RangeText.Of(spool)}"));
        }

        return diameter;
    }
}
