using LureSim.Model.Cover;
using LureSim.Model.Crawl;
using LureSim.Studies.Strike;

namespace LureSim.Studies.Cover;

/// <summary>What tackle is worth in a cover.</summary>
public enum CoverVerdict
{
    /// <summary>Every criterion passes.</summary>
    Works,

    /// <summary>None fails, or none does after a change on the spot (drag, style, distance); guesses or that change decide.</summary>
    WorksWhen,

    /// <summary>A criterion fails, and no change on the spot helps.</summary>
    DoesNot,
}

/// <summary>One cover.</summary>
/// <param name="Own">The tackle as it is.</param>
/// <param name="Window">Drag settings that set the hook and spare everything.</param>
/// <param name="Helps">Changes that better something and spoil nothing, best first.</param>
public sealed record CoverCase(CoverTrial Own, DragWindow Window, IReadOnlyList<CoverHelp> Helps)
{
    /// <summary>A lure without trebles that crawls over a mat, a few twitches; null elsewhere.</summary>
    public CrawlResult? Crawl { get; init; }

    /// <summary>Which cover.</summary>
    public CoverKind Kind => Own.Try.Setup.Cover.Kind;

    /// <summary>The change on the spot after which nothing fails; null where nothing fails as it is, or none helps.</summary>
    public CoverHelp? Rescue => Own.Count(CoverState.Fails) == 0 ? null : Helps.FirstOrDefault(h => h.Change.IsOnTheSpot && h.After.Count(CoverState.Fails) == 0);

    /// <summary>Verdict.</summary>
    public CoverVerdict Verdict =>
        Own.Count(CoverState.Passes) == Own.Checks.Count ? CoverVerdict.Works
        : Own.Count(CoverState.Fails) == 0 || Rescue is not null ? CoverVerdict.WorksWhen : CoverVerdict.DoesNot;
}

/// <summary>One person's tackle in open water, sparse plants and a thick mat.</summary>
/// <param name="Title">Title of the scenario.</param>
/// <param name="LabelN">Label of the line, N.</param>
/// <param name="Cases">The three covers, thinnest first.</param>
public sealed record CoverReport(string Title, double LabelN, IReadOnlyList<CoverCase> Cases);
