using LureSim.Numerics;

namespace LureSim.Model.Lures;

/// <summary>
/// Mass, centre of gravity and inertia of a lure. What is not ballast is, by <see cref="LureBuildSpec"/>, a wall of one thickness over the whole
/// surface (a moulded shell), or fills the body under its coat less the room of the ballast. Of the same mass a solid body has 5 to 10 % less
/// yaw inertia than a shell. Ballast counts as points, hooks turn with the lure at their hangers.
/// </summary>
/// <param name="MassKg">With hooks, kg.</param>
/// <param name="Centre">Centre of gravity G in body axes, m.</param>
/// <param name="YawInertiaKgM2">About the body's z through G, kg m2.</param>
/// <param name="RollInertiaKgM2">About the body's x through G, kg m2.</param>
/// <param name="PitchInertiaKgM2">About the body's y through G, kg m2.</param>
/// <param name="ProductKgM2">Sum of m x z about G, kg m2.</param>
public sealed record LureMass(
    double MassKg, Vec3 Centre, double YawInertiaKgM2, double RollInertiaKgM2, double PitchInertiaKgM2, double ProductKgM2)
{
    /// <summary>Adds up body, ballast and hooks.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="hull">Its hull.</param>
    /// <exception cref="ArgumentException">The ballast of a solid body takes more room than the body has.</exception>
    public static LureMass Of(LureSpec lure, HullForm hull) => Of(lure, hull, HullForm.Panels);

    /// <summary>The same with another number of slices along the body.</summary>
    internal static LureMass Of(LureSpec lure, HullForm hull, int panels)
    {
        ArgumentNullException.ThrowIfNull(lure);
        ArgumentNullException.ThrowIfNull(hull);
        double body = lure.MassKg;
        var sums = default(MassSums);
        foreach (BallastSpec b in lure.Ballast)
        {
            body -= b.MassKg;
            sums.Add(b.MassKg, b.XM, b.ZM, 0.0, 0.0);
        }

        foreach (HookSpec h in lure.Hooks)
        {
            sums.Add(h.MassKg, h.XM, h.ZM, 0.0, 0.0);
        }

        // Ballast may be all of the mass; rounding must not leave a negative body.
        body = Math.Max(0.0, body);
        if (lure.Build.Kind == LureBuild.Shell)
        {
            AddShell(ref sums, hull, body, panels);
        }
        else
        {
            double coat = Math.Min(body, LureWeight.CoatKg(lure, hull));
            AddShell(ref sums, hull, coat, panels);
            AddSolid(ref sums, lure, hull, body - coat, panels);
        }

        return sums.Result();
    }

    private static void AddShell(ref MassSums sums, HullForm hull, double massKg, int panels)
    {
        double perArea = massKg / hull.SurfaceM2(panels);
        for (int i = 0; i < panels; i++)
        {
            HullPanel p = hull.Panel(i, panels);
            Add(ref sums, perArea * p.Section.PerimeterM * p.SlantM, p.XM, p.Section, 0.5);
        }

        foreach (double end in (ReadOnlySpan<double>)[-0.5, 0.5])
        {
            HullSection s = hull.SectionAt(end * hull.LengthM);
            Add(ref sums, perArea * s.AreaM2, end * hull.LengthM, s, 0.25);
        }
    }

    // The whole body of one density, then at each ballast as much less as it takes the place of.
    private static void AddSolid(ref MassSums sums, LureSpec lure, HullForm hull, double massKg, int panels)
    {
        double holes = LureWeight.HolesM3(lure), room = hull.VolumeM3(panels) - holes;
        if (!(room > 0.0))
        {
            throw new ArgumentException("the ballast takes more room than the body has.");
        }

        double density = massKg / room;
        StripRule rule = StripRule.Of(panels);
        for (int i = 0; i < panels; i++)
        {
            double x = 0.5 * hull.LengthM * rule.Node[i];
            HullSection s = hull.SectionAt(x);
            Add(ref sums, density * s.AreaM2 * 0.5 * hull.LengthM * rule.Weight[i], x, s, 0.25);
        }

        foreach (BallastSpec b in lure.Ballast)
        {
            sums.Add(-density * b.VolumeM3, b.XM, b.ZM, 0.0, 0.0);
        }
    }

    // Mean y^2 of a ring is b^2/2, of a disc b^2/4 (exact for circles, near enough for ellipses of even wall); z^2 alike.
    private static void Add(ref MassSums sums, double mass, double x, HullSection s, double share) =>
        sums.Add(mass, x, s.CentreZM, share * s.HalfBreadthM * s.HalfBreadthM, share * s.HalfHeightM * s.HalfHeightM);

    private struct MassSums
    {
        private double _m, _mx, _mz, _xx, _yy, _zz, _xz;

        public void Add(double mass, double x, double z, double meanYy, double meanZz)
        {
            _m += mass;
            _mx += mass * x;
            _mz += mass * z;
            _xx += mass * x * x;
            _yy += mass * meanYy;
            _zz += mass * ((z * z) + meanZz);
            _xz += mass * x * z;
        }

        public readonly LureMass Result()
        {
            double x = _mx / _m, z = _mz / _m;
            double xx = _xx - (_m * x * x), zz = _zz - (_m * z * z);
            return new(_m, new Vec3(x, 0.0, z), xx + _yy, _yy + zz, xx + zz, _xz - (_m * x * z));
        }
    }
}
