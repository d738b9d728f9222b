using LureSim.Model;
using LureSim.Model.Lures;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Mapping;

/// <summary>Table <c>[lure]</c> to <see cref="LureSpec"/>.</summary>
internal static class LureMapper
{
    /// <summary>Maps; null when something is missing or refused.</summary>
    public static LureSpec? Map(MapContext c)
    {
        double shape = c[LureKeys.Shape];
        bool byStations = shape == (int)LureShape.Stations;
        List<HullStation>? stations = !byStations ? null : IsDrawn(c) ? OutlineMapper.Map(c) : StationMapper.Map(c);
        LureBox? box = byStations ? StationMapper.Box(stations) : Box(c);
        List<HookSpec>? hooks = HookMapper.Hooks(c);
        List<BallastSpec>? ballast = HookMapper.Ballast(c);
        LureFormSpec form = BodyMapper.Form(c, byStations);
        LureBuildSpec build = BodyMapper.Build(c);
        RefuseTwoMasses(c);
        if (double.IsNaN(shape) || box is null || hooks is null || ballast is null)
        {
            _ = BodyMapper.HasStuff(c) ? 0.0 : Mass(c, hooks);
            return null;
        }

        var body = new LureSpec((LureShape)(int)shape, box.LengthM, box.BreadthM, box.HeightM, double.NaN, 0.0, 0.0, [.. ballast], [], stations is null ? null : [.. stations])
        {
            Form = form,
            Build = build,
        };
        double mass = BodyMapper.HasStuff(c) ? BodyMapper.Mass(c, body) : Mass(c, hooks);
        if (double.IsNaN(mass))
        {
            return null;
        }

        bool ownTie = c.Values.Has(LureKeys.TieX) || c.Values.Has(LureKeys.TieZ);
        return new(
            Shape: (LureShape)(int)shape,
            LengthM: box.LengthM,
            DiameterM: box.BreadthM,
            HeightM: box.HeightM,
            MassKg: mass,
            TieXM: ownTie ? c.Values.Optional(LureKeys.TieX) ?? (0.5 * box.LengthM) : 0.5 * box.LengthM,
            TieZM: ownTie ? c.Values.Optional(LureKeys.TieZ) ?? 0.0 : 0.0,
            Ballast: body.Ballast,
            Hooks: [.. hooks],
            Stations: body.Stations,
            AddedMassFactor: c[LureKeys.AddedMassFactor],
            CrossFlowCd: c[LureKeys.CrossFlowCd],
            AxialDragFactor: c[LureKeys.AxialDragFactor],
            FormDragCd: c[LureKeys.FormDrag],
            SternShedding: c[LureKeys.SternShedding],
            SternPlace: c[LureKeys.SternPlace],
            NoseDamping: c[LureKeys.NoseDamping],
            FrictionSpeedMS: c[LureKeys.FrictionSpeed],
            HookReachM: c[LureKeys.HookReach],
            RollDamping: c[LureKeys.RollDamping])
        {
            Flight = new(
                TumblingShare: c.Guessed(FlightKeys.Tumbling, LureFlightSpec.UsualTumbling((LureShape)(int)shape)),
                FrontCd: c[FlightKeys.FrontCd],
                SideFactor: c[FlightKeys.SideFactor],
                KnownCdAM2: KnownCdAM2(c)),
            Form = form,
            Build = build,
        };
    }

    // Either word of the shape reads either list of sections; a drawing alone is enough.
    private static bool IsDrawn(MapContext c)
    {
        bool drawn = c.Values.Has(LureFormKeys.Outline), listed = c.Values.Has(LureKeys.Stations);
        if (drawn && listed)
        {
            c.Fault(LureFormKeys.Outline, "given beside lure.stations; give one of the two");
        }

        return drawn || (!listed && c.Values.Text(LureKeys.Shape).Contains("outline", StringComparison.OrdinalIgnoreCase));
    }

    private static void RefuseTwoMasses(MapContext c)
    {
        if (BodyMapper.HasStuff(c) && (c.Values.Has(LureKeys.Mass) || c.Values.Has(LureKeys.MassWithHooks)))
        {
            KeySpec mass = c.Values.Has(LureKeys.Mass) ? LureKeys.Mass : LureKeys.MassWithHooks, stuff = BodyMapper.StuffKey(c);
            c.Fault(mass, $"given beside {stuff.Path}, which gives the mass too; give one of the two (for a weighed lure of wood: the mass and build = \"solid\")");
        }
    }

    // Even a measured drag area is not that of the next throw: it is a guess like the one that follows from the shape.
    private static double? KnownCdAM2(MapContext c)
    {
        double? known = c.Values.Optional(FlightKeys.AirDragArea);
        if (known is double area && double.IsFinite(area))
        {
            Ranged range = LureFlightSpec.AboutKnown(area);
            c.Range(FlightKeys.AirDragArea, range.Low, range.High);
        }

        return known;
    }

    private static LureBox? Box(MapContext c)
    {
        if (c.Values.Given(LureKeys.Stations) is { Bad: false } && !double.IsNaN(c[LureKeys.Shape]))
        {
            c.Fault(LureKeys.Stations, $"lure.shape is \"{c.Values.Text(LureKeys.Shape)}\"; stations need shape = \"stations\"");
        }

        if (c.Values.Given(LureFormKeys.Outline) is { Bad: false } && !double.IsNaN(c[LureKeys.Shape]))
        {
            c.Fault(LureFormKeys.Outline, $"lure.shape is \"{c.Values.Text(LureKeys.Shape)}\"; a drawing needs shape = \"outline\"");
        }

        Demand(c, LureKeys.Length);
        Demand(c, LureKeys.Diameter);
        double length = c[LureKeys.Length], breadth = c[LureKeys.Diameter];
        double height = c.Values.Has(LureKeys.Height) ? c[LureKeys.Height] : breadth;
        if (Math.Max(breadth, height) > length)
        {
            c.Fault(LureKeys.Length, $"shorter than the body is wide; at least {MapContext.Show(LureKeys.Length, Math.Max(breadth, height))}");
            return null;
        }

        return double.IsNaN(length + breadth + height) ? null : new(length, breadth, height);
    }

    private static double Mass(MapContext c, List<HookSpec>? hooks)
    {
        bool bare = c.Values.Has(LureKeys.Mass), whole = c.Values.Has(LureKeys.MassWithHooks);
        if (bare && whole)
        {
            c.Fault(LureKeys.MassWithHooks, "given beside lure.mass; give one of the two");
        }

        if (bare || !whole)
        {
            Demand(c, LureKeys.Mass);
            return c[LureKeys.Mass];
        }

        double mass = c[LureKeys.MassWithHooks] - (hooks?.Sum(h => h.MassKg) ?? double.NaN);
        if (mass < LureKeys.Mass.Low)
        {
            c.Fault(LureKeys.MassWithHooks, "the hooks alone weigh as much; it is the mass of body, ballast and hooks together");
        }

        return mass;
    }

    private static void Demand(MapContext c, KeySpec key)
    {
        if (!c.Values.Has(key))
        {
            c.Fault(key, $"missing; {key.Due}");
        }
    }
}

/// <summary>Outer measures of a body, m.</summary>
internal sealed record LureBox(double LengthM, double BreadthM, double HeightM);
