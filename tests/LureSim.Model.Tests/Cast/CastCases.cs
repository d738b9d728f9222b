using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Rods;

namespace LureSim.Model.Tests.Cast;

/// <summary>A seven-foot rod, braid and a small cigar of 5/8 oz.</summary>
internal static class CastCases
{
    public static readonly LineSpec Braid = new(
        LineMaterial.Braid, 0.235e-3, 3.33e-5, 970.0, 50e9 * 3.44e-8, 0.002, 0.0, SurfaceFilm.Wetted, 200.0);

    public static readonly LureSpec Cigar = new(
        LureShape.Cigar, 0.100, 0.018, 0.018, 0.0155, 0.05, 0.0, [], [new(0.0011, 0.0, -0.009, 3e-5, 1.4e-7), new(0.0011, -0.05, 0.0, 3e-5, 1.4e-7)]);

    public static CastCase Default(ReelKind kind = ReelKind.Revolving) => new(
        new Setup(
            "cast", new WaterSpec(), new AirSpec(), new AnglerSpec(), new HandsSpec(), new RodSpec(2.13, 0.45, 3.0, 0.075),
            new ReelSpec(kind, 7.1, 0.034, 50.0).With(Braid), Braid, null, Cigar),
        new CastTask());
}

/// <summary>A set-up and how it is cast.</summary>
internal sealed record CastCase(Setup Setup, CastTask Task)
{
    public CastResult Run() => CastRunner.Run(Setup, Task).Demand();

    public CastCase At(double time) => this with { Task = Task with { Release = new ReleaseSpec(ReleaseMode.AtTime, time) } };

    public CastCase With(CastSolverSpec solver) => this with { Task = Task with { Solver = solver } };

    public CastCase With(SpoolSpec spool) => this with { Setup = Setup with { Reel = Setup.Reel with { Spool = spool } } };

    public CastCase With(HandsSpec hands) => this with { Setup = Setup with { Hands = hands } };

    public CastCase With(RodSpec rod) => this with { Setup = Setup with { Rod = rod } };

    public CastCase With(LureFlightSpec flight) => this with { Setup = Setup with { Lure = Setup.Lure with { Flight = flight } } };

    public CastCase Wind(double speed, double from) => this with { Setup = Setup with { Air = Setup.Air with { WindSpeedMS = speed, WindFromRad = from } } };
}
