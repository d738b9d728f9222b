using LureSim.Model.Lures;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Mapping;

/// <summary>What a body has different from its named shape, what it is made of, and the mass that follows.</summary>
internal static class BodyMapper
{
    /// <summary>Ends, thickest place, belly; refused values stay NaN.</summary>
    public static LureFormSpec Form(MapContext c, bool byStations)
    {
        foreach (KeySpec key in LureFormKeys.OfShape.Where(k => byStations && c.Values.Has(k)))
        {
            c.Fault(key, "given beside sections, which give the form; leave it out, or name a shape");
        }

        return byStations
            ? new()
            : new(Given(c, LureFormKeys.NoseBluntness), Given(c, LureFormKeys.TailBluntness), Given(c, LureFormKeys.Thickest), Given(c, LureFormKeys.BellyFlat));
    }

    /// <summary>What it is made of; refused values stay NaN.</summary>
    public static LureBuildSpec Build(MapContext c)
    {
        bool stuff = HasStuff(c), wall = c.Values.Has(LureBuildKeys.Wall);
        var kind = c.Values.Has(LureBuildKeys.Build) ? c[LureBuildKeys.Build] is (int)LureBuild.Solid ? LureBuild.Solid : LureBuild.Shell
            : stuff && !wall ? LureBuild.Solid : LureBuild.Shell;
        if (wall && !stuff)
        {
            c.Fault(LureBuildKeys.Wall, "gives the mass with lure.material or lure.density, which is due in place of a given mass");
        }
        else if (wall && kind == LureBuild.Solid)
        {
            c.Fault(LureBuildKeys.Wall, "a solid body has no wall; leave out the wall or build = \"solid\"");
        }
        else if (stuff && !wall && kind == LureBuild.Shell)
        {
            c.Fault(LureBuildKeys.Build, "a shell of known material is due a wall, for example wall = \"1.5 mm\"");
        }

        bool coated = stuff || kind == LureBuild.Solid;
        foreach (KeySpec key in (KeySpec[])[LureBuildKeys.CoatThickness, LureBuildKeys.CoatDensity])
        {
            if (!coated && c.Values.Has(key))
            {
                c.Fault(key, "does not enter a shell of given mass; build = \"solid\", or lure.material in place of the mass, is due");
            }
        }

        double coat = coated ? c.Guessed(LureBuildKeys.CoatThickness, LureBuildKeys.UsualCoat) : 0.0;
        return new(
            kind,
            stuff ? Density(c) : null,
            wall ? c[LureBuildKeys.Wall] : null,
            coat,
            coat > 0.0 ? c.Guessed(LureBuildKeys.CoatDensity, LureBuildKeys.CoatDensity.Parameter!.Default) : LureBuildKeys.CoatDensity.Parameter!.Default);
    }

    /// <summary>Whether material or density is given.</summary>
    public static bool HasStuff(MapContext c) => c.Values.Has(LureBuildKeys.Material) || c.Values.Has(LureBuildKeys.Density);

    /// <summary>The key that says what the body is made of.</summary>
    public static KeySpec StuffKey(MapContext c) => c.Values.Has(LureBuildKeys.Density) ? LureBuildKeys.Density : LureBuildKeys.Material;

    /// <summary>The mass that follows, kg; NaN where it was refused.</summary>
    /// <param name="c">Context.</param>
    /// <param name="body">The body with its ballast, without tie and hooks; its mass is not known yet.</param>
    public static double Mass(MapContext c, LureSpec body)
    {
        LureBuildSpec build = body.Build;
        if (!IsSound(body))
        {
            return double.NaN;
        }

        double thinnest = Math.Min(body.DiameterM, body.HeightM), least = 2.0 * ((build.WallM ?? 0.0) + build.CoatThicknessM);
        if (least >= thinnest)
        {
            c.Fault(build.WallM is null ? LureBuildKeys.CoatThickness : LureBuildKeys.Wall, string.Concat(
                $"wall and coat of both sides make {MapContext.Show(LureBuildKeys.Wall, least)}, but the body is {MapContext.Show(LureBuildKeys.Wall, thinnest)} thick at its thickest: ",
                "nothing is left inside"));
            return double.NaN;
        }

        if (build is { Kind: LureBuild.Shell, WallM: null })
        {
            return double.NaN;
        }

        // Places of ballast are checked later, and do not change the mass.
        LureSpec weighed = body with { MassKg = LureKeys.Mass.High, Ballast = [] };
        HullForm hull = HullShape.Create(weighed);
        try
        {
            double mass = LureWeight.MassKg(weighed with { Ballast = body.Ballast }, hull);
            if (mass >= LureKeys.Mass.Low && mass <= LureKeys.Mass.High)
            {
                return mass;
            }

            c.Fault(StuffKey(c), $"the body would weigh {MapContext.Show(LureKeys.Mass, mass)}; allowed: {RangeText.Of(LureKeys.Mass)}");
        }
        catch (ArgumentException)
        {
            double room = hull.VolumeM3(), holes = body.Ballast.Sum(b => b.MassKg / b.DensityKgM3);
            c.Fault(LureKeys.Ballast, $"takes {1e6 * holes:G3} cm3 of a body of {1e6 * room:G3} cm3: it does not fit");
        }

        return double.NaN;
    }

    /// <summary>Whether no value was refused.</summary>
    public static bool IsSound(LureSpec lure) => !double.IsNaN(
        Sum(lure.Form) + (lure.Build.DensityKgM3 ?? 0.0) + (lure.Build.WallM ?? 0.0) + lure.Build.CoatThicknessM + lure.Build.CoatDensityKgM3);

    private static double Density(MapContext c) => c.Values.Has(LureBuildKeys.Material) && !c.Values.Has(LureBuildKeys.Density) && double.IsNaN(c[LureBuildKeys.Material])
        ? double.NaN
        : c.Values.Has(LureBuildKeys.Density) ? c[LureBuildKeys.Density] : c.FromWord(LureBuildKeys.Material);

    private static double? Given(MapContext c, KeySpec key) => c.Values.Has(key) ? c[key] : null;

    private static double Sum(LureFormSpec form) => (form.NoseBluntness ?? 0.0) + (form.TailBluntness ?? 0.0) + (form.ThickestPlace ?? 0.0) + (form.BellyFlatness ?? 0.0);
}
