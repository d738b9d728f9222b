namespace LureSim.Studies.Doubt;

/// <summary>What the guesses do to one figure.</summary>
/// <param name="Figure">Name of the figure.</param>
/// <param name="P10">One run in ten lies below.</param>
/// <param name="P50">Median.</param>
/// <param name="P90">One run in ten lies above.</param>
/// <param name="Count">Runs that have the figure; with none the percentiles are NaN.</param>
/// <param name="Given">The figure of the set-up as it stands, NaN where it has none or was not run.</param>
public sealed record Band(string Figure, double P10, double P50, double P90, int Count, double Given = double.NaN)
{
    /// <summary>True where the set-up as it stands lies outside the band of its own draws: then its figure is not the middle of anything.</summary>
    public bool IsGivenOutside => Given < P10 || Given > P90;
}

/// <summary>Bands of the draws of one set-up.</summary>
/// <param name="Runs">Number of runs.</param>
/// <param name="Failed">Of these, without result.</param>
/// <param name="Reason">Why most of those failed; empty when none did.</param>
/// <param name="Shares">Share of each class among the runs with a result, largest first.</param>
/// <param name="Bands">One band per figure; empty when every run failed.</param>
public sealed record DoubtReport(int Runs, int Failed, string Reason, IReadOnlyList<KeyValuePair<string, double>> Shares, IReadOnlyList<Band> Bands)
{
    /// <summary>The band of a figure.</summary>
    /// <param name="figure">Name.</param>
    /// <exception cref="ArgumentException">There is no such figure.</exception>
    public Band this[string figure] => Bands.FirstOrDefault(b => b.Figure == figure) ?? throw new ArgumentException($"no figure '{figure}'", nameof(figure));
}
