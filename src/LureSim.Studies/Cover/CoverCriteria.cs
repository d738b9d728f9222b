using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Cover;
using LureSim.Model.Landing;
using LureSim.Model.Lures;
using LureSim.Model.Strike;
using LureSim.Studies.Strike;

namespace LureSim.Studies.Cover;

/// <summary>The criteria, all of them, in one place. No number here is a choice: each compares two results of the models, with the bands of what is guessed.</summary>
public static class CoverCriteria
{
    /// <summary>Strikes, lands and weighs; null where the model cannot finish, or the set-up makes no strike.</summary>
    /// <param name="tried">Tackle and strike.</param>
    /// <param name="bands">Bands of the guesses.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static CoverTrial? Weigh(CoverTry tried, CoverBands bands, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(tried);
        ArgumentNullException.ThrowIfNull(bands);
        StrikeResult? strike = StrikeTrial.Try(tried.Setup, tried.Task, (s, t) => StrikeRun.Run(s, t, new(null, stop)));
        if (strike is null || LandingOfStrike.Run(tried.Setup, tried.Task).Result is not LandingResult landing)
        {
            return null;
        }

        Ranged boat = BoatBearsN(tried, landing, bands);
        double factor = landing.Boat.SlipStartN / tried.Setup.Reel.DragN;
        CoverCheck[] checks =
        [
            Lure(tried.Setup), Sets(strike, bands), Holds(strike, bands),
            CoverCheck.Of(CoverCriterion.Boat, boat, Exact(factor * tried.BoatDragN), PlaceOf(landing.Boat.Weakest.Limit)), Drawn(tried.Setup, landing, bands), Tight(landing, bands),
        ];
        return new(tried, strike, landing, checks) { BoatFactor = factor };
    }

    // A treble fouls single plants and cannot be drawn over a mat; a single or double lies against the body with its points up. Common practice, no source.
    private static CoverCheck Lure(Setup setup)
    {
        bool fouls = setup.Hook.Kind == HookKind.ThreePoint && setup.Cover.Kind != CoverKind.Open;
        return new(CoverCriterion.Lure, !fouls ? CoverState.Passes : setup.Cover.Kind == CoverKind.Mat ? CoverState.Fails : CoverState.May, default, default);
    }

    private static CoverCheck Sets(StrikeResult strike, CoverBands bands) =>
        CoverCheck.Of(CoverCriterion.Sets, Exact(strike.Summary.HookForcePeakN), CoverBands.Times(strike.Setup.Hook.SettingN, bands.Set));

    private static CoverCheck Holds(StrikeResult strike, CoverBands bands) => Weakest(CoverCriterion.Holds, strike.Summary.Margins, bands);

    // What the weakest part bears at the boat, the rod among them: with every guess in use, at its low and at its high end.
    private static Ranged BoatBearsN(CoverTry tried, LandingResult landing, CoverBands bands)
    {
        double With(double hold, double wire, double knot, double rod)
        {
            HookHold hook = tried.Setup.Hook;
            StrikeTask task = tried.Task with { KnotShare = tried.Task.KnotShare * knot, RodFactor = tried.Task.RodFactor * rod };
            return LandingOfStrike.Run(tried.Setup with { Hook = hook with { HoldN = hook.HoldN * hold, WireN = hook.WireN * wire } }, task).Demand().Boat.Weakest.LoadN;
        }

        return new(
            landing.Boat.Weakest.LoadN, With(bands.Hold.Low, bands.Wire.Low, bands.Knot.Low, bands.Rod.Low), With(bands.Hold.High, bands.Wire.High, bands.Knot.High, bands.Rod.High));
    }

    private static WeakPlace PlaceOf(LandingLimit limit) => limit switch
    {
        LandingLimit.Knot => WeakPlace.Knot,
        LandingLimit.Leader => WeakPlace.Leader,
        LandingLimit.HookWire => WeakPlace.HookWire,
        LandingLimit.HookHold => WeakPlace.HookHold,
        _ => WeakPlace.Rod,
    };

    // Through the plants; over the top takes less, but only once the head is up: that is the easy end of the need.
    private static CoverCheck Drawn(Setup setup, LandingResult landing, CoverBands bands)
    {
        Ranged grip = bands.GripOf(setup.Cover.Kind);
        PlantPull plants = landing.Plants;
        double Through(double share) => PlantLine.TipN(setup.Cover, plants.LineLaidM, plants.Through.FishN + ((share - 1.0) * setup.Cover.GripN));
        double through = Through(1.0), over = setup.Cover.Kind == CoverKind.Open ? through : plants.Over.TipN;
        return CoverCheck.Of(CoverCriterion.Drawn, Exact(HeldAtTipN(landing)), new(through, Math.Min(over, Through(grip.Low)), Through(grip.High)));
    }

    /// <summary>Largest pull at the tip for a moment, best rod angle: hands, arms, rod and tackle hold it, and the drag does not run.</summary>
    /// <param name="landing">Holding and landing.</param>
    public static double HeldAtTipN(LandingResult landing)
    {
        ArgumentNullException.ThrowIfNull(landing);
        double drag = landing.Setup.Reel.DragN, rings = landing.Setup.Reel.Clutch.RingFriction;
        return landing.Heave.Max(h => Math.Min(h.LoadN, drag * Math.Exp(rings * h.LineTurnRad)));
    }

    private static CoverCheck Tight(LandingResult landing, CoverBands bands) =>
        CoverCheck.Of(CoverCriterion.Tight, Exact(landing.Reel.BurstMS), CoverBands.Times(landing.Setup.Fish.SpeedMS, bands.Speed));

    // The place in the worst state, of several the one with the least reserve.
    private static CoverCheck Weakest(CoverCriterion criterion, IEnumerable<Margin> margins, CoverBands bands) => margins
        .Select(m => CoverCheck.Of(criterion, bands.Strength(m), Exact(m.LoadN), m.Place)).OrderByDescending(c => c.State).ThenBy(c => c.Reserve).First();

    private static Ranged Exact(double value) => new(value, value, value);
}
