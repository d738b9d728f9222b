using LureSim.Model.Rods;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Mapping;

/// <summary>Table <c>[rod]</c> to <see cref="RodSpec"/>.</summary>
internal static class RodMapper
{
    private const double LeastFreeLengthM = 0.5;

    /// <summary>Maps; null when length, grip or power is missing or refused.</summary>
    public static RodSpec? Map(MapContext c)
    {
        double length = c[RodKeys.Length], grip = c[RodKeys.Grip], power = c[RodKeys.Power];
        if (length - grip < LeastFreeLengthM)
        {
            c.Fault(c.Values.Has(RodKeys.Grip) ? RodKeys.Grip : RodKeys.Length, string.Concat(
                $"a grip of {MapContext.Show(RodKeys.Grip, grip)} leaves {MapContext.Show(RodKeys.Length, length - grip)} of a rod of ",
                $"{MapContext.Show(RodKeys.Length, length)}; at least {MapContext.Show(RodKeys.Length, LeastFreeLengthM)} must be free"));
            return null;
        }

        return double.IsNaN(length + grip + power)
            ? null
            : new(
                length,
                grip,
                power,
                c[RodKeys.Mass] * c[RodKeys.FreeMassShare],
                TipRadiusRatio(c),
                c[RodKeys.StiffnessExponent],
                c[RodKeys.MassExponent],
                c[RodKeys.Damping],
                c[RodKeys.AirDrag],
                c[RodKeys.ButtDiameter],
                double.IsNaN(c[RodKeys.Links]) ? 1 : (int)c[RodKeys.Links]);
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
