using LureSim.Scenarios.Measured;
using LureSim.Scenarios.Quantities;

namespace LureSim.Studies.Fit;

/// <summary>What a reading is of.</summary>
public enum FitQuantity
{
    /// <summary>Mean size of the angle between line and axis on a tow, rad.</summary>
    Sheer,

    /// <summary>Swing of the nose on a tow, side to side, rad.</summary>
    Swing,

    /// <summary>Way until it has turned by 45 deg, m.</summary>
    TurnWay,

    /// <summary>How far it turns in all, where it was seen not to turn by 45 deg, rad.</summary>
    Turned,

    /// <summary>Way over time, m.</summary>
    Way,

    /// <summary>A place on a film, along one of its axes, m.</summary>
    Place,

    /// <summary>A heading on a film, rad.</summary>
    Heading,

    /// <summary>Period of a roll, s.</summary>
    RollPeriod,

    /// <summary>What a roll loses per swing, a share.</summary>
    RollLoss,

    /// <summary>Period of a bob, s.</summary>
    BobPeriod,

    /// <summary>What a bob loses, a share.</summary>
    BobLoss,

    /// <summary>Period of a nod, s.</summary>
    NodPeriod,

    /// <summary>What a nod loses, a share.</summary>
    NodLoss,

    /// <summary>Angle at which it floats, rad.</summary>
    FloatAngle,

    /// <summary>Nose over the water, m.</summary>
    NoseHeight,

    /// <summary>Tail over the water, m.</summary>
    TailHeight,

    /// <summary>Depth of the middle section, m.</summary>
    Draft,

    /// <summary>Way toward the rod per twitch of a walk, m.</summary>
    Advance,

    /// <summary>Path of the middle across that way, from outermost to outermost point, m.</summary>
    PathWidth,

    /// <summary>Heading of a walk from side to side, rad.</summary>
    HeadingSwing,
}

/// <summary>A reading as the fit uses it.</summary>
/// <param name="Test">Kind of test.</param>
/// <param name="Quantity">What it is of.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="HooksOn">Whether the hooks were on.</param>
/// <param name="At">Over what it stands: speed of a tow or a push, m/s; time of a film or a coast-down, s; twitches per second of a walk; otherwise 0.</param>
/// <param name="Measured">Measured, SI; with <paramref name="IsAtMost"/> the end that it does not pass.</param>
/// <param name="Sigma">One standard deviation of its error.</param>
/// <param name="IsAtMost">True where only an upper end was seen: it came straight, it never turned.</param>
public sealed record FitReading(FitKind Test, FitQuantity Quantity, string Place, bool HooksOn, double At, double Measured, double Sigma, bool IsAtMost = false)
{
    /// <summary>True for a figure of a whole film, which no single slip of pen or eye makes.</summary>
    public bool IsOfMany { get; init; }

    /// <summary>How far a computed value is off, in standard deviations; measured minus computed.</summary>
    /// <param name="computed">Computed, SI.</param>
    /// <remarks>The size of an angle that is read to an error has a law of its own: see <see cref="FoldedAngle"/>.</remarks>
    public double Miss(double computed)
    {
        if (Quantity == FitQuantity.Sheer)
        {
            return IsAtMost ? FoldedAngle.MissBelow(Measured / Sigma, computed / Sigma) : FoldedAngle.Miss(Measured / Sigma, computed / Sigma);
        }

        double miss = (Measured - computed) / Sigma;
        return IsAtMost ? Math.Min(0.0, miss) : miss;
    }

    /// <summary>Kind of its numbers.</summary>
    public QuantityKind Kind => Quantity switch
    {
        FitQuantity.Sheer or FitQuantity.Swing or FitQuantity.Turned or FitQuantity.Heading or FitQuantity.FloatAngle or FitQuantity.HeadingSwing => QuantityKind.Angle,
        FitQuantity.RollPeriod or FitQuantity.BobPeriod or FitQuantity.NodPeriod => QuantityKind.Time,
        FitQuantity.RollLoss or FitQuantity.BobLoss or FitQuantity.NodLoss => QuantityKind.Ratio,
        _ => QuantityKind.Length,
    };
}
