namespace LureSim.Studies.Cast;

/// <summary>Casts of several set-ups, one of which is the reference.</summary>
/// <param name="Title">What they have in common.</param>
/// <param name="KeyTitle">What differs, with its unit.</param>
/// <param name="Law">What else goes with the key, or null.</param>
/// <param name="Cases">Set-ups.</param>
/// <param name="ReferenceIndex">Which of them the others are compared with, 0 to count - 1.</param>
/// <param name="ReferenceIsOwn">True when that is what the scenario holds by itself, false when it was asked for.</param>
public sealed record CastAcross(string Title, string KeyTitle, string? Law, IReadOnlyList<CastCase> Cases, int ReferenceIndex, bool ReferenceIsOwn)
{
    /// <summary>The set-up that the others are compared with.</summary>
    public CastCase Reference => Cases[ReferenceIndex];

    /// <summary>A set-up against the reference; null for the reference itself, or without casts.</summary>
    /// <param name="index">0 to count - 1.</param>
    public CastPair? Against(int index) => index == ReferenceIndex ? null : CastPair.Between(Reference, Cases[index]);

    /// <summary>Every two set-ups that have casts, the first before the second as listed.</summary>
    public IEnumerable<CastPair> Pairs() =>
        Cases.SelectMany((a, i) => Cases.Skip(i + 1).Select(b => CastPair.Between(a, b))).OfType<CastPair>();

    /// <summary>Mean of a set-up that may stand beside its gain, m: NaN when other draws finished in it than in the reference, since their means do not
    /// differ by the gain then.</summary>
    /// <param name="index">0 to count - 1.</param>
    public double MeanM(int index) => Cases[index].Cast is not null && Cases[index].HasDrawsOf(MeasureOfMeans) ? Cases[index].MeanM : double.NaN;

    private CastCase MeasureOfMeans => Reference.Cast is null ? Cases.FirstOrDefault(c => c.Cast is not null, Reference) : Reference;
}
