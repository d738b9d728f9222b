using LureSim.Model.Crawl;
using LureSim.Model.Reels;
using LureSim.Model.Rods;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Mapping;

/// <summary>Table <c>[crawl]</c> to <see cref="CrawlTask"/>.</summary>
internal static class CrawlMapper
{
    /// <summary>Maps; refused values stay NaN.</summary>
    /// <param name="c">Values.</param>
    /// <param name="hand">The hand at the reel.</param>
    /// <param name="rod">Rod, or null when it was refused.</param>
    public static CrawlTask Map(MapContext c, TakeUpSpec hand, RodSpec? rod)
    {
        CrawlTask task = new(
            DistanceM: c[CrawlKeys.Distance],
            ToOpeningM: c[CrawlKeys.ToOpening],
            CadencePerS: c[CrawlKeys.Cadence],
            StrokeM: c[CrawlKeys.Stroke],
            DurationS: c[CrawlKeys.Duration])
        {
            TakeUp = hand with { SlackM = c[CrawlKeys.Slack] },
            Solver = new(Nodes: (int)c[SolverKeys.Nodes], StepS: c[SolverKeys.Step], OutputStepS: c[SolverKeys.OutputStep]),
        };
        if (rod is not null)
        {
            Reach(c, task, rod);
        }

        return task;
    }

    // The opening lies before the rod tip, not under it.
    private static void Reach(MapContext c, CrawlTask task, RodSpec rod)
    {
        double tip = c[AnglerKeys.HandHeight] + (rod.FreeLengthM * Math.Sin(c[AnglerKeys.RodElevation]));
        double level = Math.Sqrt(Math.Max(0.0, (task.DistanceM * task.DistanceM) - (tip * tip))), most = level - CrawlTask.LeastDistanceM;
        if (task.ToOpeningM > most)
        {
            c.Fault(CrawlKeys.ToOpening, string.Concat(
                $"{MapContext.Show(CrawlKeys.ToOpening, task.ToOpeningM)} over plants end under the rod tip; with crawl.distance, {MapContext.Show(CrawlKeys.Distance, task.DistanceM)}, ",
                most >= CrawlKeys.ToOpening.Low ? $"at most {MapContext.Show(CrawlKeys.ToOpening, Math.Floor(100.0 * most) / 100.0)} is due" : "nothing fits; start farther out"));
        }

        if (task.TakeUp.SlackM >= task.DistanceM)
        {
            c.Fault(CrawlKeys.Slack, $"more slack than distance; less than {MapContext.Show(CrawlKeys.Slack, task.DistanceM)} is due");
        }
    }
}
