using LureSim.Model.Cast;
using LureSim.Model.Hands;
using LureSim.Model.Rods;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Mapping;

/// <summary>Table <c>[cast]</c>, but for what belongs to a part, to <see cref="CastTask"/>.</summary>
internal static class CastMapper
{
    /// <summary>Maps; refused values stay NaN.</summary>
    public static CastTask Map(MapContext c, RodSpec? rod, HandsSpec hands)
    {
        OverhangFits(c, rod, hands);
        return new(c[CastKeys.Overhang])
        {
            Release = Release(c),
            Solver = new(SwingStepS: c[CastKeys.SwingStep], FlightStepS: c[CastKeys.FlightStep], NodeSpacingM: c[CastKeys.NodeSpacing]),
        };
    }

    private static ReleaseSpec Release(MapContext c)
    {
        QuantityKind kind = c.Values.KindOf(CastKeys.Release);
        ReleaseMode mode = kind == QuantityKind.Choice ? ReleaseMode.Best : kind == QuantityKind.Angle ? ReleaseMode.AtAngle : ReleaseMode.AtTime;
        return new(mode, c[CastKeys.Release], c[CastKeys.ReleaseLate]);
    }

    // The rod is raised as far as upright to keep the lure off the water.
    private static void OverhangFits(MapContext c, RodSpec? rod, HandsSpec hands)
    {
        double most = c[AnglerKeys.HandHeight] + hands.RaiseM + (0.9 * rod?.FreeLengthM ?? double.NaN) - 0.2;
        if (c[CastKeys.Overhang] > most)
        {
            c.Fault(CastKeys.Overhang, string.Concat(
                $"{MapContext.Show(CastKeys.Overhang, c[CastKeys.Overhang])} below the tip would hang in the water even with the rod upright; ",
                $"at most {MapContext.Show(CastKeys.Overhang, most)} with this rod and hand height"));
        }
    }
}
