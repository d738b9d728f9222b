using LureSim.Model.Rods;

namespace LureSim.Model.Landing;

/// <summary>What hands and arms hold still.</summary>
/// <param name="TorqueNm">Torque on the rod's butt, N m.</param>
/// <param name="PullN">Pull straight at them, N.</param>
internal readonly record struct Grip(double TorqueNm, double PullN);

/// <summary>Largest load at the tip of a rod held at an angle.</summary>
/// <param name="RodAngleRad">Butt: over the level for a hanging weight, over the line for a pull along it, rad.</param>
/// <param name="LoadN">Largest load, N.</param>
/// <param name="Limit">What ends it.</param>
/// <param name="HandsN">Load up to which the hands hold the torque, N; 2048 stands for that and more.</param>
/// <param name="RodN">What the rod bears, N; 2048 stands for that and more.</param>
/// <param name="LeverM">Distance from the hand to the line of the load, square to it, with the rod bent by that load, m: the torque of the load on the hands is
/// load times lever. The rod's own weight comes on top.</param>
/// <param name="TipRiseM">Tip over the hand, rod bent by that load, m; negative under it.</param>
/// <param name="LineTurnRad">Turn of the line from the butt to the load, rad: over it the line presses on the rings, however the rod bends.</param>
public sealed record RodLoad(double RodAngleRad, double LoadN, LandingLimit Limit, double HandsN, double RodN, double LeverM, double TipRiseM, double LineTurnRad)
{
    /// <summary>The load as a mass that hangs, kg.</summary>
    public double MassKg => LoadN / Physics.GravityMS2;
}

/// <summary>
/// Lifting and pulling with the rod in the hands: statics of the bent rod, with its own weight, against the torque that the hands hold, what the rod
/// bears and the weakest part between tip and fish. The lever of the bent rod decides, not its length.
/// </summary>
/// <param name="rod">The rod.</param>
/// <param name="tackle">The weakest part between tip and fish.</param>
internal sealed class RodLift(HeldRod rod, TackleStrength tackle)
{
    /// <summary>Largest weights hanging from the tip, one for each grip.</summary>
    /// <param name="angleRad">Butt over the level, rad.</param>
    /// <param name="grips">What the hands hold.</param>
    public RodLoad[] Lift(double angleRad, params ReadOnlySpan<Grip> grips) =>
        Largest(angleRad, angleRad + (0.5 * Math.PI), n => rod.Hung(angleRad, n), s => s.TipXM, grips);

    /// <summary>Largest pulls along a level line on a fish, one for each grip.</summary>
    /// <param name="angleRad">Butt over the line, rad; a right angle is square to it.</param>
    /// <param name="grips">What the hands hold.</param>
    public RodLoad[] Pull(double angleRad, params ReadOnlySpan<Grip> grips) =>
        Largest(angleRad, angleRad, n => rod.Drawn(angleRad, n), s => s.TipYM, grips);

    private RodLoad[] Largest(double angle, double turn, Func<double, RodShape> shape, Func<RodShape, double> lever, ReadOnlySpan<Grip> grips)
    {
        double bears = RodHold.PullN(shape, rod.Use, 1.0);
        var loads = new RodLoad[grips.Length];
        for (int i = 0; i < loads.Length; i++)
        {
            double hands = RodHold.PullN(shape, s => s.ButtMomentNm, grips[i].TorqueNm);
            TackleStrength least = tackle.Or(LandingLimit.Rod, bears).Or(LandingLimit.Hands, hands).Or(LandingLimit.Arms, grips[i].PullN);
            RodShape bent = shape(least.LoadN);
            loads[i] = new(angle, least.LoadN, least.Limit, hands, bears, lever(bent), bent.TipYM, turn);
        }

        return loads;
    }
}
