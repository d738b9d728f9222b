namespace LureSim.Scenarios.Variation;

/// <summary>Every combination of the values of some axes, counted like digits: the last axis changes fastest.</summary>
/// <remarks>Nothing is stored per combination. Immutable; safe to use from several threads.</remarks>
public sealed class Grid
{
    private readonly IReadOnlyList<Axis> _axes;

    /// <summary>Creates the grid.</summary>
    /// <param name="axes">Axes with values; none makes a grid of one combination, the scenario itself.</param>
    /// <exception cref="ArgumentException">An axis is a range without step or count, or there are more than 2^31 combinations.</exception>
    public Grid(IReadOnlyList<Axis> axes)
    {
        ArgumentNullException.ThrowIfNull(axes);
        _axes = axes;
        long count = 1;
        foreach (Axis axis in axes)
        {
            if (axis.Values.Count == 0)
            {
                throw new ArgumentException($"{axis.Name} is a range without step or count", nameof(axes));
            }

            count *= axis.Values.Count;
            if (count > int.MaxValue)
            {
                throw new ArgumentException("more than two thousand million combinations", nameof(axes));
            }
        }

        Count = (int)count;
    }

    /// <summary>Number of combinations.</summary>
    public int Count { get; }

    /// <summary>One combination: one value per axis.</summary>
    /// <param name="index">0 to <see cref="Count"/> - 1.</param>
    public AxisValue[] At(int index)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, Count);
        var values = new AxisValue[_axes.Count];
        for (int a = _axes.Count - 1; a >= 0; a--)
        {
            (index, int digit) = Math.DivRem(index, _axes[a].Values.Count);
            values[a] = _axes[a].Values[digit];
        }

        return values;
    }
}
