using LureSim.Model.Fish;

namespace LureSim.Model.Landing;

/// <summary>A tired fish drawn head first at one speed: it neither helps nor pulls.</summary>
/// <param name="SpeedMS">V, m/s.</param>
/// <param name="Froude">V/sqrt(g L); waves cost most near 0.5.</param>
/// <param name="WaveN">Drag by its waves, N: with its back half its height under; 0 deep; back awash.</param>
/// <param name="PullN">Pull of the line, N, with the band of drag area and waves.</param>
public sealed record TowedFish(double SpeedMS, double Froude, Ranged WaveN, Ranged PullN);

/// <summary>A tired fish with half of its head out of the water, coming at the angler.</summary>
/// <param name="MassKg">M, kg.</param>
/// <param name="LengthM">L, m.</param>
/// <param name="ReelMS">Speed of the reel at that distance, m/s.</param>
/// <param name="LeastMS">Least speed at which the head stays out, m/s, with its band; below it the head sinks, however hard the pull: a fish that is drawn
/// no faster is pulled no harder than its drag.</param>
/// <param name="PullN">Steady pull at the speed of the reel or, where that is too slow, at <see cref="LeastMS"/>, N.</param>
/// <param name="FightN">Thrust at rest of a fish that swims the other way, N: that much more is needed until it turns. Nobody has measured it.</param>
public sealed record HeadUpFish(double MassKg, double LengthM, double ReelMS, Ranged LeastMS, Ranged PullN, Ranged FightN)
{
    /// <summary>True when the reel alone is fast enough, by the middle of the guesses.</summary>
    public bool ReelKeepsItUp => ReelMS >= LeastMS.Value;
}

/// <summary>
/// The pull that draws a tired fish along and keeps its head out. A fish weighs next to nothing in water; only what is out of it has weight. Towed: drag of
/// its body and its waves. Head up: the line's upward share and the lift of the gliding body carry the weight that is out,
/// T sin(theta) + F = w M g and T cos(theta) = D + F tan(tau).
/// </summary>
/// <remarks>
/// Forces are balanced, moments are not: a live fish steers with fins and back. Trim, weight out of the water and roundness are guesses; the band takes all
/// of them together at their easy and at their hard ends.
/// </remarks>
internal sealed class PlaningPull
{
    private const double FastestMS = 10.0;

    // Half of the head is the foremost 15 % of the length; that much of the mass, guess 0.08 (a spheroid has 0.06 there).
    private static readonly Ranged WeightOut = new(0.08, 0.04, 0.15);
    private static readonly Ranged TrimDeg = new(12.0, 8.0, 15.0), RoundDeg = new(30.0, 20.0, 45.0);
    private readonly double _mass, _length, _width, _density;
    private readonly Ranged _area;
    private readonly WaveDrag _under, _awash;

    /// <summary>Of a fish.</summary>
    /// <param name="massKg">M, kg, positive.</param>
    /// <param name="dragAreaM2">CdA with its band, m2.</param>
    /// <param name="densityKgM3">Density of the water, kg/m3.</param>
    public PlaningPull(double massKg, Ranged dragAreaM2, double densityKgM3)
    {
        _mass = Require.Positive(massKg);
        _area = dragAreaM2;
        _density = densityKgM3;
        _length = FishBody.LengthM(massKg);
        _width = FishBody.WidthM(massKg);

        // Waves depend on the water that the body moves: a spheroid of its length and volume.
        double radius = Math.Sqrt(1.5 * massKg / (Math.PI * densityKgM3 * _length)), height = FishBody.DepthM(massKg);
        _under = new(_length, radius, height);
        _awash = new(_length, radius, 0.5 * height);
    }

    private enum End
    {
        Middle,
        Easy,
        Hard,
    }

    /// <summary>Towed just under the surface.</summary>
    /// <param name="speedMS">V, m/s, positive.</param>
    /// <param name="elevationRad">theta, line over the level, rad.</param>
    public TowedFish Towed(double speedMS, double elevationRad)
    {
        double Pull(End end) => Drag(speedMS, end) / Math.Cos(elevationRad);
        return new(
            speedMS, speedMS / Math.Sqrt(Physics.GravityMS2 * _length), new(Waves(speedMS, End.Middle), Waves(speedMS, End.Easy), Waves(speedMS, End.Hard)),
            new(Pull(End.Middle), Pull(End.Easy), Pull(End.Hard)));
    }

    /// <summary>With half of its head out, at the speed of a reel.</summary>
    /// <param name="reelMS">Speed of the reel, m/s, positive.</param>
    /// <param name="elevationRad">theta, line over the level, rad.</param>
    /// <param name="fightN">Thrust of a fish that swims away, N.</param>
    public HeadUpFish HeadUp(double reelMS, double elevationRad, Ranged fightN)
    {
        double Least(End end) => LeastSpeed(elevationRad, end);
        double Pull(End end) => HeadUpPull(Math.Max(reelMS, Least(end)), elevationRad, end);
        return new(
            _mass, _length, reelMS, new(Least(End.Middle), Least(End.Easy), Least(End.Hard)), new(Pull(End.Middle), Pull(End.Easy), Pull(End.Hard)), fightN);
    }

    private static double At(Ranged value, End end, bool lowIsEasy = true) =>
        end == End.Middle ? value.Value : (end == End.Easy) == lowIsEasy ? value.Low : value.High;

    private double Waves(double speed, End end) => end switch
    {
        End.Easy => 0.0,
        End.Middle => _under.At(_density, speed),
        _ => _awash.At(_density, speed),
    };

    private double Drag(double speed, End end) => (0.5 * _density * speed * speed * At(_area, end)) + Waves(speed, end);

    // Both balances solved for T: (D + w M g tan tau)/(cos theta + sin theta tan tau).
    private double HeadUpPull(double speed, double elevation, End end)
    {
        double slope = Math.Tan(Trim(end));
        (double sin, double cos) = Math.SinCos(elevation);
        return (Drag(speed, end) + (Weight(end) * slope)) / (cos + (sin * slope));
    }

    // Lift that a speed offers and the line's upward share against the weight that is out; what they lack falls with speed.
    private double LeastSpeed(double elevation, End end)
    {
        double wetted = Math.Min(PlaningLift.MostSlender, 0.85 * _length / _width);
        double lift = 0.5 * _density * _width * _width * PlaningLift.Coefficient(wetted, Trim(end), At(RoundDeg, end) * Math.PI / 180.0);
        double Excess(double speed) =>
            (lift * speed * speed) + (HeadUpPull(speed, elevation, end) * Math.Sin(elevation)) - Weight(end);
        return MathNet.Numerics.RootFinding.Brent.FindRoot(Excess, 0.0, FastestMS, 1e-9, 200);
    }

    private static double Trim(End end) => At(TrimDeg, end, lowIsEasy: false) * Math.PI / 180.0;

    private double Weight(End end) => At(WeightOut, end) * _mass * Physics.GravityMS2;
}
