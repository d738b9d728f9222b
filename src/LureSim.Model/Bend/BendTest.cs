namespace LureSim.Model.Bend;

/// <summary>What was read with one weight at the tip of a rod that is held level.</summary>
/// <param name="LoadN">W, pull of the weight, N, 0 to 100; 0 is the bare rod.</param>
/// <param name="DropM">How far the tip stands lower than <see cref="BendTest.IsFromLevel"/> says, m; null where it was not read.</param>
/// <param name="TipAngleRad">How far the last inches point below the level, rad, 0 to pi/2; null where it was not read.</param>
/// <param name="MiddleDropM">The same as the drop for a mark half way along the free length, m; null where it was not read.</param>
public sealed record BendReading(double LoadN, double? DropM, double? TipAngleRad = null, double? MiddleDropM = null);

/// <summary>How often the held rod swings by itself.</summary>
/// <param name="FrequencyHz">f, swings up and down in a second, Hz, positive.</param>
/// <param name="TipMassKg">m, mass fixed to the tip, kg, not negative.</param>
public sealed record BounceReading(double FrequencyHz, double TipMassKg);

/// <summary>How well such readings are taken at home: one standard deviation each. Guesses; nobody has tried it with many people.</summary>
/// <param name="DropM">Of a drop, tape or ruler beside a tip that trembles, m, positive.</param>
/// <param name="AngleRad">Of an angle of the tip, rad, positive.</param>
/// <param name="WeightShare">Of all weights together, as a share: they are mostly of one make, so they are wrong together.</param>
/// <param name="BounceHz">Of a count, Hz: half a swing in ten seconds.</param>
/// <param name="BalanceM">Of the balance point, m.</param>
/// <param name="MassKg">Of the mass of the rod, kg.</param>
/// <param name="LevelRad">Of "level" where the rod is held, rad.</param>
public sealed record BendErrors(
    double DropM = 0.005,
    double AngleRad = 3.0 * Math.PI / 180.0,
    double WeightShare = 0.02,
    double BounceHz = 0.05,
    double BalanceM = 0.01,
    double MassKg = 0.002,
    double LevelRad = Math.PI / 180.0);

/// <summary>A bend test: a rod held level at its grip, weights hung at its tip.</summary>
/// <param name="LengthM">Overall length, m.</param>
/// <param name="ClampedM">Butt end to the foremost point where it is held, m; the free length is the rest, at least 0.5 m.</param>
/// <param name="Rows">Weights and what was read, at least one drop with a weight.</param>
/// <param name="IsFromLevel">True where drops count from the level of the grip; false where they count from the tip's place without a weight,
/// which already hangs by the rod's own weight.</param>
/// <param name="MassKg">Mass of the whole rod without reel, kg; null where it was not weighed.</param>
/// <param name="BalanceM">Butt end to the point on which the rod balances, m; null where it was not found.</param>
/// <param name="Bounces">Counts of swings; may be empty.</param>
/// <param name="SwingsToHalf">Swings after which the held rod swings half as wide; null where nobody counted.</param>
/// <param name="Errors">How well all this is read.</param>
public sealed record BendTest(
    double LengthM,
    double ClampedM,
    ValueList<BendReading> Rows,
    bool IsFromLevel,
    double? MassKg,
    double? BalanceM,
    ValueList<BounceReading> Bounces,
    double? SwingsToHalf,
    BendErrors Errors)
{
    /// <summary>L, m.</summary>
    public double FreeLengthM => LengthM - ClampedM;
}

/// <summary>What is known of a number before the test: drawn evenly between two ends.</summary>
/// <param name="Low">Lower end.</param>
/// <param name="High">Upper end.</param>
/// <param name="Least">Least value that the model takes.</param>
/// <param name="Most">Largest value that the model takes.</param>
public sealed record BendGuess(double Low, double High, double Least, double Most);

/// <summary>What is known of a rod before the test. Nothing is assumed of its power: a single drop tells it.</summary>
/// <param name="TipRadiusRatio">Tip radius over radius at the hand.</param>
/// <param name="StiffnessExponent">p in EI ~ r^p.</param>
/// <param name="MassExponent">q in mass per length ~ r^q.</param>
/// <param name="MassKg">Mass of the whole rod, kg.</param>
/// <param name="FreeMassShare">Share of the mass beyond the hand.</param>
public sealed record BendGuesses(
    BendGuess TipRadiusRatio, BendGuess StiffnessExponent, BendGuess MassExponent, BendGuess MassKg, BendGuess FreeMassShare);
