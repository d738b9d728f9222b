using LureSim.Model.Assembly;
using LureSim.Model.Fish;
using LureSim.Model.Media;

namespace LureSim.Model.Landing;

/// <summary>Holding and landing: statics and closed forms, milliseconds.</summary>
public static class LandingRun
{
    private const double Degree = Math.PI / 180.0, ShortRodM = 1.9812, LongRodM = 2.286;
    private static readonly double[] UsualMassesKg = [1.0, 1.5, 3.0], LiftDeg = [10.0, 20.0, 30.0, 40.0, 50.0, 60.0, 70.0], PullDeg = [15.0, 30.0, 45.0, 60.0, 75.0, 90.0, 105.0, 120.0];

    /// <summary>Works it out.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Where, and how strong the angler is.</param>
    /// <returns>The result, or why the rod has no shape.</returns>
    /// <exception cref="ArgumentException">A value is out of range; the message names it and what is allowed.</exception>
    public static Outcome<LandingResult> Run(Setup setup, LandingTask task)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(task);
        setup.Check();
        Parameter.Demand(task);
        return Outcome.Of(() => Of(setup, task));
    }

    private static LandingResult Of(Setup setup, LandingTask task)
    {
        double density = WaterModel.Evaluate(setup.Water).DensityKgM3, elevation = task.LineElevationRad(setup);
        var weakest = TackleStrength.Weakest(setup, task.KnotShare);
        var rod = new HeldRod(setup.Rod, task.RodFactor);
        var lift = new RodLift(rod, weakest);
        RodLoad[][] lifts = [.. LiftDeg.Select(a => lift.Lift(a * Degree, task.Short, task.Long))], pulls = [.. PullDeg.Select(a => lift.Pull(a * Degree, task.Short, task.Long))];
        var reel = TakeUpRace.Of(setup, task, setup.Reel.Ratio);
        PlaningPull own = Drawn(setup.Fish, density);
        double Lever(double length) => RodLever.PullN(setup.Rod, length, 0.5 * Math.PI, task.Long.TorqueNm);
        return new()
        {
            Setup = setup,
            Task = task,
            Weakest = weakest,
            Lift = [.. lifts.Select(l => l[0])],
            Hold = [.. lifts.Select(l => l[1])],
            Heave = [.. pulls.Select(l => l[0])],
            Pull = [.. pulls.Select(l => l[1])],
            Lever = (Lever(ShortRodM), Lever(LongRodM)),
            Tow = [.. Enumerable.Range(3, 18).Select(tenth => own.Towed(0.1 * tenth, elevation))],
            TowAtReel = own.Towed(reel.SteadyMS, elevation),
            OnTop = own.HeadUp(reel.SteadyMS, elevation, Scaled(FishBody.PullN(setup.Fish.MassKg), setup.Fish.PullN)),
            OnTopByMass = [.. UsualMassesKg.Select(m => Usual(m, density).HeadUp(reel.SteadyMS, elevation, FishBody.PullN(m)))],
            Plants = PlantPull.Of(setup, task, density),
            Reel = reel,
            ReelByRatio = [.. TakeUpRace.Ratios.Select(ratio => TakeUpRace.Of(setup, task, ratio))],
            SweepM = TakeUpRace.SweepM(setup, task),
            Boat = ShortLine.Of(setup, task, rod, weakest, density),
        };
    }

    private static PlaningPull Usual(double mass, double density) => new(mass, FishBody.DragAreaM2(mass), density);

    private static PlaningPull Drawn(FishSpec fish, double density) =>
        new(fish.MassKg, Scaled(FishBody.DragAreaM2(fish.MassKg), fish.DragAreaM2), density);

    // The doubt of a usual value, about the one that was given.
    private static Ranged Scaled(Ranged usual, double given) => new(given, given * usual.Low / usual.Value, given * usual.High / usual.Value);
}
