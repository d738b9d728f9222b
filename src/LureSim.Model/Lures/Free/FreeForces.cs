using System.Runtime.CompilerServices;
using LureSim.Numerics;

namespace LureSim.Model.Lures.Free;

/// <summary>
/// Mass, drag and forces of the free hull at one state: M nu' + D nu = f, nu = (v, omega) in body axes about O.
/// M = rigid + surge + sum of sections at their immersion. In momentum form (Kirchhoff; Lamb, Hydrodynamics, art. 124): with (p, l) = M nu
/// f = weight + buoyancy - (omega x p; omega x l + v x p) - what the turning of the water's axes in the body changes + its couple.
/// v x p is the moment of Munk in yaw and in pitch. The axes of the water turn in the body at beta (see <see cref="WaterAxes"/>); the kinetic energy
/// depends on that angle, so the body feels the couple -c sum (a_h - a_v) w_h w_v: pressure on a circle passes through its centre, and rolling or
/// pitching a hull makes no energy.
/// </summary>
internal sealed class FreeForces
{
    private static readonly double[] NoArms = [];

    private readonly FreeHull _hull;
    private readonly NodeCut _cut;
    private readonly NodeAddedMass _added;
    private readonly NodeDrag _drag;
    private readonly double[] _nu = new double[6], _momentum = new double[6];
    private readonly double[] _g = new double[6];
    private readonly double[] _centreArm;
    private Vec3 _shedMoment, _volumeMoment;

    /// <summary>Allocates the work arrays.</summary>
    /// <param name="hull">Constants.</param>
    public FreeForces(FreeHull hull)
    {
        ArgumentNullException.ThrowIfNull(hull);
        _hull = hull;
        NodeWater water = hull.Water;
        _cut = new NodeCut(water.Nodes);
        _added = new NodeAddedMass(water, _cut);
        _drag = new NodeDrag(water, _cut, _added);
        _centreArm = water.Nodes.IsRound ? NoArms : water.Nodes.Centre;
    }

    /// <summary>M, kg, kg m, kg m2.</summary>
    public Symmetric6 Mass { get; } = new();

    /// <summary>D, secant drag, with what entering sections hand over.</summary>
    public Symmetric6 Drag { get; } = new();

    /// <summary>f, N and N m about O, body axes.</summary>
    public double[] Force { get; } = new double[6];

    /// <summary>Volume of the hull under water, m3.</summary>
    public double VolumeM3 { get; private set; }

    /// <summary>Computes everything.</summary>
    /// <param name="s">State.</param>
    public void Set(in FreeMotionState s)
    {
        WaterAxes water = s.Water;
        _cut.Set(water);
        Vec3 upRate = Vec3.Cross(water.Up, s.Rate);
        _added.Set(water, Vec3.Dot(water.Up, s.Velocity), upRate);
        _drag.Set(water, s.Velocity, s.Rate);
        (_nu[0], _nu[1], _nu[2]) = (s.Velocity.X, s.Velocity.Y, s.Velocity.Z);
        (_nu[3], _nu[4], _nu[5]) = (s.Rate.X, s.Rate.Y, s.Rate.Z);
        HullNodes nodes = _hull.Water.Nodes;
        NodeMoments sway = NodeSums.Moments(nodes, _added.Sway, _centreArm), heave = NodeSums.Moments(nodes, _added.Heave, _centreArm);
        SetMass(water, sway, heave);
        Array.Clear(Force);
        Vec3 buoyancyAt = AddBuoyancy(water);
        SetDrag(water, buoyancyAt);
        AddMomentum(s);
        AddTurning(s, water, sway - heave);
        AddStern(s.Velocity.X, water);
        AddHooks(s);
    }

    /// <summary>Kinetic energy and energy in the field of weight and buoyancy of a state whose <see cref="Set"/> was the last, J.</summary>
    /// <param name="s">State.</param>
    public double Energy(in FreeMotionState s)
    {
        double energy = (0.5 * Mass.Square(_nu)) + (_hull.MassKg * FloatingLure.GravityMS2 * s.Place(_hull.Centre).Z);
        WaterAxes water = s.Water;
        energy -= _hull.Water.DensityKgM3 * FloatingLure.GravityMS2 * ((VolumeM3 * water.Height) + Vec3.Dot(water.Up, _volumeMoment));
        foreach (FreeHook hook in _hull.Hooks)
        {
            double height = s.Place(hook.Place).Z, reach = _hull.HookReachM, dry = Math.Clamp(height, 0.0, reach) - reach;
            energy += hook.BuoyancyN * ((0.5 * dry * dry / reach) - Math.Min(0.0, height));
        }

        return energy;
    }

    /// <summary>Power that the hull puts into the water at a velocity with the coefficients of the last <see cref="Set"/>, W; what the growing added
    /// mass holds is not part of it.</summary>
    /// <param name="end">State.</param>
    public double WaterPower(in FreeMotionState end)
    {
        Span<double> nu = [end.Velocity.X, end.Velocity.Y, end.Velocity.Z, end.Rate.X, end.Rate.Y, end.Rate.Z];
        return Drag.Square(nu) - Vec3.Dot(_shedMoment, end.Rate) - _drag.Wetting;
    }

    private void SetMass(in WaterAxes water, in NodeMoments sway, in NodeMoments heave)
    {
        Mass.CopyFrom(_hull.Rigid);
        Mass[0, 0] += _hull.SurgeAddedKg;
        sway.Scaled(water.OutZ).AddTo(Mass.Upper, water.OutZ, -water.OutY);
        heave.Scaled(water.OutY).AddTo(Mass.Upper, water.OutY, water.OutZ);
    }

    private Vec3 AddBuoyancy(in WaterAxes water)
    {
        (VolumeM3, _volumeMoment) = NodeSums.Volume(_hull.Water.Nodes, water);
        double unit = _hull.Water.DensityKgM3 * FloatingLure.GravityMS2, weight = -_hull.MassKg * FloatingLure.GravityMS2;
        Vec3 n = water.Up;
        AddForce(((unit * VolumeM3) + weight) * n, Vec3.Cross((unit * _volumeMoment) + (weight * _hull.Centre), n));
        return VolumeM3 > 0.0 ? (1.0 / VolumeM3) * _volumeMoment : Vec3.Zero;
    }

    private void SetDrag(in WaterAxes water, Vec3 centre)
    {
        HullNodes nodes = _hull.Water.Nodes;
        Drag.Clear();
        NodeSums.Moments(nodes, _drag.Across, nodes.IsRound ? NoArms : _drag.AcrossArm).AddTo(Drag.Upper, water.OutZ, -water.OutY);
        NodeSums.Moments(nodes, _drag.EnteringAcross, _centreArm).Scaled(water.OutZ).AddTo(Drag.Upper, water.OutZ, -water.OutY);
        NodeSums.Moments(nodes, _drag.Up, _centreArm).Scaled(water.OutY).AddTo(Drag.Upper, water.OutY, water.OutZ);
        double wet = Math.Max(0.0, VolumeM3 / _hull.RestVolumeM3);
        double along = _nu[0] + (_nu[4] * centre.Z) - (_nu[5] * centre.Y);
        SetDirection(new Vec3(1.0, 0.0, 0.0), centre);
        Drag.AddSquare(_hull.AxialDragKgM * wet * Math.Abs(along), _g);
        Drag[3, 3] += _hull.RollDampingNms * wet;
    }

    private void AddMomentum(in FreeMotionState s)
    {
        Mass.Multiply(_nu, _momentum);
        var p = new Vec3(_momentum[0], _momentum[1], _momentum[2]);
        var l = new Vec3(_momentum[3], _momentum[4], _momentum[5]);
        AddForce(-Vec3.Cross(s.Rate, p), -(Vec3.Cross(s.Rate, l) + Vec3.Cross(s.Velocity, p)));
    }

    // The axes of the water turn in the body: momentum (a_h - a_v)(w_v e_h + w_h e_v) a radian, and the couple of the energy on that angle.
    private void AddTurning(in FreeMotionState s, in WaterAxes water, in NodeMoments d)
    {
        double hy = water.OutZ, hz = -water.OutY, vy = water.OutY, vz = water.OutZ;
        Vec3 v = s.Velocity, w = s.Rate;
        (double h0, double hx, double ha) = ((v.Y * hy) + (v.Z * hz), (w.Z * hy) - (w.Y * hz), -w.X * hy);
        (double v0, double vx, double va) = ((v.Y * vy) + (v.Z * vz), (w.Z * vy) - (w.Y * vz), -w.X * vy);
        (double sv, double svx, double sva) = Weighted(d, v0, vx, va);
        (double sh, double shx, double sha) = Weighted(d, h0, hx, ha);
        Vec3 c = water.TurnPerRate;
        double beta = Vec3.Dot(c, w);
        AddForce(
            beta * new Vec3(0.0, (hy * sv) + (vy * sh), (hz * sv) + (vz * sh)),
            beta * new Vec3(-((hy * sva) + (vy * sha)), -((hz * svx) + (vz * shx)), (hy * svx) + (vy * shx)));
        AddForce(Vec3.Zero, -((h0 * sv) + (hx * svx) + (ha * sva)) * c);
    }

    private static (double Sum, double Along, double Arm) Weighted(in NodeMoments d, double w0, double wx, double wa) => (
        (w0 * d.S) + (wx * d.X) + (wa * d.A),
        (w0 * d.X) + (wx * d.XX) + (wa * d.XA),
        (w0 * d.A) + (wx * d.XA) + (wa * d.AA));

    /// <summary>Cross-flow shed at the stern, see <see cref="SternShedding"/>, in both planes.</summary>
    private void AddStern(double u, in WaterAxes water)
    {
        FreeStern stern = u >= 0.0 ? _hull.Tail : _hull.Head;
        double chi = _hull.Shedding, h0 = Munk(_added.Sway, stern), v0 = Munk(_added.Heave, stern);
        double hy = water.OutZ, hz = -water.OutY, vy = water.OutY, vz = water.OutZ, ph = 0.0, pv = 0.0;
        HullNodes nodes = _hull.Water.Nodes;
        for (int j = stern.From; j < stern.To; j++)
        {
            double x = stern.PlaceM[j], wy = _nu[1] + (_nu[5] * x) - (_nu[3] * nodes.Centre[j]), wz = _nu[2] - (_nu[4] * x);
            double length = stern.BehindM[j];
            ph += length * Math.Min(Share(_added.Sway, j), 2.0 * h0) * ((wy * hy) + (wz * hz));
            pv += length * Math.Min(Share(_added.Heave, j), 2.0 * v0) * ((wy * vy) + (wz * vz));
        }

        var place = new Vec3(stern.XM, 0.0, stern.CentreZM);
        SetDirection(new Vec3(0.0, hy, hz), place);
        Drag.AddSquare(chi * Math.Abs(u) * h0, _g);
        SetDirection(new Vec3(0.0, vy, vz), place);
        Drag.AddSquare(chi * Math.Abs(u) * v0, _g);
        double py = (hy * ph) + (vy * pv), pz = (hz * ph) + (vz * pv);
        _shedMoment = (chi * u) * new Vec3(0.0, -pz, py);
        AddForce(Vec3.Zero, _shedMoment);
    }

    private double Munk(double[] perMetre, FreeStern stern) =>
        ((1.0 - stern.Weight) * Share(perMetre, stern.Node)) + (stern.Weight * Share(perMetre, stern.Node + 1));

    // A section's part of the Munk moment, kg/m: its added mass moving across less its share of that in surge.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double Share(double[] perMetre, int node)
    {
        NodeWater water = _hull.Water;
        double area = water.Nodes.Size[node] * _cut.Share[node];
        return Math.Max(0.0, (water.EvenShare[node] * perMetre[node]) - (water.SurgeShare * water.DensityKgM3 * area));
    }

    private void AddHooks(in FreeMotionState s)
    {
        foreach (FreeHook hook in _hull.Hooks)
        {
            double wet = FloatingBody.WetShare(s.Place(hook.Place).Z, _hull.HookReachM);
            if (wet <= 0.0)
            {
                continue;
            }

            Vec3 w = s.Velocity + Vec3.Cross(s.Rate, hook.Place);
            double speed = wet * w.Length;
            AddDrag(hook.Place, hook.AlongKgM * speed, hook.AcrossKgM * speed);
            Vec3 lift = wet * hook.BuoyancyN * s.Frame.Up;
            AddForce(lift, Vec3.Cross(hook.Place, lift));
        }
    }

    // Drag of a point at y = 0 along x, and across it along y and z alike.
    private void AddDrag(Vec3 place, double along, double across)
    {
        double x = place.X, z = place.Z;
        double[] m = Drag.Upper;
        m[0] += along;
        m[4] += along * z;
        m[7] += across;
        m[9] -= across * z;
        m[11] += across * x;
        m[14] += across;
        m[16] -= across * x;
        m[21] += across * z * z;
        m[23] -= across * x * z;
        m[28] += (along * z * z) + (across * x * x);
        m[35] += across * x * x;
    }

    private void SetDirection(Vec3 e, Vec3 place)
    {
        Vec3 m = Vec3.Cross(place, e);
        (_g[0], _g[1], _g[2], _g[3], _g[4], _g[5]) = (e.X, e.Y, e.Z, m.X, m.Y, m.Z);
    }

    private void AddForce(Vec3 force, Vec3 moment)
    {
        Force[0] += force.X;
        Force[1] += force.Y;
        Force[2] += force.Z;
        Force[3] += moment.X;
        Force[4] += moment.Y;
        Force[5] += moment.Z;
    }
}
