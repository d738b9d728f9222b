using LureSim.Model.Lures;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios.Mapping;

/// <summary>Items of <c>lure.hooks</c> and <c>lure.ballast</c>.</summary>
internal static class HookMapper
{
    /// <summary>Hooks; null when one is incomplete.</summary>
    public static List<HookSpec>? Hooks(MapContext c)
    {
        var hooks = new List<HookSpec>();
        bool complete = true;
        foreach ((ScenarioValues item, Place place) in c.Values.Items(LureKeys.Hooks))
        {
            if (IsRing(item) && item.Has(LureItemKeys.HookSize))
            {
                c.FaultAt(place, EntryReader.ItemName(LureKeys.Hooks, hooks.Count + 1), "a ring has no hook size; its diameter or mass is due, for example diameter = \"7 mm\"");
            }

            HookSpec? hook = Hook(c, item);
            if (hook is null && item.Has(LureItemKeys.HookX) && !Sized(item))
            {
                c.FaultAt(place, EntryReader.ItemName(LureKeys.Hooks, hooks.Count + 1), IsRing(item) ? "incomplete; diameter or mass of the ring is due" : "incomplete; size, or mass and drag_area are due");
            }

            complete &= hook is not null;
            hooks.Add(hook ?? new(0, 0, 0, 0, 0));
        }

        return complete ? hooks : null;
    }

    /// <summary>Ballast; null when an item is incomplete.</summary>
    public static List<BallastSpec>? Ballast(MapContext c)
    {
        var ballast = new List<BallastSpec>();
        foreach ((ScenarioValues item, _) in c.Values.Items(LureKeys.Ballast))
        {
            double density = item.Number(item.Has(LureItemKeys.BallastDensity) ? LureItemKeys.BallastDensity : LureItemKeys.BallastMaterial);
            ballast.Add(new(item.Number(LureItemKeys.BallastMass), item.Number(LureItemKeys.BallastX), item.Number(LureItemKeys.BallastZ), density));
        }

        return ballast.TrueForAll(b => !double.IsNaN(b.MassKg + b.XM + b.ZM + b.DensityKgM3)) ? ballast : null;
    }

    /// <summary>The hook that takes hold: shape and row of the largest by size; of hooks without a size the first whose points are said; else a treble.</summary>
    public static (HookKind Kind, int? Row) Largest(MapContext c) => c.Values.Items(LureKeys.Hooks).Select(i => i.Values)
        .Where(i => !double.IsNaN(i.Number(LureItemKeys.HookType)) && !IsRing(i) && (i.Has(LureItemKeys.HookSize) || i.Has(LureItemKeys.HookType)))
        .Select(i => ((HookKind)((int)i.Number(LureItemKeys.HookType) - 1), double.IsNaN(i.Number(LureItemKeys.HookSize)) ? null : (int?)i.Number(LureItemKeys.HookSize)))
        .DefaultIfEmpty((HookKind.ThreePoint, null)).MaxBy(h => h.Item2 ?? -1);

    private static bool IsRing(ScenarioValues item) => item.Number(LureItemKeys.HookType) == 0.0;

    private static bool Sized(ScenarioValues item) => item.Has(LureItemKeys.HookSize)
        || (item.Has(LureItemKeys.HookMass) && item.Has(LureItemKeys.HookDragArea));

    // A dressing in words is as little known as the hook that it is tied on, and drags along the hull by the same share.
    private static (double Across, double Along) Feather(MapContext c, ScenarioValues item)
    {
        if (item.Has(LureItemKeys.HookFeather))
        {
            double given = item.Number(LureItemKeys.HookFeather);
            return (given, given);
        }

        double dressing = c[LureKeys.HookDrag] * item.Number(LureItemKeys.HookDressing);
        return (dressing, c[LureKeys.HookAlong] * dressing);
    }

    private static HookSpec? Hook(MapContext c, ScenarioValues item)
    {
        double mass = item.Number(LureItemKeys.HookMass), area = item.Number(LureItemKeys.HookDragArea);
        double along = item.Has(LureItemKeys.HookDragAreaAlong) ? item.Number(LureItemKeys.HookDragAreaAlong) : area;
        double row = item.Number(LureItemKeys.HookSize), points = item.Number(LureItemKeys.HookType);
        if (IsRing(item))
        {
            (mass, area, along) = Ring(c, item, mass, area, along);
        }
        else if (!double.IsNaN(row + points))
        {
            mass = item.Has(LureItemKeys.HookMass) ? mass : HookTable.MassKg((int)row, points);
            bool given = item.Has(LureItemKeys.HookDragArea);
            area = given ? area : c[LureKeys.HookDrag] * HookTable.DragAreaM2((int)row, points);
            along = given || item.Has(LureItemKeys.HookDragAreaAlong) ? along : c[LureKeys.HookAlong] * area;
        }

        double x = item.Number(LureItemKeys.HookX), z = item.Number(LureItemKeys.HookZ);
        double density = item.Number(LureItemKeys.HookDensity);
        (double feather, double featherAlong) = Feather(c, item);
        return double.IsNaN(mass + area + along + x + z + feather + density)
            ? null
            : new(mass, x, z, area + feather, mass / density, along + featherAlong, HasPoints: !IsRing(item));
    }

    // A diameter gives mass and drag area, a mass alone the diameter of the ring that weighs as much.
    private static (double Mass, double Area, double Along) Ring(MapContext c, ScenarioValues item, double mass, double area, double along)
    {
        double diameter = item.Has(LureItemKeys.RingDiameter) ? item.Number(LureItemKeys.RingDiameter) : HookTable.RingDiameterM(mass);
        (double usual, double across) = HookTable.Ring(diameter);
        mass = item.Has(LureItemKeys.HookMass) ? mass : usual;
        if (item.Has(LureItemKeys.HookDragArea))
        {
            return (mass, area, along);
        }

        area = c[LureKeys.HookDrag] * across;
        return (mass, area, item.Has(LureItemKeys.HookDragAreaAlong) ? along : c[LureKeys.HookAlong] * area);
    }
}
