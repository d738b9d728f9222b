using LureSim.Model.Cover;
using LureSim.Model.Landing;
using LureSim.Reports.Kit.Text;

namespace LureSim.Reports.Strike;

/// <summary>Holding and landing in sentences.</summary>
internal static class LandingStory
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>A few sentences, one per line.</summary>
    /// <param name="landing">Holding and landing.</param>
    /// <param name="shown">Units.</param>
    public static IEnumerable<string> Sentences(LandingResult landing, Shown shown) =>
        [Pull(landing, shown), .. Plants(landing, shown), Reel(landing, shown), Boat(landing, shown), Lift(landing, shown)];

    private static string Pull(LandingResult l, Shown shown)
    {
        RodLoad square = l.Pull.MinBy(p => Math.Abs(p.RodAngleRad - (0.5 * Math.PI)))!, low = l.Pull.MinBy(p => Math.Abs(p.RodAngleRad - (30.0 * Degree)))!;
        HeadUpFish top = l.OnTop;
        return $"Held for long, these hands pull with {shown.Pull(square.LoadN)} with the rod square to the line and with {shown.Pull(low.LoadN)} with the rod 30 deg from it. A tired fish of {shown.Mass(l.Setup.Fish.MassKg)} "
            + $"comes with its head up from {shown.Speed(top.LeastMS.Value)} on, with {shown.Pull(top.PullN.Value)}; one that swims away pulls with {shown.Pull(top.FightN.Value)} more until it turns.";
    }

    private static IEnumerable<string> Plants(LandingResult l, Shown shown)
    {
        if (l.Setup.Cover.Kind != CoverKind.Open)
        {
            yield return $"Through the plants it takes {shown.Pull(l.Plants.Through.TipN)} at the rod tip, {shown.Pull(l.Plants.Through.FishN)} of it at the fish; slid over the top, {shown.Pull(l.Plants.Over.TipN)}.";
        }
    }

    private static string Reel(LandingResult l, Shown shown) =>
        $"The reel wins {shown.Speed(l.Reel.SteadyMS)} kept up and {shown.Speed(l.Reel.BurstMS)} in a short burst, one sweep of the rod {shown.Distance(l.SweepM)} once: a fish that comes faster makes slack.";

    private static string Boat(LandingResult l, Shown shown)
    {
        ShortLine boat = l.Boat;
        return $"A bolt at the boat at {shown.Speed(l.Setup.Fish.SpeedMS)} ends at {shown.Pull(boat.WithDragN)} with the rod up, and with the drag shut at {shown.Pull(boat.PointedN)} with the rod pointed at the fish. "
            + $"A drag of {shown.Pull(boat.SafeDragN)} starts at the boat with {Trade.Fixed(l.Task.Margin, 1)} times that to spare in {Name(boat.Weakest.Limit)}.";
    }

    private static string Lift(LandingResult l, Shown shown) =>
        $"Swing in no more than {shown.Mass(l.BestLift.MassKg)}, butt at {Trade.Fixed(l.BestLift.RodAngleRad / Degree, 0)} deg: {Name(l.BestLift.Limit)} {(l.BestLift.Limit is LandingLimit.Hands or LandingLimit.Arms ? "bear" : "bears")} no more. Use a net.";

    private static string Name(LandingLimit limit) => limit switch
    {
        LandingLimit.Hands => "the hands",
        LandingLimit.Arms => "the arms",
        LandingLimit.Rod => "the rod",
        LandingLimit.Knot => "the knot",
        LandingLimit.Leader => "the leader",
        LandingLimit.HookWire => "the hook's wire",
        _ => "the hold in the fish",
    };
}
