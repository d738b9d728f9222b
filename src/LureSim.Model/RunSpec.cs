using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Retrieve;
using LureSim.Model.Rods;

namespace LureSim.Model;

/// <summary>
/// Everything one run depends on: physics, solver settings and seed. Immutable; a study is a list of these made with
/// <c>with</c>. Two equal specs give the same bits.
/// </summary>
/// <param name="Title">What the scenario shows, for headings.</param>
/// <param name="Water">Water.</param>
/// <param name="Air">Air and wind.</param>
/// <param name="Angler">Hands and rod position.</param>
/// <param name="Rod">Rod.</param>
/// <param name="Reel">Reel.</param>
/// <param name="Line">Main line.</param>
/// <param name="Leader">Leader, or none.</param>
/// <param name="Lure">Lure.</param>
/// <param name="Retrieve">The retrieve.</param>
/// <param name="Solver">Numerical settings.</param>
/// <param name="Seed">Seed of every random draw.</param>
public sealed record RunSpec(
    string Title,
    WaterSpec Water,
    AirSpec Air,
    AnglerSpec Angler,
    RodSpec Rod,
    ReelSpec Reel,
    LineSpec Line,
    LeaderSpec? Leader,
    LureSpec Lure,
    RetrieveSpec Retrieve,
    SolverSpec Solver,
    ulong Seed = 1);
