using LureSim.Model.Assembly;
using LureSim.Model.Cover;
using LureSim.Model.Crawl;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Rods;
using LureSim.Model.Tests.Lures;

namespace LureSim.Model.Tests.Crawl;

/// <summary>A hollow lure on a mat, heavy braid, a strong rod.</summary>
internal static class CrawlCases
{
    public static readonly LineSpec Braid = new(
        LineMaterial.Braid, 0.40e-3, 1.0e-4, 970.0, 5000.0, 0.002, 0.0, SurfaceFilm.Dry, 450.0);

    public static readonly CoverSpec Mat = CoverSpec.Of(CoverKind.Mat) with { DragNM = 0.1 };

    public static readonly CrawlTask Task = new() { TakeUp = new(SlackM: 0.12) };

    public static Setup Setup(CoverSpec? cover = null) => new(
        "crawl", new WaterSpec(), new AirSpec(), new AnglerSpec(HandHeightM: 1.4, RodElevationRad: -0.26, RodBearingRad: 0.79), new HandsSpec(),
        new RodSpec(2.2, 1.0, 2.5, 0.13), new ReelSpec(ReelKind.Revolving, 7.1, 0.034, 50.0), Braid, null, TestLures.Hollow())
    {
        Cover = cover ?? Mat,
    };
}
