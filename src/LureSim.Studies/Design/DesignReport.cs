using LureSim.Model.Lures;
using LureSim.Model.Margin;
using LureSim.Model.Media;
using LureSim.Model.Trim;
using LureSim.Studies.Cadence;

namespace LureSim.Studies.Design;

/// <summary>What a builder wants to know of a lure before wood is cut.</summary>
/// <param name="Title">Title of the scenario.</param>
/// <param name="Water">Water that it floats in.</param>
/// <param name="Task">Tow and pull of every margin.</param>
/// <param name="Own">The lure as it is, with its margin.</param>
/// <param name="Rest">How it floats: righting arms, profile, pull that dips the nose; null where it does not float.</param>
/// <param name="Hooks">Hooks that it carries; empty where none is given by its size.</param>
/// <param name="Tolerance">What errors of building do; null where it does not float.</param>
/// <param name="Changes">What a builder can change, the change that moves the margin most first.</param>
/// <param name="Rhythms">Rhythms that walk; null where they were not asked for, or there is no twitched retrieve.</param>
/// <param name="Answer">Where to put how much weight; null where nothing was wished.</param>
/// <param name="Walk">Search for a walk; null where none was wished.</param>
public sealed record DesignReport(
    string Title, WaterState Water, MarginTask Task, DesignPoint Own, TrimResult? Rest, IReadOnlyList<HookRow> Hooks, ToleranceTable? Tolerance,
    IReadOnlyList<RankedChange> Changes, CadenceResult? Rhythms = null, BallastAnswer? Answer = null, WalkAnswer? Walk = null)
{
    /// <summary>The lure after the answer or the best candidate of the search, with its margin; null without either.</summary>
    public DesignPoint? After { get; init; }

    /// <summary>How the lure floats after it; null without either.</summary>
    public TrimResult? RestAfter { get; init; }

    /// <summary>The lure to build: the one after, else the one as it is.</summary>
    public LureSpec Lure => (After ?? Own).Lure;
}
