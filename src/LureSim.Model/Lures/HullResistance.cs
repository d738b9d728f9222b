using LureSim.Model.Lines;

namespace LureSim.Model.Lures;

/// <summary>Drag coefficients of a floating hull in the form force = -coefficient |w| w, kg/m.</summary>
internal static class HullResistance
{
    /// <summary>Strips of the cross-flow drag.</summary>
    public const int Strips = 21;

    /// <summary>
    /// Along the axis: factor (1/2) rho [Cf (1+k) S + Cd A], S wetted surface, A largest immersed section, Cd the
    /// lure's form drag. Friction on S is a tenth to a half of it; the factor is the bracket for wave drag.
    /// </summary>
    public static double AxialKgM(FloatingLure f, WettedForm form)
    {
        double re = f.Spec.FrictionSpeedMS * form.LengthM / f.Water.KinematicViscosityM2S;
        double friction = SkinFriction.Coefficient(re) * SkinFriction.FormFactor(form.SlendernessAlong) * form.SurfaceM2;
        double shape = f.Spec.FormDragCd * form.SectionM2;
        return f.Spec.AxialDragFactor * 0.5 * f.Water.DensityKgM3 * (friction + shape);
    }

    /// <summary>Middle of strip i along the axis, m.</summary>
    public static double StripXM(FloatingLure f, int i) => f.Hull.LengthM * (((i + 0.5) / Strips) - 0.5);

    /// <summary>
    /// Across, per strip: (1/2) rho Cd eta h dx, h draft (Allen and Perkins 1951, NACA Rep. 1048); eta at the length
    /// over the height of hull and mirror image.
    /// </summary>
    public static double[] StripDragKgM(FloatingLure f, WettedForm form)
    {
        double width = f.Hull.LengthM / Strips;
        double eta = FiniteLength.Factor(form.SlendernessAcross);
        double perDraft = 0.5 * f.Water.DensityKgM3 * f.Spec.CrossFlowCd * eta * width;
        var drag = new double[Strips];
        for (int i = 0; i < Strips; i++)
        {
            drag[i] = perDraft * f.DraftM(StripXM(f, i));
        }

        return drag;
    }

    /// <summary>Hook against motion across the hull: (1/2) rho CdA of its share under water.</summary>
    public static double HookKgM(FloatingLure f, HookSpec hook) => HookKgM(f, hook, hook.DragAreaM2);

    /// <summary>The same against motion along the hull, to which a hook trails.</summary>
    public static double HookAlongKgM(FloatingLure f, HookSpec hook) => HookKgM(f, hook, hook.DragAreaAlongM2 ?? hook.DragAreaM2);

    private static double HookKgM(FloatingLure f, HookSpec hook, double areaM2)
    {
        double height = f.State.Attitude.HeightOf(new Numerics.Vec3(hook.XM, 0.0, hook.ZM));
        return 0.5 * f.Water.DensityKgM3 * areaM2 * FloatingBody.WetShare(height, f.Spec.HookReachM);
    }
}
