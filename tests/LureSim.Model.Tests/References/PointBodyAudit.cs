using LureSim.Model.Lines.Chain;
using LureSim.Numerics;

namespace LureSim.Model.Tests.References;

/// <summary>
/// Energy account of a point-body run: kinetic and elastic energy less all work of tip, weight, buoyancy, drag and damping,
/// by the trapezoid rule. Above zero would be energy from nothing.
/// </summary>
internal sealed class PointBodyAudit(PointBodyCase run)
{
    private double _work;
    private double _powerBefore;
    private double _tipPowerBefore;

    public double TipWorkJ { get; private set; }

    public double ResidualJ { get; private set; }

    public double HighestResidualJ { get; private set; }

    public void Step(double dt)
    {
        LineState s = run.Now;
        LineMesh mesh = run.Mesh;
        int n = mesh.Segments;
        double held = 0.0, power = 0.0, tipPower = -Vec3.Dot(run.Solver.Tension[0] * run.Pass.Direction(0), Velocity(s, 0));
        for (int j = 0; j < n; j++)
        {
            Vec3 d = Position(s, j + 1) - Position(s, j);
            double e = d.Length - mesh.Rest[j];
            double rate = Vec3.Dot((1.0 / d.Length) * d, Velocity(s, j + 1) - Velocity(s, j));
            double elastic = mesh.Stiffness[j] * Math.Max(0.0, e);
            held += 0.5 * elastic * Math.Max(0.0, e);
            power -= (run.Solver.Tension[j] - elastic) * rate;
        }

        for (int i = 1; i <= n; i++)
        {
            Vec3 v = Velocity(s, i);
            double mass = mesh.Mass[i] + (i == n ? PointBodyCase.Mass : 0.0);
            held += 0.5 * mass * Vec3.Dot(v, v);
            power += Vec3.Dot(run.OuterForce(i), v);
        }

        _work += 0.5 * dt * (power + _powerBefore + tipPower + _tipPowerBefore);
        TipWorkJ += 0.5 * dt * (tipPower + _tipPowerBefore);
        (_powerBefore, _tipPowerBefore) = (power, tipPower);
        ResidualJ = held - _work;
        HighestResidualJ = Math.Max(HighestResidualJ, ResidualJ);
    }

    private static Vec3 Position(LineState s, int i) => new(s.X[i], s.Y[i], s.Z[i]);

    private static Vec3 Velocity(LineState s, int i) => new(s.VX[i], s.VY[i], s.VZ[i]);
}
