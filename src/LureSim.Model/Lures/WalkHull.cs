namespace LureSim.Model.Lures;

/// <summary>
/// The floating lure as the planar walk sees it, reduced to coefficients about the centre of gravity.
/// Built from a <see cref="LureSpec"/> by the float and added-mass models; axes: x along the lure toward the nose,
/// y to the lure's left, psi counter-clockwise seen from above.
/// </summary>
/// <param name="LengthM">L, m.</param>
/// <param name="MassKg">Mass with hooks, kg.</param>
/// <param name="M11">Surge: mass + added mass, kg.</param>
/// <param name="M22">Sway: mass + added mass, kg.</param>
/// <param name="M23">Sway-yaw coupling, kg m.</param>
/// <param name="M33">Yaw: inertia + added inertia, kg m2.</param>
/// <param name="TieArmM">a: line tie ahead of the centre of gravity, m.</param>
/// <param name="TieHeightM">Height of the line tie over the water at rest, m.</param>
/// <param name="StripXM">Strip positions from the centre of gravity, m.</param>
/// <param name="StripDragKgM">Per strip: 1/2 rho Cd eta h dx (h draft, eta finite-length factor), so that force = -value |w| w, kg/m.</param>
/// <param name="AxialDragKgM">X = -value |u| u, kg/m.</param>
/// <param name="HookXM">Hook positions from the centre of gravity, m.</param>
/// <param name="HookDragKgM">Per hook: 1/2 rho CdA across the hull, force = -value |w| w, kg/m.</param>
/// <param name="NoseMassKg">Effective mass of nose bob (heave and trim seen at the tie), kg.</param>
/// <param name="NoseStiffnessNM">Float stiffness at the tie, heave and trim in series, N/m.</param>
/// <param name="NoseDampingNsM">Damping of nose bob, N s/m (guess: ratio 0.3).</param>
/// <param name="OutlineXM">Outline seen from above, for pictures: x from the centre of gravity, m, tail to nose.</param>
/// <param name="OutlineHalfBreadthM">Half-breadth at those x, m.</param>
public sealed record WalkHull(
    double LengthM,
    double MassKg,
    double M11,
    double M22,
    double M23,
    double M33,
    double TieArmM,
    double TieHeightM,
    double[] StripXM,
    double[] StripDragKgM,
    double AxialDragKgM,
    double[] HookXM,
    double[] HookDragKgM,
    double NoseMassKg,
    double NoseStiffnessNM,
    double NoseDampingNsM,
    double[] OutlineXM,
    double[] OutlineHalfBreadthM)
{
    /// <summary>Cross-flow shed at the tail while the hull moves ahead.</summary>
    public SternShedding ShedAhead { get; init; } = SternShedding.None;

    /// <summary>The same at the nose while it moves astern.</summary>
    public SternShedding ShedAstern { get; init; } = SternShedding.None;

    /// <summary>Per hook: 1/2 rho CdA against motion along the hull, kg/m; without it, that of <see cref="HookDragKgM"/>.</summary>
    public double[] HookAlongKgM { get; init; } = HookDragKgM;

    /// <summary>Centre of gravity over the water at rest, m.</summary>
    public double CentreHeightM { get; init; }

    /// <summary>Foremost point of the axis over the water at rest, m.</summary>
    public double NoseHeightM { get; init; }

    /// <summary>Trim at rest, nose up positive, rad.</summary>
    public double TrimRad { get; init; }

    /// <summary>Volume under water at rest over that of the whole hull.</summary>
    public double WetShare { get; init; }

    /// <summary>Heel at rest, left side up positive, rad.</summary>
    public double HeelRad { get; init; }

    /// <summary>Foremost point of the outline ahead of the centre of gravity, m: the nose that the eye follows.</summary>
    public double NoseM => OutlineXM.Length > 0 ? OutlineXM[^1] : TieArmM;
}
