using LureSim.Model.Assembly;

namespace LureSim.Model.Cast;

/// <summary>What is odd about a cast.</summary>
[Flags]
public enum CastRemarks
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>The lure lands behind the angler.</summary>
    LandsBehind = 1,

    /// <summary>The lure hits the water before the line is let go.</summary>
    HitsWaterInSwing = 2,

    /// <summary>The line was pulled harder than its breaking load.</summary>
    AboveBreakingLoad = 4,

    /// <summary>More than five loops lay loose on the spool, which no spool bears (guess).</summary>
    Backlash = 8,

    /// <summary>The rod started less far back than asked for, since the lure would have hung in the water.</summary>
    StartRaised = 16,

    /// <summary>All line left the spool before the lure was down.</summary>
    LineRunsOut = 32,

    /// <summary>The rod bends by more than 0.65 of its length (guess), more than a rod of its power is made for.</summary>
    BendBeyondRod = 64,
}

/// <summary>One cast and its figures. Places are counted from the hand's place at the start, x forward, z over the water.</summary>
public sealed record CastResult
{
    /// <summary>Set-up.</summary>
    public required Setup Setup { get; init; }

    /// <summary>What was done with it.</summary>
    public required CastTask Task { get; init; }

    /// <summary>x where the lure meets the water, m; negative behind the angler.</summary>
    public required double DistanceM { get; init; }

    /// <summary>Mean of many casts, which are let go early or late by the release error about the chosen moment, m.</summary>
    public required double DistanceMeanM { get; init; }

    /// <summary>Ten casts out of a hundred fall shorter (release error and scatter from cast to cast), m.</summary>
    public required double DistanceP10M { get; init; }

    /// <summary>Ten casts out of a hundred go farther, m.</summary>
    public required double DistanceP90M { get; init; }

    /// <summary>Unstretched line beyond the tip when the lure lands, overhang included, m.</summary>
    public required double LineOutM { get; init; }

    /// <summary>Highest speed of the lure within 0.1 s of the release, m/s.</summary>
    public required double LaunchSpeedMS { get; init; }

    /// <summary>Its direction above the horizontal, rad.</summary>
    public required double LaunchAngleRad { get; init; }

    /// <summary>Time from release to water, s.</summary>
    public required double FlightTimeS { get; init; }

    /// <summary>Highest point of the lure, m.</summary>
    public required double ApexM { get; init; }

    /// <summary>Angle of the butt from the vertical at the start, rad.</summary>
    public required double StartAngleRad { get; init; }

    /// <summary>Time of release from the start of the swing, s.</summary>
    public required double ReleaseTimeS { get; init; }

    /// <summary>Angle of the butt from the vertical at release, rad.</summary>
    public required double ReleaseAngleRad { get; init; }

    /// <summary>Turning speed of the butt at release, rad/s; near the hands' top speed the cast is limited by speed, not by torque.</summary>
    public required double ReleaseTurnRadS { get; init; }

    /// <summary>Change of distance when let go earlier or later, from the release search, sorted by time.</summary>
    public required IReadOnlyList<ReleasePoint> ReleaseCurve { get; init; }

    /// <summary>Largest distance of the tip from the straight rod's tip over free length.</summary>
    public required double PeakBendShare { get; init; }

    /// <summary>Largest energy of bending, J.</summary>
    public required double PeakBendEnergyJ { get; init; }

    /// <summary>Largest torque of the hands before the release, N m.</summary>
    public required double PeakHandTorqueNm { get; init; }

    /// <summary>Largest tension at the tip, N.</summary>
    public required double PeakTensionN { get; init; }

    /// <summary>Highest spool speed, rev/min; 0 for a fixed spool.</summary>
    public required double SpoolPeakRpm { get; init; }

    /// <summary>Largest length of loose line after the release, in loops on the spool.</summary>
    public required double LoopsThrown { get; init; }

    /// <summary>The same, mean over the release error.</summary>
    public required double LoopsMean { get; init; }

    /// <summary>Share of casts in which the loose line tangles, over the release error; the loops that a spool bears are a guess, 0.6 to 5.</summary>
    public required double TangleShare { get; init; }

    /// <summary>Where the hands' work went.</summary>
    public required CastEnergy Energy { get; init; }

    /// <summary>Recorded series.</summary>
    public required CastSeries Series { get; init; }

    /// <summary>What is odd about this cast.</summary>
    public required CastRemarks Remarks { get; init; }

    /// <summary>Change of distance when let go so much later, m,.</summary>
    /// <param name="delayS">Delay, s; negative = earlier.</param>
    public double DistanceChangeM(double delayS) => new ReleaseCurve(ReleaseCurve).At(delayS).ChangeM;
}

/// <summary>Another release against the chosen one.</summary>
/// <param name="DelayS">Release later by this, s.</param>
/// <param name="ChangeM">Lands farther by this, m.</param>
/// <param name="Loops">Most loose line, in loops on the spool.</param>
public readonly record struct ReleasePoint(double DelayS, double ChangeM, double Loops)
{
    /// <summary>Value at no delay of the parabola through the three points nearest to it: straight lines would cut the top off.</summary>
    internal static double Top(IReadOnlyList<ReleasePoint> curve)
    {
        ReleasePoint[] near = [.. curve.OrderBy(p => Math.Abs(p.DelayS)).Take(3)];
        if (near.Length < 3)
        {
            return near[0].ChangeM;
        }

        (double a, double b, double c) = (near[0].DelayS, near[1].DelayS, near[2].DelayS);
        return (near[0].ChangeM * b * c / ((a - b) * (a - c))) + (near[1].ChangeM * a * c / ((b - a) * (b - c))) + (near[2].ChangeM * a * b / ((c - a) * (c - b)));
    }
}

/// <summary>Where the work of the hands went between start and splash, J.</summary>
/// <param name="HandsJ">Work of the hands, net of what they took back in braking.</param>
/// <param name="RodJ">Motion, bending and raised weight left in hands and rod when they came to rest.</param>
/// <param name="RodLossJ">Rod's own damping.</param>
/// <param name="RodAirJ">Air drag of the rod.</param>
/// <param name="LureJ">Motion and raised weight of the lure at the splash, line's raised weight included.</param>
/// <param name="LureAirJ">Air drag of the lure.</param>
/// <param name="LineJ">Motion of the line at the splash and work spent on stretching it.</param>
/// <param name="LineAirJ">Air drag of the line.</param>
/// <param name="SpoolJ">Motion left in the spool.</param>
/// <param name="BrakesJ">Brakes, bearings, thumb; on a fixed spool friction and whirl.</param>
/// <param name="PickUpJ">Given by the reel to line that joined the air, less what that line then had.</param>
public sealed record CastEnergy(
    double HandsJ, double RodJ, double RodLossJ, double RodAirJ, double LureJ, double LureAirJ, double LineJ, double LineAirJ, double SpoolJ,
    double BrakesJ, double PickUpJ)
{
    // Where the hands did less than this, the account is measured by it.
    private const double LeastWorkJ = 1e-3;

    /// <summary>Share of the hands' work that the account does not explain: the error of the steps.</summary>
    public double Residual =>
        (RodJ + RodLossJ + RodAirJ + LureJ + LureAirJ + LineJ + LineAirJ + SpoolJ + BrakesJ + PickUpJ - HandsJ) / Math.Max(Math.Abs(HandsJ), LeastWorkJ);
}

/// <summary>Series of a cast, one value per recorded time in every list.</summary>
/// <param name="TimeS">t from the start of the swing, s.</param>
/// <param name="ButtRad">Butt from the vertical, rad.</param>
/// <param name="HandTorqueNm">Torque of the hands, N m.</param>
/// <param name="TipSpeedMS">Speed of the tip, m/s.</param>
/// <param name="LureXM">Lure forward of the hand's start, m.</param>
/// <param name="LureZM">Lure over the water, m.</param>
/// <param name="LureSpeedMS">Speed of the lure, m/s.</param>
/// <param name="LineSpeedMS">Rate at which the distance tip to lure grows, m/s.</param>
/// <param name="SpoolSpeedMS">Speed at which the reel gives line, m/s.</param>
/// <param name="TensionN">Tension at the tip, N.</param>
/// <param name="LooseM">Loose line at the spool, m.</param>
/// <param name="LoopM">Length of one loop on the spool, m.</param>
/// <param name="SpinRadS">Turning speed of the spool, rad/s; 0 for a fixed one.</param>
/// <param name="Strobe">Rod and lure at moments of the swing.</param>
/// <param name="InFlight">Rod, line and lure at moments of the flight, the splash last.</param>
public sealed record CastSeries(
    ValueList<double> TimeS, ValueList<double> ButtRad, ValueList<double> HandTorqueNm, ValueList<double> TipSpeedMS,
    ValueList<double> LureXM, ValueList<double> LureZM, ValueList<double> LureSpeedMS, ValueList<double> LineSpeedMS,
    ValueList<double> SpoolSpeedMS, ValueList<double> TensionN, ValueList<double> LooseM, ValueList<double> LoopM, ValueList<double> SpinRadS,
    IReadOnlyList<CastPose> Strobe, IReadOnlyList<CastPose> InFlight);

/// <summary>Rod, line and lure at one moment.</summary>
/// <param name="TimeS">t, s.</param>
/// <param name="XM">Points from hand to tip, then line, lure last, m.</param>
/// <param name="ZM">Their heights, m.</param>
/// <param name="TipIndex">Which point is the tip.</param>
public sealed record CastPose(double TimeS, ValueList<double> XM, ValueList<double> ZM, int TipIndex);
