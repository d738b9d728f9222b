using LureSim.Model.Assembly;

namespace LureSim.Model.Crawl;

/// <summary>One twitch of a crawl.</summary>
/// <param name="StartS">Time of its pull, s.</param>
/// <param name="WayM">Way of the lure toward the rod until the next pull, m.</param>
/// <param name="PullPeakN">Highest tension at the lure, N.</param>
public sealed record CrawlTwitch(double StartS, double WayM, double PullPeakN);

/// <summary>Everything that a crawl tells.</summary>
/// <param name="Setup">Set-up.</param>
/// <param name="Task">Crawl.</param>
/// <param name="Series">Channels over time.</param>
/// <param name="Statics">What it needs by statics.</param>
/// <param name="Summary">Figures.</param>
/// <param name="Counters">Solver counters.</param>
/// <param name="Failure">Why the run stopped early, or null.</param>
public sealed record CrawlResult(
    Setup Setup, CrawlTask Task, Series Series, CrawlStatics Statics, CrawlSummary Summary, SolverCounters Counters, string? Failure);
