using LureSim.Model;
using LureSim.Model.Cover;
using LureSim.Model.Fish;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Mapping;

/// <summary>Table <c>[fish]</c> to <see cref="FishSpec"/>, table <c>[cover]</c> to <see cref="CoverSpec"/>.</summary>
internal static class FishMapper
{
    /// <summary>Maps the fish; refused values stay NaN.</summary>
    public static FishSpec Map(MapContext c)
    {
        double mass = c[FishKeys.Mass], depth = FishBody.DepthM(mass), way = c[FishKeys.Way];
        return new(
            MassKg: mass,
            DragAreaM2: c.Guessed(FishKeys.DragArea, FishBody.DragAreaM2(mass)),
            DepthM: c.Guessed(FishKeys.Depth, depth),
            PullN: c.Guessed(FishKeys.Pull, FishBody.PullN(mass)),
            SpeedMS: c[FishKeys.Speed],
            ReactionS: c[FishKeys.Reaction])
        {
            Way = double.IsNaN(way) ? FishWay.Runs : (FishWay)(int)way,
        };
    }

    /// <summary>Maps the plants; refused values stay NaN.</summary>
    public static CoverSpec MapCover(MapContext c)
    {
        double given = c[CoverKeys.Kind];
        CoverKind kind = double.IsNaN(given) ? CoverKind.Open : (CoverKind)(int)given;
        CoverSpec usual = CoverSpec.Of(kind);
        return usual with
        {
            LineOverM = c.Guessed(CoverKeys.LineOver, usual.LineOverM),
            DragNM = c.Guessed(CoverKeys.LineDrag, Ranged.About(usual.DragNM, CoverSpec.Spread)),
            TurnRadM = c.Guessed(CoverKeys.LineTurn, Ranged.About(usual.TurnRadM, CoverSpec.Spread)),
            LineFriction = c[CoverKeys.LineFriction],
            HeightM = c[CoverKeys.Height],
            GripN = c.Guessed(CoverKeys.Grip, Ranged.About(usual.GripN, CoverSpec.Spread)),
            WeedKg = c.Guessed(CoverKeys.Weed, Ranged.About(usual.WeedKg, CoverSpec.Spread)),
            LureFriction = c[CoverKeys.LureFriction],
            OpeningM = c[CoverKeys.Opening],
            StiffnessNM = c[CoverKeys.Stiffness],
            DampingRatio = c[CoverKeys.Damping],
        };
    }
}
