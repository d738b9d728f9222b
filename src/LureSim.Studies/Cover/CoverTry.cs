using LureSim.Model.Assembly;
using LureSim.Model.Landing;
using LureSim.Model.Strike;

namespace LureSim.Studies.Cover;

/// <summary>Tackle and strike that are weighed in one cover.</summary>
/// <param name="Setup">Set-up with that cover.</param>
/// <param name="Task">Strike.</param>
/// <param name="BoatDragN">Drag while the fish is at the boat, N: as set for the strike, or eased.</param>
public sealed record CoverTry(Setup Setup, StrikeTask Task, double BoatDragN);

/// <summary>What became of it.</summary>
/// <param name="Try">What was weighed.</param>
/// <param name="Strike">Its strike.</param>
/// <param name="Landing">Its holding and landing.</param>
/// <param name="Checks">One of each criterion, in their order.</param>
public sealed record CoverTrial(CoverTry Try, StrikeResult Strike, LandingResult Landing, IReadOnlyList<CoverCheck> Checks)
{
    /// <summary>Pull at the boat that starts the drag over its setting.</summary>
    public required double BoatFactor { get; init; }

    /// <summary>Drag at the boat at which nothing gives, whatever the guesses are, N; may be more than the reel's.</summary>
    public double EasedN => this[CoverCriterion.Boat].Have.Low / BoatFactor;

    /// <summary>Fish and weed, kg.</summary>
    public double DueKg => Try.Setup.Fish.MassKg + Try.Setup.Cover.WeedKg;

    /// <summary>One criterion.</summary>
    /// <param name="criterion">Which.</param>
    public CoverCheck this[CoverCriterion criterion] => Checks[(int)criterion];

    /// <summary>How many criteria are in a state.</summary>
    /// <param name="state">State.</param>
    public int Count(CoverState state) => Checks.Count(c => c.State == state);
}
