using LureSim.Model.Assembly;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Lures;
using LureSim.Model.Retrieve;
using LureSim.Model.Rods;
using LureSim.Numerics;

namespace LureSim.Model.Tests.References;

/// <summary>
/// Energy account of case W: what line, hull, nose spring and rod modes hold, less the work of the hand (moving base, and inertia
/// of the modes on it), weight, drag and damping, by the trapezoid rule. Above zero would be energy from nothing.
/// </summary>
internal sealed class CaseWAudit(CoupledStep step)
{
    private readonly WalkingHull _hull = new(CaseW.Hull);
    private double _work;
    private double _powerBefore;
    private double _handBefore;
    private double _baseSpeed;

    public double HandWorkJ { get; private set; }

    public double HighestResidualJ { get; private set; }

    public void Step(double t, double dt)
    {
        double hand = -Vec3.Dot(step.TipForce, new CaseW.Drive().At(t).Velocity), power = LinePower() + HullPower() + RodPower();
        double handWork = (0.5 * dt * (hand + _handBefore)) + InertiaWork(t);
        _work += (0.5 * dt * (power + _powerBefore)) + handWork;
        HandWorkJ += handWork;
        (_powerBefore, _handBefore) = (power, hand);
        HighestResidualJ = Math.Max(HighestResidualJ, Held() - _work);
    }

    /// <summary>Work of the accelerating base on the modes: as change of speed, because the acceleration jumps.</summary>
    private double InertiaWork(double t)
    {
        double speed = CaseW.Stroke * CaseW.Pulse(t).Rate, work = 0.0;
        for (int k = 0; k < 2; k++)
        {
            double rate = 0.5 * (step.Rod.Now.Rate[k] + step.Rod.Before.Rate[k]);
            work += CaseW.Modes.BaseParticipationKg[k] * (speed - _baseSpeed) * rate;
        }

        _baseSpeed = speed;
        return work;
    }

    private double Held()
    {
        LineState s = step.Now;
        LineMesh mesh = step.Mesh;
        double held = 0.0;
        for (int j = 0; j < mesh.Segments; j++)
        {
            double e = Math.Max(0.0, (Position(s, j + 1) - Position(s, j)).Length - mesh.Rest[j]);
            Vec3 v = Velocity(s, j);
            held += (0.5 * mesh.Stiffness[j] * e * e) + (j > 0 ? 0.5 * mesh.Mass[j] * Vec3.Dot(v, v) : 0.0);
        }

        HullState h = ((PlanarLure)step.Lure).Now;
        held += 0.5 * ((CaseW.Hull.M11 * h.U * h.U) + (CaseW.Hull.M22 * h.V * h.V) + (2.0 * CaseW.Hull.M23 * h.V * h.R) + (CaseW.Hull.M33 * h.R * h.R));
        held += 0.5 * ((CaseW.Hull.NoseMassKg * h.W * h.W) + (CaseW.Hull.NoseStiffnessNM * h.Zeta * h.Zeta));
        for (int k = 0; k < 2; k++)
        {
            double q = step.Rod.Now.Q[k], rate = step.Rod.Now.Rate[k];
            held += 0.5 * ((CaseW.Modes.MassKg[k] * rate * rate) + (CaseW.Modes.StiffnessNM[k] * q * q));
        }

        return held;
    }

    private double LinePower()
    {
        LineState s = step.Now;
        LineMesh mesh = step.Mesh;
        double power = 0.0;
        for (int j = 0; j < mesh.Segments; j++)
        {
            Vec3 d = Position(s, j + 1) - Position(s, j);
            double elastic = mesh.Stiffness[j] * Math.Max(0.0, d.Length - mesh.Rest[j]);
            power -= (step.Pass.Solver.Tension[j] - elastic) * Vec3.Dot((1.0 / d.Length) * d, Velocity(s, j + 1) - Velocity(s, j));
        }

        for (int i = 1; i < mesh.Segments; i++)
        {
            Vec3 v = Velocity(s, i), u = step.Pass.Tangent(i);
            (double across, double along) = step.Pass.Drag(i);
            double slip = Vec3.Dot(v, u), h = ExplicitLine.Smooth(0.5 - (s.Z[i] / 0.010));
            power -= (across * (Vec3.Dot(v, v) - (slip * slip))) + (along * slip * slip);
            power += CaseW.Gravity * ((CaseW.WaterDensity * mesh.Volume[i] * h) - mesh.Mass[i]) * v.Z;
        }

        return power;
    }

    private double HullPower()
    {
        HullState h = ((PlanarLure)step.Lure).Now;
        return (step.TieWeight * h.W) - (CaseW.Hull.NoseDampingNsM * h.W * h.W) - _hull.Power(h.U, h.V, h.R);
    }

    private double RodPower()
    {
        double power = 0.0;
        for (int k = 0; k < 2; k++)
        {
            power -= CaseW.Modes.DampingNsM[k] * step.Rod.Now.Rate[k] * step.Rod.Now.Rate[k];
        }

        return power;
    }

    private static Vec3 Position(LineState s, int i) => new(s.X[i], s.Y[i], s.Z[i]);

    private static Vec3 Velocity(LineState s, int i) => new(s.VX[i], s.VY[i], s.VZ[i]);
}
