namespace LureSim.Studies.Compare;

/// <summary>Which side of a measure people want.</summary>
public enum Better
{
    /// <summary>Neither: a matter of taste or of use.</summary>
    Neither,

    /// <summary>More.</summary>
    More,

    /// <summary>Less.</summary>
    Less,
}

/// <summary>A row of the comparison.</summary>
/// <param name="Key">Name in files, unit at its end.</param>
/// <param name="Unit">SI unit.</param>
/// <param name="Side">Which side is wanted.</param>
/// <param name="Weber">Smallest share of the value that people tell apart; null where another rule decides.</param>
public sealed record CompareMeasure(string Key, string Unit, Better Side, Human? Weber);

/// <summary>A measure of one set-up with one draw of the guesses.</summary>
/// <param name="Value">What is shown; NaN where the draw failed or there is none.</param>
/// <param name="Sensed">What people see or feel of it.</param>
/// <param name="Base">What they feel it against: Weber's share is of this.</param>
/// <param name="Scatter">One sigma by which <paramref name="Sensed"/> varies in use, from twitch to twitch or as people hold a rod.</param>
public readonly record struct MeasureSample(double Value, double Sensed, double Base, double Scatter)
{
    /// <summary>None.</summary>
    public static MeasureSample None { get; } = new(double.NaN, double.NaN, double.NaN, double.NaN);

    /// <summary>True for a value.</summary>
    public bool Exists => double.IsFinite(Value);

    /// <summary>A value that is sensed as it is.</summary>
    /// <param name="value">Value.</param>
    /// <param name="scatter">One sigma in use.</param>
    public static MeasureSample Of(double value, double scatter = 0.0) => double.IsFinite(value) ? new(value, value, Math.Abs(value), scatter) : None;
}

/// <summary>A measure of one set-up.</summary>
/// <param name="AsItStands">With every guess as it stands.</param>
/// <param name="Draws">With the guesses drawn, the same luck in every set-up.</param>
public sealed record MeasureColumn(MeasureSample AsItStands, IReadOnlyList<MeasureSample> Draws)
{
    /// <summary>Mean over the draws that have it; without any, as it stands.</summary>
    public double Mean => Draws.Any(d => d.Exists) ? Draws.Where(d => d.Exists).Average(d => d.Value) : AsItStands.Value;
}
