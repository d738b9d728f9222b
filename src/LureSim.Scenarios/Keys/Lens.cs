using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Crawl;
using LureSim.Model.Pool;
using LureSim.Model.Retrieve;
using LureSim.Model.Strike;

namespace LureSim.Scenarios.Keys;

/// <summary>Where the value of a key lies in a scenario.</summary>
/// <param name="Get">Reads it, SI; NaN where there is none, null where the task that holds it is missing.</param>
/// <param name="ReadBy">Activities that read it.</param>
public sealed record Lens(Func<Scenario, double?> Get, Activities ReadBy)
{
    /// <summary>A value of the set-up.</summary>
    /// <param name="get">Reads it.</param>
    /// <param name="readBy">Activities that read it.</param>
    public static Lens OfSetup(Func<Setup, double> get, Activities readBy = Activities.All) => new(s => get(s.Setup), readBy);

    /// <summary>A value that only a cast reads.</summary>
    /// <param name="get">Reads it.</param>
    public static Lens OfCast(Func<CastTask, double> get) => new(s => s.Cast is CastTask task ? get(task) : null, Activities.Cast);

    /// <summary>A value of a retrieve.</summary>
    /// <param name="get">Reads it.</param>
    /// <param name="readBy">Activities that read it.</param>
    public static Lens OfRetrieve(Func<RetrieveTask, double> get, Activities readBy = Activities.Retrieve) => new(s => s.Retrieve is RetrieveTask task ? get(task) : null, readBy);

    /// <summary>A value that only a pool test reads.</summary>
    /// <param name="get">Reads it.</param>
    public static Lens OfPool(Func<PoolTask, double> get) => new(s => s.Pool is PoolTask task ? get(task) : null, Activities.Pool);

    /// <summary>A value that only a strike reads.</summary>
    /// <param name="get">Reads it.</param>
    public static Lens OfStrike(Func<StrikeTask, double> get) => new(s => s.Strike is StrikeTask task ? get(task) : null, Activities.Strike);

    /// <summary>A value that only a crawl reads.</summary>
    /// <param name="get">Reads it.</param>
    public static Lens OfCrawl(Func<CrawlTask, double> get) => new(s => s.Crawl is CrawlTask task ? get(task) : null, Activities.Crawl);
}
