using LureSim.Numerics;
using LureSim.References.Ode;

namespace LureSim.Model.Tests.References;

/// <summary>
/// Case W as explicit first-order equations, written from docs/reference-cases.md: nodes 1 to 39 (positions, velocities), then
/// X, Y, psi, u, v, r, zeta, w of the hull, then q1, q1', q2, q2' of the rod.
/// </summary>
internal sealed class ExplicitWalk : IOdeSystem
{
    public const int HullAt = 6 * Inner;
    private const int N = 40, Inner = N - 1, RodAt = HullAt + 8;
    private const double M11 = 0.01908, M22 = 0.02877713631, M23 = 2.454979372e-6, M33 = 2.1202747e-5, Arm = 0.0539;
    private static readonly Vec3 Flex = new(0.8, 0.0, 0.6);
    private readonly ExplicitLine _line = new(N, 0.30e-3, 15.0, 9.81);
    private readonly Vec3[] _x = new Vec3[N + 1], _v = new Vec3[N + 1];

    public int Dimension => RodAt + 4;

    public static double[] Start()
    {
        var y = new double[RodAt + 4];
        double far = Math.Sqrt((14.90 * 14.90) - (0.8 * 0.8));
        for (int i = 1; i <= Inner; i++)
        {
            double s = (double)i / N;
            (y[3 * (i - 1)], y[(3 * (i - 1)) + 2]) = (far * s, 0.8 * (1.0 - s));
        }

        (y[HullAt], y[HullAt + 1], y[HullAt + 2]) = (14.931802751, 0.008054715, Math.PI + 0.15);
        return y;
    }

    public void Evaluate(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        (double s, double rate, double acceleration) = CaseW.Pulse(t);
        ReadOnlySpan<double> hull = y.Slice(HullAt, 8), rod = y.Slice(RodAt, 4);
        double cos = Math.Cos(hull[2]), sin = Math.Sin(hull[2]), lateral = hull[4] + (Arm * hull[5]);
        _x[0] = new Vec3(-0.45 * t, 0.0, 0.8) + ((rod[0] + rod[2] - (0.20 * s)) * Flex);
        _v[0] = new Vec3(-0.45, 0.0, 0.0) + ((rod[1] + rod[3] - (0.20 * rate)) * Flex);
        _x[N] = new Vec3(hull[0] + (Arm * cos), hull[1] + (Arm * sin), hull[6]);
        _v[N] = new Vec3((hull[3] * cos) - (lateral * sin), (hull[3] * sin) + (lateral * cos), hull[7]);
        for (int i = 1; i <= Inner; i++)
        {
            int p = 3 * (i - 1), q = p + (3 * Inner);
            _x[i] = new Vec3(y[p], y[p + 1], y[p + 2]);
            _v[i] = new Vec3(y[q], y[q + 1], y[q + 2]);
            (dydt[p], dydt[p + 1], dydt[p + 2]) = (y[q], y[q + 1], y[q + 2]);
        }

        _line.Stretch(_x, _v);
        for (int i = 1; i <= Inner; i++)
        {
            Vec3 a = (1.0 / _line.NodeMass)
                * (_line.Outer(i, _x[i], _v[i], 1.0) + (_line.Tension[i] * _line.Direction[i]) - (_line.Tension[i - 1] * _line.Direction[i - 1]));
            int q = (3 * (i - 1)) + (3 * Inner);
            (dydt[q], dydt[q + 1], dydt[q + 2]) = (a.X, a.Y, a.Z);
        }

        Hull(hull, cos, sin, -_line.Tension[N - 1] * _line.Direction[N - 1], dydt.Slice(HullAt, 8));
        Rod(rod, Vec3.Dot(_line.Tension[0] * _line.Direction[0], Flex), acceleration, dydt.Slice(RodAt, 4));
    }

    private void Hull(ReadOnlySpan<double> h, double cos, double sin, Vec3 pull, Span<double> rates)
    {
        double u = h[3], sway = h[4], r = h[5];
        double fx = (pull.X * cos) + (pull.Y * sin), fy = (pull.Y * cos) - (pull.X * sin);
        (double surgeDrag, double swayDrag, double yawDrag) = Drag(u, sway, r);
        double a = (r * ((M22 * sway) + (M23 * r))) + surgeDrag + fx;
        double b = (-r * M11 * u) + swayDrag + fy;
        double c = (-(M22 - M11) * u * sway) - (M23 * u * r) + yawDrag + (Arm * fy);
        double det = (M22 * M33) - (M23 * M23);
        double tieWeight = _line.Weight(ExplicitLine.Smooth(0.5 - (h[6] / 0.010)), 0.5);
        (rates[0], rates[1], rates[2]) = ((u * cos) - (sway * sin), (u * sin) + (sway * cos), r);
        (rates[3], rates[4], rates[5]) = (a / M11, ((M33 * b) - (M23 * c)) / det, ((M22 * c) - (M23 * b)) / det);
        rates[6] = h[7];
        rates[7] = (pull.Z + tieWeight - (3.879457554 * h[6]) - (0.09884074569 * h[7])) / 0.00699517399;
    }

    private static (double Surge, double Sway, double Yaw) Drag(double u, double v, double r)
    {
        double surge = -0.04301642896 * Math.Abs(u) * u, sway = 0.0, yaw = 0.0;
        for (int i = 0; i < CaseW.StripX.Length; i++)
        {
            double w = v + (r * CaseW.StripX[i]);
            double f = -0.5 * 1000.0 * 1.1 * CaseW.StripDraft[i] * (0.110 / 21) * Math.Abs(w) * w;
            sway += f;
            yaw += f * CaseW.StripX[i];
        }

        foreach (double at in (ReadOnlySpan<double>)[0.0055, -0.0495])
        {
            double w = v + (r * at), q = 0.5 * 1000.0 * 6e-5 * Math.Sqrt((u * u) + (w * w));
            surge -= q * u;
            sway -= q * w;
            yaw -= q * w * at;
        }

        return (surge, sway, yaw);
    }

    private static void Rod(ReadOnlySpan<double> q, double pull, double acceleration, Span<double> rates)
    {
        rates[0] = q[1];
        rates[1] = (pull + (1.5 * 0.008 * 0.20 * acceleration) - (0.01357168026 * q[1]) - (6.395503652 * q[0])) / 0.008;
        rates[2] = q[3];
        rates[3] = (pull - (0.8 * 0.004 * 0.20 * acceleration) - (0.02261946711 * q[3]) - (35.53057584 * q[2])) / 0.004;
    }
}
