using LureSim.Model.Assembly;
using LureSim.Model.Fish;

namespace LureSim.Model.Landing;

/// <summary>Holding and landing with one set-up.</summary>
public sealed record LandingResult
{
    /// <summary>Set-up.</summary>
    public required Setup Setup { get; init; }

    /// <summary>What was asked.</summary>
    public required LandingTask Task { get; init; }

    /// <summary>Weakest part between tip and fish.</summary>
    public required TackleStrength Weakest { get; init; }

    /// <summary>Largest weight that is swung in, butt at 10, 20, ... 70 deg over the level.</summary>
    public required ValueList<RodLoad> Lift { get; init; }

    /// <summary>Largest weight that is held hanging for long, same angles.</summary>
    public required ValueList<RodLoad> Hold { get; init; }

    /// <summary>Largest pull for a moment on a fish along a level line, rod at 15, 30, ... 120 deg to the line.</summary>
    public required ValueList<RodLoad> Heave { get; init; }

    /// <summary>Largest pull that is held for long, same angles.</summary>
    public required ValueList<RodLoad> Pull { get; init; }

    /// <summary>Pulls that the same hands hold for long on rods of 6 ft 6 in and 7 ft 6 in with the same power load, square to the line, N.</summary>
    public required (double ShortN, double LongN) Lever { get; init; }

    /// <summary>The fish of the set-up, tired, towed just under the surface at 0.3 to 2 m/s.</summary>
    public required ValueList<TowedFish> Tow { get; init; }

    /// <summary>The same at the steady speed of the reel.</summary>
    public required TowedFish TowAtReel { get; init; }

    /// <summary>The fish of the set-up with its head out at the steady speed of the reel.</summary>
    public required HeadUpFish OnTop { get; init; }

    /// <summary>Fish of 1, 1.5 and 3 kg the same way.</summary>
    public required ValueList<HeadUpFish> OnTopByMass { get; init; }

    /// <summary>Out of plants.</summary>
    public required PlantPull Plants { get; init; }

    /// <summary>The set-up's own reel against a fish that swims at the angler.</summary>
    public required TakeUpRace Reel { get; init; }

    /// <summary>The same with ratios of 6.3, 7 and 8 to 1.</summary>
    public required ValueList<TakeUpRace> ReelByRatio { get; init; }

    /// <summary>Line won once by sweeping the rod back, m.</summary>
    public required double SweepM { get; init; }

    /// <summary>At the boat.</summary>
    public required ShortLine Boat { get; init; }

    /// <summary>The lift that brings up the most, of those in which a fish of that mass hangs clear of the water; the highest where none does.</summary>
    public RodLoad BestLift => Best(Lift);

    /// <summary>The same for a weight that hangs for long.</summary>
    public RodLoad BestHold => Best(Hold);

    private RodLoad Best(ValueList<RodLoad> loads) => loads.Where(HangsClear).MaxBy(l => l.LoadN) ?? loads.MaxBy(l => l.TipRiseM)!;

    private bool HangsClear(RodLoad load) => Setup.Angler.HandHeightM + load.TipRiseM >= FishBody.LengthM(load.MassKg);
}
