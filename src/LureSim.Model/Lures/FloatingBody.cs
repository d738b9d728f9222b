using LureSim.Numerics;

namespace LureSim.Model.Lures;

/// <summary>A hull with its weight, in water: what the balance of floating needs.</summary>
/// <param name="hull">Hull.</param>
/// <param name="massKg">Total mass, kg.</param>
/// <param name="centreOfGravity">In body axes, m.</param>
/// <param name="waterDensityKgM3">rho, kg/m3.</param>
/// <param name="lure">Lure whose hooks displace water, or none.</param>
internal sealed class FloatingBody(
    IHull hull, double massKg, Vec3 centreOfGravity, double waterDensityKgM3, LureSpec? lure = null)
{
    /// <summary>Hull.</summary>
    public IHull Hull => hull;

    /// <summary>m, kg.</summary>
    public double MassKg => massKg;

    /// <summary>G in body axes, m.</summary>
    public Vec3 CentreOfGravity => centreOfGravity;

    /// <summary>rho, kg/m3.</summary>
    public double WaterDensityKgM3 => waterDensityKgM3;

    /// <summary>Everything under water at an attitude, hooks included (their steel counts in volume and centre only).</summary>
    /// <param name="attitude">Attitude.</param>
    /// <param name="strips">Strips per piece of the hull.</param>
    /// <param name="halvings">Halvings that find the ends of the pieces.</param>
    public Immersion At(Attitude attitude, int strips, int halvings = HullPieces.FineHalvings)
    {
        Immersion bare = Immersion.Of(hull, attitude, strips, halvings);
        double volume = bare.VolumeM3;
        Vec3 moment = volume * bare.Centre;
        foreach (HookSpec hook in lure?.Hooks ?? [])
        {
            var at = new Vec3(hook.XM, 0.0, hook.ZM);
            double wet = hook.SteelVolumeM3 * WetShare(attitude.HeightOf(at), lure!.HookReachM);
            volume += wet;
            moment += wet * at;
        }

        return volume > 0.0 ? bare with { VolumeM3 = volume, Centre = (1.0 / volume) * moment } : bare;
    }

    /// <summary>Share of a hook under water, 0 to 1, from the height of its hanger over the water.</summary>
    /// <param name="hangerHeightM">m.</param>
    /// <param name="reachM">Depth over which it goes under, m.</param>
    internal static double WetShare(double hangerHeightM, double reachM) => Math.Clamp(1.0 - (hangerHeightM / reachM), 0.0, 1.0);
}
