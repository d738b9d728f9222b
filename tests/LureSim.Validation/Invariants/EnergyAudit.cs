using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Lures;
using LureSim.Model.Retrieve;
using LureSim.Model.Rods;
using LureSim.Numerics;

namespace LureSim.Validation.Invariants;

/// <summary>
/// Energy account of a retrieve with every law of the product: what line, leader, hull, nose and rod hold, less the work of hand, wind,
/// weight, film, drag and damping (trapezoid rule over the steps). A residual above zero would be energy from nothing. The added
/// mass of a node that dips in or out is taken as it is at the end of the step: the fluid's share is not part of the account.
/// </summary>
internal sealed class EnergyAudit
{
    private readonly WalkBench _bench;
    private readonly LineMesh _mesh;
    private readonly LineMedium _medium;
    private readonly WalkHull _hull;
    private readonly RodModeSet _modes;
    private readonly bool _knotted;
    private readonly double _heldAtStart;
    private readonly double[] _acrossSquared;
    private double _work, _addedMassEnergy, _powerBefore, _windBefore, _driveBefore;
    private TipFrame _tipBefore;
    private Vec3 _forceBefore;

    public EnergyAudit(WalkBench bench)
    {
        _bench = bench;
        (_mesh, _medium, _hull, _modes) = (bench.Mesh, bench.Parts.Medium, bench.Parts.Hull, bench.Rod.Modes);
        _knotted = bench.Parts.Setup.Leader?.Knot == TieKnot.Fixed;
        _acrossSquared = new double[_mesh.Segments];
        _heldAtStart = Held();
        _tipBefore = bench.Tip;
    }

    /// <summary>Work of the hand and of the wind, positive and negative parts added up, J.</summary>
    public double EffortJ { get; private set; }

    /// <summary>Highest of held energy less work since the start, J.</summary>
    public double HighestResidualJ { get; private set; }

    /// <summary>Held energy less work now, J.</summary>
    public double ResidualJ { get; private set; }

    /// <summary>Takes the step just made into the account.</summary>
    public void Step(double dt)
    {
        CoupledStep s = _bench.Step;
        TipFrame tip = _bench.Tip;

        // By displacement, not by speed: winding sets in with a jump of speed.
        double bend = 0.5 * (s.Rod.Now.Bend + s.Rod.Before.Bend);
        Vec3 moved = tip.Position - _tipBefore.Position + (bend * (tip.Stroke - _tipBefore.Stroke));
        double hand = -0.5 * Vec3.Dot(s.TipForce + _forceBefore, moved);
        (double line, double wind) = NodePower();
        double power = line + StretchPower() + HullPower() + RodPower();
        double handWork = hand + InertiaWork(tip.DriveMS);
        double windWork = 0.5 * dt * (wind + _windBefore);
        _work += (0.5 * dt * (power + _powerBefore)) + handWork + windWork;
        EffortJ += Math.Abs(handWork) + Math.Abs(windWork);
        AddAddedMassEnergy();
        ResidualJ = Held() + _addedMassEnergy - _heldAtStart - _work;
        HighestResidualJ = Math.Max(HighestResidualJ, ResidualJ);
        (_powerBefore, _windBefore, _tipBefore, _forceBefore) = (power, wind, tip, s.TipForce);
    }

    private void AddAddedMassEnergy()
    {
        LineState s = _bench.Step.Now;
        double added = _medium.Water.DensityKgM3 * _medium.AddedMassCoefficient;
        for (int i = 1; i < _mesh.Segments; i++)
        {
            Vec3 v = Velocity(s, i);
            double along = Vec3.Dot(v, _bench.Step.Pass.Tangent(i)), square = Vec3.Dot(v, v) - (along * along);
            _addedMassEnergy += 0.5 * added * _mesh.Volume[i] * _bench.Step.Pass.WetShare(i) * (square - _acrossSquared[i]);
            _acrossSquared[i] = square;
        }
    }

    private double InertiaWork(double drive)
    {
        double sum = 0.0;
        for (int k = 0; k < _modes.Count; k++)
        {
            sum -= _modes.BaseParticipationKg[k] * (drive - _driveBefore) * 0.5 * (_bench.Rod.Now.Rate[k] + _bench.Rod.Before.Rate[k]);
        }

        _driveBefore = drive;
        return sum;
    }

    private double Held()
    {
        LineState s = _bench.Step.Now;
        double sum = 0.0;
        for (int j = 0; j < _mesh.Segments; j++)
        {
            double e = Math.Max(0.0, (Position(s, j + 1) - Position(s, j)).Length - _mesh.Rest[j]);
            sum += 0.5 * _mesh.Stiffness[j] * e * e;
            sum += j > 0 ? 0.5 * _mesh.Mass[j] * Vec3.Dot(Velocity(s, j), Velocity(s, j)) : 0.0;
        }

        HullState h = ((PlanarLure)_bench.Step.Lure).Now;
        sum += 0.5 * ((_hull.M11 * h.U * h.U) + (_hull.M22 * h.V * h.V) + (2.0 * _hull.M23 * h.V * h.R) + (_hull.M33 * h.R * h.R));
        sum += 0.5 * ((_hull.NoseMassKg * h.W * h.W) + (_hull.NoseStiffnessNM * h.Zeta * h.Zeta));
        for (int k = 0; k < 2 * _modes.Count; k++)
        {
            double q = _bench.Rod.Now.Q[k], rate = _bench.Rod.Now.Rate[k];
            sum += 0.5 * ((_modes.MassKg[k % _modes.Count] * rate * rate) + (_modes.StiffnessNM[k % _modes.Count] * q * q));
        }

        return sum + BendingEnergy(s);
    }

    private double BendingEnergy(LineState s)
    {
        double sum = 0.0;
        for (int i = Math.Max(1, _mesh.FirstLeaderSegment + 1); i < _mesh.Segments; i++)
        {
            Vec3 a = Edge(s, i - 1), b = Edge(s, i);
            double stiffness = _mesh.Piece(i).BendingStiffnessNm2 * 2.0 / (_mesh.Rest[i - 1] + _mesh.Rest[i]);
            sum += 0.5 * stiffness * Vec3.Dot(b - a, b - a);
        }

        if (_knotted && _mesh.FirstLeaderSegment < _mesh.Segments)
        {
            int last = _mesh.Segments - 1;
            double psi = ((PlanarLure)_bench.Step.Lure).Now.Psi;
            Vec3 off = Edge(s, last) - new Vec3(-Math.Cos(psi), -Math.Sin(psi), 0.0);
            sum += _mesh.Piece(last).BendingStiffnessNm2 / _mesh.Rest[last] * Vec3.Dot(off, off);
        }

        return sum;
    }

    private Vec3 Edge(LineState s, int j) => (1.0 / _mesh.Rest[j]) * (Position(s, j + 1) - Position(s, j));

    private double StretchPower()
    {
        LineState s = _bench.Step.Now;
        double power = 0.0;
        for (int j = 0; j < _mesh.Segments; j++)
        {
            Vec3 d = Position(s, j + 1) - Position(s, j);
            double elastic = _mesh.Stiffness[j] * Math.Max(0.0, d.Length - _mesh.Rest[j]);
            power -= (_bench.Step.Pass.Solver.Tension[j] - elastic) * Vec3.Dot((1.0 / d.Length) * d, Velocity(s, j + 1) - Velocity(s, j));
        }

        return power;
    }

    /// <summary>Drag, weight and film on the nodes, and what the wind puts in.</summary>
    private (double Line, double Wind) NodePower()
    {
        LineState s = _bench.Step.Now;
        LinePass pass = _bench.Step.Pass;
        double capillary = _medium.CapillaryLengthM, power = 0.0, windPower = 0.0;
        for (int i = 1; i < _mesh.Segments; i++)
        {
            Vec3 v = Velocity(s, i), u = pass.Tangent(i);
            double dry = 1.0 - pass.WetShare(i);
            Vec3 wind = dry * new Vec3(pass.WindX[i], pass.WindY[i], 0.0), slip = v - wind;
            (double across, double along) = pass.Drag(i);
            Vec3 drag = -across * (slip - (Vec3.Dot(slip, u) * u)) - (along * Vec3.Dot(slip, u) * u);
            power += Vec3.Dot(drag, slip);
            windPower += Vec3.Dot(drag, wind);
            double depth = Math.Max(0.0, -s.Z[i]), ratio = 0.5 * depth / capillary;
            double film = 2.0 * _medium.Water.SurfaceTensionNM * _mesh.FilmLength[i] * _bench.Film[i] * depth / capillary * Math.Sqrt(Math.Max(0.0, 1.0 - (ratio * ratio)));
            double weight = _medium.GravityMS2 * ((_medium.Water.DensityKgM3 * _mesh.Volume[i] * _medium.WetShare(s.Z[i])) - _mesh.Mass[i]);
            power += (film + weight) * v.Z;
        }

        return (power, windPower);
    }

    private double HullPower()
    {
        HullState h = ((PlanarLure)_bench.Step.Lure).Now;
        return (_bench.Step.TieWeight * h.W) - (_hull.NoseDampingNsM * h.W * h.W) - new WalkingHull(_bench.Parts.Hull).Power(h.U, h.V, h.R);
    }

    private double RodPower()
    {
        double power = 0.0;
        for (int k = 0; k < 2 * _modes.Count; k++)
        {
            power -= _modes.DampingNsM[k % _modes.Count] * _bench.Rod.Now.Rate[k] * _bench.Rod.Now.Rate[k];
        }

        return power;
    }

    private static Vec3 Position(LineState s, int i) => new(s.X[i], s.Y[i], s.Z[i]);

    private static Vec3 Velocity(LineState s, int i) => new(s.VX[i], s.VY[i], s.VZ[i]);
}
