using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Crawl;
using LureSim.Model.Pool;
using LureSim.Model.Retrieve;
using LureSim.Model.Strike;

namespace LureSim.Scenarios;

/// <summary>What can be done with a set-up.</summary>
[Flags]
public enum Activities
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>Bring a lure home.</summary>
    Retrieve = 1,

    /// <summary>Cast it.</summary>
    Cast = 2,

    /// <summary>Lay it on the water at rest.</summary>
    Rest = 4,

    /// <summary>Take it to a pool.</summary>
    Pool = 8,

    /// <summary>Set the hook in a fish and bring it out of what grows there.</summary>
    Strike = 16,

    /// <summary>Let it crawl over a mat.</summary>
    Crawl = 32,

    /// <summary>All.</summary>
    All = Retrieve | Cast | Rest | Pool | Strike | Crawl,
}

/// <summary>A set-up and what a scenario does with it.</summary>
/// <param name="Setup">Set-up.</param>
/// <param name="Retrieve">The retrieve; null when it has faults and was not asked for.</param>
/// <param name="Cast">The cast; null when it has faults and was not asked for.</param>
/// <param name="Pool">What is done in a pool; null when it has faults and was not asked for.</param>
/// <param name="Strike">The strike; null when it has faults and was not asked for.</param>
/// <param name="Crawl">The crawl; null when it has faults and was not asked for.</param>
public sealed record Scenario(Setup Setup, RetrieveTask? Retrieve, CastTask? Cast, PoolTask? Pool, StrikeTask? Strike, CrawlTask? Crawl);
