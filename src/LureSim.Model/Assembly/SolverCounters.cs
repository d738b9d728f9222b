namespace LureSim.Model.Assembly;

/// <summary>Solver counters of a run.</summary>
/// <param name="Steps">Steps taken.</param>
/// <param name="Halved">Steps redone because the step rule was broken.</param>
/// <param name="TridiagonalSolves">Tridiagonal passes.</param>
/// <param name="RoundCapHits">Solves that reached the round limit of the active set.</param>
/// <param name="LargestStepRatio">Largest dt sqrt(T/mu)/l of an accepted step (limit 0.5).</param>
public sealed record SolverCounters(int Steps, int Halved, long TridiagonalSolves, int RoundCapHits, double LargestStepRatio)
{
    /// <summary>A run whose energy account is open by more than this share is no result: it has failed.</summary>
    public const double MostEnergyOpenShare = 0.01;

    /// <summary>What the energy account leaves open over the work of hand, reel, wind and weight, 0 or more.</summary>
    public double EnergyOpenShare { get; init; }
}
