using System.Numerics;
using System.Runtime.CompilerServices;
using LureSim.Numerics;
using static LureSim.Model.Lines.Chain.Lanes;

namespace LureSim.Model.Lures.Free;

/// <summary>
/// Added mass per metre of every section at its instantaneous immersion, and its rate. The functions of the level t are those of
/// <see cref="SectionAddedMass"/>; a_h = rho k h_e^2 lid Sway(t), a_v = rho k w_e^2 Heave(t), h_e and w_e the half-axes seen along and across e_v.
/// The surface factor of sway fades to 1 as the square of the depth (guess).
/// </summary>
internal sealed class NodeAddedMass
{
    // Where acos t is smaller than this, (sin/angle)^2 changes by its series: the closed form cancels.
    private const double SmallAngle = 0.1;
    private const double LeastAngle = 1e-4;
    private const double SwayDeep = (Math.PI * Math.PI / 3.0) - 2.0;
    private const double HeaveDeep = (Math.PI * Math.PI / 6.0) - 2.0;

    private readonly NodeWater _water;
    private readonly NodeCut _cut;

    /// <summary>Allocates the work arrays.</summary>
    /// <param name="water">Constants.</param>
    /// <param name="cut">Sections as they are cut.</param>
    public NodeAddedMass(NodeWater water, NodeCut cut)
    {
        ArgumentNullException.ThrowIfNull(water);
        ArgumentNullException.ThrowIfNull(cut);
        (_water, _cut) = (water, cut);
    }

    /// <summary>a_h, sway, kg/m.</summary>
    public double[] Sway { get; } = new double[HullNodes.Count];

    /// <summary>a_v, heave, kg/m.</summary>
    public double[] Heave { get; } = new double[HullNodes.Count];

    /// <summary>Rate of a_h, kg/(m s).</summary>
    public double[] SwayRate { get; } = new double[HullNodes.Count];

    /// <summary>Rate of a_v, kg/(m s).</summary>
    public double[] HeaveRate { get; } = new double[HullNodes.Count];

    /// <summary>w_e^2, half-breadth across e_v squared, m2.</summary>
    public double[] HalfBreadth2 { get; } = new double[HullNodes.Count];

    /// <summary>Computes all sections.</summary>
    /// <param name="water">Attitude.</param>
    /// <param name="lift">Rate of the height of the origin and of n: height of a point r changes by rate + n' . r.</param>
    /// <param name="upRate">n', rate of the upward vector in body axes, 1/s.</param>
    public void Set(in WaterAxes water, double lift, Vec3 upRate)
    {
        HullNodes nodes = _water.Nodes;
        double oy = water.OutY, oz = water.OutZ, per = 1.0 / water.Tilt;
        double tilt = per * ((water.Up.Y * upRate.Y) + (water.Up.Z * upRate.Z));
        double turn = per * per * ((upRate.Y * water.Up.Z) - (upRate.Z * water.Up.Y));
        Vector<double> yy = new(oy * oy), zz = new(oz * oz), flat = new(turn * oy * oz);
        Vector<double> rise = new(lift), riseX = new(upRate.X), riseZ = new(upRate.Z), inverse = new(per), tilting = new(tilt * per);
        ref double x = ref First(nodes.X), z = ref First(nodes.Centre), b = ref First(nodes.Breadth2), c = ref First(nodes.Height2);
        ref double level = ref First(_cut.Level), half = ref First(_cut.HalfHeight), across = ref First(HalfBreadth2);
        ref double density = ref First(_water.AddedKgM3);
        ref double sway = ref First(Sway), heave = ref First(Heave), swayRate = ref First(SwayRate), heaveRate = ref First(HeaveRate);
        for (nuint j = 0; j < HullNodes.Count; j += (nuint)Width)
        {
            Vector<double> breadth2 = Load(ref b, j), height2 = Load(ref c, j), he = Load(ref half, j), t = Load(ref level, j);
            Vector<double> he2 = (yy * breadth2) + (zz * height2), we2 = (zz * breadth2) + (yy * height2);
            Vector<double> widen = flat * (breadth2 - height2);
            Vector<double> up = rise + (riseX * Load(ref x, j)) + (riseZ * Load(ref z, j));
            Vector<double> rate = -(inverse * up / he) - (t * (tilting + (widen / (he * he))));
            (Vector<double> s, Vector<double> ds, Vector<double> v, Vector<double> dv) = Functions(j, t);
            Vector<double> k = Load(ref density, j);
            Store(k * he2 * s, ref sway, j);
            Store(k * we2 * v, ref heave, j);
            Store(k * ((he2 * ds * rate) + (widen * (s + s))), ref swayRate, j);
            Store(k * ((we2 * dv * rate) - (widen * (v + v))), ref heaveRate, j);
            Store(we2, ref across, j);
        }
    }

    // Sway (with its surface factor) and heave over t, each with its slope.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private (Vector<double> Sway, Vector<double> SwaySlope, Vector<double> Heave, Vector<double> HeaveSlope) Functions(nuint j, Vector<double> t)
    {
        Vector<double> one = Vector<double>.One, pi = new(Math.PI), lid = new(_water.LidFactor);
        Vector<double> root = Load(ref First(_cut.Root), j), share = Load(ref First(_cut.Share), j);
        Vector<double> angle = Vector.Max(new Vector<double>(LeastAngle), Load(ref First(_cut.Angle), j));
        Vector<double> tc = Vector.Min(one, Vector.Max(-one, t));
        Vector<double> k = angle / pi, k2 = k * k, ratio = root / k, ratio2 = ratio * ratio, twist = root / angle;
        Vector<double> closed = new Vector<double>(2.0 * Math.PI * Math.PI) * (twist - tc) / (angle * angle);
        Vector<double> series = new Vector<double>(2.0 * Math.PI * Math.PI / 3.0) - (new Vector<double>(Math.PI * Math.PI / 15.0) * angle * angle);
        Vector<double> dRatio = Vector.ConditionalSelect(Vector.LessThan(angle, new Vector<double>(SmallAngle)), series, closed);

        // share = pi - acos t + t root, so that what both functions take off, pi - acos t + t root, is the share itself.
        Vector<double> sway = (new Vector<double>(Math.PI / 3.0) * ratio2 * (one - k2)) - share;
        Vector<double> heave = (new Vector<double>(Math.PI / 6.0) * ratio2 * (one + k2 + k2)) - share;
        Vector<double> dSway = (new Vector<double>(Math.PI / 3.0) * ((dRatio * (one - k2)) + (twist + twist))) - (root + root);
        Vector<double> dHeave = (new Vector<double>(Math.PI / 6.0) * ((dRatio * (one + k2 + k2)) - (new Vector<double>(4.0) * twist))) - (root + root);

        Vector<double> over = one / Vector.Max(one, t), over2 = over * over, two = new(2.0);
        Vector<double> swayDeep = one + (new Vector<double>(SwayDeep) * over2), fade = one - ((one - lid) * over2);
        Vector<double> dSwayDeep = two * over * over2 * ((swayDeep * (one - lid)) - (new Vector<double>(SwayDeep) * fade));
        Vector<double> heaveDeep = one + (new Vector<double>(HeaveDeep) * over2), dHeaveDeep = new Vector<double>(-2.0 * HeaveDeep) * over * over2;
        Vector<long> notDeep = Vector.LessThan(t, one), notDry = Vector.GreaterThan(t, -one);
        return (
            Pick(notDeep, notDry, pi * swayDeep * fade, lid * sway),
            Pick(notDeep, notDry, pi * dSwayDeep, lid * dSway),
            Pick(notDeep, notDry, pi * heaveDeep, heave),
            Pick(notDeep, notDry, pi * dHeaveDeep, dHeave));
    }

    // By < and > alone: <= and >= of vectors are calls in a browser.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<double> Pick(Vector<long> notDeep, Vector<long> notDry, Vector<double> deep, Vector<double> cut) =>
        Vector.ConditionalSelect(notDeep, Vector.ConditionalSelect(notDry, cut, Vector<double>.Zero), deep);
}
