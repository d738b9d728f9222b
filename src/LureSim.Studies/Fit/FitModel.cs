using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Pool;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Studies.Doubt;
using LureSim.Studies.Pool;

namespace LureSim.Studies.Fit;

/// <summary>The unknown numbers of a lure, and the lure that they make.</summary>
internal sealed class FitModel
{
    // How well people know where the weight in a lure sits, one standard deviation: guesses.
    private const double AlongM = 0.002, UpM = 0.0015, FarthestM = 0.02;

    // How well people know their own stroke and slack, factors of one standard deviation, and the least that is tried, m: guesses.
    private const double StrokeFactor = 1.3, SlackFactor = 1.5, LeastStrokeM = 0.03, LeastSlackM = 0.01;

    private readonly ScenarioSource _source;
    private readonly IReadOnlyList<string> _overrides;
    private readonly WaterState _water;

    /// <summary>Takes every guess about the lure that the pool reads, and where its ballast sits.</summary>
    /// <param name="source">Scenario.</param>
    /// <param name="overrides">Overrides that stand besides.</param>
    /// <param name="held">Guesses that stay at their value.</param>
    /// <param name="walks">True where stroke and slack are unknown too: the lure walks under twitches.</param>
    public FitModel(ScenarioSource source, IReadOnlyList<string> overrides, IReadOnlyList<FitUnknown>? held = null, bool walks = false)
    {
        (_source, _overrides) = (source, overrides);
        Scenario = source.Resolve(overrides);
        LureSpec lure = Scenario.Setup!.Lure;
        _water = WaterModel.Evaluate(Scenario.Setup.Water);
        FitUnknown[] guesses = [.. GuessDesign.Of(Scenario, new PoolSource()).Where(g => g.Key.Table == LureKeys.SternShedding.Table && held?.Any(h => h.Key?.Key == g.Key) != true).Select(FitUnknown.Of)];
        FitUnknown[] ballast = lure.Ballast.Count == 0 ? [] :
        [
            new(FitReport.BallastAlong, "ballast, farther toward the nose", QuantityKind.Length, "mm", false, 0.0, AlongM, -FarthestM, FarthestM),
            new(FitReport.BallastUp, "ballast, farther up", QuantityKind.Length, "mm", false, 0.0, UpM, -FarthestM, FarthestM),
        ];
        Unknowns = [.. guesses, .. ballast, .. walks ? OfHand(Scenario) : []];
    }

    /// <summary>The scenario as it stands.</summary>
    public ScenarioResult Scenario { get; }

    /// <summary>Steps, and what a file of measurements does not say.</summary>
    public PoolTask Task => Scenario.Pool!;

    /// <summary>What is unknown of the lure.</summary>
    public IReadOnlyList<FitUnknown> Unknowns { get; }

    /// <summary>The lure with and without hooks, in the water and under twitches.</summary>
    /// <param name="z">Numbers in z, those of the lure and the hand first.</param>
    /// <returns>Null where no such lure floats.</returns>
    public FitCandidate? Candidate(ReadOnlySpan<double> z)
    {
        if (Read(z) is not { } scenario)
        {
            return null;
        }

        try
        {
            Setup off = scenario.Setup with { Lure = WithoutHooks(scenario.Setup.Lure) };
            return new(PoolTrial.Of(scenario.Setup.Lure, _water), PoolTrial.Of(off.Lure, _water), scenario.Setup, off, scenario.Retrieve);
        }
        catch (Exception e) when (e is ModelException or ArgumentException)
        {
            return null;
        }
    }

    // The scenario for a set of numbers; null where it does not allow them.
    private Scenario? Read(ReadOnlySpan<double> z)
    {
        var overrides = new List<string>(_overrides);
        double along = 0.0, up = 0.0;
        for (int i = 0; i < Unknowns.Count; i++)
        {
            FitUnknown u = Unknowns[i];
            if (u.Key is GuessedKey guess)
            {
                overrides.Add(guess.Override(u.At(z[i])));
            }
            else
            {
                (along, up) = u.Name == FitReport.BallastAlong ? (u.At(z[i]), up) : (along, u.At(z[i]));
            }
        }

        Scenario? scenario = _source.Resolve(overrides).Scenario;
        if (scenario is null)
        {
            return null;
        }

        LureSpec lure = scenario.Setup.Lure;
        return scenario with { Setup = scenario.Setup with { Lure = lure with { Ballast = [.. lure.Ballast.Select(b => b with { XM = b.XM + along, ZM = b.ZM + up })] } } };
    }

    private static FitUnknown[] OfHand(ScenarioResult scenario)
    {
        IReadOnlyList<GuessedKey> guesses = scenario.Effective().Guesses;
        FitUnknown Of(KeySpec key, string words, double value, double factor, double least) => FitUnknown.OfHand(key, words, Math.Max(value, least), guesses.FirstOrDefault(g => g.Key == key && g.High > g.Low), factor, least);
        return
        [
            Of(RetrieveKeys.Stroke, "stroke of the hand", scenario.Retrieve!.StrokeM, StrokeFactor, LeastStrokeM),
            Of(RetrieveKeys.Slack, "slack that the hand keeps", scenario.Retrieve.TakeUp.SlackM, SlackFactor, LeastSlackM),
        ];
    }

    // Putty of the same weight in their place: as heavy, without drag.
    private static LureSpec WithoutHooks(LureSpec lure) => lure with { Hooks = [.. lure.Hooks.Select(h => h with { DragAreaM2 = 0.0, DragAreaAlongM2 = 0.0 })] };
}
