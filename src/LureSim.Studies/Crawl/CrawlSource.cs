using LureSim.Model;
using LureSim.Model.Cover;
using LureSim.Model.Crawl;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Figures;

namespace LureSim.Studies.Crawl;

/// <summary>The figures of <c>crawl</c>. One that does not exist (it does not come to the opening) is NaN: an empty cell.</summary>
public sealed class CrawlSource() : FigureSource<CrawlResult>("crawl", Activities.Crawl, ["end"], CrawlFigures.All)
{
    // Of a lure on plants its mass and the height of its tie over the belly enter, of the rod all but what only a cast notices; no turns of the handle are
    // counted, and a leader lies on plants all the way.
    private static readonly KeySpec[]
        OfLure =
        [
            LureKeys.Shape, LureKeys.Length, LureKeys.Diameter, LureKeys.Height, LureFormKeys.NoseBluntness, LureFormKeys.TailBluntness, LureFormKeys.Thickest, LureFormKeys.Outline, LureBuildKeys.Build, .. LureBuildKeys.OfMass, LureKeys.Mass, LureKeys.MassWithHooks, LureKeys.Tie, LureKeys.TieZ, LureKeys.Hooks, LureKeys.Stations,
        ],
        Unread =
        [
            RodKeys.AirDrag, RodKeys.ButtDiameter, ReelKeys.Ratio, LineKeys.Set.Strength, LeaderKeys.Set.Strength, LeaderKeys.Set.Film,
        ];

    /// <inheritdoc/>
    public override bool Reads(KeySpec key, ScenarioResult scenario)
    {
        ArgumentNullException.ThrowIfNull(key);
        ArgumentNullException.ThrowIfNull(scenario);
        return (key.ReadBy & Activities.Crawl) != 0 && !Unread.Contains(key) && (key.Table != "lure" || OfLure.Contains(key))
            && RetrieveSource.TurnsWith(key, scenario) && RetrieveSource.WindsWith(key, scenario.Crawl!.TakeUp.Mode);
    }

    /// <inheritdoc/>
    public override bool Draws(KeySpec key, ScenarioResult scenario) => Reads(key, scenario) && RetrieveSource.IsNoHeldDrag(key, scenario);

    /// <summary>Why a valid scenario has no crawl, or null.</summary>
    /// <param name="scenario">Valid scenario.</param>
    public static string? Refusal(ScenarioResult scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        string kind = CoverKeys.Kind.Choices[(int)scenario.Setup!.Cover.Kind].Name;
        return scenario.Setup.Cover.Kind == CoverKind.Mat ? null : $"\"{kind}\" has no mat to crawl over; \"mat\" is due";
    }

    /// <summary>Lets the lure of a scenario crawl.</summary>
    /// <param name="scenario">Valid scenario with a mat.</param>
    /// <param name="context">Progress and stop.</param>
    public static Outcome<CrawlResult> OverMat(ScenarioResult scenario, RunContext context)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return CrawlRun.Run(scenario.Setup!, scenario.Crawl!, context);
    }

    /// <inheritdoc/>
    public override FigureRow Run(ScenarioResult scenario, CancellationToken stop)
    {
        if (Refusal(scenario) is string refusal)
        {
            return FigureRow.Failed($"{CoverKeys.Kind.Path}: {refusal}");
        }

        Outcome<CrawlResult> outcome = OverMat(scenario, new(null, stop));
        return outcome.IsWhole ? Row([CrawlFigures.Name(outcome.Result.Summary.End)], outcome.Result) : FigureRow.Failed(outcome.Failure.Reason);
    }
}
