using LureSim.Model.Reels;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Mapping;

/// <summary>Table <c>[reel]</c> to <see cref="ReelSpec"/>.</summary>
internal static class ReelMapper
{
    /// <summary>Maps; refused values stay NaN.</summary>
    public static ReelSpec Map(MapContext c)
    {
        double kind = c[ReelKeys.Kind];
        return new(double.IsNaN(kind) ? ReelKind.Revolving : (ReelKind)(int)kind, c[ReelKeys.Ratio], SpoolDiameterM(c), c[ReelKeys.Drag]);
    }

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
