using LureSim.Model.Crawl;
using LureSim.Reports.Kit.Text;

namespace LureSim.Reports.Crawl;

/// <summary>What becomes of a crawl, in words for terminal and picture.</summary>
internal static class CrawlWords
{
    /// <summary>Whether, when and how it comes to the opening.</summary>
    /// <param name="crawl">Crawl.</param>
    /// <param name="shown">Units.</param>
    public static string End(CrawlResult crawl, Shown shown)
    {
        CrawlSummary s = crawl.Summary;
        string way = shown.Distance(crawl.Task.ToOpeningM), steps = $"{shown.Size(s.WayPerTwitchM)} a twitch";
        return s.End switch
        {
            CrawlEnd.Arrives => $"Comes {way} to the opening in {Trade.Fixed(s.TimeToOpeningS!.Value, 1)} s and {Twitches(s.TwitchesToOpening!.Value)}, {steps}",
            CrawlEnd.Late => $"Comes {shown.Distance(s.WayM)} of {way} in {Trade.Fixed(crawl.Series["time_s"][^1], 1)} s, {steps}",
            _ => $"Hardly moves: {s.LostTwitches} of {Twitches(s.Twitches.Count)} lost in slack, stretch and the bend of the rod",
        };
    }

    private static string Twitches(int count) => count == 1 ? "1 twitch" : $"{count} twitches";
}
