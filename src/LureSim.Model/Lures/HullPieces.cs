namespace LureSim.Model.Lures;

/// <summary>Splits a hull lengthwise where its sections change between dry, cut and wet.</summary>
internal static class HullPieces
{
    private const int Nodes = 41;

    /// <summary>Halvings to a few 1e-12 of the length.</summary>
    public const int FineHalvings = 32;

    /// <summary>Most ends that <see cref="Find"/> can write.</summary>
    public const int MaxEnds = 2 * Nodes;

    /// <summary>Places where the state is looked at, tail to nose.</summary>
    /// <param name="lengthM">L, m.</param>
    public static double[] NodesOf(double lengthM)
    {
        var x = new double[Nodes];
        double half = 0.5 * lengthM;
        x[0] = -half;
        for (int i = 1; i < Nodes; i++)
        {
            x[i] = -half * Math.Cos(Math.PI * i / (Nodes - 1));
        }

        return x;
    }

    /// <summary>Writes the ends of the pieces, tail to nose, and returns their count.</summary>
    public static int Find(IHull hull, WaterLine water, Span<double> ends, int halvings = FineHalvings)
    {
        double half = 0.5 * hull.LengthM;
        double[] nodes = hull.PieceNodes;
        int count = 0;
        ends[count++] = -half;
        double left = -half;
        Wetting leftState = hull.WettingAtNode(0, water.Ny, water.Nz, water.Level(left));
        for (int i = 1; i < Nodes; i++)
        {
            double right = nodes[i];
            Wetting rightState = hull.WettingAtNode(i, water.Ny, water.Nz, water.Level(right));
            if (rightState != leftState)
            {
                ends[count++] = EndOf(hull, water, left, right, leftState, halvings);
                if (leftState != Wetting.Partial && rightState != Wetting.Partial)
                {
                    ends[count++] = EndOf(hull, water, right, left, rightState, halvings);
                }
            }

            (left, leftState) = (right, rightState);
        }

        ends[count++] = half;
        return count;
    }

    private static Wetting State(IHull hull, WaterLine water, double x) =>
        hull.WettingAt(x, water.Ny, water.Nz, water.Level(x));

    // Bisection on the state: going from "inside" toward "outside", where does the state of "inside" end?
    private static double EndOf(IHull hull, WaterLine water, double inside, double outside, Wetting state, int halvings)
    {
        for (int i = 0; i < halvings; i++)
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
