namespace LureSim.Model.Lures;

/// <summary>
/// The mass of a body from what it is made of. Walls and coats are measured square to the surface: the room inside is all that lies deeper than
/// they are thick, found in the view from above and from the side each by itself (exact for bodies of revolution).
/// </summary>
public static class LureWeight
{
    private const int Slices = HullForm.Panels, Around = 32;

    /// <summary>The same lure with the mass that follows from its material, coat and ballast; unchanged where no density is known.</summary>
    /// <param name="lure">Lure; its mass is not looked at unless it stays.</param>
    /// <exception cref="ArgumentException">A value is out of range, or the ballast takes more room than the body has.</exception>
    public static LureSpec Weighed(LureSpec lure)
    {
        ArgumentNullException.ThrowIfNull(lure);
        if (lure.Build.DensityKgM3 is null)
        {
            return lure;
        }

        // The hull does not mind the mass, but its checks do: ballast may be all of it.
        double ballast = lure.Ballast.Sum(b => b.MassKg);
        LureSpec any = lure with { MassKg = Math.Max(lure.MassKg, ballast) };
        return lure with { MassKg = MassKg(any, HullShape.Create(any)) };
    }

    /// <summary>Mass of body, coat and ballast without hooks, kg.</summary>
    /// <param name="lure">Lure with a known density.</param>
    /// <param name="hull">Its hull.</param>
    /// <exception cref="ArgumentException">No density, a shell without a wall, or ballast that takes more room than the body has.</exception>
    public static double MassKg(LureSpec lure, HullForm hull)
    {
        ArgumentNullException.ThrowIfNull(lure);
        ArgumentNullException.ThrowIfNull(hull);
        if (lure.Build.DensityKgM3 is not double density)
        {
            throw new ArgumentException("the body's density is not known.");
        }

        if (lure.Build is { Kind: LureBuild.Shell, WallM: null })
        {
            throw new ArgumentException("a shell of known density needs a wall.");
        }

        double coat = CoatM3(lure.Build, hull), holes = HolesM3(lure), full = hull.VolumeM3(Slices);
        double stuff = lure.Build.Kind == LureBuild.Solid
            ? full - coat - holes
            : LayerM3(hull, lure.Build.CoatThicknessM + (lure.Build.WallM ?? 0.0)) - coat;
        double room = lure.Build.Kind == LureBuild.Solid ? stuff : full - coat - stuff - holes;
        return room > 0.0
            ? (density * stuff) + (lure.Build.CoatDensityKgM3 * coat) + lure.Ballast.Sum(b => b.MassKg)
            : throw new ArgumentException("the ballast takes more room than the body has.");
    }

    /// <summary>Mass of the coat, kg.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="hull">Its hull.</param>
    public static double CoatKg(LureSpec lure, HullForm hull)
    {
        ArgumentNullException.ThrowIfNull(lure);
        ArgumentNullException.ThrowIfNull(hull);
        return lure.Build.CoatDensityKgM3 * CoatM3(lure.Build, hull);
    }

    /// <summary>Room that the ballast takes, m3.</summary>
    internal static double HolesM3(LureSpec lure) => lure.Ballast.Sum(b => b.VolumeM3);

    /// <summary>Volume of a layer of one thickness under the whole surface, flat ends included, m3.</summary>
    /// <param name="hull">Hull.</param>
    /// <param name="thicknessM">Thickness, m.</param>
    /// <param name="panels">Slices along the hull.</param>
    internal static double LayerM3(HullForm hull, double thicknessM, int panels = Slices)
    {
        double all = 0.0, inside = 0.0;
        for (int i = 0; i < panels; i++)
        {
            HullPanel p = hull.Panel(i, panels);
            (double b, double c) = Inside(hull, p.XM, thicknessM);
            all += p.Section.AreaM2 * p.WidthM;
            inside += Math.PI * b * c * p.WidthM;
        }

        return all - inside;
    }

    // Half-axes of the room at x: no point of it is nearer to the outline than the layer is thick; beyond the ends there is no body.
    private static (double B, double C) Inside(HullForm hull, double x, double thickness)
    {
        double b = double.PositiveInfinity, c = double.PositiveInfinity, half = 0.5 * hull.LengthM;
        if (Math.Abs(x) > half - thickness)
        {
            return (0.0, 0.0);
        }

        for (int i = 0; i <= Around; i++)
        {
            double angle = Math.PI * i / Around;
            HullSection s = hull.SectionAt(Math.Clamp(x + (thickness * Math.Cos(angle)), -half, half));
            double deep = thickness * Math.Sin(angle);
            (b, c) = (Math.Min(b, s.HalfBreadthM - deep), Math.Min(c, s.HalfHeightM - deep));
        }

        return (Math.Max(0.0, b), Math.Max(0.0, c));
    }

    private static double CoatM3(LureBuildSpec build, HullForm hull) => build.CoatThicknessM > 0.0 ? LayerM3(hull, build.CoatThicknessM) : 0.0;
}
