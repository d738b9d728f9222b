using LureSim.Model.Lines;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Media;
using LureSim.Numerics;
using LureSim.Numerics.Steps;
using LureSim.Numerics.Tension;

namespace LureSim.Model.Tests.References;

/// <summary>
/// Cases R and S of docs/reference-cases.md: a slack line with a floating point body, twitched by a prescribed tip. Built from
/// the product's mesh, pass and step with the case's simplified laws.
/// </summary>
internal sealed class PointBodyCase
{
    public const double Gravity = 9.81, WaterDensity = 1000.0, AirDensity = 1.225, Length = 15.0, Stroke = 0.20, Period = 0.4;
    public const double Mass = 0.027;
    private const double Volume = 24e-6, DragArea = 4e-4;
    private readonly double _retreat;
    private readonly LinePass _pass;
    private LineState _before, _now, _next;

    public PointBodyCase(double retreatMS, int segments, double dampingNs = 4.5)
    {
        _retreat = retreatMS;
        double area = Math.PI * 0.35e-3 * 0.35e-3 / 4.0;
        var line = new LineSpec(
            LineMaterial.Braid, 0.35e-3, 970.0 * area, 970.0, 5000.0, dampingNs / 5000.0, 0.0, SurfaceFilm.Wetted, 200.0, 1.0, 0.01);
        var medium = new LineMedium(
            new WaterState(WaterDensity, 1e-3, 0.0725), new AirState(AirDensity, 1.8e-5), DragCurve.Constant(1.2), Gravity,
            AddedMassCoefficient: 0.0);
        Mesh = new LineMesh(line, null, Length, segments);
        _pass = new LinePass(Mesh, medium);
        (_before, _now, _next) = (new LineState(segments), new LineState(segments), new LineState(segments));
        for (int i = 0; i <= segments; i++)
        {
            double s = (double)i / segments;
            _before.X[i] = _now.X[i] = 14.90 * s;
            _before.Z[i] = _now.Z[i] = 1.0 - s;
        }
    }

    public LineMesh Mesh { get; }

    public LineState Now => _now;

    public LinePass Pass => _pass;

    public UnilateralTridiagonal Solver => _pass.Solver;

    public static (Vec3 X, Vec3 V) Tip(double t, double retreat)
    {
        double u = t % Period, s = 0.0, rate = 0.0;
        if (u < 0.10)
        {
            s = 0.5 * (1.0 - Math.Cos(Math.PI * u / 0.10));
            rate = 0.5 * Math.PI / 0.10 * Math.Sin(Math.PI * u / 0.10);
        }
        else if (u < 0.25)
        {
            s = 0.5 * (1.0 + Math.Cos(Math.PI * (u - 0.10) / 0.15));
            rate = -0.5 * Math.PI / 0.15 * Math.Sin(Math.PI * (u - 0.10) / 0.15);
        }

        return (
            new Vec3((-retreat * t) - (0.8 * Stroke * s), 0.05 * Math.Sin(Math.PI * t), 1.0 - (0.6 * Stroke * s)),
            new Vec3(-retreat - (0.8 * Stroke * rate), 0.05 * Math.PI * Math.Cos(Math.PI * t), -0.6 * Stroke * rate));
    }

    /// <summary>Runs and calls back after every step with time, step, tip velocity and tension.</summary>
    public void Run(double dt, double end, Action<double, LineState, UnilateralTridiagonal> record)
    {
        int steps = (int)Math.Round(end / dt);
        for (int n = 0; n < steps; n++)
        {
            Bdf2 step = n == 0 ? Bdf2.BackwardEuler(dt) : Bdf2.Step(dt, dt);
            Step(step, (n + 1) * dt);
            record((n + 1) * dt, _now, _pass.Solver);
        }
    }

    /// <summary>Drag, weight and buoyancy on a node (and on the body at the last one) in the present state, N.</summary>
    public Vec3 OuterForce(int i)
    {
        var v = new Vec3(_now.VX[i], _now.VY[i], _now.VZ[i]);
        double h = Smooth(0.5 - (_now.Z[i] / 0.010));
        var weight = new Vec3(0.0, 0.0, Gravity * ((WaterDensity * Mesh.Volume[i] * h) - Mesh.Mass[i]));
        if (i == Mesh.Segments)
        {
            double s = Smooth(0.5 - (_now.Z[i] / 0.020)), rho = AirDensity + ((WaterDensity - AirDensity) * s);
            return weight + new Vec3(0.0, 0.0, Gravity * ((WaterDensity * Volume * s) - 0.020)) - (0.5 * rho * DragArea * v.Length * v);
        }

        Vec3 sum = _pass.Direction(i - 1) + _pass.Direction(i);
        Vec3 u = (1.0 / sum.Length) * sum;
        double along = Vec3.Dot(v, u), density = AirDensity + ((WaterDensity - AirDensity) * h);
        Vec3 across = v - (along * u);
        return weight
            - (0.5 * density * 1.2 * Mesh.DragArea[i] * across.Length * across)
            - (0.5 * density * Mesh.TangentialArea[i] * Math.Abs(along) * along * u);
    }

    private void Step(Bdf2 step, double t)
    {
        _pass.Begin(step, _before, _now, _next);
        (Vec3 x, Vec3 v) = Tip(t, _retreat);
        LineEnd head = LineEnd.Prescribed(x, v);
        (_next.X[0], _next.Y[0], _next.Z[0]) = (x.X, x.Y, x.Z);
        for (int k = 0; k < 2; k++)
        {
            _pass.SetDirections(_next);
            LineEnd tail = Body(step);
            _pass.Solve(step, _next, head, tail, out _, out _);
        }

        (_before, _now, _next) = (_now, _next, _before);
    }

    private LineEnd Body(Bdf2 step)
    {
        int n = Mesh.Segments;
        double z = _next.Z[n];
        double s = Smooth(0.5 - (z / 0.020));
        double rho = AirDensity + ((WaterDensity - AirDensity) * s);
        double speed = Math.Sqrt((_next.VX[n] * _next.VX[n]) + (_next.VY[n] * _next.VY[n]) + (_next.VZ[n] * _next.VZ[n]));
        double h = Smooth(0.5 - (z / 0.010));
        double m = Mass + Mesh.Mass[n];

        // Half a segment of line at the body: tangential and normal drag lumped as normal drag would need its direction; the
        // reference puts 0.5 rho d (l/2) Cd on it, here added along the velocity (2e-3 of the body's drag area).
        double drag = 0.5 * rho * DragArea * speed;
        double fz = (WaterDensity * Gravity * Volume * s) + (WaterDensity * Gravity * Mesh.Volume[n] * h) - ((0.020 + Mesh.Mass[n]) * Gravity);
        double a = 1.0 / (m + (step.Q * drag));
        var history = new Vec3(
            step.History(_now.VX[n], _before.VX[n]), step.History(_now.VY[n], _before.VY[n]), step.History(_now.VZ[n], _before.VZ[n]));
        var place = new Vec3(
            step.History(_now.X[n], _before.X[n]), step.History(_now.Y[n], _before.Y[n]), step.History(_now.Z[n], _before.Z[n]));
        Vec3 v = a * ((m * history) + new Vec3(0.0, 0.0, step.Q * fz));
        return new LineEnd { FreeVelocity = v, FreePosition = place + (step.Q * v), Wxx = a, Wyy = a, Wzz = a };
    }

    public static double Smooth(double s)
    {
        s = Math.Clamp(s, 0.0, 1.0);
        return s * s * (3.0 - (2.0 * s));
    }
}
