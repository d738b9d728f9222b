using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Mapping;

/// <summary>Whether the parts of a lure fit together: weights, places, and whether it can float at all.</summary>
internal static class LureChecks
{
    // A midpoint rule over cosine-spaced panels: the volume is good to 1e-3, enough to tell floating from sinking.
    private const int VolumePanels = 41;

    /// <summary>Runs all of them.</summary>
    public static void Run(MapContext c, LureSpec lure)
    {
        int before = c.FaultCount;
        double ballast = lure.Ballast.Sum(b => b.MassKg);
        if (ballast > lure.MassKg)
        {
            c.Fault(LureKeys.Ballast, string.Concat(
                $"{MapContext.Show(LureKeys.Mass, ballast)} of ballast in a body of {MapContext.Show(LureKeys.Mass, lure.MassKg)}; ",
                "lure.mass counts the ballast"));
        }

        Place(c, c.Values.Has(LureKeys.TieX) ? LureKeys.TieX : LureKeys.Tie, lure.TieXM, lure.TieZM, lure, 0.6, 1.0);
        foreach (BallastSpec b in lure.Ballast)
        {
            Place(c, LureKeys.Ballast, b.XM, b.ZM, lure, 0.6, 1.0);
        }

        foreach (HookSpec h in lure.Hooks)
        {
            Place(c, LureKeys.Hooks, h.XM, h.ZM, lure, 0.7, 2.0);
        }

        // The hull is built only from parts that fit.
        if (c.FaultCount == before && ShapeIsSound(c, lure))
        {
            BallastChecks.Run(c, lure);
            Floats(c, lure);
        }
    }

    private static void Place(MapContext c, KeySpec key, double x, double z, LureSpec lure, double lengths, double heights)
    {
        if (Math.Abs(x) > lengths * lure.LengthM || Math.Abs(z) > heights * lure.HeightM)
        {
            c.Fault(key, string.Concat(
                $"x = {MapContext.Show(LureKeys.TieX, x)}, z = {MapContext.Show(LureKeys.TieX, z)} lies off the body; x within ",
                $"{MapContext.Show(LureKeys.TieX, lengths * lure.LengthM)} of the middle and z within {MapContext.Show(LureKeys.TieX, heights * lure.HeightM)} of the axis"));
        }
    }

    private static void Floats(MapContext c, LureSpec lure)
    {
        double temperature = c[WaterKeys.Temperature], salinity = c[WaterKeys.Salinity];
        if (double.IsNaN(temperature + salinity))
        {
            return;
        }

        double water = WaterModel.Evaluate(new(temperature, salinity)).DensityKgM3;
        double carried = lure.MassKg + lure.Hooks.Sum(h => h.MassKg - (water * h.SteelVolumeM3));
        double displaced = water * HullShape.Create(lure).VolumeM3(VolumePanels);
        if (carried >= displaced)
        {
            c.Fault(MassKey(c), string.Concat(
                $"{MapContext.Show(LureKeys.Mass, carried)} to carry, hooks included, but the body displaces at most ",
                $"{MapContext.Show(LureKeys.Mass, displaced)} of water: it would sink; a surface lure must be lighter than its volume of water (a cast minds no sinking lure)"),
                Activities.Retrieve | Activities.Rest | Activities.Pool);
        }
    }

    private static bool ShapeIsSound(MapContext c, LureSpec lure) =>
        !double.IsNaN(c[LureKeys.AddedMassFactor] + c[LureKeys.CrossFlowCd] + c[LureKeys.AxialDragFactor] + c[LureKeys.FormDrag]
            + c[LureKeys.SternShedding] + c[LureKeys.SternPlace] + c[LureKeys.NoseDamping] + c[LureKeys.RollDamping] + c[LureKeys.FrictionSpeed] + c[LureKeys.HookReach]
            + c[FlightKeys.FrontCd] + c[FlightKeys.SideFactor] + lure.Flight.TumblingShare + (lure.Flight.KnownCdAM2 ?? 0.0)) && BodyMapper.IsSound(lure);

    private static KeySpec MassKey(MapContext c) => BodyMapper.HasStuff(c) ? BodyMapper.StuffKey(c) : c.Values.Has(LureKeys.MassWithHooks) ? LureKeys.MassWithHooks : LureKeys.Mass;
}
