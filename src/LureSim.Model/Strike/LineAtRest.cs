using LureSim.Numerics;

namespace LureSim.Model.Strike;

/// <summary>
/// How slack line lies before a strike: it hangs from the tip in a parabola, what would hang under the water lies on it, and what is still left lies in a bow to
/// one side. Only a start: the line moves on from it by its own weight.
/// </summary>
/// <param name="Tip">Rod tip, m.</param>
/// <param name="Hook">Hook on the water, m.</param>
internal sealed record LineAtRest(Vec3 Tip, Vec3 Hook)
{
    // Pieces of the curve that is measured, and halvings of an interval: beyond the digits that a start needs.
    private const int Pieces = 200, Halvings = 50;

    /// <summary>Places of the nodes, one for each share of the length, m.</summary>
    /// <param name="lengthM">Line out, m; what is shorter than the straight way counts as straight.</param>
    /// <param name="share">Shares of the length from the tip, rising from 0 to 1.</param>
    public Vec3[] Nodes(double lengthM, ReadOnlySpan<double> share)
    {
        (double sag, double bow) = Fit(lengthM);
        var curve = new Vec3[Pieces + 1];
        double[] run = new double[Pieces + 1];
        for (int i = 0; i <= Pieces; i++)
        {
            curve[i] = Point(i, sag, bow);
            run[i] = i > 0 ? run[i - 1] + (curve[i] - curve[i - 1]).Length : 0.0;
        }

        var nodes = new Vec3[share.Length];
        for (int i = 0, k = 1; i < nodes.Length; i++)
        {
            double at = share[i] * run[^1];
            while (k < Pieces && run[k] < at)
            {
                k++;
            }

            double part = Math.Clamp((at - run[k - 1]) / (run[k] - run[k - 1]), 0.0, 1.0);
            nodes[i] = curve[k - 1] + (part * (curve[k] - curve[k - 1]));
        }

        return nodes;
    }

    // Sag until all of the line lies on the water that can, then bow: each makes the line longer.
    private (double Sag, double Bow) Fit(double lengthM)
    {
        double deepest = 4.0 * Tip.Z;
        return Length(deepest, 0.0) >= lengthM
            ? (Solve(lengthM, deepest, sag => Length(sag, 0.0)), 0.0)
            : (deepest, Solve(lengthM, lengthM, bow => Length(deepest, bow)));
    }

    private static double Solve(double wanted, double high, Func<double, double> length)
    {
        double low = 0.0;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = length(middle) < wanted ? (middle, high) : (low, middle);
        }

        return low;
    }

    private double Length(double sag, double bow)
    {
        double run = 0.0;
        Vec3 last = Point(0, sag, bow);
        for (int i = 1; i <= Pieces; i++)
        {
            Vec3 next = Point(i, sag, bow);
            run += (next - last).Length;
            last = next;
        }

        return run;
    }

    private Vec3 Point(int i, double sag, double bow)
    {
        double s = (double)i / Pieces;
        Vec3 straight = Tip + (s * (Hook - Tip));
        double z = Math.Max(straight.Z - (4.0 * sag * s * (1.0 - s)), Math.Min(0.0, straight.Z));
        return new(straight.X, straight.Y + (bow * Math.Sin(Math.PI * s)), z);
    }
}
