using System.Numerics;

namespace LureSim.Model.Lines.Chain;

/// <summary>Positions and velocities of all nodes at one time, one array per component (padded for vector loops).</summary>
public sealed class LineState
{
    /// <summary>Storage for N segments.</summary>
    /// <param name="segments">N.</param>
    public LineState(int segments)
    {
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
}
