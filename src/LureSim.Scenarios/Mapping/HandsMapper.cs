using LureSim.Model;
using LureSim.Model.Hands;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Mapping;

/// <summary>Table <c>[hands]</c> and the effort to <see cref="HandsSpec"/>, table <c>[angler]</c> to <see cref="AnglerSpec"/>.</summary>
internal static class HandsMapper
{
    /// <summary>Maps the hands; refused values stay NaN.</summary>
    public static HandsSpec Map(MapContext c)
    {
        double effort = c[CastKeys.Effort];
        HandsSpec usual = HandsSpec.WithEffort(effort);
        var hands = new HandsSpec(
            Effort: effort,
            TorqueNm: c[HandsKeys.Torque],
            SpeedRadS: c[HandsKeys.Speed],
            InertiaKgM2: c[HandsKeys.Inertia],
            PushN: c[HandsKeys.Push],
            PushSpeedMS: c[HandsKeys.PushSpeed],
            PushedMassKg: c[HandsKeys.PushedMass],
            TravelM: c[HandsKeys.Travel],
            RampS: c[HandsKeys.Ramp],
            StartRad: c[HandsKeys.StartAngle],
            StopRad: c[HandsKeys.StopAngle],
            BrakeShare: c[HandsKeys.BrakeShare],
            RaiseM: c[HandsKeys.Raise],
            ReleaseErrorS: c.Guessed(HandsKeys.ReleaseError, Usual(usual.ReleaseErrorS, HandsKeys.ReleaseError)),
            Scatter: c.Guessed(HandsKeys.Scatter, Usual(usual.Scatter, HandsKeys.Scatter)),
            SettlingRadS: c[HandsKeys.Settling]);
        if (hands.StopRad < hands.StartRad + HandsSpec.LeastSwingRad)
        {
            c.Fault(HandsKeys.StopAngle, string.Concat(
                $"{MapContext.Show(HandsKeys.StopAngle, hands.StopRad)} is hardly beyond hands.start_angle, {MapContext.Show(HandsKeys.StartAngle, hands.StartRad)}; ",
                $"at least {MapContext.Show(HandsKeys.StopAngle, hands.StartRad + HandsSpec.LeastSwingRad)} is due"));
        }

        return hands;
    }

    /// <summary>Maps the angler; refused values stay NaN.</summary>
    public static AnglerSpec MapAngler(MapContext c) => new(
        HandHeightM: c[AnglerKeys.HandHeight],
        RodElevationRad: c[AnglerKeys.RodElevation],
        RodBearingRad: c[AnglerKeys.RodBearing],
        PullTimeS: c[AnglerKeys.PullTime],
        ReturnTimeS: c[AnglerKeys.ReturnTime],
        ReturnShare: c[AnglerKeys.ReturnShare],
        SustainedTorqueNm: c[AnglerKeys.SustainedTorque]);

    private static Ranged Usual(double value, KeySpec key) => new(value, key.Parameter!.GuessLow, key.Parameter.GuessHigh);
}
