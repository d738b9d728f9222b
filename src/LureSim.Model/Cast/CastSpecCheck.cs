using LureSim.Model.Hands;
using LureSim.Model.Lures;

namespace LureSim.Model.Cast;

/// <summary>Refuses casts that the model is not made for.</summary>
public static class CastSpecCheck
{
    /// <summary>Demands every number of a cast inside its range.</summary>
    /// <param name="spec">The cast.</param>
    /// <exception cref="ArgumentException">A value is out of range; the message names it and what is allowed.</exception>
    public static void Demand(CastRunSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        (RunSpec run, CastSpec cast) = spec;
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(cast);
        LureSpecCheck.Demand(run.Lure);
        Require.InRange(run.Angler.HandHeightM, 0.3, 4.0);
        Require.InRange(run.Reel.SpoolDiameterM, 0.02, 0.08);
        Require.InRange(run.Line.DiameterM, 2e-5, 2e-3);
        Require.Positive(run.Line.AxialStiffnessN);
        Require.InRange(run.Line.LinearDensityKgM, 1e-7, 1e-2);
        Require.InRange(run.Line.DampingTimeS, 0.0, 0.1);
        Require.InRange(cast.OverhangM, 0.05, 3.0);
        Require.InRange(cast.RodDampingRatio, 0.0, 0.5);
        Require.InRange(cast.Release.Value, -3.2, 3.2);
        Require.InRange(cast.Release.ErrorS, -0.1, 0.1);
        Hands(cast.Hands);
        Spools(cast);
        FlightAndSteps(cast);
    }

    private static void Hands(HandsSpec hands)
    {
        Require.InRange(hands.Effort, 0.05, 3.0);
        Require.InRange(hands.TorqueNm, 1.0, 120.0);
        Require.InRange(hands.SpeedRadS, 3.0, 40.0);
        Require.InRange(hands.InertiaKgM2, 0.005, 1.0);
        Require.InRange(hands.PushN, 0.0, 300.0);
        Require.InRange(hands.PushSpeedMS, 0.5, 10.0);
        Require.InRange(hands.PushedMassKg, 0.5, 30.0);
        Require.InRange(hands.TravelM, 0.0, 1.5);
        Require.InRange(hands.RampS, 0.01, 0.5);
        Require.InRange(hands.StartRad, -2.6, 0.5);
        Require.InRange(hands.StopRad, hands.StartRad + 0.2, 1.6);
        Require.InRange(hands.BrakeShare, 0.05, 2.0);
        Require.InRange(hands.RaiseM, 0.0, 1.0);
        Require.InRange(hands.ReleaseErrorS, 0.0, 0.05);
        Require.InRange(hands.Scatter, 0.0, 0.2);
    }

    private static void Spools(CastSpec cast)
    {
        Require.InRange(cast.Spool.InertiaKgM2, 1e-7, 1e-4);
        Require.InRange(cast.Spool.LineM, 1.0, 1000.0);
        Require.InRange(cast.Spool.WidthM, 0.005, 0.06);
        Require.InRange(cast.Spool.Packing, 0.4, 1.0);
        Require.InRange(cast.Spool.MagneticNms, 0.0, 1e-4);
        Require.InRange(cast.Spool.CentrifugalNms2, 0.0, 1e-6);
        Require.InRange(cast.Spool.FrictionNm, 0.0, 0.05);
        Require.InRange(cast.Spool.ThumbNm, 0.0, 0.5);
        Require.InRange(cast.Spool.ThumbDelayS, 0.0, 2.0);
        Require.InRange(cast.FixedSpool.PickUpFactor, 0.0, 10.0);
        Require.InRange(cast.FixedSpool.RestTensionN, 0.0, 1.0);
        Require.InRange(cast.FixedSpool.RingFactor, 1.0, 3.0);
    }

    private static void FlightAndSteps(CastSpec cast)
    {
        Require.InRange(cast.Flight.TumblingShare, 0.0, 1.0);
        Require.InRange(cast.Flight.FrontCd, 0.0, 2.0);
        Require.InRange(cast.Flight.SideFactor, 0.0, 2.0);
        Require.InRange(cast.Flight.FrictionFactor, 0.0, 5.0);
        Require.InRange(cast.Flight.WetFactor, 0.0, 3.0);
        Require.InRange(cast.Flight.LureCdAM2 ?? 0.0, 0.0, 1.0);
        Require.InRange(cast.Numerics.SwingStepS, 1e-5, 1e-3);
        Require.InRange(cast.Numerics.FlightStepS, 1e-5, 2e-3);
        Require.InRange(cast.Numerics.NodeSpacingM, 0.5, double.PositiveInfinity);
        Require.InRange(cast.Numerics.RodAfterReleaseS, 0.02, 2.0);
        Require.InRange(cast.Numerics.OutputStepS, 1e-4, 1.0);
    }
}
