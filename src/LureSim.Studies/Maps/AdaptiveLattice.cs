namespace LureSim.Studies.Maps;

/// <summary>
/// Classes on a rectangular lattice, sampled only where they change: coarse cells first; a cell whose samples disagree, on
/// its edges too, is cut into four until it is one lattice step wide. Where the main class is not involved, cutting may end
/// earlier. A class island inside a coarse cell that touches none of its corners is missed.
/// </summary>
public sealed class AdaptiveLattice
{
    private const int Unknown = -1;
    private readonly int _size;
    private readonly int _main;
    private readonly int _otherWidth;
    private readonly int[,] _classes;
    private readonly double[,] _values;

    /// <summary>An empty lattice.</summary>
    /// <param name="cellsX">Coarse cells along x.</param>
    /// <param name="cellsY">Coarse cells along y.</param>
    /// <param name="depth">How often a cell may be cut, 0 to 6.</param>
    /// <param name="main">Class whose boundary counts.</param>
    /// <param name="otherDepth">How often a cell may be cut between other classes, 0 to <paramref name="depth"/>.</param>
    public AdaptiveLattice(int cellsX, int cellsY, int depth, int main, int otherDepth)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(cellsX, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(cellsY, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(depth);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(depth, 6);
        ArgumentOutOfRangeException.ThrowIfNegative(otherDepth);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(otherDepth, depth);
        (_main, _size, _otherWidth) = (main, 1 << depth, 1 << (depth - otherDepth));
        _classes = new int[(cellsX * _size) + 1, (cellsY * _size) + 1];
        _values = new double[Width, Height];
        for (int i = 0; i < Width; i++)
        {
            for (int j = 0; j < Height; j++)
            {
                _classes[i, j] = Unknown;
            }
        }
    }

    /// <summary>Lattice points along x.</summary>
    public int Width => _classes.GetLength(0);

    /// <summary>Lattice points along y.</summary>
    public int Height => _classes.GetLength(1);

    /// <summary>Sets a sample.</summary>
    /// <param name="i">Index along x.</param>
    /// <param name="j">Index along y.</param>
    /// <param name="name">Class, not negative.</param>
    /// <param name="value">A number; NaN where there is none.</param>
    public void Set(int i, int j, int name, double value)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(name);
        (_classes[i, j], _values[i, j]) = (name, value);
    }

    /// <summary>Points to sample next, in a fixed order; empty when every change is one step wide.</summary>
    public IReadOnlyList<(int I, int J)> Wanted()
    {
        var wanted = new SortedSet<(int I, int J)>();
        ForEachCell((i, j) => Visit(i, j, _size, wanted));
        return [.. wanted];
    }

    /// <summary>Whether a sampled point and one beside it, straight or across, differ and one of them has the main class.</summary>
    /// <param name="i">Index along x.</param>
    /// <param name="j">Index along y.</param>
    public bool IsAtEdge(int i, int j)
    {
        for (int a = Math.Max(0, i - 1); a <= Math.Min(Width - 1, i + 1); a++)
        {
            for (int b = Math.Max(0, j - 1); b <= Math.Min(Height - 1, j + 1); b++)
            {
                if (_classes[i, j] != Unknown && _classes[a, b] != Unknown && Differ(_classes[i, j], _classes[a, b], 1))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>Class and number at every lattice point: the sample, else the class of the nearest corner of the leaf cell around it
    /// and a number by bilinear interpolation between its corners.</summary>
    public (int[,] Classes, double[,] Values) Fill()
    {
        int[,] name = (int[,])_classes.Clone();
        double[,] number = (double[,])_values.Clone();
        ForEachCell((i, j) => FillCell(i, j, _size, name, number));
        return (name, number);
    }

    private void ForEachCell(Action<int, int> visit)
    {
        for (int i = 0; i + _size < Width; i += _size)
        {
            for (int j = 0; j + _size < Height; j += _size)
            {
                visit(i, j);
            }
        }
    }

    private void Visit(int i, int j, int width, SortedSet<(int I, int J)> wanted)
    {
        int half = width / 2;
        bool isWhole = true;
        foreach ((int di, int dj) in (ReadOnlySpan<(int, int)>)[(0, 0), (width, 0), (0, width), (width, width)])
        {
            isWhole &= _classes[i + di, j + dj] != Unknown;
            Want(i + di, j + dj, wanted);
        }

        if (!isWhole || width == 1 || Agrees(i, j, width))
        {
            return;
        }

        foreach ((int di, int dj) in (ReadOnlySpan<(int, int)>)[(half, half), (half, 0), (0, half), (half, width), (width, half)])
        {
            Want(i + di, j + dj, wanted);
        }

        Children(i, j, half, (a, b) => Visit(a, b, half, wanted));
    }

    private void Want(int i, int j, SortedSet<(int I, int J)> wanted)
    {
        if (_classes[i, j] == Unknown)
        {
            wanted.Add((i, j));
        }
    }

    private static void Children(int i, int j, int half, Action<int, int> visit)
    {
        visit(i, j);
        visit(i + half, j);
        visit(i, j + half);
        visit(i + half, j + half);
    }

    private bool Agrees(int i, int j, int width)
    {
        int first = _classes[i, j];
        for (int a = i; a <= i + width; a++)
        {
            for (int b = j; b <= j + width; b++)
            {
                if (_classes[a, b] != Unknown && Differ(first, _classes[a, b], width))
                {
                    return false;
                }
            }
        }

        return true;
    }

    private bool Differ(int a, int b, int width) => a != b && (a == _main || b == _main || width > _otherWidth);

    private void FillCell(int i, int j, int width, int[,] name, double[,] number)
    {
        if (width > 1 && !Agrees(i, j, width))
        {
            Children(i, j, width / 2, (a, b) => FillCell(a, b, width / 2, name, number));
            return;
        }

        for (int a = 0; a <= width; a++)
        {
            for (int b = 0; b <= width; b++)
            {
                if (_classes[i + a, j + b] == Unknown)
                {
                    name[i + a, j + b] = _classes[2 * a <= width ? i : i + width, 2 * b <= width ? j : j + width];
                    number[i + a, j + b] = Between(i, j, width, a / (double)width, b / (double)width);
                }
            }
        }
    }

    private double Between(int i, int j, int width, double u, double v) =>
        ((1 - u) * (((1 - v) * _values[i, j]) + (v * _values[i, j + width]))) + (u * (((1 - v) * _values[i + width, j]) + (v * _values[i + width, j + width])));
}
