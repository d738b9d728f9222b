using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Lines.Chain;

/// <summary>Both ends of the line in a pass, and the segments that the reel shortens.</summary>
internal sealed partial class LinePass
{
    private void SetEnd(int node, in LineEnd end, Vec3 direction, double[] ox, double[] oy, double[] oz)
    {
        Vec3 yield = end.Yield(direction);
        (ox[node], oy[node], oz[node]) = (yield.X, yield.Y, yield.Z);
        (_v0x[node], _v0y[node], _v0z[node]) = (end.FreeVelocity.X, end.FreeVelocity.Y, end.FreeVelocity.Z);
    }

    /// <summary>Corrects the end rows, whose nodes have no history of their own, and the shortening of reeled segments.</summary>
    private void AddStretch(Bdf2 step, in LineEnd head, in LineEnd tail, double shrink)
    {
        int n = _mesh.Segments;
        AddEnd(step.Q, head, 0, 0, -1.0);
        AddEnd(step.Q, tail, n, n - 1, 1.0);
        Shorten(step.Q, 0, 1, shrink - EvenMS);
        Shorten(step.Q, 1, _mesh.FirstLeaderSegment, shrink);
    }

    // All main segments but the first are alike.
    private void Shorten(double q, int from, int to, double rate)
    {
        if (rate == 0.0 || from >= to)
        {
            return;
        }

        double part = _mesh.Damping[from] * rate / ((q * _mesh.Stiffness[from]) + _mesh.Damping[from]);
        foreach (ref double row in Solver.RightSide.AsSpan(from, to - from))
        {
            row -= part;
        }
    }

    private void AddEnd(double q, in LineEnd end, int node, int segment, double sign)
    {
        var fixedByHistory = new Vec3(_past.X[node], _past.Y[node], _past.Z[node]);
        Vec3 shift = end.FreePosition - (q * end.FreeVelocity) - fixedByHistory;
        double k = _mesh.Stiffness[segment];
        Solver.RightSide[segment] += sign * k * Vec3.Dot(Direction(segment), shift) / ((q * k) + _mesh.Damping[segment]);
    }

    private static void PlaceEnd(int node, double q, in LineEnd end, Vec3 force, LineState state)
    {
        Vec3 change = q * end.Yield(force);
        Vec3 v = end.FreeVelocity + change;
        Vec3 x = end.FreePosition + (q * change);
        (state.VX[node], state.VY[node], state.VZ[node]) = (v.X, v.Y, v.Z);
        (state.X[node], state.Y[node], state.Z[node]) = (x.X, x.Y, x.Z);
    }
}
