using LureSim.Model.Hands;

namespace LureSim.Model.Tests.Hands;

public sealed class CastingStyleTests
{
    // Wrist: ulnar deviation 9.5 +- 2.2 N m, flexion 12.2 +- 3.7 (Delp, Grierson, Buchanan 1996); shoulder flexion of men 89.9 N m static (abstract seen).
    [Fact]
    public void No_style_is_stronger_than_people()
    {
        Assert.InRange(CastingStyles.WristFlick.TorqueNm.Value, 9.5 - 2.2, 12.2 + 3.7);
        Assert.InRange(CastingStyles.OneHanded.TorqueNm.High, CastingStyles.WristFlick.TorqueNm.Value, 0.5 * 89.9);
        Assert.InRange(CastingStyles.TwoHanded.TorqueNm.High, CastingStyles.OneHanded.TorqueNm.Value, 89.9);
    }

    // The same path in T times the time needs torque ~ 1/T^2 and has speed ~ 1/T.
    [Theory]
    [InlineData(0.25)]
    [InlineData(0.5)]
    [InlineData(2.0)]
    public void Effort_stretches_time(double effort)
    {
        HandsSpec full = CastingStyles.Hands(CastingStyle.OneHanded, 1.0), other = CastingStyles.Hands(CastingStyle.OneHanded, effort);
        double time = full.TopSpeedRadS / other.TopSpeedRadS;
        Assert.Equal(full.FullTorqueNm / (time * time), other.FullTorqueNm, 1e-12);
        Assert.Equal(full.FullPushN / (time * time), other.FullPushN, 1e-12);
        Assert.Equal(full.TopPushSpeedMS / time, other.TopPushSpeedMS, 1e-12);
    }

    [Theory]
    [InlineData(CastingStyle.WristFlick)]
    [InlineData(CastingStyle.OneHanded)]
    [InlineData(CastingStyle.TwoHanded)]
    public void The_values_of_a_style_are_the_middle_of_its_ranges(CastingStyle style)
    {
        CastingStyles s = CastingStyles.Of(style);
        foreach (Ranged r in (Ranged[])[s.TorqueNm, s.SpeedRadS, s.InertiaKgM2, s.PushN, s.PushSpeedMS, s.PushedMassKg, s.TravelM, s.RampS, s.StartRad, s.StopRad])
        {
            Assert.Equal(r.Value, 0.5 * (r.Low + r.High), 1e-12);
        }

        Assert.Equal(style, CastingStyles.Hands(style).Style);
        Assert.Throws<ArgumentOutOfRangeException>(() => CastingStyles.Of((CastingStyle)7));
    }

    // What a set-up without a word about hands has: two hands, an everyday effort, practised.
    [Fact]
    public void The_default_hands_are_two_at_an_everyday_effort() => Assert.Equal(new HandsSpec(), CastingStyles.Hands(CastingStyle.TwoHanded, 0.5));

    [Fact]
    public void Skill_sets_error_and_scatter()
    {
        HandsSpec hands = new();
        Assert.Equal(hands, hands.With(CastingSkill.Practised));
        Assert.True(hands.With(CastingSkill.Beginner).ReleaseErrorS > hands.ReleaseErrorS && hands.With(CastingSkill.Expert).ReleaseErrorS < hands.ReleaseErrorS);
        Assert.True(hands.With(CastingSkill.Beginner).Scatter > hands.Scatter && hands.With(CastingSkill.Expert).Scatter < hands.Scatter);
    }
}
