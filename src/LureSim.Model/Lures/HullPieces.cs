namespace LureSim.Model.Lures;

/// <summary>Splits a hull lengthwise where its sections change between dry, cut and wet.</summary>
internal static class HullPieces
{
    private const int Nodes = 41;

    /// <summary>Most ends that <see cref="Find"/> can write.</summary>
    public const int MaxEnds = 2 * Nodes;

    /// <summary>Writes the ends of the pieces, tail to nose, and returns their count.</summary>
    public static int Find(IHull hull, WaterLine water, Span<double> ends)
    {
        double half = 0.5 * hull.LengthM;
        int count = 0;
        ends[count++] = -half;
        double left = -half;
        Wetting leftState = State(hull, water, left);
        for (int i = 1; i < Nodes; i++)
        {
            double right = -half * Math.Cos(Math.PI * i / (Nodes - 1));
            Wetting rightState = State(hull, water, right);
            if (rightState != leftState)
            {
                ends[count++] = EndOf(hull, water, left, right, leftState);
                if (leftState != Wetting.Partial && rightState != Wetting.Partial)
                {
                    ends[count++] = EndOf(hull, water, right, left, rightState);
                }
            }

            (left, leftState) = (right, rightState);
        }

        ends[count++] = half;
        return count;
    }

    private static Wetting State(IHull hull, WaterLine water, double x) =>
        hull.WettingAt(x, water.Ny, water.Nz, water.Level(x));

    // Bisection on the state, to a few 1e-12 of the length: going from "inside" toward "outside", where does the state of "inside" end?
    private static double EndOf(IHull hull, WaterLine water, double inside, double outside, Wetting state)
    {
        for (int i = 0; i < 32; i++)
        {
            double middle = 0.5 * (inside + outside);
            if (State(hull, water, middle) == state)
            {
                inside = middle;
            }
            else
            {
                outside = middle;
            }
        }

        return inside;
    }
}
