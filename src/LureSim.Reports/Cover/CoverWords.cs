using LureSim.Model.Cover;
using LureSim.Model.Crawl;
using LureSim.Model.Landing;
using LureSim.Model.Strike;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Strike;
using LureSim.Studies.Cover;
using LureSim.Studies.Strike;

namespace LureSim.Reports.Cover;

/// <summary>What one cover makes of the tackle, in sentences.</summary>
/// <param name="Case">Cover.</param>
/// <param name="Shown">Units.</param>
internal sealed record CoverWords(CoverCase Case, Shown Shown)
{
    private const int MostChanges = 4;

    private CheckWords Words => new(Case, Shown);

    private StrikeSummary Strike => Case.Own.Strike.Summary;

    private LandingResult Landing => Case.Own.Landing;

    private int Points => Case.Own.Try.Setup.Hook.Points;

    /// <summary>The verdict; with conditions it ends with "when".</summary>
    public string Verdict() => Case.Verdict != CoverVerdict.DoesNot
        ? CoverNames.Of(Case.Verdict)
        : $"does not work: {string.Join("; ", Case.Own.Checks.Where(c => c.State == CoverState.Fails).Select(Words.Reason))}";

    /// <summary>What must be so for it to work, here alone, then what must be so in any cover.</summary>
    public (IReadOnlyList<string> Here, IReadOnlyList<string> Anywhere) Conditions()
    {
        if (Case.Verdict != CoverVerdict.WorksWhen)
        {
            return ([], []);
        }

        CoverCheck[] may = [.. (Case.Rescue?.After ?? Case.Own).Checks.Where(c => c.State == CoverState.May)];
        IEnumerable<string> change = Case.Rescue is CoverHelp rescue ? [$"you {CoverNames.Of(rescue.Change, Shown)}"] : [];
        return ([.. change, .. may.Where(c => !IsAnywhere(c)).Select(Words.Condition)], [.. may.Where(IsAnywhere).Select(Words.Condition)]);
    }

    /// <summary>How it comes about here, a sentence or two for each step.</summary>
    public IEnumerable<string> Story() => [Lure(), Strikes(), FirstToGive(), Drag(), Drawn(), Lifted()];

    /// <summary>What is the same in any cover.</summary>
    public IEnumerable<string> Anywhere() => [Boat(), Comes()];

    /// <summary>What to change, best first.</summary>
    public IEnumerable<string> Changes() => Case.Helps.Take(MostChanges).Select(h => $"{CoverNames.Of(h.Change, Shown)}: {string.Join("; ", h.Bettered.Select(b => Words.Bettered(b.Before, b.After)))}{Left(h)}.");

    private static bool IsAnywhere(CoverCheck check) => check.Criterion is CoverCriterion.Boat or CoverCriterion.Tight;

    private static string Left(CoverHelp help)
    {
        int fails = help.After.Count(CoverState.Fails);
        return fails == 0 ? "" : $"; still in the way: {string.Join(", ", help.After.Checks.Where(c => c.State == CoverState.Fails).Select(Short))}";
    }

    private static string Short(CoverCheck check) => check.Criterion switch
    {
        CoverCriterion.Lure => "the trebles",
        CoverCriterion.Sets => "setting the hook",
        CoverCriterion.Holds => "what gives in the strike",
        CoverCriterion.Boat => "what gives at the boat",
        CoverCriterion.Drawn => "the plants' hold on the fish",
        _ => "a fish that comes",
    };

    private string Lure() => Case.Own[CoverCriterion.Lure].State switch
    {
        CoverState.Passes => Case.Kind == CoverKind.Open ? "Lure: nothing to foul on." : "Lure: no treble; its hook is taken to lie against the body, points up. One that hangs free fouls like a treble." + Crawls(),
        CoverState.May => "Lure: trebles foul on single plants; between them they come through (common practice, no source).",
        _ => "Lure: trebles foul at once, a lure with them cannot be drawn over a mat (common practice, no source).",
    };

    private string Crawls() => Case.Crawl is CrawlResult crawl
        ? $" {Shown.Pull(crawl.Statics.PullN)} start it over the mat; a twitch of {Shown.Size(crawl.Task.StrokeM)} brings it {Shown.Size(crawl.Summary.WayPerTwitchM)} on."
        : "";

    private string Strikes()
    {
        CoverCheck sets = Case.Own[CoverCriterion.Sets];
        string enough = sets.State switch { CoverState.Passes => "enough", CoverState.May => "the guess decides", _ => "too little" };
        double lost = Strike.LostToPlantsN, tip = Strike.HookForcePeakN + lost;
        string plants = Case.Kind != CoverKind.Open && lost > 0.0 ? $" Plants and water take {Shown.Pull(lost)} of {Shown.Pull(tip)} at the tip on the way." : "";
        return $"Strike: {StrikeNames.Of(Case.Own.Try.Task.Stroke.Style)} from {Shown.Distance(Case.Own.Try.Task.DistanceM)} brings {Shown.Pull(sets.Have.Value)} to the hook; "
            + $"{StrikeNames.Points(Points)} {(Points == 1 ? "needs" : "need")} {Shown.Pull(sets.Need.Value)}{Words.Guess(sets.Need)}: {enough}.{plants}";
    }

    private string FirstToGive()
    {
        Margin first = Strike.FirstToGive;
        return first.Ratio >= 1.0
            ? $"First to give: {StrikeNames.Of(first.Place)}; it bears {Trade.Digits(first.Ratio, 1)} times its load in this strike ({Shown.Pull(first.StrengthN)} against {Shown.Pull(first.LoadN)})."
            : $"First to give: {StrikeNames.Of(first.Place)}; it {StrikeNames.Gives(first.Place)} in this strike ({Shown.Pull(first.LoadN)} on what bears {Shown.Pull(first.StrengthN)}).";
    }

    private string Drag()
    {
        DragWindow window = Case.Window;
        double now = Case.Own.Try.Setup.Reel.DragN;
        string all = StrikeNames.Points(Points), set = $"it is set to {Shown.Pull(now)}";
        if (window.InStrike.LowN is not double low)
        {
            return $"Drag: none sets {all}, not even shut; {set}.";
        }

        if (window.InStrike.IsEmpty)
        {
            return $"Drag: none sets {all} and spares everything, {StrikeNames.Of(window.InStrike.Gives!.Value)} {StrikeNames.Gives(window.InStrike.Gives.Value)} first; {set}.";
        }

        double high = window.InStrike.HighN!.Value;
        string span = window.InStrike.Gives is WeakPlace place
            ? $"{Shown.Range(ShownQuantity.Pull, low, high)} sets {all} and spares everything in the strike; above it {StrikeNames.Of(place)} {StrikeNames.Gives(place)}"
            : $"from {Shown.Pull(low)} on it sets {all}, and in the strike nothing gives even with the drag shut";
        string inside = now < low ? "too loose" : now > high ? "too tight" : "inside";
        string best = window.Advice.DragN is double advised && Math.Abs(advised - now) > 0.05 * now ? $" Best is {Shown.Pull(advised)}{Why(window.Advice.Reason)}." : "";
        return $"Drag: {span}; {set}: {inside}.{best}";
    }

    private static string Why(DragAdviceReason reason) => reason switch
    {
        DragAdviceReason.Middle => ", as far over the least as under the most",
        DragAdviceReason.Shut => ", shut: every bit of line that slips lets the fish in deeper",
        DragAdviceReason.HighAmongPlants => ", a fifth under the most, so that no line slips among the plants",
        DragAdviceReason.SetThenEase => ", the least that sets the hook",
        _ => "",
    };

    private string Drawn()
    {
        CoverCheck drawn = Case.Own[CoverCriterion.Drawn];
        string can = $"{Shown.Pull(drawn.Have.Value)} can be held there for a moment";
        if (Case.Kind == CoverKind.Open)
        {
            return $"Then: drawing the fish through water takes {Shown.Pull(drawn.Need.Value)} at the tip, {can}.";
        }

        string verdict = drawn.State switch { CoverState.Passes => "it comes", CoverState.May => "the grip of the plants decides", _ => "it stays" };
        return $"Then: drawing the fish through the plants takes {Shown.Pull(drawn.Need.Value)} at the tip{Words.Guess(drawn.Need)}; {can}: {verdict}. "
            + $"Once its head is up, {Shown.Pull(Landing.Plants.Over.TipN)} slide it over the top.";
    }

    private string Lifted()
    {
        double due = Case.Own.DueKg, lift = Landing.BestLift.MassKg;
        string what = Case.Own.Try.Setup.Cover.WeedKg > 0.0 ? "fish and weed" : "the fish";
        return $"Lift: the rod in your hands swings in {Shown.Mass(lift)}; {what} {(Case.Own.Try.Setup.Cover.WeedKg > 0.0 ? "weigh" : "weighs")} {Shown.Mass(due)}: {(lift >= due ? "it can be swung in" : "use a net")}.";
    }

    private string Boat()
    {
        CoverCheck boat = Case.Own[CoverCriterion.Boat];
        string ease = Case.Own.EasedN < Case.Own.Try.BoatDragN ? $" Eased to {Shown.Pull(Case.Own.EasedN)} it spares everything whatever the guesses are." : "";
        return $"Boat: the drag as set starts at {Shown.Pull(boat.Need.Value)} there, rod up; {StrikeNames.Of(boat.Place!.Value)}, the weakest, bears {Shown.Pull(boat.Have.Value)}{Words.Guess(boat.Have)}.{ease}";
    }

    private string Comes()
    {
        CoverCheck tight = Case.Own[CoverCriterion.Tight];
        string kept = tight.State switch { CoverState.Passes => "the line stays tight", CoverState.May => "its speed decides", _ => "the line goes slack" };
        return $"If it comes at you: a burst at the handle wins {Shown.Speed(tight.Have.Value)}; the fish swims up to {Shown.Speed(tight.Need.Value)}"
            + $"{Words.Guess(tight.Need, quantity: ShownQuantity.Speed)}: {kept}. One sweep of the rod wins {Shown.Distance(Landing.SweepM)} once.";
    }
}
