using LureSim.Model.Lures;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Outlines;

namespace LureSim.Scenarios.Mapping;

/// <summary>Key <c>lure.outline</c> to stations.</summary>
internal static class OutlineMapper
{
    /// <summary>Stations from tail to nose; null when there is no drawing, or it has no size.</summary>
    public static List<HullStation>? Map(MapContext c)
    {
        if (!c.Values.Has(LureFormKeys.Outline))
        {
            c.Fault(LureFormKeys.Outline, "missing; the name of a drawing is due, for example outline = \"profile.svg\" (docs/build.md)");
            return null;
        }

        if (c.Values.Given(LureFormKeys.Outline)!.Drawing is not DrawnBody body)
        {
            return null;
        }

        if (c.Values.Has(LureKeys.Height))
        {
            c.Fault(LureKeys.Height, "given beside lure.outline, which gives it; leave it out");
        }

        if (body.HasTop && c.Values.Has(LureKeys.Diameter))
        {
            c.Fault(LureKeys.Diameter, "given beside lure.outline, whose \"top\" gives it; leave it out");
        }

        if ((c.Values.Has(LureKeys.Length) ? c[LureKeys.Length] : body.LengthM) is not double length)
        {
            c.Fault(LureKeys.Length, $"missing, and the drawing does not say its size (width in mm at its root); {LureKeys.Length.Due}");
            return null;
        }

        double? breadth = c.Values.Has(LureKeys.Diameter) ? c[LureKeys.Diameter] : null;
        if (double.IsNaN(length + (breadth ?? 0.0)))
        {
            return null;
        }

        if (length < LureKeys.Length.Low || length > LureKeys.Length.High)
        {
            c.Fault(LureFormKeys.Outline, $"the drawing is {MapContext.Show(LureKeys.Length, length)} long; allowed: {RangeText.Of(LureKeys.Length)}; lure.length sets another size");
            return null;
        }

        List<HullStation> stations = body.Stations(length, breadth);
        LureBox box = StationMapper.Box(stations)!;
        if (Math.Max(box.BreadthM, box.HeightM) > length)
        {
            c.Fault(LureFormKeys.Outline, $"the body would be {MapContext.Show(LureKeys.Length, length)} long, {MapContext.Show(LureKeys.Length, box.HeightM)} high and {MapContext.Show(LureKeys.Length, box.BreadthM)} wide; the length is due from left to right, nose to the right");
            return null;
        }

        return stations;
    }
}
