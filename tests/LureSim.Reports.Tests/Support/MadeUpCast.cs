using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Rods;
using LureSim.Studies.Cast;

namespace LureSim.Reports.Tests.Support;

/// <summary>A cast drawn by hand: a quarter turn of the rod, then a parabola. No physics, only something to print.</summary>
internal static class MadeUpCast
{
    private const double ReleaseS = 0.4;
    private const double FlightS = 2.0;
    private const double Step = 0.01;
    private const double RodM = 2.1;
    private const double HandM = 1.2;
    private const double SpeedMS = 20.0;

    public static CastResult Result(ReelKind reel, double distance = 32.0)
    {
        double[] time = [.. Enumerable.Range(0, 241).Select(i => i * Step)];
        ValueList<double> Of(Func<double, double> swing, Func<double, double> flight) => [.. time.Select(t => t < ReleaseS ? swing(t) : flight(t - ReleaseS))];
        var series = new CastSeries(
            [.. time], Of(Butt, _ => 0.3), Of(t => 40 * t, _ => 0), Of(t => 60 * t, u => 24 - (10 * u)),
            Of(LureX, u => 2 + ((distance - 2) * u / FlightS)),
            Of(LureZ, Height), Of(t => 50 * t, u => SpeedMS - (3 * u)), Of(_ => 0, u => 18 - (4 * u)), Of(_ => 0, u => 19 - (5 * u)),
            Of(t => 10 * t, u => 0.5 - (0.1 * u)), Of(_ => 0, u => 0.2 * u), Of(_ => 0.1, _ => 0.1),
            Of(_ => 0, u => 1000 - (250 * u)),
            [.. Enumerable.Range(0, 24).Select(i => Swing(i * 0.02))], [.. Enumerable.Range(0, 9).Select(i => Flight(i * FlightS / 8, distance))]);
        return new CastResult
        {
            Setup = Setup(reel),
            Task = new CastTask(),
            DistanceM = distance,
            DistanceMeanM = distance - 1,
            DistanceP10M = distance - 4,
            DistanceP90M = distance + 1,
            LineOutM = distance + 0.5,
            LaunchSpeedMS = SpeedMS,
            LaunchAngleRad = 0.6,
            FlightTimeS = FlightS,
            ApexM = 6.5,
            StartAngleRad = -1.2,
            ReleaseTimeS = ReleaseS,
            ReleaseAngleRad = 0.3,
            ReleaseTurnRadS = 12,
            ReleaseCurve = [.. Enumerable.Range(-5, 11).Select(i => new ReleasePoint(0.01 * i, -0.4 * i * i, 4 + (0.2 * i)))],
            PeakBendShare = 0.3,
            PeakBendEnergyJ = 4,
            PeakHandTorqueNm = 16,
            PeakTensionN = 9,
            SpoolPeakRpm = reel == ReelKind.Revolving ? 9500 : 0,
            LoopsThrown = 4,
            LoopsMean = 3,
            TangleShare = 0.25,
            Energy = new CastEnergy(100, 30, 2, 3, 20, 25, 4, 5, reel == ReelKind.Revolving ? 1 : 0, 6, 4),
            Series = series,
            Remarks = CastRemarks.None,
        };
    }

    /// <summary>Distance and loops fall with the brake.</summary>
    public static IReadOnlyList<BrakePoint> Brakes { get; } = [new(0.0, 31.0, 2.0, 0.5), new(1.0, 30.0, 0.5, 0.1), new(2.0, 28.0, 0.1, 0.01), new(4.0, 25.0, 0.0, 0.0)];

    /// <summary>Two lures: the light one flat, the heavy one too much for the two softest rods; one cell without a cast.</summary>
    public static Studies.Cast.PowerTable Powers()
    {
        Studies.Cast.PowerCell Cell(double m, double bend) => new(m, m / 1.5, bend, bend > 0.65, null);
        return new("Made up", [0.010, 0.028],
        [
            [.. new[] { 28.0, 30.0, 30.5, 30.2, 29.0, 27.5, 26.0 }.Select(m => Cell(m, 0.3))],
            [Cell(41.0, 0.9), Cell(40.0, 0.7), Cell(36.0, 0.6), Cell(38.0, 0.5), Cell(38.5, 0.4), Cell(37.9, 0.3), Studies.Cast.PowerCell.Failed("too stiff")],
        ]);
    }

    /// <summary>Four set-ups, the first the reference, the third failed; draws with the same luck.</summary>
    public static CastAcross Across() => new("Made up", "rod length, ft", "the same load",
    [
        new("short", Result(ReelKind.Fixed), null, Draws(22.0, 31.0, 38.0)), new("mid", Result(ReelKind.Fixed, 36.0), null, Draws(27.0, 35.0, 41.0)),
        new("long", null, "too long", Draws(double.NaN, double.NaN, double.NaN)),
        new("longest", Result(ReelKind.Fixed, 32.5), null, Draws(22.5, 32.0, 38.0)),
    ], 0, true);

    /// <summary>Draws with these means; NaN for one that failed.</summary>
    public static CastDraw[] Draws(params double[] means) => [.. means.Select(m => double.IsNaN(m) ? CastDraw.Failed : new CastDraw(m, m - 3.0, m + 2.0))];

    private static double Butt(double t) => -1.2 + (1.5 * t / ReleaseS);

    private static double LureX(double t) => (RodM + 0.45) * Math.Sin(Butt(t));

    private static double LureZ(double t) => HandM + ((RodM + 0.45) * Math.Cos(Butt(t)));

    // Up from 3.5 m, 6.5 m highest, in the water after 2 s.
    private static double Height(double u) => 3.5 * (1 - (u / FlightS)) + (4.2 * u * (FlightS - u));

    private static CastPose Swing(double t)
    {
        double angle = t < ReleaseS ? Butt(t) : 0.3;
        double[] x = [.. Enumerable.Range(0, 6).Select(i => RodM * i / 5 * Math.Sin(angle))], z = [.. Enumerable.Range(0, 6).Select(i => HandM + (RodM * i / 5 * Math.Cos(angle)))];
        bool swing = t < ReleaseS;
        return new(t, [.. x, swing ? LureX(t) : 2 + (10 * (t - ReleaseS))], [.. z, swing ? LureZ(t) : Height(t - ReleaseS)], 5);
    }

    private static CastPose Flight(double u, double distance)
    {
        double lureX = 2 + ((distance - 2) * u / FlightS), lureZ = Height(u);
        return new(ReleaseS + u, [0.0, 0.3, 0.6, 0.5 * (0.6 + lureX), lureX], [HandM, 2.2, 3.2, 0.5 * (3.2 + lureZ) + 0.5, lureZ], 2);
    }

    private static Setup Setup(ReelKind reel)
    {
        var line = new LineSpec(LineMaterial.Braid, 3.3e-4, 7.3e-5, 970, 5000, 1e-3, 0, SurfaceFilm.Dry, 220);
        var lure = new LureSpec(LureShape.Cigar, 0.11, 0.0205, 0.0205, 0.018, 0.051, 0, [], []);
        return new Setup("Made up", new WaterSpec(), new AirSpec(), new AnglerSpec(), new HandsSpec(), new RodSpec(2.13, 0.45, 3.0, 0.075),
            new ReelSpec(reel, 7.1, 0.034, 30), line, null, lure);
    }
}
