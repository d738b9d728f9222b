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
    private readonly WalkBench bench;
    private readonly LineMesh mesh;
    private readonly LineMedium medium;
    private readonly WalkHull hull;
    private readonly RodModeSet modes;
    private readonly bool knotted;
    private readonly double heldAtStart;
    private readonly double[] acrossSquared;
    private double work, addedMassEnergy, powerBefore, windBefore, driveBefore;
    private TipFrame tipBefore;
    private Vec3 forceBefore;

    public EnergyAudit(WalkBench bench)
    {
        this.bench = bench;
        (mesh, medium, hull, modes) = (bench.Mesh, bench.Parts.Medium, bench.Parts.Hull, bench.Rod.Modes);
        knotted = bench.Parts.Setup.Leader?.Knot == TieKnot.Fixed;
        acrossSquared = new double[mesh.Segments];
        heldAtStart = Held();
        tipBefore = bench.Tip;
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
        CoupledStep s = bench.Step;
        TipFrame tip = bench.Tip;

        // By displacement, not by speed: winding sets in with a jump of speed.
        double bend = 0.5 * (s.Rod.Now.Bend + s.Rod.Before.Bend);
        Vec3 moved = tip.Position - tipBefore.Position + (bend * (tip.Stroke - tipBefore.Stroke));
        double hand = -0.5 * Vec3.Dot(s.TipForce + forceBefore, moved);
        (double line, double wind) = NodePower();
        double power = line + StretchPower() + HullPower() + RodPower();
        double handWork = hand + InertiaWork(tip.DriveMS);
        double windWork = 0.5 * dt * (wind + windBefore);
        work += (0.5 * dt * (power + powerBefore)) + handWork + windWork;
        EffortJ += Math.Abs(handWork) + Math.Abs(windWork);
        AddAddedMassEnergy();
        ResidualJ = Held() + addedMassEnergy - heldAtStart - work;
        HighestResidualJ = Math.Max(HighestResidualJ, ResidualJ);
        (powerBefore, windBefore, tipBefore, forceBefore) = (power, wind, tip, s.TipForce);
    }

    private void AddAddedMassEnergy()
    {
        LineState s = bench.Step.Now;
        double added = medium.Water.DensityKgM3 * medium.AddedMassCoefficient;
        for (int i = 1; i < mesh.Segments; i++)
        {
            Vec3 v = Velocity(s, i);
            double along = Vec3.Dot(v, bench.Step.Pass.Tangent(i)), square = Vec3.Dot(v, v) - (along * along);
            addedMassEnergy += 0.5 * added * mesh.Volume[i] * bench.Step.Pass.WetShare(i) * (square - acrossSquared[i]);
            acrossSquared[i] = square;
        }
    }

    private double InertiaWork(double drive)
    {
        double sum = 0.0;
        for (int k = 0; k < modes.Count; k++)
        {
            sum -= modes.BaseParticipationKg[k] * (drive - driveBefore) * 0.5 * (bench.Rod.Now.Rate[k] + bench.Rod.Before.Rate[k]);
        }

        driveBefore = drive;
        return sum;
    }

    private double Held()
    {
        LineState s = bench.Step.Now;
        double sum = 0.0;
        for (int j = 0; j < mesh.Segments; j++)
        {
            double e = Math.Max(0.0, (Position(s, j + 1) - Position(s, j)).Length - mesh.Rest[j]);
            sum += 0.5 * mesh.Stiffness[j] * e * e;
            sum += j > 0 ? 0.5 * mesh.Mass[j] * Vec3.Dot(Velocity(s, j), Velocity(s, j)) : 0.0;
        }

        HullState h = bench.Step.HullNow;
        sum += 0.5 * ((hull.M11 * h.U * h.U) + (hull.M22 * h.V * h.V) + (2.0 * hull.M23 * h.V * h.R) + (hull.M33 * h.R * h.R));
        sum += 0.5 * ((hull.NoseMassKg * h.W * h.W) + (hull.NoseStiffnessNM * h.Zeta * h.Zeta));
        for (int k = 0; k < 2 * modes.Count; k++)
        {
            double q = bench.Rod.Now.Q[k], rate = bench.Rod.Now.Rate[k];
            sum += 0.5 * ((modes.MassKg[k % modes.Count] * rate * rate) + (modes.StiffnessNM[k % modes.Count] * q * q));
        }

        return sum + BendingEnergy(s);
    }

    private double BendingEnergy(LineState s)
    {
        double sum = 0.0;
        for (int i = Math.Max(1, mesh.FirstLeaderSegment + 1); i < mesh.Segments; i++)
        {
            Vec3 a = Edge(s, i - 1), b = Edge(s, i);
            double stiffness = mesh.Piece(i).BendingStiffnessNm2 * 2.0 / (mesh.Rest[i - 1] + mesh.Rest[i]);
            sum += 0.5 * stiffness * Vec3.Dot(b - a, b - a);
        }

        if (knotted && mesh.FirstLeaderSegment < mesh.Segments)
        {
            int last = mesh.Segments - 1;
            double psi = bench.Step.HullNow.Psi;
            Vec3 off = Edge(s, last) - new Vec3(-Math.Cos(psi), -Math.Sin(psi), 0.0);
            sum += mesh.Piece(last).BendingStiffnessNm2 / mesh.Rest[last] * Vec3.Dot(off, off);
        }

        return sum;
    }

    private Vec3 Edge(LineState s, int j) => (1.0 / mesh.Rest[j]) * (Position(s, j + 1) - Position(s, j));

    private double StretchPower()
    {
        LineState s = bench.Step.Now;
        double power = 0.0;
        for (int j = 0; j < mesh.Segments; j++)
        {
            Vec3 d = Position(s, j + 1) - Position(s, j);
            double elastic = mesh.Stiffness[j] * Math.Max(0.0, d.Length - mesh.Rest[j]);
            power -= (bench.Step.Pass.Solver.Tension[j] - elastic) * Vec3.Dot((1.0 / d.Length) * d, Velocity(s, j + 1) - Velocity(s, j));
        }

        return power;
    }

    /// <summary>Drag, weight and film on the nodes, and what the wind puts in.</summary>
    private (double Line, double Wind) NodePower()
    {
        LineState s = bench.Step.Now;
        LinePass pass = bench.Step.Pass;
        double capillary = medium.CapillaryLengthM, power = 0.0, windPower = 0.0;
        for (int i = 1; i < mesh.Segments; i++)
        {
            Vec3 v = Velocity(s, i), u = pass.Tangent(i);
            double dry = 1.0 - pass.WetShare(i);
            Vec3 wind = dry * new Vec3(pass.WindX[i], pass.WindY[i], 0.0), slip = v - wind;
            (double across, double along) = pass.Drag(i);
            Vec3 drag = -across * (slip - (Vec3.Dot(slip, u) * u)) - (along * Vec3.Dot(slip, u) * u);
            power += Vec3.Dot(drag, slip);
            windPower += Vec3.Dot(drag, wind);
            double depth = Math.Max(0.0, -s.Z[i]), ratio = 0.5 * depth / capillary;
            double film = 2.0 * medium.Water.SurfaceTensionNM * mesh.FilmLength[i] * bench.Film[i] * depth / capillary * Math.Sqrt(Math.Max(0.0, 1.0 - (ratio * ratio)));
            double weight = medium.GravityMS2 * ((medium.Water.DensityKgM3 * mesh.Volume[i] * medium.WetShare(s.Z[i])) - mesh.Mass[i]);
            power += (film + weight) * v.Z;
        }

        return (power, windPower);
    }

    private double HullPower()
    {
        HullState h = bench.Step.HullNow;
        return (bench.Step.TieWeight * h.W) - (hull.NoseDampingNsM * h.W * h.W) - bench.Parts.WalkingHull.Power(h.U, h.V, h.R);
    }

    private double RodPower()
    {
        double power = 0.0;
        for (int k = 0; k < 2 * modes.Count; k++)
        {
            power -= modes.DampingNsM[k % modes.Count] * bench.Rod.Now.Rate[k] * bench.Rod.Now.Rate[k];
        }

        return power;
    }

    private static Vec3 Position(LineState s, int i) => new(s.X[i], s.Y[i], s.Z[i]);

    private static Vec3 Velocity(LineState s, int i) => new(s.VX[i], s.VY[i], s.VZ[i]);
}
