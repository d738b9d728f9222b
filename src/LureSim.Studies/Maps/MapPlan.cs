using LureSim.Studies.Cadence;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Maps;

/// <summary>How a map is drawn.</summary>
/// <param name="CellsX">Coarse cells along x.</param>
/// <param name="CellsY">Coarse cells along y.</param>
/// <param name="Depth">How often a cell at the edge of walking is cut into four.</param>
/// <param name="OtherDepth">The same between patterns that do not walk.</param>
/// <param name="Starts">Most starts per point; far from the edge of walking a point has one.</param>
/// <param name="LockShare">A point walks when at least this share of its starts alternates.</param>
/// <param name="Run">Length and mesh of each run.</param>
/// <param name="Threads">Most threads; 0 = all cores. No result depends on it.</param>
public sealed record MapPlan(
    int CellsX = 12, int CellsY = 8, int Depth = 2, int OtherDepth = 1, int Starts = 3, double LockShare = 0.8, StationaryPlan? Run = null, int Threads = 0)
{
    /// <summary>Lattice points along x.</summary>
    public int Width => (CellsX << Depth) + 1;

    /// <summary>Lattice points along y.</summary>
    public int Height => (CellsY << Depth) + 1;

    /// <summary>Length and mesh of each run.</summary>
    public StationaryPlan Runs => Run ?? new StationaryPlan(CadencePlan.WarmUpS);

    /// <summary>How many indices <see cref="IndexOf"/> may give.</summary>
    public int RunCount => Width * Height * (Starts + 1);

    /// <summary>Which run of the map it is, 0 to <see cref="RunCount"/> less one: the same in every map of this plan.</summary>
    /// <param name="run">Run.</param>
    public int IndexOf(MapRun run) => (((run.I * Height) + run.J) * (Starts + 1)) + run.Start;
}

/// <summary>One run of a map.</summary>
/// <param name="I">Lattice index along x.</param>
/// <param name="J">Lattice index along y.</param>
/// <param name="Start">Which start; one more than the last start of the plan for a run that is made only for its hand.</param>
public readonly record struct MapRun(int I, int J, int Start);
