using LureSim.Numerics;

namespace LureSim.Model.Lures;

/// <summary>
/// Mass, centre of gravity and inertia of a lure. What is not ballast is a wall of one thickness over the whole
/// surface (a moulded shell); a solid body of the same mass has 5 to 10 % less yaw inertia, which hardly moves the
/// walk. Hooks turn with the lure at their hangers.
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
    /// <summary>Adds up shell, ballast and hooks.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="hull">Its hull.</param>
    public static LureMass Of(LureSpec lure, HullForm hull)
    {
        ArgumentNullException.ThrowIfNull(lure);
        ArgumentNullException.ThrowIfNull(hull);
        double shell = lure.MassKg;
        var sums = default(MassSums);
        foreach (BallastSpec b in lure.Ballast)
        {
            shell -= b.MassKg;
            sums.Add(b.MassKg, b.XM, b.ZM, 0.0, 0.0);
        }

        foreach (HookSpec h in lure.Hooks)
        {
            sums.Add(h.MassKg, h.XM, h.ZM, 0.0, 0.0);
        }

        // Ballast may be all of the mass; rounding must not leave a negative shell.
        AddShell(ref sums, hull, Math.Max(0.0, shell));
        return sums.Result();
    }

    private static void AddShell(ref MassSums sums, HullForm hull, double massKg)
    {
        double perArea = massKg / hull.SurfaceM2();
        for (int i = 0; i < HullForm.Panels; i++)
        {
            HullPanel p = hull.Panel(i, HullForm.Panels);
            Add(ref sums, perArea * p.Section.PerimeterM * p.SlantM, p.XM, p.Section, 0.5);
        }

        foreach (double end in (ReadOnlySpan<double>)[-0.5, 0.5])
        {
            HullSection s = hull.SectionAt(end * hull.LengthM);
            Add(ref sums, perArea * s.AreaM2, end * hull.LengthM, s, 0.25);
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
