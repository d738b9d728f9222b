namespace LureSim.Studies.Sayings;

/// <summary>How many draws sayings are tried with.</summary>
/// <param name="Draws">Draws of the guesses in every place, at least 2.</param>
/// <param name="Threads">Most threads; 0 = all cores. No result depends on it.</param>
public sealed record SayingPlan(int Draws = 9, int Threads = 0)
{
    /// <summary>Fewest and most draws.</summary>
    public const int Fewest = 2, Most = 1000;

    /// <summary>Draws that are run again on a finer mesh, and again with finer steps: a third of them, at least 2.</summary>
    public int FinerDraws => Math.Max(2, Draws / 3);

    /// <summary>Draws from another seed: half of them, at least 2.</summary>
    public int OtherDraws => Math.Max(2, Draws / 2);
}
