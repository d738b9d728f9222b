using LureSim.Model.Hands;
using LureSim.Model.Media;
using LureSim.Model.Rods;

namespace LureSim.Model.Assembly;

/// <summary>Builds hands and rod of a strike from a set-up.</summary>
internal static class StrokeRod
{
    // Time over which hands ease from the stroke to holding, s: a choice, slow against a muscle.
    private const double EaseS = 0.2;

    /// <summary>
    /// The rod at the start of a stroke: hand over the origin, rod bent by its own weight where it turns upright, held by the hands, line loose. Of
    /// the hands' way to brake (share of their strength, settling rate) that of a cast holds: the same person. The rod's air knows the wind along the line only.
    /// </summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="stroke">What hands and body do.</param>
    /// <exception cref="ArgumentException">A number of the rod is out of range.</exception>
    /// <exception cref="ModelException">No stiffness fulfils the bend test.</exception>
    public static ChainRodEnd Of(Setup setup, StrikeStroke stroke)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(stroke);
        var rod = SwungRod.Of(setup.Rod);
        double gravity = stroke.Plane == StrokePlane.Up ? Physics.GravityMS2 : 0.0;
        RodShape start = RodStatics.Solve(rod.Chain, (0.5 * Math.PI) - stroke.StartRad, 0.0, 0.0, gravity);
        double height = setup.Angler.HandHeightM;
        ChainMotion motion = rod.Motion(
            new HandInertia(stroke.InertiaKgM2, stroke.PulledMassKg), AirModel.Evaluate(setup.Air).DensityKgM3,
            -new WindProfile(setup.Air).Velocity(height).X, gravity);
        var end = new ChainRodEnd(motion, Hands(setup.Hands, stroke, rod, start.HoldingNm), StrokeFrame.Of(stroke.Plane, height));
        end.Start([0.0, .. start.FromUpright()], new double[motion.Size]);
        return end;
    }

    private static StrokeHands Hands(HandsSpec person, StrikeStroke stroke, SwungRod rod, double holding)
    {
        double root = Math.Sqrt(stroke.Effort), settling = person.SettlingRadS;
        var ease = Catch.Held(EaseS, stroke.HoldShare / stroke.Effort);
        var turn = new HandStrength(stroke.Effort * stroke.TorqueNm, root * stroke.SpeedRadS, stroke.RampS, person.CatchShare, settling);
        var pull = new HandStrength(stroke.Effort * stroke.PullN, root * stroke.PullSpeedMS, stroke.RampS, person.CatchShare, settling);
        return new(
            turn.Turning(stroke.StopRad, stroke.InertiaKgM2 + rod.InertiaKgM2, holding, ease), pull.Pushing(stroke.TravelM, stroke.PulledMassKg + rod.Chain.MassKg, ease), stroke.HoldS);
    }
}
