using LureSim.Model.Rods;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Mapping;

/// <summary>Table <c>[rod]</c> to <see cref="RodSpec"/>.</summary>
internal static class RodMapper
{
    /// <summary>Maps; null when length, grip or power is missing or refused.</summary>
    public static RodSpec? Map(MapContext c)
    {
        double length = c[RodKeys.Length], grip = c[RodKeys.Grip], power = c[RodKeys.Power];
        if (length - grip < RodSpec.LeastFreeLengthM)
        {
            c.Fault(c.Values.Has(RodKeys.Grip) ? RodKeys.Grip : RodKeys.Length, string.Concat(
                $"a grip of {MapContext.Show(RodKeys.Grip, grip)} leaves {MapContext.Show(RodKeys.Length, length - grip)} of a rod of ",
                $"{MapContext.Show(RodKeys.Length, length)}; at least {MapContext.Show(RodKeys.Length, RodSpec.LeastFreeLengthM)} must be free"));
            return null;
        }

        return double.IsNaN(length + grip + power)
            ? null
            : new(
                LengthM: length,
                GripM: grip,
                ThirdLoadN: power,
                MassKg: c[RodKeys.Mass] * c[RodKeys.FreeMassShare],
                TipRadiusRatio: TipRadiusRatio(c),
                StiffnessExponent: c[RodKeys.StiffnessExponent],
                MassExponent: c[RodKeys.MassExponent],
                DampingRatio: c[RodKeys.Damping],
                AirDragCoefficient: c[RodKeys.AirDrag],
                ButtDiameterM: c[RodKeys.ButtDiameter],
                Links: double.IsNaN(c[RodKeys.Links]) ? 1 : (int)c[RodKeys.Links],
                CastDampingRatio: c[RodKeys.CastDamping]);
    }

    private static double TipRadiusRatio(MapContext c)
    {
        if (c.Values.Has(RodKeys.TipRadiusRatio))
        {
            return c[RodKeys.TipRadiusRatio];
        }

        if (ValueReader.FindChoice(RodKeys.Action, c.Values.Text(RodKeys.Action)) is not Choice action)
        {
            return double.NaN;
        }

        c.Range(RodKeys.TipRadiusRatio, action.Low, action.High);
        return action.Value;
    }
}
