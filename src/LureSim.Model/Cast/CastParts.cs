using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Lines.Air;
using LureSim.Model.Lures;
using LureSim.Model.Reels;
using LureSim.Model.Rods;

namespace LureSim.Model.Cast;

/// <summary>Everything of a cast that does not change with time: checked input, the rod's chain, start of the swing.</summary>
internal sealed class CastParts
{
    // Carrier of the line speed on a fixed spool over the lure's mass: small enough to cost 0.2 % of the launch speed.
    private const double PseudoMassShare = 0.002;

    // Where the lure must hang at least over the water at the start, m; the rod is raised in these steps until it does, rad.
    private const double ClearM = 0.1;
    private const double RaiseRad = 0.05;

    // The hands need this much of an arc, rad.
    private const double LeastSwingRad = 0.5;

    private readonly LineAir _air;
    private readonly SwungRod _rod;
    private readonly double _hold, _lureKg, _lineKgM;
    private readonly double[] _startAngle;

    public CastParts(Setup setup, CastTask task)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(task);
        setup.Check();
        task.Check();
        Require.InRange(setup.Hands.StopRad, setup.Hands.StartRad + HandsSpec.LeastSwingRad, double.PositiveInfinity);
        (Setup, Task) = (setup, task);
        _lureKg = FlyingLure.MassKg(setup.Lure);
        _lineKgM = setup.Line.LinearDensityKgM * setup.Line.Flight.WetFactor;
        _air = new LineAir(setup.Air, setup.Line, setup.Line.Flight.FrictionFactor, FlyingLure.AreaM2(setup.Lure));
        _rod = SwungRod.Of(setup.Rod);
        HandHeightM = setup.Angler.HandHeightM + setup.Hands.RaiseM;
        StartRad = setup.Hands.StartRad;
        RodShape start = Hold(StartRad);
        while (!Clear(start) && StartRad + RaiseRad < Math.Min(0.0, setup.Hands.StopRad - LeastSwingRad))
        {
            StartRad += RaiseRad;
            start = Hold(StartRad);
        }

        if (!Clear(start))
        {
            throw new ArgumentException("The lure hangs in the water at the start: raise the hand or the rod, or shorten the overhang.");
        }

        _startAngle = start.FromUpright();
        _hold = start.HoldingNm;
    }

    public Setup Setup { get; }

    public CastTask Task { get; }

    /// <summary>Start angle of the butt: the wanted one, or less far back where the lure would hang in the water, rad.</summary>
    public double StartRad { get; private set; }

    /// <summary>Height of the turning point over the water, m.</summary>
    public double HandHeightM { get; }

    public RodChain Chain => _rod.Chain;

    /// <summary>A cast at the start of its swing: rod bent by its load, lure hanging at rest.</summary>
    /// <param name="spacingM">Node spacing of the line, m; infinity for a straight line. A straight line knows no bow that takes
    /// up loose line, so the thumb rests there.</param>
    public AirStep Start(double spacingM)
    {
        var stepper = new AirStep(
            Swing(), new AirLine(Setup.Line, _air, new CastLineMass(_lureKg, _lineKgM), Chain.FreeLengthM, Physics.GravityMS2, spacingM), Reel(double.IsFinite(spacingM)));
        _startAngle.CopyTo(stepper.Rod.Q, 1);
        (double x, double z, _, _) = stepper.Rod.Tip();
        double stretch = _lureKg * Physics.GravityMS2 * (Task.OverhangM + Chain.FreeLengthM) / Setup.Line.AxialStiffnessN;
        stepper.Line.X[0] = x;
        stepper.Line.Z[0] = z - Task.OverhangM - stretch;
        stepper.Line.RestM[0] = Task.OverhangM;
        return stepper;
    }

    private RodShape Hold(double angleRad) =>
        RodStatics.Solve(Chain, (0.5 * Math.PI) - angleRad, 0.0, -_lureKg * Physics.GravityMS2, Physics.GravityMS2);

    private bool Clear(RodShape start) => HandHeightM + start.TipYM - Task.OverhangM >= ClearM;

    private ChainRod Swing()
    {
        HandsSpec hands = Setup.Hands;
        var turn = new HandStrength(hands.FullTorqueNm, hands.TopSpeedRadS, hands.RampS, hands.CatchShare, hands.SettlingRadS);
        var push = new HandStrength(hands.FullPushN, hands.TopPushSpeedMS, hands.RampS, hands.CatchShare, hands.SettlingRadS);
        ChainMotion motion = _rod.Motion(
            new HandInertia(hands.InertiaKgM2, hands.PushedMassKg), _air.DensityKgM3, _air.Wind(HandHeightM), Physics.GravityMS2, HandHeightM);
        return new ChainRod(
            motion, turn.Turning(hands.StopRad, hands.InertiaKgM2 + _rod.InertiaKgM2, _hold, Catch(turn.BrakeLoad, true)),
            push.Pushing(hands.TravelM, hands.PushedMassKg + Chain.MassKg, Catch(push.BrakeLoad, false)));
    }

    private Catch Catch(double limit, bool follows) =>
        new(Setup.Hands.FadeS, Setup.Hands.CatchDelayS, limit, Setup.Hands.SettlingRadS, follows);

    private ReelFeed Reel(bool thumb)
    {
        ReelSpec reel = Setup.Reel;
        SpoolSpec spool = thumb ? reel.Spool : reel.Spool with { ThumbPressN = 0.0 };
        double radius = 0.5 * reel.SpoolDiameterM;
        return reel.Kind == ReelKind.Revolving
            ? new FreeSpool(spool, _air.LureKgM / _lureKg, radius, _lineKgM, Setup.Line.DiameterM, Chain.FreeLengthM)
            : new FixedSpool(reel.FixedSpool, _lineKgM, PseudoMassShare * _lureKg, radius);
    }
}
