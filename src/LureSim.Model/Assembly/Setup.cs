using LureSim.Model.Cover;
using LureSim.Model.Fish;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Rods;

namespace LureSim.Model.Assembly;

/// <summary>
/// Who fishes with what, where: all that does not depend on what is done with it. An activity adds its task. Immutable; a study is a list of
/// these made with <c>with</c>. Equal set-ups and tasks give the same bits.
/// </summary>
/// <param name="Title">What the scenario shows, for headings.</param>
/// <param name="Water">Water.</param>
/// <param name="Air">Air and wind.</param>
/// <param name="Angler">Stance and wrist.</param>
/// <param name="Hands">Hands of a cast.</param>
/// <param name="Rod">Rod.</param>
/// <param name="Reel">Reel with its spools.</param>
/// <param name="Line">Main line.</param>
/// <param name="Leader">Leader, or none.</param>
/// <param name="Lure">Lure.</param>
/// <param name="Seed">Seed of every random draw.</param>
public sealed record Setup(
    string Title,
    WaterSpec Water,
    AirSpec Air,
    AnglerSpec Angler,
    HandsSpec Hands,
    RodSpec Rod,
    ReelSpec Reel,
    LineSpec Line,
    [property: MayBeMissing] LeaderSpec? Leader,
    LureSpec Lure,
    ulong Seed = 1) : ISpec
{
    /// <summary>Hook in the fish: points that hold, what they need and what they bear.</summary>
    public HookHold Hook { get; init; } = new();

    /// <summary>Fish at the end of the line.</summary>
    public FishSpec Fish { get; init; } = new();

    /// <summary>Plants between fish and angler.</summary>
    public CoverSpec Cover { get; init; } = new();

    /// <summary>Demands every number inside its range and parts that fit together.</summary>
    /// <exception cref="ArgumentException">A value is out of range; the message names it and what is allowed.</exception>
    public void Check()
    {
        Parameter.Demand(this);
        Require.InRange(Rod.FreeLengthM, RodSpec.LeastFreeLengthM, double.PositiveInfinity);
        LureSpecCheck.Demand(Lure);
    }
}
