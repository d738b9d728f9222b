using LureSim.Model.Rods;

namespace LureSim.Model.Bend;

/// <summary>Numbers of a rod that a bend test may tell.</summary>
public enum BendValue
{
    /// <summary>Load that drops the tip by a third of the free length, N.</summary>
    BendLoad,

    /// <summary>Tip radius over radius at the hand.</summary>
    TipRadiusRatio,

    /// <summary>p in EI ~ r^p.</summary>
    StiffnessExponent,

    /// <summary>Mass of the whole rod, kg.</summary>
    Mass,

    /// <summary>Share of the mass beyond the hand.</summary>
    FreeMassShare,

    /// <summary>q in mass per length ~ r^q.</summary>
    MassExponent,
}

/// <summary>Kinds of readings.</summary>
public enum ReadingKind
{
    /// <summary>Drop of the tip, m.</summary>
    Drop,

    /// <summary>Angle of the tip below the level, rad.</summary>
    Angle,

    /// <summary>Drop of a mark half way along the free length, m.</summary>
    MiddleDrop,

    /// <summary>Swings in a second, Hz.</summary>
    Bounce,

    /// <summary>Balance point from the butt end, m.</summary>
    Balance,

    /// <summary>Mass of the rod, kg.</summary>
    Mass,
}

/// <summary>A fitted number. Its errors are taken as normal, of the number itself or, where it must be positive, of its logarithm.</summary>
/// <param name="Value">Best value, SI.</param>
/// <param name="Low">Lower end of the band that holds the true value in 80 of 100 tests (10 to 90 %).</param>
/// <param name="High">Upper end of that band.</param>
/// <param name="EvenLow">Lower end of the range that, drawn from evenly, scatters as much as the errors do (1.73 standard deviations).</param>
/// <param name="EvenHigh">Upper end of that range.</param>
/// <param name="LeftShare">Standard deviation left, over the one before the test; 0 where nothing was assumed before.</param>
/// <param name="Guess">What was known before; null where nothing was assumed.</param>
public sealed record BendEstimate(double Value, double Low, double High, double EvenLow, double EvenHigh, double LeftShare, BendGuess? Guess = null)
{
    /// <summary>Above this share of the doubt before, a test has as good as told nothing of a number.</summary>
    public const double Untold = 0.8;

    /// <summary>True where the test told next to nothing: the band is nearly as wide as the guess before.</summary>
    public bool IsGuess => LeftShare > Untold;

    /// <summary>True where the best value lies outside of what was known before: a reading, or the way the rod is held, is at fault, or the rod is an odd one.</summary>
    public bool IsStrange => Guess is not null && (Value < Guess.Low || Value > Guess.High);
}

/// <summary>A reading against the fitted rod.</summary>
/// <param name="Kind">Kind.</param>
/// <param name="Index">Its row (or count of swings), from 0.</param>
/// <param name="LoadN">Weight at the tip, N.</param>
/// <param name="Measured">Measured, SI.</param>
/// <param name="Computed">Of the fitted rod, SI.</param>
/// <param name="Expected">What all the other readings make it to be, SI.</param>
/// <param name="Surprise">How far it stands from that, in standard deviations of such a difference.</param>
public sealed record BendRow(ReadingKind Kind, int Index, double LoadN, double Measured, double Computed, double Expected, double Surprise);

/// <summary>A number that stays open and the one further reading that would tell most of it.</summary>
/// <param name="Value">The number.</param>
/// <param name="Reading">The reading; null where none of those known would help.</param>
/// <param name="LoadN">Weight at the tip for it, N; 0 for the bare rod.</param>
/// <param name="Low">Lower end of the 10-90 % band with it, about the present value.</param>
/// <param name="High">Upper end.</param>
public sealed record OpenValue(BendValue Value, ReadingKind? Reading, double LoadN, double Low, double High);

/// <summary>A point of the curve of drop over weight.</summary>
/// <param name="LoadN">Weight, N.</param>
/// <param name="DropM">Drop as the test counts it, m.</param>
/// <param name="Low">Lower end of its 10-90 % band, m.</param>
/// <param name="High">Upper end, m.</param>
public sealed record BendPoint(double LoadN, double DropM, double Low, double High);

/// <summary>The shape of the fitted rod under a weight.</summary>
/// <param name="LoadN">Weight, N.</param>
/// <param name="XM">Level distance from where it is held, m, from there to the tip.</param>
/// <param name="YM">Height over it, m.</param>
public sealed record BentShape(double LoadN, ValueList<double> XM, ValueList<double> YM);

/// <summary>A rod fitted to a bend test.</summary>
/// <param name="Test">The test.</param>
/// <param name="Rod">The fitted rod: free length, power, tapers, mass beyond the hand.</param>
/// <param name="RootStiffnessNm2">EI_0, its bending stiffness where it is held, N m2.</param>
/// <param name="Values">The fitted numbers, by <see cref="BendValue"/>.</param>
/// <param name="HeldRatio">Tip radius over radius at the hand while the exponent p is held at its best value. A thinner tip with a smaller p bends
/// alike, so that each alone is told much worse than the two together: who draws from ranges holds p and draws from this.</param>
/// <param name="ActionRad">Angle of the tip below the level in the test that drops the tip by a third, own weight included.</param>
/// <param name="PlainActionRad">The same without the rod's own weight, which tells one action from another whatever the rod weighs, rad.</param>
/// <param name="FrequencyHz">First bending frequency of the bare rod, held as in the test, Hz.</param>
/// <param name="SagM">How far the bare tip hangs below the level by its own weight, m.</param>
/// <param name="Rows">Readings against the fit.</param>
/// <param name="ErrorScale">Factor on the reading errors, at least 1: more where the readings scatter more than said.</param>
/// <param name="Open">Numbers that stay open.</param>
/// <param name="Curve">Drop over weight with its band.</param>
/// <param name="Shapes">The rod without a weight and with each weight, light to heavy.</param>
public sealed record BendFit(
    BendTest Test,
    RodSpec Rod,
    double RootStiffnessNm2,
    ValueList<BendEstimate> Values,
    BendEstimate HeldRatio,
    BendEstimate ActionRad,
    double PlainActionRad,
    BendEstimate FrequencyHz,
    double SagM,
    ValueList<BendRow> Rows,
    double ErrorScale,
    ValueList<OpenValue> Open,
    ValueList<BendPoint> Curve,
    ValueList<BentShape> Shapes)
{
    // Among ten readings one stands off by this much in a thousand tests or so, by chance.
    private const double Startling = 4.0;

    /// <summary>A fitted number.</summary>
    /// <param name="value">Which.</param>
    public BendEstimate this[BendValue value] => Values[(int)value];

    /// <summary>Largest difference of a measured drop (tip or middle), m.</summary>
    public double LargestMissM => Drops.Max(r => Math.Abs(r.Measured - r.Computed));

    /// <summary>Root mean square difference of the measured drops, m.</summary>
    public double RmsMissM => Math.Sqrt(Drops.Average(r => (r.Measured - r.Computed) * (r.Measured - r.Computed)));

    /// <summary>Damping ratio of the held rod, ln 2/(2 pi n) for n swings to half; null where nobody counted.</summary>
    public double? DampingRatio => Test.SwingsToHalf is double n ? Math.Log(2.0) / (2.0 * Math.PI * n) : null;

    /// <summary>Largest tip drop of the test over the free length.</summary>
    public double DropShareReached => Drops.Where(r => r.Kind == ReadingKind.Drop).Max(r => r.Measured) / Test.FreeLengthM;

    /// <summary>The one reading that stands farthest off what the others say, where that is too far for chance; null where none does.</summary>
    public BendRow? Odd => Rows.MaxBy(r => r.Surprise) is { Surprise: > Startling } odd ? odd : null;

    private IEnumerable<BendRow> Drops => Rows.Where(r => r.Kind is ReadingKind.Drop or ReadingKind.MiddleDrop);
}
