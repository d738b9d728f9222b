namespace LureSim.Model.Rods;

/// <summary>
/// A rod as a planar chain of rigid links with rotational springs, exact at any bend. Link 0 turns with the hand; links
/// 1..n follow through n springs. Link angles theta_i are absolute. Inertia of the whole chain:
/// M_ij = <see cref="InertiaKgM2"/>[i, j] cos(theta_i - theta_j).
/// </summary>
/// <remarks>
/// Lumping: the free length is cut into n equal pieces; each piece's bending sits in one spring, whose place and stiffness
/// are such that a load at the tip gives exactly the piece's share of the tip's deflection and rotation (first and second
/// moment of ds/EI about the tip). So tip flexibility is exact at any n for any taper, and the other errors (own weight,
/// frequencies, large bends) fall as n^-2. Mass is not lumped: each rigid link keeps its distributed mass, first and second
/// moment. Immutable and safe to share between threads.
/// </remarks>
public sealed class RodChain
{
    private RodChain(double[] length, double[] spring, double[] firstMoment, double[,] inertia, double mass, double[] dragArea)
    {
        LengthM = length;
        SpringNm = spring;
        FirstMomentKgM = firstMoment;
        InertiaKgM2 = inertia;
        MassKg = mass;
        DragAreaM2 = dragArea;
    }

    /// <summary>n, number of springs, and of links beyond link 0.</summary>
    public int Links => SpringNm.Length;

    /// <summary>l_i, link lengths, m, i = 0..n.</summary>
    public double[] LengthM { get; }

    /// <summary>k_j between link j and link j + 1, N m/rad, j = 0..n-1.</summary>
    public double[] SpringNm { get; }

    /// <summary>g_i = integral of m c_i ds with c_i the part of link i before the mass: gravity torque is g_i times g cos theta_i, kg m.</summary>
    public double[] FirstMomentKgM { get; }

    /// <summary>A_ij = integral of m c_i c_j ds, kg m2, symmetric, i, j = 0..n.</summary>
    public double[,] InertiaKgM2 { get; }

    /// <summary>Mass of the free length and of the tip mass, kg.</summary>
    public double MassKg { get; }

    /// <summary>Diameter at a link's middle times its length, m2: its area across the wind.</summary>
    public double[] DragAreaM2 { get; }

    /// <summary>Sum of the links, m.</summary>
    public double FreeLengthM => LengthM.Sum();

    /// <summary>Builds the chain of a rod.</summary>
    /// <param name="spec">The rod.</param>
    /// <exception cref="ArgumentException">A number of the rod is out of range.</exception>
    /// <exception cref="ModelException">No stiffness fulfils the bend test.</exception>
    public static RodChain Build(RodSpec spec) => Build(RodTaper.FromSpec(spec), spec.Links);

    /// <summary>Builds the chain of a taper.</summary>
    /// <param name="taper">Stiffness, mass and diameter along the rod.</param>
    /// <param name="links">n, 1 to 400.</param>
    /// <param name="tipMassKg">Point mass at the tip, kg, not negative.</param>
    /// <exception cref="ArgumentException">A number is out of range.</exception>
    public static RodChain Build(RodTaper taper, int links, double tipMassKg = 0.0)
    {
        ArgumentNullException.ThrowIfNull(taper);
        taper.Check();
        ArgumentOutOfRangeException.ThrowIfLessThan(links, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(links, 400);
        if (!(tipMassKg >= 0.0 && double.IsFinite(tipMassKg)))
        {
            throw new ArgumentOutOfRangeException(nameof(tipMassKg), tipMassKg, "must be finite and not negative");
        }

        double[] joint = new double[links + 2];
        double[] spring = new double[links];
        joint[links + 1] = taper.FreeLengthM;
        for (int j = 0; j < links; j++)
        {
            double a = taper.FreeLengthM * j / links, b = taper.FreeLengthM * (j + 1) / links;
            double rotation = taper.TipLoadMoment(a, b, 1), deflection = taper.TipLoadMoment(a, b, 2);
            spring[j] = deflection / (rotation * rotation);
            joint[j + 1] = taper.FreeLengthM - (deflection / rotation);
        }

        return Assemble(taper, joint, spring, tipMassKg);
    }

    /// <summary>Tip position relative to the hand for given link angles, m.</summary>
    /// <param name="angle">theta_i, rad, i = 0..n.</param>
    public (double X, double Y) Tip(ReadOnlySpan<double> angle)
    {
        double x = 0.0, y = 0.0;
        for (int i = 0; i < LengthM.Length; i++)
        {
            x += LengthM[i] * Math.Cos(angle[i]);
            y += LengthM[i] * Math.Sin(angle[i]);
        }

        return (x, y);
    }

    /// <summary>Energy stored in the springs, J.</summary>
    /// <param name="angle">theta_i, rad, i = 0..n.</param>
    public double SpringEnergyJ(ReadOnlySpan<double> angle)
    {
        double sum = 0.0;
        for (int j = 0; j < SpringNm.Length; j++)
        {
            double bend = angle[j + 1] - angle[j];
            sum += 0.5 * SpringNm[j] * bend * bend;
        }

        return sum;
    }

    private static RodChain Assemble(RodTaper taper, double[] joint, double[] spring, double tipMass)
    {
        int count = joint.Length - 1;
        double[] length = new double[count], first = new double[count], drag = new double[count];
        double[,] inertia = new double[count, count];
        double beyond = tipMass;
        for (int i = count - 1; i >= 0; i--)
        {
            double a = joint[i], b = joint[i + 1], l = b - a;
            length[i] = l;
            drag[i] = l * taper.DiameterM(0.5 * (a + b));
            first[i] = taper.MassMoment(a, b, 1, a) + (l * beyond);
            inertia[i, i] = taper.MassMoment(a, b, 2, a) + (l * l * beyond);
            beyond += taper.MassMoment(a, b, 0, a);
        }

        for (int i = 0; i < count; i++)
        {
            for (int j = i + 1; j < count; j++)
            {
                inertia[i, j] = inertia[j, i] = length[i] * first[j];
            }
        }

        return new RodChain(length, spring, first, inertia, beyond, drag);
    }
}
