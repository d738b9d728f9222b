using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Lures;
using LureSim.Model.Reels;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Page;

namespace LureSim.Reports.Page;

/// <summary>A set-up in plain words.</summary>
internal static class SetUpWords
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>One line for a legend: lure, rhythm, slack.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Retrieve.</param>
    /// <param name="shown">Units.</param>
    public static string Short(Setup setup, RetrieveTask task, Shown shown) => task.IsTow
        ? $"{shown.OneFamily.Size(setup.Lure.LengthM)} lure, a steady pull"
        : $"{shown.OneFamily.Size(setup.Lure.LengthM)} lure, {Rate(task)} twitches a second, stroke {shown.OneFamily.Size(task.StrokeM)}, slack {shown.OneFamily.Size(task.TakeUp.SlackM)}";

    /// <summary>The lure, the line, the rod and what the hand does: a sentence each.</summary>
    /// <param name="file">File.</param>
    /// <param name="shown">Units.</param>
    public static IReadOnlyList<(string What, string Words)> Long(PageFile file, Shown shown)
    {
        Setup s = file.Here.Setup!;
        return
        [
            ("Lure", Lure(s.Lure, shown)),
            ("Line", Line(file, s)),
            ("Rod and reel", Rod(file, s, shown)),
            ("Place", $"The hand is {shown.Size(s.Angler.HandHeightM)} over the water, the rod {Elevation(s.Angler)} and {Bearing(s.Angler)}. The lure is {shown.Distance(file.Here.Retrieve!.DistanceM)} from the rod tip at the start."),
            ("Hand", Hand(s, file.Here.Retrieve, shown)),
        ];
    }

    private static string Lure(LureSpec lure, Shown shown)
    {
        string hooks = lure.Hooks.Count switch { 0 => "without hooks", 1 => "with its hook", int n => $"with its {n} hooks" };
        double mass = lure.MassKg + lure.Hooks.Sum(h => h.MassKg);
        return $"{Trade.Capital(Shape(lure.Shape))}, {shown.Size(lure.LengthM)} long and {shown.Size(lure.DiameterM)} thick, {shown.Mass(mass)} {hooks}.";
    }

    private static string Shape(LureShape shape) => shape switch
    {
        LureShape.Cigar => "a cigar-shaped walker",
        LureShape.Pencil => "a slim pencil",
        LureShape.Drop => "a drop-shaped lure, thick at the tail",
        LureShape.Spheroid => "an egg-shaped lure",
        LureShape.Hollow => "a hollow weedless lure",
        _ => "a lure of its own shape",
    };

    private static string Line(PageFile file, Setup s)
    {
        string film = s.Line.Film == Model.Lines.SurfaceFilm.Dry ? "dry enough to lie on the water's skin" : "soaked, so that it sinks or floats by its own weight";
        string leader = OwnTackle.Name(ChangeGroup.Leader, file);
        string knot = s.Leader?.Knot == Model.Lines.TieKnot.Fixed ? "tied tight" : "tied with a loop";
        return $"{Trade.Capital(OwnTackle.Name(ChangeGroup.Line, file))}, {film}; {(s.Leader is null ? "tied straight to the lure" : $"a leader of {leader}, {knot}")}.";
    }

    private static string Rod(PageFile file, Setup s, Shown shown)
    {
        string[] words = [OwnTackle.Text(file, "rod.power"), OwnTackle.Text(file, "rod.action")];
        string kind = string.Join(", ", words.Where(w => w.Length > 0));
        string reel = s.Reel.Kind == ReelKind.Fixed ? "a fixed spool" : "a revolving spool";
        return $"{OwnTackle.Name(ChangeGroup.Rod, file)}{(kind.Length > 0 ? $", {kind}" : "")}; {reel} that takes up {shown.Size(s.Reel.TakeUpPerTurnM)} a turn of the handle.";
    }

    private static string Elevation(AnglerSpec a) => a.RodElevationRad switch
    {
        < -2.0 * Degree => $"tip down by {Angle(-a.RodElevationRad)} degrees",
        > 2.0 * Degree => $"tip up by {Angle(a.RodElevationRad)} degrees",
        _ => "level",
    };

    private static string Bearing(AnglerSpec a) => Math.Abs(a.RodBearingRad) < 5.0 * Degree ? "pointing at the lure" : $"{Angle(Math.Abs(a.RodBearingRad))} degrees to the side of the line";

    private static string Hand(Setup s, RetrieveTask task, Shown shown) => task.IsTow
        ? $"A steady pull of {shown.Speed(task.TakeUp.SpeedMS)}, without twitches."
        : $"{Rate(task)} twitches a second; each would move the tip of a stiff rod by {shown.Size(task.StrokeM)} within {Trade.Digits(s.Angler.PullTimeS)} s; {TakeUp(task, shown)}.";

    private static string TakeUp(RetrieveTask task, Shown shown) => task.TakeUp.Mode switch
    {
        TakeUpMode.Gather => $"the reel only gathers, so that about {shown.Size(task.TakeUp.SlackM)} of slack stays",
        TakeUpMode.PerTwitch => $"the reel takes up {shown.Size(task.TakeUp.PerTwitchM)} with each twitch",
        _ => $"the reel takes up {shown.Speed(task.TakeUp.SpeedMS)} steadily",
    };

    private static string Rate(RetrieveTask task) => Trade.Digits(task.CadencePerS, 2);

    private static string Angle(double rad) => Trade.Fixed(rad / Degree, 0);
}
