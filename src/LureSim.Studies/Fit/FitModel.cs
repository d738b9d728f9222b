using LureSim.Model;
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

    private readonly ScenarioSource _source;
    private readonly IReadOnlyList<string> _overrides;
    private readonly WaterState _water;

    /// <summary>Takes every guess about the lure that the pool reads, and where its ballast sits.</summary>
    /// <param name="source">Scenario.</param>
    /// <param name="overrides">Overrides that stand besides.</param>
    /// <param name="held">Guesses that stay at their value.</param>
    public FitModel(ScenarioSource source, IReadOnlyList<string> overrides, IReadOnlyList<FitUnknown>? held = null)
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
        Unknowns = [.. guesses, .. ballast];
    }

    /// <summary>The scenario as it stands.</summary>
    public ScenarioResult Scenario { get; }

    /// <summary>Steps, and what a file of measurements does not say.</summary>
    public PoolTask Task => Scenario.Pool!;

    /// <summary>What is unknown of the lure.</summary>
    public IReadOnlyList<FitUnknown> Unknowns { get; }

    /// <summary>The lure with and without hooks in the water.</summary>
    /// <param name="z">Numbers in z, those of the lure first.</param>
    /// <returns>Null where no such lure floats.</returns>
    public (PoolTrial On, PoolTrial Off)? Trials(ReadOnlySpan<double> z)
    {
        LureSpec? lure = Lure(z);
        if (lure is null)
        {
            return null;
        }

        try
        {
            return (PoolTrial.Of(lure, _water), PoolTrial.Of(WithoutHooks(lure), _water));
        }
        catch (Exception e) when (e is ModelException or ArgumentException)
        {
            return null;
        }
    }

    /// <summary>The lure for a set of numbers; null where the scenario does not allow it.</summary>
    /// <param name="z">Numbers in z.</param>
    public LureSpec? Lure(ReadOnlySpan<double> z)
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

        LureSpec? lure = _source.Resolve(overrides).Setup?.Lure;
        return lure is null ? null : lure with { Ballast = [.. lure.Ballast.Select(b => b with { XM = b.XM + along, ZM = b.ZM + up })] };
    }

    // Putty of the same weight in their place: as heavy, without drag.
    private static LureSpec WithoutHooks(LureSpec lure) => lure with { Hooks = [.. lure.Hooks.Select(h => h with { DragAreaM2 = 0.0, DragAreaAlongM2 = 0.0 })] };
}
