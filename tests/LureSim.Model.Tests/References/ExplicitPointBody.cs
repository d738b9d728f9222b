using LureSim.Numerics;
using LureSim.References.Ode;

namespace LureSim.Model.Tests.References;

/// <summary>Cases R and S as explicit first-order equations: positions then velocities of nodes 1 to 40.</summary>
internal sealed class ExplicitPointBody(double retreatMS) : IOdeSystem
{
    private const int N = 40;
    private readonly ExplicitLine _line = new(N, 0.35e-3, 15.0, 9.81);
    private readonly Vec3[] _x = new Vec3[N + 1], _v = new Vec3[N + 1];

    public int Dimension => 6 * N;

    public static double[] Start()
    {
        var y = new double[6 * N];
        for (int i = 1; i <= N; i++)
        {
            double s = (double)i / N;
            (y[3 * (i - 1)], y[(3 * (i - 1)) + 2]) = (14.90 * s, 1.0 - s);
        }

        return y;
    }

    public void Evaluate(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        (_x[0], _v[0]) = PointBodyCase.Tip(t, retreatMS);
        for (int i = 1; i <= N; i++)
        {
            int p = 3 * (i - 1), q = p + (3 * N);
            _x[i] = new Vec3(y[p], y[p + 1], y[p + 2]);
            _v[i] = new Vec3(y[q], y[q + 1], y[q + 2]);
            (dydt[p], dydt[p + 1], dydt[p + 2]) = (y[q], y[q + 1], y[q + 2]);
        }

        _line.Stretch(_x, _v);
        for (int i = 1; i <= N; i++)
        {
            Vec3 a = i < N
                ? (1.0 / _line.NodeMass) * (_line.Outer(i, _x[i], _v[i], 1.0) + (_line.Tension[i] * _line.Direction[i]) - (_line.Tension[i - 1] * _line.Direction[i - 1]))
                : Body();
            int q = (3 * (i - 1)) + (3 * N);
            (dydt[q], dydt[q + 1], dydt[q + 2]) = (a.X, a.Y, a.Z);
        }
    }

    private Vec3 Body()
    {
        double s = ExplicitLine.Smooth(0.5 - (_x[N].Z / 0.020)), rho = 1.225 + (998.775 * s);
        Vec3 drag = 0.5 * rho * 4e-4 * _v[N].Length * _v[N];
        var weight = new Vec3(0.0, 0.0, 9.81 * ((1000.0 * 24e-6 * s) - 0.020));
        Vec3 force = _line.Outer(N, _x[N], _v[N], 0.5) - (_line.Tension[N - 1] * _line.Direction[N - 1]) + weight - drag;
        return (1.0 / (0.027 + (0.5 * _line.NodeMass))) * force;
    }
}
