using LureSim.Model.Assembly;
using LureSim.Model.Cover;
using LureSim.Model.Fish;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Rods;
using LureSim.Model.Strike;

namespace LureSim.Model.Tests.Strike;

/// <summary>A heavy rod of seven feet, strong braid or nylon of the same label, a small lure.</summary>
internal static class StrikeCases
{
    private const double LabelN = 30 * 4.4482216;

    public static readonly LureSpec Cigar = new(LureShape.Cigar, 0.100, 0.018, 0.018, 0.0155, 0.05, 0.0, [], [new(0.0011, 0.0, -0.009, 3e-5, 1.4e-7)]);

    public static LineSpec Line(LineMaterial material, SurfaceFilm film = SurfaceFilm.Dry) => LineSizing.Resolve(material, null, null, LabelN, film).Spec;

    public static StrikeCase Of(LineMaterial material, FishWay way = FishWay.Stays, StrikeStyle style = StrikeStyle.Haul, double distance = 15.0, double dragN = 1e2) => new(
        new Setup(
            "strike", new WaterSpec(), new AirSpec(), new AnglerSpec(), new HandsSpec(), new RodSpec(2.13, 0.35, 5.0, 0.09),
            new ReelSpec(ReelKind.Revolving, 7.1, 0.034, dragN).With(Line(material)), Line(material), null, Cigar)
        {
            Fish = new FishSpec { Way = way },
        },
        new StrikeTask(distance) { Stroke = StrikeStroke.Of(style) });
}

/// <summary>A set-up and how it is struck.</summary>
internal sealed record StrikeCase(Setup Setup, StrikeTask Task)
{
    public StrikeResult Run() => StrikeRun.Run(Setup, Task).Demand();

    public StrikeCase Step(double stepS, int nodes = 24) => this with { Task = Task with { Solver = Task.Solver with { StepS = stepS, Nodes = nodes } } };

    public StrikeCase Over(CoverKind kind) => this with { Setup = Setup with { Cover = CoverSpec.Of(kind) } };

    public StrikeCase With(HookHold hook) => this with { Setup = Setup with { Hook = hook } };
}
