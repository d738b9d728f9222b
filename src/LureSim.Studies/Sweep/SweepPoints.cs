using LureSim.Scenarios.Variation;
using LureSim.Studies.Sampling;

namespace LureSim.Studies.Sweep;

/// <summary>The combinations of what varies: every one of a grid, or samples of it.</summary>
public sealed class SweepPoints
{
    private readonly Func<int, AxisValue[]> _at;

    private SweepPoints(int count, Func<int, AxisValue[]> at) => (Count, _at) = (count, at);

    /// <summary>Number of points.</summary>
    public int Count { get; }

    /// <summary>Every combination.</summary>
    /// <param name="axes">Axes with values.</param>
    /// <exception cref="ArgumentException">A range has no values, or there are too many points.</exception>
    public static SweepPoints OfGrid(IReadOnlyList<Axis> axes)
    {
        var grid = new Grid(axes);
        return new(grid.Count, grid.At);
    }

    /// <summary>Samples: a Latin hypercube over all axes.</summary>
    /// <param name="axes">Axes.</param>
    /// <param name="samples">Number of points.</param>
    /// <param name="seed">Seed of the scenario.</param>
    public static SweepPoints OfSamples(IReadOnlyList<Axis> axes, int samples, ulong seed)
    {
        var design = new LatinHypercube(samples, seed);
        return new(samples, i => [.. axes.Select((a, d) => a.At(design.Share(i, d)))]);
    }

    /// <summary>One point: one value per axis.</summary>
    /// <param name="index">0 to <see cref="Count"/> - 1.</param>
    public AxisValue[] At(int index) => _at(index);
}
