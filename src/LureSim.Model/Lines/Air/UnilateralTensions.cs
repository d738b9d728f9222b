namespace LureSim.Model.Lines.Air;

/// <summary>Symmetric tridiagonal system for tensions that may not be negative, by an active set that starts from the last step.</summary>
internal sealed class UnilateralTensions(int capacity)
{
    // Rounds rarely exceed two; more means that two sets alternate, and the last one is as good.
    private const int MaxRounds = 12;

    private readonly double[] _diagonal = new double[capacity], _off = new double[capacity], _right = new double[capacity];
    private readonly double[] _pivot = new double[capacity];

    /// <summary>Stretch at the midpoint, m, negative when loose.</summary>
    public double[] Gap { get; } = new double[capacity];

    public double[] Tension { get; } = new double[capacity];

    public bool[] Taut { get; } = new bool[capacity];

    public void SetRow(int s, double diagonal, double off, double right) =>
        (_diagonal[s], _off[s], _right[s]) = (diagonal, off, right);

    public void Solve(int count)
    {
        for (int round = 0; round < MaxRounds; round++)
        {
            Sweep(count);
            if (!Revise(count))
            {
                return;
            }
        }

        for (int s = 0; s < count; s++)
        {
            Tension[s] = Math.Max(0.0, Tension[s]);
        }
    }

    public void CopyFrom(UnilateralTensions other, int count)
    {
        Array.Copy(other.Tension, Tension, count);
        Array.Copy(other.Taut, Taut, count);
    }

    // Elimination in which a loose row is cut off from its neighbours.
    private void Sweep(int count)
    {
        for (int s = 0; s < count; s++)
        {
            if (!Taut[s])
            {
                continue;
            }

            (_pivot[s], Tension[s]) = (_diagonal[s], _right[s]);
            if (s > 0 && Taut[s - 1])
            {
                double ratio = _off[s - 1] / _pivot[s - 1];
                _pivot[s] -= ratio * _off[s - 1];
                Tension[s] -= ratio * Tension[s - 1];
            }
        }

        for (int s = count - 1; s >= 0; s--)
        {
            double above = s < count - 1 && Taut[s + 1] ? _off[s] * Tension[s + 1] : 0.0;
            Tension[s] = Taut[s] ? (Tension[s] - above) / _pivot[s] : 0.0;
        }
    }

    private bool Revise(int count)
    {
        bool changed = false;
        for (int s = 0; s < count; s++)
        {
            if (Taut[s])
            {
                if (Tension[s] < 0.0)
                {
                    Taut[s] = false;
                    changed = true;
                }
            }
            else
            {
                double pull = _right[s] - (s > 0 ? _off[s - 1] * Tension[s - 1] : 0.0) - (s < count - 1 ? _off[s] * Tension[s + 1] : 0.0);
                if (pull > 0.0)
                {
                    Taut[s] = true;
                    changed = true;
                }
            }
        }

        return changed;
    }
}
