using LureSim.Model.Lines;
using LureSim.Numerics;

namespace LureSim.Model.Lures.Free;

/// <summary>A hook of the free hull: a point with drag and buoyancy.</summary>
/// <param name="Place">Hanger, body axes, m.</param>
/// <param name="AcrossKgM">1/2 rho CdA across the hull, all of it under water, kg/m.</param>
/// <param name="AlongKgM">The same along the hull, kg/m.</param>
/// <param name="BuoyancyN">rho g times its volume, N.</param>
internal sealed record FreeHook(Vec3 Place, double AcrossKgM, double AlongKgM, double BuoyancyN);

/// <summary>Where the hull sheds its cross-flow, and the nodes behind that place.</summary>
/// <param name="XM">x0, m from the middle.</param>
/// <param name="CentreZM">Height of the section's centre there, m.</param>
/// <param name="Node">Node at or before x0.</param>
/// <param name="Weight">Weight of the next node at x0, 0 to 1.</param>
/// <param name="From">First node behind it.</param>
/// <param name="To">Node after the last behind it.</param>
/// <param name="BehindM">Length of axis that each node stands for behind x0, m.</param>
/// <param name="PlaceM">Middle of that length, m: all of it behind x0, so that the law never gives energy (see <see cref="SternShedding"/>).</param>
internal sealed record FreeStern(double XM, double CentreZM, int Node, double Weight, int From, int To, double[] BehindM, double[] PlaceM);

/// <summary>The lure in six degrees of freedom: what does not change with attitude and speed. Body axes of <see cref="IHull"/>, origin O at the
/// middle of the length on the axis.</summary>
internal sealed class FreeHull
{
    // Skin of a turning body: Stokes' oscillating layer at the period of an ordinary roll.
    private const double RollRateRadS = 17.0;

    private double _shedding;

    /// <summary>Builds it from a lure at rest.</summary>
    /// <param name="f">Lure afloat.</param>
    public FreeHull(FloatingLure f)
    {
        ArgumentNullException.ThrowIfNull(f);
        WettedForm form = WettedForm.Of(f);
        Float = f;
        MassKg = f.Mass.MassKg;
        Centre = f.Mass.Centre;
        var nodes = new HullNodes(f.Hull);
        Attitude a = f.State.Attitude;
        double[] ends = EndCorrection.Of(nodes, f.Hull.LengthM, form.SlendernessAcross);
        double across = Spheroid.Sway(form.SlendernessAcross);
        Water = new NodeWater(
            nodes,
            f.Water.DensityKgM3,
            FloatingLure.GravityMS2,
            f.Spec.AddedMassFactor,
            Spheroid.Surge(form.SlendernessAlong),
            0.5 * f.Water.DensityKgM3 * f.Spec.CrossFlowCd * FiniteLength.Factor(form.SlendernessAcross),
            f.Spec.NoseDamping)
        {
            AddedKgM3 = Array.ConvertAll(ends, k => f.Water.DensityKgM3 * k),
            EvenShare = Array.ConvertAll(ends, k => k > 0.0 ? across / k : 0.0),
        };
        RestVolumeM3 = NodeSums.Volume(nodes, new WaterAxes(a.HeightM, a.Up)).Volume;
        VolumeM3 = f.Hull.VolumeM3();
        SurgeAddedKg = Water.SurgeShare * f.Water.DensityKgM3 * f.State.Immersion.VolumeM3;
        AxialDragKgM = HullResistance.AxialKgM(f, form);
        RollDampingNms = f.Spec.RollDamping * Skin(f, nodes);
        Rigid = RigidMass(f.Mass);
        Hooks = [.. f.Spec.Hooks.Select(h => HookOf(f, h))];
        HookReachM = f.Spec.HookReachM;
        Tie = new Vec3(f.Spec.TieXM, 0.0, f.Spec.TieZM);
        Nose = new Vec3(0.5 * f.Hull.LengthM, 0.0, 0.0);
        Shedding = f.Spec.SternShedding;
        double place = f.Spec.SternPlace * f.Hull.LengthM;
        (Tail, Head) = (SternOf(f.Hull, nodes, -place), SternOf(f.Hull, nodes, place));
    }

    /// <summary>The lure at rest.</summary>
    public FloatingLure Float { get; }

    /// <summary>m, kg.</summary>
    public double MassKg { get; }

    /// <summary>G, body axes, m.</summary>
    public Vec3 Centre { get; }

    /// <summary>Sections in the water.</summary>
    public NodeWater Water { get; }

    /// <summary>Volume of the hull under water at rest, m3, as its nodes give it.</summary>
    public double RestVolumeM3 { get; }

    /// <summary>Volume of the whole hull, m3.</summary>
    public double VolumeM3 { get; }

    /// <summary>k1 rho V at rest, kg: held constant, since the hull displaces its weight on average.</summary>
    public double SurgeAddedKg { get; }

    /// <summary>Axial drag at the volume of rest, force = -value |u| u, kg/m.</summary>
    public double AxialDragKgM { get; }

    /// <summary>c_p: roll moment over roll rate with the wetted hull of rest, N m s.</summary>
    public double RollDampingNms { get; }

    /// <summary>Mass and inertia about O.</summary>
    public Symmetric6 Rigid { get; }

    /// <summary>Hooks.</summary>
    public FreeHook[] Hooks { get; }

    /// <summary>Depth over which a hook goes under, m.</summary>
    public double HookReachM { get; }

    /// <summary>Line tie, body axes, m.</summary>
    public Vec3 Tie { get; }

    /// <summary>Foremost point of the axis, body axes, m.</summary>
    public Vec3 Nose { get; }

    /// <summary>chi, share of the stern's cross-flow momentum that is shed.</summary>
    public double Shedding
    {
        get => _shedding;
        init => _shedding = value;
    }

    /// <summary>Where it sheds moving ahead.</summary>
    public FreeStern Tail { get; }

    /// <summary>Where it sheds moving astern.</summary>
    public FreeStern Head { get; }

    /// <summary>The same hull with another share shed at its stern; everything else is shared.</summary>
    /// <param name="chi">Share.</param>
    public FreeHull WithShedding(double chi)
    {
        var other = (FreeHull)MemberwiseClone();
        other._shedding = chi;
        return other;
    }

    /// <summary>The lure at rest on its water.</summary>
    /// <param name="tieX">Line tie, x, m.</param>
    /// <param name="tieY">Line tie, y, m.</param>
    /// <param name="headingRad">psi, rad.</param>
    public FreeMotionState AtRest(double tieX, double tieY, double headingRad)
    {
        Attitude a = Float.State.Attitude;
        Frame3 frame = a.Frame(headingRad);
        Vec3 tie = frame.ToWorld(Tie);
        return new FreeMotionState(new Vec3(tieX - tie.X, tieY - tie.Y, a.HeightM), frame, Vec3.Zero, Vec3.Zero);
    }

    // Torque of the oscillating layer on a turning cylinder: surface r^2 sqrt(rho mu omega/2), Stokes 1851.
    private static double Skin(FloatingLure f, HullNodes nodes)
    {
        WaterLine w = f.WaterLine;
        double sum = 0.0;
        for (int j = 0; j < HullNodes.Count; j++)
        {
            HullSection s = f.Hull.SectionAt(nodes.X[j]);
            sum += nodes.Width[j] * s.WettedPerimeterM(w.Ny, w.Nz, w.Level(nodes.X[j])) * s.HalfBreadthM * s.HalfHeightM;
        }

        double viscosity = f.Water.DensityKgM3 * f.Water.KinematicViscosityM2S;
        return sum * Math.Sqrt(0.5 * f.Water.DensityKgM3 * viscosity * RollRateRadS);
    }

    private static FreeHook HookOf(FloatingLure f, HookSpec h)
    {
        double half = 0.5 * f.Water.DensityKgM3;
        return new FreeHook(
            new Vec3(h.XM, 0.0, h.ZM),
            half * h.DragAreaM2,
            half * (h.DragAreaAlongM2 ?? h.DragAreaM2),
            f.Water.DensityKgM3 * FloatingLure.GravityMS2 * h.SteelVolumeM3);
    }

    private static FreeStern SternOf(HullForm hull, HullNodes nodes, double x0)
    {
        double[] behind = new double[HullNodes.Count], place = new double[HullNodes.Count];
        int node = 0;
        for (int j = 0; j < HullNodes.Count; j++)
        {
            double from = 0.5 * (nodes.X[Math.Max(0, j - 1)] + nodes.X[j]), to = 0.5 * (nodes.X[j] + nodes.X[Math.Min(HullNodes.Count - 1, j + 1)]);
            behind[j] = x0 < 0.0 ? Math.Clamp(x0 - from, 0.0, to - from) : Math.Clamp(to - x0, 0.0, to - from);
            place[j] = x0 < 0.0 ? from + (0.5 * behind[j]) : to - (0.5 * behind[j]);
            node = nodes.X[j] <= x0 ? j : node;
        }

        node = Math.Min(node, HullNodes.Count - 2);
        double weight = (x0 - nodes.X[node]) / (nodes.X[node + 1] - nodes.X[node]);
        return new FreeStern(
            x0, hull.SectionAt(x0).CentreZM, node, weight, Array.FindIndex(behind, b => b > 0.0), Array.FindLastIndex(behind, b => b > 0.0) + 1, behind, place);
    }

    private static Symmetric6 RigidMass(LureMass mass)
    {
        var m = new Symmetric6();
        double kg = mass.MassKg, x = mass.Centre.X, z = mass.Centre.Z;
        (m[0, 0], m[1, 1], m[2, 2]) = (kg, kg, kg);

        // omega x r of the centre of gravity: (q z, r x - p z, -q x).
        m[0, 4] = kg * z;
        m[1, 3] = -kg * z;
        m[1, 5] = kg * x;
        m[2, 4] = -kg * x;
        m[3, 3] = mass.RollInertiaKgM2 + (kg * z * z);
        m[4, 4] = mass.PitchInertiaKgM2 + (kg * ((x * x) + (z * z)));
        m[5, 5] = mass.YawInertiaKgM2 + (kg * x * x);
        m[3, 5] = -(mass.ProductKgM2 + (kg * x * z));
        return m;
    }
}
