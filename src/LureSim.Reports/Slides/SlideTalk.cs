using LureSim.Model.Retrieve;
using LureSim.Model.Trim;
using LureSim.Reports.Cadence;
using LureSim.Reports.Cast;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Retrieve;
using LureSim.Reports.Retrieve.Moving;
using LureSim.Reports.Strike;
using LureSim.Reports.Trim;
using LureSim.Studies.Cadence;
using LureSim.Studies.Cast;
using LureSim.Studies.Strike;

namespace LureSim.Reports.Slides;

/// <summary>Puts the pictures of one scenario into the order of a talk: it walks, why, the line, the lure itself, which rhythms, the loads, how it floats, the cast, the strike.</summary>
/// <param name="source">Arguments that name the scenario, as typed after a command.</param>
/// <param name="shown">Units.</param>
public sealed class SlideTalk(string source, Shown shown)
{
    private readonly List<Slide> _slides = [];

    /// <summary>Slides so far.</summary>
    public IReadOnlyList<Slide> Slides => _slides;

    /// <summary>Adds the slides of a retrieve, and of its rhythms between them.</summary>
    /// <param name="result">Retrieve.</param>
    /// <param name="rhythms">Rhythms; null = left out.</param>
    public void AddRetrieve(RetrieveResult result, CadenceResult? rhythms)
    {
        ArgumentNullException.ThrowIfNull(result);
        if (WalkMovie.Svg(result, shown) is byte[] movie)
        {
            _slides.Add(new("walk", "The walk, slowed down", Say("walk"), Command("retrieve"), null, movie));
        }

        string[] names = [.. RetrieveCharts.All(result, shown).Select(c => c.Name)];
        foreach (string name in names.Where(n => n != "loads"))
        {
            AddRetrieve(result, name);
        }

        if (rhythms is not null)
        {
            Add(() => CadenceChart.Build(rhythms, shown), "cadence");
        }

        AddRetrieve(result, "loads");
    }

    private void AddRetrieve(RetrieveResult result, string name)
    {
        // The board of four instants would be too small: two slides of two.
        Func<Chart>[] builders = name == "attitude_side"
            ? [.. AttitudeSide.InTwos(result, shown).Select(c => (Func<Chart>)(() => c))]
            : [() => RetrieveCharts.All(result, shown).Single(c => c.Name == name)];
        Array.ForEach(builders, b => Add(b, "retrieve"));
    }

    /// <summary>Adds the slides of the lure at rest.</summary>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="trim">Lure at rest.</param>
    public void AddTrim(string title, TrimResult trim)
    {
        Add(() => TrimView.Build(title, trim, shown), "trim");
        Add(() => TrimRighting.Build(title, trim, shown), "trim");
    }

    /// <summary>Adds the slides of a cast.</summary>
    /// <param name="report">Cast.</param>
    public void AddCast(CastReport report)
    {
        foreach (Chart chart in CastCharts.All(report, shown))
        {
            Add(() => chart, "cast");
        }
    }

    /// <summary>Adds the slides of a strike: which drag, and how far the pull reaches.</summary>
    /// <param name="report">Strike with its curves.</param>
    public void AddStrike(StrikeReport report)
    {
        Add(() => DragWindowChart.OfWindowAlone(report, shown), "strike");
        Add(() => StrikeDistance.Build(report, shown), "strike");
    }

    private void Add(Func<Chart> build, string command)
    {
        foreach (Chart slide in SlideFit.InParts(build))
        {
            _slides.Add(new(slide.Name, slide.Model.Title.ReplaceLineEndings(" "), Say(slide.Name), Command(command), slide));
        }
    }

    private string Command(string name) => $"luresim {name} {source}";

    // What a speaker may say; the numbers are in the title.
    private static string Say(string name) => name switch
    {
        "walk" => "Let it run until everybody has seen a pull, the slack after it, and the turn that goes on by itself.",
        "path_top" => "Seen from above, coming from right to left: the body stands across its way where each twitch has turned it farthest, now to one side, now to the other.",
        "pull_slack_turn_1" => "First the rod: the hand pulls, the bent rod lags, swings past and springs back; that takes slack in and throws it out again.",
        "pull_slack_turn_2" => "Then the lure, on the same clock: a short pull turns the nose, the line falls slack, and the lure turns on by itself to the other side.",
        "side_view" => "The line between tip and lure is never straight: what hangs, what lies on the water, and what a pull lifts off it.",
        "attitude_side_1" => "The lure itself at two instants of one twitch: how far it pitches, rolls and dips.",
        "attitude_side_2" => "The same twitch a moment later, on the same scale.",
        "attitude_time" or "attitude_time_1" => "Pitch and roll over a few twitches; where the hand pulls is orange.",
        "attitude_time_2" => "Heading and the height of the nose on the same clock: blue is water.",
        "cadence_1" => "Which rhythms walk, how far each glides across and how far it turns.",
        "cadence_2" => "How sure each rhythm is, and whether a wrist keeps it up; what the wrist can do is a guess.",
        "loads" => "How hard the line pulls at both ends, and what water and air take from it.",
        "trim_side" => "How the lure lies in still water, with its weights; anybody can check this in a glass.",
        "trim_righting" => "How hard the water stands it up again after it was laid over.",
        "cast_swing" => "The swing under a flash lamp: how far the rod bends, and where the lure is let go.",
        "cast_path" => "The flight with its line, and where eight of ten casts land. Look behind you before you cast, and stay away from power lines.",
        "cast_speeds" => "The line that the lure takes against the line that the reel gives.",
        "cast_release" => "What a hundredth of a second costs: let go too early or too late.",
        "cast_energy" => "Where the work of the hands goes; the lure gets only a part of it.",
        "cast_brake" => "What a brake costs in distance, and which tangles it saves; how much loose line a spool bears is a guess.",
        "drag_window" => "Which drag sets the hook and spares everything, as far as forces go that nobody has measured. Ease it before the fish is at the boat.",
        "strike_distance" => "What a strike brings to the hook near and far: the line stretches, and then the stroke runs out. The rod changes little.",
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "a picture without words for a speaker"),
    };
}
