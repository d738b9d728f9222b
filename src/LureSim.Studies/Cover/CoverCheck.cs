using LureSim.Model;
using LureSim.Model.Strike;

namespace LureSim.Studies.Cover;

/// <summary>What is asked of tackle in a cover.</summary>
public enum CoverCriterion
{
    /// <summary>The lure can be drawn there without fouling.</summary>
    Lure,

    /// <summary>The strike sets all points: pull on the hook, N, against what they need.</summary>
    Sets,

    /// <summary>Nothing gives in the strike: strength of the place with the least reserve, N, against its load.</summary>
    Holds,

    /// <summary>Nothing gives at the boat before the drag slips: strength against load, N.</summary>
    Boat,

    /// <summary>The fish is drawn out of the plants: pull that hands, tackle and drag hold at the tip, N, against the one it takes.</summary>
    Drawn,

    /// <summary>The line stays tight on a fish that comes: line won in a short burst, m/s, against its top speed.</summary>
    Tight,
}

/// <summary>What becomes of a criterion, best first.</summary>
public enum CoverState
{
    /// <summary>Passes, whatever the guesses are within their bands.</summary>
    Passes,

    /// <summary>The band of a guess decides.</summary>
    May,

    /// <summary>Fails, whatever the guesses are.</summary>
    Fails,
}

/// <summary>One criterion in one cover.</summary>
/// <param name="Criterion">Which.</param>
/// <param name="State">What becomes of it.</param>
/// <param name="Have">What there is, with the band of its guesses, N or m/s; 0 for the lure.</param>
/// <param name="Need">What it takes, the same way.</param>
/// <param name="Place">What has the least reserve, where something may give.</param>
public sealed record CoverCheck(CoverCriterion Criterion, CoverState State, Ranged Have, Ranged Need, WeakPlace? Place = null)
{
    /// <summary>What there is over what it takes, both by their middle values.</summary>
    public double Reserve => Have.Value / Need.Value;

    /// <summary>Weighs the bands: passes where the least there can be is enough for the most it can take, fails where the most is not enough for the least.</summary>
    /// <param name="criterion">Which.</param>
    /// <param name="have">What there is.</param>
    /// <param name="need">What it takes.</param>
    /// <param name="place">What has the least reserve, or null.</param>
    public static CoverCheck Of(CoverCriterion criterion, Ranged have, Ranged need, WeakPlace? place = null) => new(
        criterion, have.Low >= need.High ? CoverState.Passes : have.High < need.Low ? CoverState.Fails : CoverState.May, have, need, place);
}
