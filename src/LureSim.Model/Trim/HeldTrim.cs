using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Numerics;

namespace LureSim.Model.Trim;

/// <summary>A lure that something holds upright at a trim and lets rise and sink: what is asked before it is known where its weights go.</summary>
/// <param name="TrimRad">theta, nose up positive, rad.</param>
/// <param name="ArmM">Centre of buoyancy ahead of the centre of gravity, horizontally, m: positive lifts the nose, 0 is balance.</param>
/// <param name="FreeboardM">Back amidships over the water, m.</param>
/// <param name="GmTransverseM">GM across, m: above 0 it stays upright.</param>
/// <param name="GmLongitudinalM">GM lengthwise, m: above 0 the balance is a stable one.</param>
public sealed record HeldTrim(double TrimRad, double ArmM, double FreeboardM, double GmTransverseM, double GmLongitudinalM)
{
    /// <summary>Holds a lure.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="water">Water.</param>
    /// <param name="trimRad">theta, -pi/2 to pi/2, rad.</param>
    /// <exception cref="ArgumentException">A value is out of range.</exception>
    /// <exception cref="ModelException">No height displaces its weight: it sinks.</exception>
    public static HeldTrim Of(LureSpec lure, WaterState water, double trimRad)
    {
        ArgumentNullException.ThrowIfNull(lure);
        ArgumentNullException.ThrowIfNull(water);
        Require.InRange(trimRad, -0.5 * Math.PI, 0.5 * Math.PI);
        HullForm hull = HullShape.Create(lure);
        var mass = LureMass.Of(lure, hull);
        var body = new FloatingBody(hull, mass.MassKg, mass.Centre, water.DensityKgM3, lure);
        FloatState state = FloatBalance.Heave(body, trimRad, 0.0);
        return new(
            trimRad,
            Vec3.Dot(state.Immersion.Centre - mass.Centre, state.Attitude.Forward),
            state.Attitude.HeightOf(BackAmidships(hull)),
            FloatBalance.MetacentricHeightM(body, state, state.Immersion.BmTransM),
            FloatBalance.MetacentricHeightM(body, state, state.Immersion.BmLongM));
    }

    /// <summary>Mass that floats upright at a trim with its back amidships so high, hooks included, kg: Archimedes, m = rho V.</summary>
    /// <param name="lure">Lure; its own mass does not enter.</param>
    /// <param name="water">Water.</param>
    /// <param name="trimRad">theta, -pi/2 to pi/2, rad.</param>
    /// <param name="freeboardM">Back amidships over the water, m.</param>
    /// <exception cref="ArgumentException">A value is out of range.</exception>
    public static double MassKg(LureSpec lure, WaterState water, double trimRad, double freeboardM)
    {
        ArgumentNullException.ThrowIfNull(lure);
        ArgumentNullException.ThrowIfNull(water);
        Require.InRange(trimRad, -0.5 * Math.PI, 0.5 * Math.PI);
        HullForm hull = HullShape.Create(lure);
        var body = new FloatingBody(hull, lure.MassKg, Vec3.Zero, water.DensityKgM3, lure);
        double raised = new Attitude(0.0, trimRad).HeightOf(BackAmidships(hull));
        return water.DensityKgM3 * body.At(new Attitude(freeboardM - raised, trimRad), FloatBalance.Strips).VolumeM3;
    }

    /// <summary>Back amidships, in body axes, m.</summary>
    internal static Vec3 BackAmidships(HullForm hull)
    {
        HullSection s = hull.SectionAt(0.0);
        return new Vec3(0.0, 0.0, s.CentreZM + s.HalfHeightM);
    }
}
