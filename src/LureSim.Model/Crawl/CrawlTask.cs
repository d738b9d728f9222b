using LureSim.Model.Reels;

namespace LureSim.Model.Crawl;

/// <summary>A lure crawls over a mat, twitch by twitch, toward an opening in it or its edge.</summary>
/// <param name="DistanceM">Straight distance from rod tip to line tie at the start, m.</param>
/// <param name="ToOpeningM">Way over plants from the line tie to the opening, m.</param>
/// <param name="CadencePerS">Twitches per second.</param>
/// <param name="StrokeM">B: rigid tip travel of a twitch, m.</param>
/// <param name="DurationS">Longest simulated time, s.</param>
public sealed record CrawlTask(
    [property: Parameter("distance", "m", 2.0, 60.0)] double DistanceM = 12.0,
    [property: Parameter("way", "m", 0.1, 40.0)] double ToOpeningM = 3.0,
    [property: Parameter("f", "1/s", 0.3, 6.0)] double CadencePerS = 1.8,
    [property: Parameter("B", "m", 0.01, 1.0)] double StrokeM = 0.15,
    [property: Parameter("duration", "s", 0.5, 600.0)] double DurationS = 60.0) : ISpec
{
    /// <summary>Level distance from the rod tip that an opening keeps at least, m.</summary>
    public const double LeastDistanceM = 1.0;

    /// <summary>Slack that a hand keeps where a walk needs none, m: a choice.</summary>
    public const double UsualSlackM = 0.05;

    /// <summary>How the handle is turned.</summary>
    public TakeUpSpec TakeUp { get; init; } = new(SlackM: UsualSlackM);

    /// <summary>Numerical settings.</summary>
    public CrawlSolverSpec Solver { get; init; } = new();

    /// <summary>Demands every number inside its range.</summary>
    /// <exception cref="ArgumentException">A value is out of range; the message names it and what is allowed.</exception>
    public void Check() => Parameter.Demand(this);
}

/// <summary>Numerical settings of a crawl.</summary>
/// <param name="Nodes">Line segments N.</param>
/// <param name="StepS">Largest time step, s.</param>
/// <param name="OutputStepS">Spacing of the recorded channels, s.</param>
public sealed record CrawlSolverSpec(
    [property: Parameter("N", "", 2, 400)] int Nodes = 60,
    [property: Parameter("h", "s", 1e-6, 1e-3)] double StepS = 5e-4,
    [property: Parameter("output step", "s", 1e-4, 0.05)] double OutputStepS = 5e-3) : ISpec;
