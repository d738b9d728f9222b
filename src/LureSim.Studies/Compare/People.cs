using LureSim.Studies.Doubt;
using LureSim.Studies.Sampling;

namespace LureSim.Studies.Compare;

/// <summary>People drawn from the table of <see cref="Humans"/>: one for each draw of the guesses, the same for every set-up.</summary>
/// <param name="draws">Draws, at least 1.</param>
/// <param name="seed">Seed of the scenarios.</param>
public sealed class People(int draws, ulong seed)
{
    // Keeps the people apart from the guesses, which start from the same seed.
    private const ulong Stream = 0x9E0B1E;
    private readonly LatinHypercube _design = new(draws, seed ^ Stream);

    /// <summary>A value of one person.</summary>
    /// <param name="what">What.</param>
    /// <param name="draw">Which draw; negative for the middle.</param>
    public double Of(Human what, int draw)
    {
        ArgumentNullException.ThrowIfNull(what);
        return what.At(draw < 0 ? 0.5 : _design.Share(draw, GuessDesign.Dimension(what.Key)));
    }
}
