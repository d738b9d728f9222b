using LureSim.Model.Lines.Chain;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Validation.LineChecks;

/// <summary>What holds one end of a line on the bench.</summary>
internal interface IBenchEnd
{
    /// <summary>The end at the end of a step.</summary>
    public LineEnd At(Bdf2 step, double t, LineState before, LineState now, int node);
}

/// <summary>An end led along a path.</summary>
internal sealed record LedEnd(Func<double, (Vec3 X, Vec3 V)> Path) : IBenchEnd
{
    public static LedEnd Still(Vec3 x) => new(_ => (x, Vec3.Zero));

    public static LedEnd Towed(Vec3 start, Vec3 speed) => new(t => (start + (t * speed), speed));

    public LineEnd At(Bdf2 step, double t, LineState before, LineState now, int node)
    {
        (Vec3 x, Vec3 v) = Path(t);
        return LineEnd.Prescribed(x, v);
    }
}

/// <summary>A free end: a point mass under a constant force and a linear drag.</summary>
internal sealed record FreeEnd(double MassKg, Vec3 ForceN, double DragNsM = 0.0) : IBenchEnd
{
    public LineEnd At(Bdf2 step, double t, LineState before, LineState now, int node)
    {
        var speed = new Vec3(
            step.History(now.VX[node], before.VX[node]), step.History(now.VY[node], before.VY[node]), step.History(now.VZ[node], before.VZ[node]));
        var place = new Vec3(
            step.History(now.X[node], before.X[node]), step.History(now.Y[node], before.Y[node]), step.History(now.Z[node], before.Z[node]));
        double w = 1.0 / (MassKg + (step.Q * DragNsM));
        Vec3 v = w * ((MassKg * speed) + (step.Q * ForceN));
        return new LineEnd { FreeVelocity = v, FreePosition = place + (step.Q * v), Wxx = w, Wyy = w, Wzz = w };
    }
}

/// <summary>
/// A line on the bench: the product's mesh and tension pass, stepped as the product steps them (two passes of BDF2), between two
/// ends of the check's own.
/// </summary>
internal sealed class LineBench
{
    private LineState _before, _next;

    public LineBench(LineMesh mesh, LineMedium medium, Func<double, Vec3> shape)
    {
        (Mesh, Pass) = (mesh, new LinePass(mesh, medium));
        (_before, Now, _next) = (new(mesh.Segments), new(mesh.Segments), new(mesh.Segments));
        double run = 0.0;
        for (int i = 0; i <= mesh.Segments; i++)
        {
            Vec3 p = shape(run / mesh.LengthM);
            (Now.X[i], Now.Y[i], Now.Z[i]) = (_before.X[i], _before.Y[i], _before.Z[i]) = (p.X, p.Y, p.Z);
            run += i < mesh.Segments ? mesh.Rest[i] : 0.0;
        }
    }

    public LineMesh Mesh { get; }

    /// <summary>The pass in use; a check may exchange it to change the medium.</summary>
    public LinePass Pass { get; private set; }

    public LineState Now { get; private set; }

    public double Time { get; private set; }

    public Vec3 HeadForce { get; private set; }

    /// <summary>Tension of a segment in the last step, N.</summary>
    public double Tension(int segment) => Pass.Solver.Tension[segment];

    public Vec3 Node(int i) => new(Now.X[i], Now.Y[i], Now.Z[i]);

    /// <summary>Goes on in another medium.</summary>
    public void Enter(LineMedium medium) => Pass = new LinePass(Mesh, medium);

    /// <summary>Puts every node in motion; the next run starts from there without history.</summary>
    public void SetMotion(Func<int, Vec3> velocity)
    {
        for (int i = 0; i <= Mesh.Segments; i++)
        {
            Vec3 v = velocity(i);
            (Now.VX[i], Now.VY[i], Now.VZ[i]) = (v.X, v.Y, v.Z);
        }
    }

    /// <summary>Steps of length <paramref name="dt"/>; the first is backward Euler, as after any change of step.</summary>
    public void Run(double dt, double duration, IBenchEnd head, IBenchEnd tail, Action? record = null)
    {
        int steps = (int)Math.Round(duration / dt);
        for (int n = 0; n < steps; n++)
        {
            Step(n == 0 ? Bdf2.BackwardEuler(dt) : Bdf2.Step(dt, dt), head, tail);
            record?.Invoke();
        }
    }

    private void Step(Bdf2 step, IBenchEnd head, IBenchEnd tail)
    {
        int n = Mesh.Segments;
        double t = Time + step.Dt;
        Pass.Begin(step, _before, Now, _next);
        LineEnd first = head.At(step, t, _before, Now, 0), last = tail.At(step, t, _before, Now, n);
        for (int k = 0; k < 2; k++)
        {
            Pass.SetDirections(_next);
            Pass.Solve(step, _next, first, last, out Vec3 force, out _);
            HeadForce = force;
        }

        (_before, Now, _next) = (Now, _next, _before);
        Time = t;
    }
}
