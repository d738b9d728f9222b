using LureSim.Model;
using LureSim.Studies.Across;

namespace LureSim.Studies.Maps;

/// <summary>A map with its axes.</summary>
/// <param name="Title">What is mapped.</param>
/// <param name="XKey">Quantity along x.</param>
/// <param name="YKey">Quantity along y.</param>
/// <param name="X">Numbers along x, in its unit, rising.</param>
/// <param name="Y">Numbers along y, in its unit, rising.</param>
/// <param name="Grid">Patterns and glide.</param>
/// <param name="Plan">How it was drawn.</param>
public sealed record MapResult(string Title, AcrossKey XKey, AcrossKey YKey, ValueList<double> X, ValueList<double> Y, MapGrid Grid, MapPlan Plan)
{
    /// <summary>The sample that glides widest of those that walk, or null.</summary>
    public MapSample? Widest => MapGrid.WidestOf(Grid.Samples.Select(s => s.Point)) is { } widest ? Grid.Samples.First(s => s.Point == widest) : null;

    /// <summary>Share of the map's lattice points with a pattern.</summary>
    /// <param name="pattern">Pattern.</param>
    public double Share(Model.Retrieve.WalkPattern pattern)
    {
        int count = 0;
        foreach (Model.Retrieve.WalkPattern? p in Grid.Patterns)
        {
            count += p == pattern ? 1 : 0;
        }

        return count / (double)Grid.Patterns.Length;
    }

    /// <summary>Stretches of x that walk in a row; an edge lies in the middle between two lattice points.</summary>
    /// <param name="row">Lattice index along y.</param>
    public IReadOnlyList<(double From, double To)> Walking(int row)
    {
        var spans = new List<(double From, double To)>();
        for (int i = 0; i < X.Count; i++)
        {
            if (!Walks(i, row))
            {
                continue;
            }

            int last = i;
            while (last + 1 < X.Count && Walks(last + 1, row))
            {
                last++;
            }

            spans.Add((i == 0 ? X[0] : 0.5 * (X[i - 1] + X[i]), last == X.Count - 1 ? X[^1] : 0.5 * (X[last] + X[last + 1])));
            i = last;
        }

        return spans;
    }

    private bool Walks(int i, int row) => Grid.Patterns[i, row] == Model.Retrieve.WalkPattern.Alternating;
}
