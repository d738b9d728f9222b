using System.Numerics;
using LureSim.Numerics;
using static LureSim.Model.Lines.Chain.Lanes;

namespace LureSim.Model.Lures.Free;

/// <summary>
/// Secant drag per metre of every section across e_h and e_v: cross-flow drag on the speed of the section's centre (1/2 rho Cd eta |w| times draft
/// or breadth), waves of heave as a linear damper 2 zeta sqrt(rho g B (rho A + a_v)), and what a section that goes under hands to the water,
/// max(0, a') w (von Karman 1929, NACA TN 321, from memory: the water keeps half a' w^2; coming out it takes its momentum along).
/// The force across acts at the section's centre for a circle, (w_e^2 - h_e^2)(1 - t)/(2 h_e) above it for an ellipse, whose pressure passes
/// beside the centre.
/// </summary>
internal sealed class NodeDrag
{
    private readonly NodeWater _water;
    private readonly NodeCut _cut;
    private readonly NodeAddedMass _added;

    /// <summary>Allocates the work arrays.</summary>
    /// <param name="water">Constants.</param>
    /// <param name="cut">Sections as they are cut.</param>
    /// <param name="added">Their added mass.</param>
    public NodeDrag(NodeWater water, NodeCut cut, NodeAddedMass added)
    {
        ArgumentNullException.ThrowIfNull(water);
        ArgumentNullException.ThrowIfNull(cut);
        ArgumentNullException.ThrowIfNull(added);
        (_water, _cut, _added) = (water, cut, added);
    }

    /// <summary>d_h without what goes under, kg/(m s).</summary>
    public double[] Across { get; } = new double[HullNodes.Count];

    /// <summary>Part of sections that go under, max(0, a_h'), kg/(m s): at their own arm, where their momentum is.</summary>
    public double[] EnteringAcross { get; } = new double[HullNodes.Count];

    /// <summary>d_v, kg/(m s).</summary>
    public double[] Up { get; } = new double[HullNodes.Count];

    /// <summary>Roll arm of d_h, m.</summary>
    public double[] AcrossArm { get; } = new double[HullNodes.Count];

    /// <summary>1/2 sum of a' w^2, W: what the changing added mass holds more.</summary>
    public double Wetting { get; private set; }

    /// <summary>Computes all sections.</summary>
    /// <param name="water">Attitude.</param>
    /// <param name="velocity">Velocity of the origin, body axes, m/s.</param>
    /// <param name="rate">omega, body axes, rad/s.</param>
    public void Set(in WaterAxes water, Vec3 velocity, Vec3 rate)
    {
        double oy = water.OutY, oz = water.OutZ;
        Vector<double> one = Vector<double>.One, zero = Vector<double>.Zero, two = new(2.0), half = new(0.5);
        Vector<double> vy = new(velocity.Y), vz = new(velocity.Z), p = new(rate.X), q = new(rate.Y), r = new(rate.Z), ey = new(oy), ez = new(oz);
        Vector<double> drag = new(_water.DragKgM3), rho = new(_water.DensityKgM3);
        Vector<double> wave = new(4.0 * _water.WaveDamping * _water.WaveDamping * _water.DensityKgM3 * _water.GravityMS2), sum = zero;
        HullNodes nodes = _water.Nodes;
        ref double x = ref First(nodes.X), z = ref First(nodes.Centre), width = ref First(nodes.Width), size = ref First(nodes.Size);
        ref double level = ref First(_cut.Level), halfHeight = ref First(_cut.HalfHeight), root = ref First(_cut.Root), share = ref First(_cut.Share);
        ref double heave = ref First(_added.Heave), swayRate = ref First(_added.SwayRate), heaveRate = ref First(_added.HeaveRate), across2 = ref First(_added.HalfBreadth2);
        ref double across = ref First(Across), entering = ref First(EnteringAcross), up = ref First(Up), arm = ref First(AcrossArm);
        for (nuint j = 0; j < HullNodes.Count; j += (nuint)Width)
        {
            Vector<double> xj = Load(ref x, j), zj = Load(ref z, j), s = Load(ref root, j), he = Load(ref halfHeight, j), we2 = Load(ref across2, j);
            Vector<double> wy = vy + (r * xj) - (p * zj), wz = vz - (q * xj);
            Vector<double> wh = (wy * ez) - (wz * ey), wv = (wy * ey) + (wz * ez);
            Vector<double> speed = drag * Vector.SquareRoot((wy * wy) + (wz * wz));
            Vector<double> tc = Vector.Min(one, Vector.Max(-one, Load(ref level, j)));
            Vector<double> breadth = two * Vector.SquareRoot(we2), surface = breadth * s;
            Vector<double> wide = Vector.ConditionalSelect(Vector.GreaterThan(tc, zero), breadth, surface);
            Vector<double> area = Load(ref size, j) * Load(ref share, j);
            Vector<double> waves = Vector.SquareRoot(wave * surface * ((rho * area) + Load(ref heave, j)));
            Vector<double> enterH = Load(ref swayRate, j), enterV = Load(ref heaveRate, j);
            Store(speed * he * (one + tc), ref across, j);
            Store(Vector.Max(zero, enterH), ref entering, j);
            Store((speed * wide) + waves + Vector.Max(zero, enterV), ref up, j);
            Store((zj * ez) + (half * (we2 - (he * he)) * (one - tc) / he), ref arm, j);
            sum += Load(ref width, j) * ((enterH * wh * wh) + (enterV * wv * wv));
        }

        Wetting = 0.5 * Vector.Sum(sum);
    }
}
