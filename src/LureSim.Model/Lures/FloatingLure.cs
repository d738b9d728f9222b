using LureSim.Model.Media;
using LureSim.Numerics;

namespace LureSim.Model.Lures;

/// <summary>A lure at rest on its water: everything the reduction to <see cref="WalkHull"/> starts from.</summary>
/// <param name="Spec">Lure.</param>
/// <param name="Water">Water.</param>
/// <param name="Hull">Hull form.</param>
/// <param name="Mass">Mass, centre, inertia.</param>
/// <param name="State">Floating state.</param>
internal sealed record FloatingLure(LureSpec Spec, WaterState Water, HullForm Hull, LureMass Mass, FloatState State)
{
    /// <summary>Standard gravity g, m/s2 (CGPM 1901, exact).</summary>
    public const double GravityMS2 = 9.80665;

    /// <summary>Water line of the floating state.</summary>
    public WaterLine WaterLine => State.Attitude.WaterLine();

    /// <summary>rho g Aw, N/m.</summary>
    public double HeaveStiffnessNM => Water.DensityKgM3 * GravityMS2 * State.Immersion.WaterplaneAreaM2;

    /// <summary>m g GM lengthwise, N m/rad.</summary>
    public double TrimStiffnessNMRad => Mass.MassKg * GravityMS2 * GmM(State.Immersion.BmLongM);

    /// <summary>Centre of the waterplane ahead of G, horizontally, m.</summary>
    public double FlotationXM => State.Immersion.FlotationXM - Vec3.Dot(State.Attitude.Forward, Mass.Centre);

    /// <summary>Puts a lure on the water.</summary>
    /// <exception cref="ArgumentException">Out of range, or it sinks.</exception>
    /// <exception cref="ModelException">No attitude found.</exception>
    public static FloatingLure Float(LureSpec lure, WaterState water)
    {
        HullForm hull = HullShape.Create(lure);
        ArgumentNullException.ThrowIfNull(water);
        LureMass mass = LureMass.Of(lure, hull);
        FloatState state = FloatBalance.Solve(BodyOf(lure, hull, mass, water));
        return new FloatingLure(lure, water, hull, mass, state);
    }

    /// <summary>The body for further float questions.</summary>
    public FloatingBody Body() => BodyOf(Spec, Hull, Mass, Water);

    /// <summary>Metacentric height, m, from BM.</summary>
    public double GmM(double bmM) => FloatBalance.MetacentricHeightM(Body(), State, bmM);

    /// <summary>How far a body point lies ahead of G, horizontally, m.</summary>
    public double AheadM(double x, double z) =>
        Vec3.Dot(State.Attitude.Forward, new Vec3(x, 0.0, z) - Mass.Centre);

    /// <summary>Immersed depth of the section at x, perpendicular to the axis, m.</summary>
    public double DraftM(double x)
    {
        WaterLine water = WaterLine;
        HullSection s = Hull.SectionAt(x);
        double q = s.HalfExtentM(water.Ny, water.Nz);
        return q == 0.0 ? 0.0 : q * Math.Clamp(1.0 + s.RelativeLevel(water.Ny, water.Nz, water.Level(x)), 0.0, 2.0);
    }

    private static FloatingBody BodyOf(LureSpec lure, HullForm hull, LureMass mass, WaterState water) =>
        new(hull, mass.MassKg, mass.Centre, water.DensityKgM3, lure);
}
