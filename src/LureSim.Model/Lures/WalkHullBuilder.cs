using LureSim.Model.Media;
using LureSim.Numerics;

namespace LureSim.Model.Lures;

/// <summary>Reduces a lure on its water to the coefficients of the planar walk.</summary>
public static class WalkHullBuilder
{
    private const int OutlinePoints = 41;

    /// <summary>Floats the lure and reduces it.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="water">Water.</param>
    /// <exception cref="ArgumentException">A value is out of range, or the lure is heavier than its water (it sinks).</exception>
    /// <exception cref="ModelException">No stable attitude was found.</exception>
    public static WalkHull Build(LureSpec lure, WaterState water) => Reduce(FloatingLure.Float(lure, water));

    /// <summary>The coefficients of a lure that floats already.</summary>
    /// <param name="floating">Lure afloat.</param>
    internal static WalkHull Build(FloatingLure floating) => Reduce(floating);

    private static WalkHull Reduce(FloatingLure f)
    {
        WettedForm form = WettedForm.Of(f);
        HullAddedMass added = HullAddedMass.Of(f, form);
        double mass = f.Mass.MassKg;
        double tieArm = f.AheadM(f.Spec.TieXM, f.Spec.TieZM);
        NoseBob nose = NoseBob.Of(f, added, tieArm);
        (double[] outlineX, double[] outlineB) = Outline(f);
        return new WalkHull(
            f.Hull.LengthM,
            mass,
            mass + added.SurgeKg,
            mass + added.SwayKg,
            added.SwayYawKgM,
            f.Mass.YawInertiaKgM2 + added.YawKgM2,
            tieArm,
            f.State.Attitude.HeightOf(new Vec3(f.Spec.TieXM, 0.0, f.Spec.TieZM)),
            StripPositions(f),
            HullResistance.StripDragKgM(f, form),
            HullResistance.AxialKgM(f, form),
            [.. f.Spec.Hooks.Select(h => f.AheadM(h.XM, h.ZM))],
            [.. f.Spec.Hooks.Select(h => HullResistance.HookKgM(f, h))],
            nose.MassKg,
            nose.StiffnessNM,
            nose.DampingNsM,
            outlineX,
            outlineB)
        {
            ShedAhead = SternShedding.Of(f, form, ahead: true),
            ShedAstern = SternShedding.Of(f, form, ahead: false),
            CentreHeightM = f.State.Attitude.HeightOf(f.Mass.Centre),
            NoseHeightM = f.State.Attitude.HeightOf(new Vec3(0.5 * f.Hull.LengthM, 0.0, 0.0)),
            TrimRad = f.State.Attitude.TrimRad,
            WetShare = f.State.Immersion.VolumeM3 / f.Hull.VolumeM3(),
            HeelRad = f.State.Attitude.HeelRad,
            HookAlongKgM = [.. f.Spec.Hooks.Select(h => HullResistance.HookAlongKgM(f, h))],
        };
    }

    private static double[] StripPositions(FloatingLure f)
    {
        var x = new double[HullResistance.Strips];
        for (int i = 0; i < x.Length; i++)
        {
            x[i] = f.AheadM(HullResistance.StripXM(f, i), 0.0);
        }

        return x;
    }

    private static (double[] X, double[] HalfBreadth) Outline(FloatingLure f)
    {
        var x = new double[OutlinePoints];
        var b = new double[OutlinePoints];
        for (int i = 0; i < OutlinePoints; i++)
        {
            double along = -0.5 * f.Hull.LengthM * Math.Cos(Math.PI * i / (OutlinePoints - 1));
            x[i] = f.AheadM(along, 0.0);
            b[i] = f.Hull.SectionAt(along).HalfBreadthM;
        }

        return (x, b);
    }
}
