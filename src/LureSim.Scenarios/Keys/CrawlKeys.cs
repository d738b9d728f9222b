using LureSim.Model;
using LureSim.Model.Crawl;
using LureSim.Model.Reels;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[crawl]</c>. The hand at the reel is that of <c>[retrieve]</c> but for its slack, the plants are those of <c>[cover]</c>.</summary>
public static class CrawlKeys
{
    /// <summary>Distance.</summary>
    public static readonly KeySpec Distance = new("crawl.distance", QuantityKind.Length, "m", "Straight distance from rod tip to line tie at the start.")
    {
        Words = "distance of the crawl",
        Parameter = Parameter.Of<CrawlTask>(nameof(CrawlTask.DistanceM)),
        Lens = Lens.OfCrawl(t => t.DistanceM),
    };

    /// <summary>Way to the opening.</summary>
    public static readonly KeySpec ToOpening = new("crawl.to_opening", QuantityKind.Length, "m", "Way over plants to the opening, or to the edge of the mat, where the crawl ends.")
    {
        Words = "way to the opening",
        Parameter = Parameter.Of<CrawlTask>(nameof(CrawlTask.ToOpeningM)),
        Lens = Lens.OfCrawl(t => t.ToOpeningM),
    };

    /// <summary>Rhythm.</summary>
    public static readonly KeySpec Cadence = new("crawl.cadence", QuantityKind.Frequency, "/s", "Twitches per second or minute.")
    {
        Words = "rhythm of the crawl",
        Parameter = Parameter.Of<CrawlTask>(nameof(CrawlTask.CadencePerS)),
        Lens = Lens.OfCrawl(t => t.CadencePerS),
    };

    /// <summary>Stroke.</summary>
    public static readonly KeySpec Stroke = new("crawl.stroke", QuantityKind.Length, "cm", "Rigid tip travel of a twitch.")
    {
        Words = "stroke of the crawl",
        Parameter = Parameter.Of<CrawlTask>(nameof(CrawlTask.StrokeM)),
        Lens = Lens.OfCrawl(t => t.StrokeM),
    };

    /// <summary>Slack.</summary>
    public static readonly KeySpec Slack = new("crawl.slack", QuantityKind.Length, "cm", "Mean slack the angler keeps: unstretched line out minus straight distance.")
    {
        Words = "slack of the crawl",
        Default = Quantity.Format(CrawlTask.UsualSlackM, QuantityKind.Length),
        Parameter = Parameter.Of<TakeUpSpec>(nameof(TakeUpSpec.SlackM)),
        Lens = Lens.OfCrawl(t => t.TakeUp.SlackM),
    };

    /// <summary>Duration.</summary>
    public static readonly KeySpec Duration = new("crawl.duration", QuantityKind.Time, "s", "Time after which the crawl ends short of the opening.")
    {
        Words = "longest crawl",
        Parameter = Parameter.Of<CrawlTask>(nameof(CrawlTask.DurationS)),
        Lens = Lens.OfCrawl(t => t.DurationS),
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All = [Distance, ToOpening, Cadence, Stroke, Slack, Duration];
}
