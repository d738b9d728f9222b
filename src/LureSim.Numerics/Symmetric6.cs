using System.Runtime.Intrinsics;

namespace LureSim.Numerics;

/// <summary>Symmetric 6 x 6 matrix of a rigid body's six velocities, solved by Cholesky for four right-hand sides at once.</summary>
public sealed class Symmetric6
{
    /// <summary>Rows.</summary>
    public const int Size = 6;

    private readonly double[] _upper = new double[Size * Size];
    private readonly double[] _factor = new double[Size * Size];
    private readonly double[] _inverse = new double[Size];

    /// <summary>An element; setting it sets its mirror image.</summary>
    /// <param name="row">0 to 5.</param>
    /// <param name="column">0 to 5.</param>
    public double this[int row, int column]
    {
        get => row <= column ? _upper[(Size * row) + column] : _upper[(Size * column) + row];
        set => _upper[row <= column ? (Size * row) + column : (Size * column) + row] = value;
    }

    /// <summary>Elements with column at least row, row by row, six a row.</summary>
    public double[] Upper => _upper;

    /// <summary>Copies another matrix.</summary>
    /// <param name="other">Matrix.</param>
    public void CopyFrom(Symmetric6 other)
    {
        ArgumentNullException.ThrowIfNull(other);
        other._upper.CopyTo(_upper, 0);
    }

    /// <summary>Sets all elements to 0.</summary>
    public void Clear() => Array.Clear(_upper);

    /// <summary>Sets this matrix to a + s b.</summary>
    /// <param name="a">First matrix.</param>
    /// <param name="s">Factor.</param>
    /// <param name="b">Second matrix.</param>
    public void SetSum(Symmetric6 a, double s, Symmetric6 b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        for (int i = 0; i < _upper.Length; i++)
        {
            _upper[i] = a._upper[i] + (s * b._upper[i]);
        }
    }

    /// <summary>Adds s g g'.</summary>
    /// <param name="s">Factor.</param>
    /// <param name="g">Vector of six.</param>
    public void AddSquare(double s, ReadOnlySpan<double> g)
    {
        for (int i = 0; i < Size; i++)
        {
            double si = s * g[i];
            for (int j = i; j < Size; j++)
            {
                _upper[(Size * i) + j] += si * g[j];
            }
        }
    }

    /// <summary>y = this x.</summary>
    /// <param name="x">Vector of six.</param>
    /// <param name="y">Receives the product.</param>
    public void Multiply(ReadOnlySpan<double> x, Span<double> y)
    {
        y[..Size].Clear();
        for (int i = 0; i < Size; i++)
        {
            y[i] += _upper[(Size * i) + i] * x[i];
            for (int j = i + 1; j < Size; j++)
            {
                double a = _upper[(Size * i) + j];
                y[i] += a * x[j];
                y[j] += a * x[i];
            }
        }
    }

    /// <summary>x' this x.</summary>
    /// <param name="x">Vector of six.</param>
    public double Square(ReadOnlySpan<double> x)
    {
        double sum = 0.0;
        for (int i = 0; i < Size; i++)
        {
            double row = 0.5 * _upper[(Size * i) + i] * x[i];
            for (int j = i + 1; j < Size; j++)
            {
                row += _upper[(Size * i) + j] * x[j];
            }

            sum += 2.0 * row * x[i];
        }

        return sum;
    }

    /// <summary>Factors the matrix into L L'. Not positive definite: the solutions are not finite.</summary>
    public void Factor()
    {
        for (int i = 0; i < Size; i++)
        {
            for (int j = i; j < Size; j++)
            {
                double sum = _upper[(Size * i) + j];
                for (int k = 0; k < i; k++)
                {
                    sum -= _factor[(Size * i) + k] * _factor[(Size * j) + k];
                }

                if (j == i)
                {
                    double root = Math.Sqrt(sum);
                    _inverse[i] = 1.0 / root;
                    _factor[(Size * i) + i] = root;
                }
                else
                {
                    _factor[(Size * j) + i] = sum * _inverse[i];
                }
            }
        }
    }

    /// <summary>Solves for four right-hand sides, one to a lane, in place.</summary>
    /// <param name="b">Six rows.</param>
    public void Solve(Span<Vector256<double>> b)
    {
        for (int i = 0; i < Size; i++)
        {
            Vector256<double> sum = b[i];
            for (int k = 0; k < i; k++)
            {
                sum -= _factor[(Size * i) + k] * b[k];
            }

            b[i] = sum * _inverse[i];
        }

        for (int i = Size - 1; i >= 0; i--)
        {
            Vector256<double> sum = b[i];
            for (int k = i + 1; k < Size; k++)
            {
                sum -= _factor[(Size * k) + i] * b[k];
            }

            b[i] = sum * _inverse[i];
        }
    }
}
