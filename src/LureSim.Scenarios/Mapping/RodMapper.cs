using LureSim.Model.Rods;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios.Mapping;

/// <summary>Table <c>[rod]</c> to <see cref="RodSpec"/>.</summary>
internal static class RodMapper
{
    /// <summary>Maps; null when length, grip or power is missing or refused.</summary>
    public static RodSpec? Map(MapContext c)
    {
        double length = c[RodKeys.Length], grip = c[RodKeys.Grip], power = c.FromWord(RodKeys.Power);
        if (!c.Values.Has(RodKeys.Power) && !c.Values.Has(RodKeys.BendLoad))
        {
            c.Fault(RodKeys.Power, $"missing; {EntryReader.ShortMeaning(RodKeys.Power)}; or rod.bend_load, where it was measured");
        }

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
                TipRadiusRatio: c.FromWord(RodKeys.Action),
                StiffnessExponent: c[RodKeys.StiffnessExponent],
                MassExponent: c[RodKeys.MassExponent],
                DampingRatio: c[RodKeys.Damping],
                AirDragCoefficient: c[RodKeys.AirDrag],
                ButtDiameterM: c[RodKeys.ButtDiameter],
                Links: double.IsNaN(c[RodKeys.Links]) ? 1 : (int)c[RodKeys.Links],
                CastDampingRatio: c[RodKeys.CastDamping]);
    }
}
