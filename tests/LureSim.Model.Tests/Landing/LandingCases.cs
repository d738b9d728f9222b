using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Landing;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Rods;

namespace LureSim.Model.Tests.Landing;

/// <summary>A seven-foot rod and 50-lb braid.</summary>
internal static class LandingCases
{
    public const double Degree = Math.PI / 180.0, Gravity = 9.80665;

    public static readonly RodSpec SevenFoot = new(2.13, 0.30, 4.5, 0.075);

    public static readonly LineSpec Braid = new(LineMaterial.Braid, 0.33e-3, 6.5e-5, 970.0, 3350.0, 0.002, 0.0, SurfaceFilm.Wetted, 350.0);

    public static readonly LineSpec Nylon = new(LineMaterial.Nylon, 0.45e-3, 1.8e-4, 1140.0, 270.0, 0.01, 3e-6, SurfaceFilm.Wetted, 95.0);

    // Nothing but hands and rod limits a pull.
    public static readonly TackleStrength Strong = new(LandingLimit.Knot, 1e6);

    public static Setup Usual { get; } = new(
        "landing", new WaterSpec(), new AirSpec(), new AnglerSpec(), new HandsSpec(), SevenFoot, new ReelSpec().With(Braid), Braid, null,
        new LureSpec(LureShape.Cigar, 0.115, 0.021, 0.021, 0.018, 0.0575, 0.0, [], []));

    public static LandingResult Run(Setup? setup = null, LandingTask? task = null) => LandingRun.Run(setup ?? Usual, task ?? new()).Demand();

    public static Grip Torque(double torqueNm) => new(torqueNm, 1e6);

    // So stiff that no load here bends it; its weight stays.
    public static RodSpec Stiff() => SevenFoot with { ThirdLoadN = 1e6 };
}
