namespace LureSim.Numerics.Tension;

/// <summary>
/// Solves A T = b with T at least 0 for a symmetric positive definite tridiagonal A: where T is 0, A T - b must not be
/// negative (a linear complementarity problem). Primal-dual active set: drop negative tensions, add rows that would
/// overstretch, repeat; it starts from the set of the last solve. Inactive rows cut the matrix into blocks.
/// Hintermueller, Ito, Kunisch 2003, SIAM J. Optim. 13:865 (from memory): for such matrices the set settles in finitely
/// many rounds.
/// </summary>
public sealed class UnilateralTridiagonal
{
    private readonly double[] _coupling;
    private readonly double[] _forward;
    private readonly bool[] _active;

    /// <summary>Storage for <paramref name="count"/> unknowns, padded so that vector loops may write past the end.</summary>
    /// <param name="count">Number of unknowns, at least 1.</param>
    /// <param name="padding">Extra elements in the public arrays, at least 0.</param>
    public UnilateralTridiagonal(int count, int padding)
        : this(count, count, padding)
    {
    }

    /// <summary>Storage for a system that grows by <see cref="Append"/>.</summary>
    /// <param name="count">Number of unknowns at the start, at least 1.</param>
    /// <param name="capacity">Most unknowns, at least <paramref name="count"/>.</param>
    /// <param name="padding">Extra elements in the public arrays, at least 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is below its least value.</exception>
    public UnilateralTridiagonal(int count, int capacity, int padding)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(capacity, count);
        ArgumentOutOfRangeException.ThrowIfNegative(padding);
        Count = count;
        Diagonal = new double[capacity + padding];
        OffDiagonal = new double[capacity + padding];
        RightSide = new double[capacity + padding];
        Tension = new double[capacity + padding];
        _coupling = new double[capacity];
        _forward = new double[capacity];
        _active = new bool[capacity];
        Array.Fill(_active, true);
    }

    /// <summary>Most rounds of one solve.</summary>
    public const int RoundLimit = 12;

    /// <summary>Number of unknowns now.</summary>
    public int Count { get; private set; }

    /// <summary>Most unknowns.</summary>
    public int Capacity => _active.Length;

    /// <summary>A(j, j).</summary>
    public double[] Diagonal { get; }

    /// <summary>A(j, j+1) = A(j+1, j).</summary>
    public double[] OffDiagonal { get; }

    /// <summary>b.</summary>
    public double[] RightSide { get; }

    /// <summary>T, the solution.</summary>
    public double[] Tension { get; }

    /// <summary>Tridiagonal passes so far.</summary>
    public long Passes { get; private set; }

    /// <summary>Solves that were stopped by <see cref="RoundLimit"/>; their tensions are cut off at 0.</summary>
    public int LimitHits { get; private set; }

    /// <summary>Solves for <see cref="Tension"/>; allocates nothing.</summary>
    public void Solve()
    {
        for (int round = 0; round < RoundLimit; round++)
        {
            SolveActive();
            Passes++;
            if (!UpdateActiveSet())
            {
                return;
            }
        }

        LimitHits++;
        for (int j = 0; j < Count; j++)
        {
            Tension[j] = Math.Max(0.0, Tension[j]);
        }
    }

    /// <summary>Adds an unknown at the end; it starts from tension and set of the one before it, as one half of a cut segment does.</summary>
    /// <exception cref="InvalidOperationException">There is no room: <see cref="Count"/> is <see cref="Capacity"/>.</exception>
    public void Append()
    {
        if (Count == Capacity)
        {
            throw new InvalidOperationException($"No room for more than {Capacity} unknowns.");
        }

        Tension[Count] = Tension[Count - 1];
        _active[Count] = _active[Count - 1];
        Count++;
    }

    /// <summary>Takes an unknown out, as when two segments become one; the others move up.</summary>
    /// <param name="index">Which, 0 to <see cref="Count"/> - 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such unknown, or no other one.</exception>
    public void RemoveAt(int index)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, Count);
        ArgumentOutOfRangeException.ThrowIfLessThan(Count, 2);
        Count--;
        Array.Copy(Tension, index + 1, Tension, index, Count - index);
        Array.Copy(_active, index + 1, _active, index, Count - index);
    }

    /// <summary>Takes over count, tensions and active set of another system; rows and counters stay, as the next step writes the rows anew.</summary>
    /// <param name="other">A system of at most this <see cref="Capacity"/>.</param>
    /// <exception cref="ArgumentException">The other system has more unknowns than there is room for.</exception>
    public void CopyFrom(UnilateralTridiagonal other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (other.Count > Capacity)
        {
            throw new ArgumentException($"{other.Count} unknowns do not fit into {Capacity}.", nameof(other));
        }

        Count = other.Count;
        Array.Copy(other.Tension, Tension, Count);
        Array.Copy(other._active, _active, Count);
    }

    /// <summary>
    /// Elimination from both ends to the middle row, then substitution outward: two short chains of divisions side by side
    /// instead of a long one. Rows are normalised, T(j) = forward(j) - coupling(j) T(next toward the middle), so the
    /// divisions stay off the substitution; an inactive row has forward and coupling 0, which cuts the matrix by itself.
    /// </summary>
    private void SolveActive()
    {
        double[] diagonal = Diagonal, off = OffDiagonal, right = RightSide, t = Tension;
        int middle = Count / 2, low = 0, high = Count - 1;
        double lowCoupling = 0.0, lowForward = 0.0, lowLink = 0.0;
        double highCoupling = 0.0, highForward = 0.0, highLink = 0.0;
        while (low < middle || high > middle)
        {
            if (low < middle)
            {
                double inverse = _active[low] ? 1.0 / (diagonal[low] - (lowLink * lowCoupling)) : 0.0;
                _forward[low] = lowForward = inverse * (right[low] - (lowLink * lowForward));
                lowLink = off[low];
                _coupling[low++] = lowCoupling = inverse * lowLink;
            }

            if (high > middle)
            {
                double inverse = _active[high] ? 1.0 / (diagonal[high] - (highLink * highCoupling)) : 0.0;
                _forward[high] = highForward = inverse * (right[high] - (highLink * highForward));
                highLink = off[high - 1];
                _coupling[high--] = highCoupling = inverse * highLink;
            }
        }

        double pivot = diagonal[middle] - (lowLink * lowCoupling) - (highLink * highCoupling);
        t[middle] = _active[middle] ? (right[middle] - (lowLink * lowForward) - (highLink * highForward)) / pivot : 0.0;
        Substitute(middle);
    }

    private void Substitute(int middle)
    {
        double[] t = Tension;
        double below = t[middle], above = t[middle];
        for (int j = middle - 1; j >= 0; j--)
        {
            t[j] = below = _forward[j] - (_coupling[j] * below);
        }

        for (int j = middle + 1; j < Count; j++)
        {
            t[j] = above = _forward[j] - (_coupling[j] * above);
        }
    }

    private bool UpdateActiveSet()
    {
        bool changed = false;
        double[] t = Tension;
        for (int j = 0; j < Count; j++)
        {
            if (_active[j])
            {
                if (t[j] < 0.0)
                {
                    _active[j] = false;
                    changed = true;
                }

                continue;
            }

            double slackness = -RightSide[j];
            slackness += j > 0 ? OffDiagonal[j - 1] * t[j - 1] : 0.0;
            slackness += j < Count - 1 ? OffDiagonal[j] * t[j + 1] : 0.0;
            if (slackness < 0.0)
            {
                _active[j] = true;
                changed = true;
            }
        }

        return changed;
    }
}
