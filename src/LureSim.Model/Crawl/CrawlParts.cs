using LureSim.Model.Assembly;
using LureSim.Model.Cover;
using LureSim.Model.Hands;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;

namespace LureSim.Model.Crawl;

/// <summary>The parts of one crawl, set at their start.</summary>
internal sealed class CrawlParts
{
    /// <summary>Builds all parts.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Crawl.</param>
    /// <exception cref="ArgumentException">A number is out of range, or there is no mat to crawl over.</exception>
    public CrawlParts(Setup setup, CrawlTask task)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(task);
        setup.Check();
        task.Check();
        if (setup.Cover.Kind != CoverKind.Mat)
        {
            throw new ArgumentException($"a lure crawls over a mat; cover.kind is {(setup.Cover.Kind == CoverKind.Open ? "open" : "sparse")}.");
        }

        (Setup, Task) = (setup, task);
        Twitch = new Twitch(task.CadencePerS, setup.Angler.PullTimeS, setup.Angler.ReturnTimeS, setup.Angler.ReturnShare);
        var swing = new WristSwing(setup.Angler, setup.Rod.FreeLengthM, task.StrokeM, Twitch);
        Contact = ContactOf(setup);
        double drop = swing.TipHeightM - Contact.TouchHeightM + Contact.SinkM;
        StartXM = Math.Sqrt(Math.Max(0.0, (task.DistanceM * task.DistanceM) - (drop * drop)));
        Require.InRange(task.ToOpeningM, 0.0, StartXM - CrawlTask.LeastDistanceM);
        Lure = new SlidingLure(Contact, StartXM, 0.0);
        Line = new TwitchedLine(setup, WaterModel.Evaluate(setup.Water), swing, task.DistanceM + task.TakeUp.SlackM, task.Solver.Nodes, Lure);
        TakeUp = new HandleTakeUp(task.TakeUp, Twitch, Line.SlackM, 0.5 * task.StrokeM * task.CadencePerS);
        SetPlants();
    }

    /// <summary>Set-up.</summary>
    public Setup Setup { get; }

    /// <summary>Crawl.</summary>
    public CrawlTask Task { get; }

    /// <summary>Stroke over time.</summary>
    public Twitch Twitch { get; }

    /// <summary>Lure and plants.</summary>
    public SlidingContact Contact { get; }

    /// <summary>Lure.</summary>
    public SlidingLure Lure { get; }

    /// <summary>Rod, line and lure.</summary>
    public TwitchedLine Line { get; }

    /// <summary>Reel.</summary>
    public HandleTakeUp TakeUp { get; }

    /// <summary>Level distance from the resting tip to the line tie at the start, m.</summary>
    public double StartXM { get; }

    /// <summary>Way of the line tie toward the rod so far, m.</summary>
    public double WayM => StartXM - Lure.Pose.Tie.X;

    /// <summary>Lays the plants where they are: the mat ends where it ended at the start, and the opening comes nearer.</summary>
    public void SetPlants()
    {
        Line.Plants.OverM = Math.Max(0.0, Setup.Cover.LineOverM - WayM);
        Line.Plants.HoleFromM = Math.Max(0.0, Task.ToOpeningM - WayM);
    }

    // It lies level on its belly on plants that float level with the water: their tops stand about it, but carry nothing.
    private static SlidingContact ContactOf(Setup setup)
    {
        HullForm hull = HullShape.Create(setup.Lure);
        LureMass mass = LureMass.Of(setup.Lure, hull);
        double lowest = 0.0;
        for (int i = 0; i < HullForm.Panels; i++)
        {
            HullSection s = hull.Panel(i, HullForm.Panels).Section;
            lowest = Math.Min(lowest, s.CentreZM - s.HalfHeightM);
        }

        CoverSpec cover = setup.Cover;
        return new(mass.MassKg, cover.LureFriction, cover.StiffnessNM, cover.DampingRatio, setup.Lure.TieZM - lowest, setup.Lure.TieXM - mass.Centre.X);
    }
}
