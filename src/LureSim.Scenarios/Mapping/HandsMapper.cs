using LureSim.Model.Hands;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Mapping;

/// <summary>Table <c>[hands]</c> and the effort to <see cref="HandsSpec"/>, table <c>[angler]</c> to <see cref="AnglerSpec"/>.</summary>
internal static class HandsMapper
{
    /// <summary>Maps the hands; refused values stay NaN.</summary>
    public static HandsSpec Map(MapContext c)
    {
        double style = c[CastKeys.Style], skill = c[CastKeys.Skill];
        CastingStyle made = double.IsNaN(style) ? CastingStyle.TwoHanded : (CastingStyle)(int)style;
        CastingSkill timed = double.IsNaN(skill) ? CastingSkill.Practised : (CastingSkill)(int)skill;
        CastingStyles usual = CastingStyles.Of(made);
        var hands = new HandsSpec(
            Effort: c[CastKeys.Effort],
            TorqueNm: c.Guessed(HandsKeys.Torque, usual.TorqueNm),
            SpeedRadS: c.Guessed(HandsKeys.Speed, usual.SpeedRadS),
            InertiaKgM2: c.Guessed(HandsKeys.Inertia, usual.InertiaKgM2),
            PushN: c.Guessed(HandsKeys.Push, usual.PushN),
            PushSpeedMS: c.Guessed(HandsKeys.PushSpeed, usual.PushSpeedMS),
            PushedMassKg: c.Guessed(HandsKeys.PushedMass, usual.PushedMassKg),
            TravelM: c.Guessed(HandsKeys.Travel, usual.TravelM),
            RampS: c.Guessed(HandsKeys.Ramp, usual.RampS),
            StartRad: c.Guessed(HandsKeys.StartAngle, usual.StartRad),
            StopRad: c.Guessed(HandsKeys.StopAngle, usual.StopRad),
            CatchShare: c[HandsKeys.CatchShare],
            RaiseM: c[HandsKeys.Raise],
            ReleaseErrorS: c.Guessed(HandsKeys.ReleaseError, HandsSpec.UsualReleaseError(timed)),
            Scatter: c.Guessed(HandsKeys.Scatter, HandsSpec.UsualScatter(timed)),
            SettlingRadS: c[HandsKeys.Settling],
            FadeS: c[HandsKeys.Fade],
            CatchDelayS: c[HandsKeys.CatchDelay])
        {
            Style = made,
            Skill = timed,
        };
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
}
