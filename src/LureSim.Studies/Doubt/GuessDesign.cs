using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Studies.Figures;
using LureSim.Studies.Sampling;

namespace LureSim.Studies.Doubt;

/// <summary>
/// Samples every guess of a scenario over its range. Each key has its own dimension, given by its name, so that the same sample means the same luck at
/// every point of a sweep: differences between points are then those of the points.
/// </summary>
public sealed class GuessDesign
{
    // Keeps the samples of guesses apart from those of what varies, which start from the same seed.
    private const ulong Stream = 0x5D0B7;
    private const int LabelDigits = 3;
    private readonly LatinHypercube _design;

    /// <summary>Creates the design.</summary>
    /// <param name="samples">Samples, at least 1.</param>
    /// <param name="seed">Seed of the scenario.</param>
    public GuessDesign(int samples, ulong seed) => _design = new(samples, seed ^ Stream);

    /// <summary>Number of samples.</summary>
    public int Samples => _design.Count;

    /// <summary>Guesses with a range that a command reads, of physics and of the hands, in the order of the schema.</summary>
    /// <param name="scenario">Valid scenario.</param>
    /// <param name="figures">Command.</param>
    public static GuessedKey[] Of(ScenarioResult scenario, IFigureSource figures)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(figures);
        return [.. scenario.Effective().Guesses.Where(g => g.High > g.Low && figures.Draws(g.Key, scenario))];
    }

    /// <summary>
    /// The guesses about the person or those about everything else. Hands are who you are: a stronger caster is no doubt about the physics, and one
    /// band over both would hide what more knowledge could narrow. The draws of both are the same luck.
    /// </summary>
    /// <param name="scenario">Valid scenario.</param>
    /// <param name="figures">Command.</param>
    /// <param name="hands">True for table <c>[hands]</c>, an effort said by a word and the stroke of a strike, false for the others.</param>
    public static GuessedKey[] Of(ScenarioResult scenario, IFigureSource figures, bool hands) =>
        [.. Of(scenario, figures).Where(g => IsOfHands(g.Key) == hands)];

    private static bool IsOfHands(KeySpec key) => key.Table == HandsKeys.Torque.Table || key == CastKeys.Effort || StrikeKeys.OfHands.Contains(key);

    /// <summary>Place of a guess in its range in a sample, 0 to 1, for <see cref="At"/>.</summary>
    /// <param name="guess">Guess.</param>
    /// <param name="sample">Sample.</param>
    public double Share(GuessedKey guess, int sample)
    {
        ArgumentNullException.ThrowIfNull(guess);
        return _design.Share(sample, Dimension(guess.Key.DrawnAs));
    }

    /// <summary>Value of a guess in a sample, SI, where nothing that it follows from is drawn besides; see <see cref="GuessDraw"/>.</summary>
    /// <param name="guess">Guess.</param>
    /// <param name="sample">Sample.</param>
    public double Value(GuessedKey guess, int sample) => At(guess, Share(guess, sample));

    /// <summary>
    /// Value of a guess below which a share of its draws lies, SI. The value in use is the median of its guess: as many draws lie below it as above,
    /// each side drawn uniformly. Where it is the middle of its range that is one uniform law over the range; where a range begins at the value in
    /// use, half of the draws are that value.
    /// </summary>
    /// <param name="guess">Guess.</param>
    /// <param name="share">0 to 1; 0.5 gives the value in use.</param>
    public static double At(GuessedKey guess, double share)
    {
        ArgumentNullException.ThrowIfNull(guess);
        double side = (2.0 * share) - 1.0;
        return Math.Clamp(guess.Value + (Math.Abs(side) * ((side < 0.0 ? guess.Low : guess.High) - guess.Value)), guess.Low, guess.High);
    }

    // From the name alone, so that new keys leave the draws of the old ones as they are (FNV-1a, Fowler, Noll and Vo 1991, from memory).
    internal static int Dimension(string name)
    {
        uint hash = 2166136261;
        foreach (char c in name)
        {
            hash = (hash ^ c) * 16777619;
        }

        return (int)(hash & int.MaxValue);
    }

    /// <summary>A guess in words with its range and unit, as a chart's label.</summary>
    /// <param name="guess">Guess.</param>
    public static string Label(GuessedKey guess)
    {
        ArgumentNullException.ThrowIfNull(guess);
        KeySpec key = guess.Key;
        string low = Quantity.Show(guess.Low, key.Kind, key.Unit, LabelDigits), high = Quantity.Show(guess.High, key.Kind, key.Unit, LabelDigits);
        string bare = key.Unit.Length == 0 ? low : low[..^(key.Unit.Length + 1)];
        return $"{key.Words} ({bare} to {high})";
    }
}
