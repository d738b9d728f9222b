using System.Numerics;

namespace LureSim.Model.Lines.Chain;

/// <summary>Positions and velocities of all nodes at one time, one array per component (padded for vector loops).</summary>
internal sealed class LineState
{
    private readonly int _nodes;

    /// <summary>Storage for N segments.</summary>
    /// <param name="segments">N.</param>
    public LineState(int segments)
    {
        _nodes = segments + 1;
        int size = segments + 1 + (2 * Vector<double>.Count);
        X = new double[size];
        Y = new double[size];
        Z = new double[size];
        VX = new double[size];
        VY = new double[size];
        VZ = new double[size];
    }

    /// <summary>x, m.</summary>
    public double[] X { get; }

    /// <summary>y, m.</summary>
    public double[] Y { get; }

    /// <summary>z, m.</summary>
    public double[] Z { get; }

    /// <summary>x velocity, m/s.</summary>
    public double[] VX { get; }

    /// <summary>y velocity, m/s.</summary>
    public double[] VY { get; }

    /// <summary>z velocity, m/s.</summary>
    public double[] VZ { get; }

    /// <summary>Sum of all coordinates of the N + 1 nodes: not finite as soon as one of them is not.</summary>
    public double CoordinateSum()
    {
        Vector<double> sums = Vector<double>.Zero;
        int i = 0;
        for (; i <= _nodes - Vector<double>.Count; i += Vector<double>.Count)
        {
            sums += new Vector<double>(X, i) + new Vector<double>(Y, i) + new Vector<double>(Z, i);
        }

        double sum = Vector.Sum(sums);
        for (; i < _nodes; i++)
        {
            sum += X[i] + Y[i] + Z[i];
        }

        return sum;
    }
}
