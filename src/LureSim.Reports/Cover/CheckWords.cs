using LureSim.Model;
using LureSim.Model.Strike;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Strike;
using LureSim.Studies.Cover;

namespace LureSim.Reports.Cover;

/// <summary>One criterion in words: as a condition, as a reason against, and before and after a change.</summary>
/// <param name="Case">Cover.</param>
/// <param name="Shown">Units.</param>
internal sealed record CheckWords(CoverCase Case, Shown Shown)
{
    private int Points => Case.Own.Try.Setup.Hook.Points;

    /// <summary>What must be so for it to pass: follows "when".</summary>
    /// <param name="check">A criterion that a guess decides.</param>
    public string Condition(CoverCheck check) => check.Criterion switch
    {
        CoverCriterion.Lure => "the trebles find their way between the plants",
        CoverCriterion.Sets => $"a point goes in with {Shown.Pull(check.Have.Value / Points)} or less{Guess(check.Need, Points)}",
        CoverCriterion.Holds or CoverCriterion.Boat => $"{Bears(check)}{(check.Criterion == CoverCriterion.Boat ? " at the boat" : "")}",
        CoverCriterion.Drawn => $"{Shown.Pull(check.Have.Value)} at the tip is enough to draw the fish out{Guess(check.Need)}",
        _ => $"a fish that comes swims no faster than {Shown.Speed(check.Have.Value)}{Guess(check.Need, quantity: ShownQuantity.Speed)}",
    };

    /// <summary>Why it fails.</summary>
    /// <param name="check">A criterion that fails.</param>
    public string Reason(CoverCheck check) => check.Criterion switch
    {
        CoverCriterion.Lure => "a lure with trebles cannot be drawn over a mat (common practice, no source)",
        CoverCriterion.Sets => $"the strike does not set {StrikeNames.Points(Points)}: {Shown.Pull(check.Have.Value)} at the hook, at least {Shown.Pull(check.Need.Low)} due",
        CoverCriterion.Holds or CoverCriterion.Boat =>
            $"{StrikeNames.Of(check.Place!.Value)} {StrikeNames.Gives(check.Place.Value)} {(check.Criterion == CoverCriterion.Boat ? "at the boat" : "in the strike")}: "
            + $"{Shown.Pull(check.Need.Value)} on what bears at most {Shown.Pull(check.Have.High)}",
        CoverCriterion.Drawn => $"the fish stays in the plants: {Shown.Pull(check.Need.Low)} at least at the tip draw it out, {Shown.Pull(check.Have.Value)} can be held",
        _ => $"a fish that comes makes slack: {Shown.Speed(check.Need.Low)} at least, the reel wins {Shown.Speed(check.Have.Value)}",
    };

    /// <summary>What a change does to it.</summary>
    /// <param name="before">Before.</param>
    /// <param name="after">After.</param>
    public string Bettered(CoverCheck before, CoverCheck after)
    {
        string end = after.State == CoverState.Passes ? "enough whatever the guesses are" : "then the guesses decide";
        return before.Criterion switch
        {
            CoverCriterion.Lure => "it comes through the plants",
            CoverCriterion.Sets => $"the hook gets {Shown.Pull(after.Have.Value)} instead of {Shown.Pull(before.Have.Value)}, {end} (at most {Shown.Pull(after.Need.High)} due)",
            CoverCriterion.Holds or CoverCriterion.Boat =>
                $"{StrikeNames.Of(after.Place!.Value)}, {(after.Place == before.Place ? "" : "now ")}the weakest {(before.Criterion == CoverCriterion.Boat ? "at the boat" : "in the strike")}, "
                + $"bears {Times(after)} times its load instead of {Times(before)}{(after.Place == before.Place ? "" : $" ({StrikeNames.Of(before.Place!.Value)})")}, {end}",
            CoverCriterion.Drawn => $"{Shown.Pull(after.Have.Value)} can be held at the tip instead of {Shown.Pull(before.Have.Value)}, {end} (at most {Shown.Pull(after.Need.High)} due)",
            _ => $"the reel wins {Shown.Speed(after.Have.Value)} instead of {Shown.Speed(before.Have.Value)}, {end}",
        };
    }

    private static string Times(CoverCheck check) => Trade.Digits(check.Reserve, 2);

    /// <summary>The band of a guess, after what it belongs to; nothing where there is none.</summary>
    /// <param name="band">N or m/s.</param>
    /// <param name="share">How many share it.</param>
    /// <param name="quantity">What it is.</param>
    public string Guess(Ranged band, int share = 1, ShownQuantity quantity = ShownQuantity.Pull) =>
        band.High > band.Low ? $", by guess {Shown.Range(quantity, band.Low / share, band.High / share)}" : "";

    private string Bears(CoverCheck check)
    {
        bool perPoint = check.Place is WeakPlace.HookHold or WeakPlace.HookWire;
        int share = perPoint ? Points : 1;
        string what = check.Place switch
        {
            WeakPlace.HookHold => "a point holds",
            WeakPlace.HookWire => "the wire of a point bears",
            _ => $"{StrikeNames.Of(check.Place!.Value)} bears",
        };
        return $"{what} {Shown.Pull(check.Need.Value / share)}{Guess(check.Have, share)}";
    }
}
