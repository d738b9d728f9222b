using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Studies.Cast;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Cast;

public sealed class CastAcrossTests
{
    [Theory]
    [InlineData(2.0, 2.0, 16.0, true)]
    [InlineData(1.0, 2.0, 64.0, false)]
    [InlineData(-4.0, 2.0, 4.0, true)]
    public void The_rule_counts_casts(double gain, double sigma, double casts, bool notices)
    {
        Assert.Equal(casts, NoticeRule.Casts(gain, sigma), 1e-12);
        Assert.Equal(notices, NoticeRule.Notices(gain, sigma));
    }

    [Fact]
    public void Sixteen_is_the_normal_sample_size_for_two_means()
    {
        // 2 (z(0.975) + z(0.8))^2 = 15.70: the normal sample size for two means at 5 % and 80 %, exact quantiles.
        double z = MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, 0.975) + MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, 0.8);
        Assert.Equal(2.0 * z * z, NoticeRule.Casts(1.0, 1.0), 0.4);
    }

    [Fact]
    public void The_same_luck_gives_a_narrower_band_of_the_gain_than_of_the_distances()
    {
        Setup spec = MadeUp.Caster();
        double[] efforts = [0.6, 0.8, 1.0, 1.2, 1.4, 1.6];
        CastVariant[] variants = [Variant("short", 0.3), Variant("long", 0.6)];
        IReadOnlyList<CastCase> one = CastAcrossStudy.Run(variants, efforts.Length, 1, null, default), many = CastAcrossStudy.Run(variants, efforts.Length, 2, null, default);
        Assert.Equal(one[1].DrawsM, many[1].DrawsM);
        CastStep step = CastStep.Between(one[0], one[1])!;
        double[] gains = [.. one[0].DrawsM.Zip(one[1].DrawsM, (a, b) => b - a).Order()];
        Assert.Equal(0.5 * (gains[2] + gains[3]), step.GainM, 1e-12);
        CastStep plain = CastStep.Between(one[0] with { DrawsM = [] }, one[1] with { DrawsM = [] })!;
        Assert.Equal(one[1].Cast!.DistanceMeanM - one[0].Cast!.DistanceMeanM, plain.GainM, 1e-12);
        Assert.True(step.GainM > 0.0);
        Assert.True(step.GainsM.High - step.GainsM.Low < 0.5 * (one[0].GuessesM.High - one[0].GuessesM.Low));

        CastVariant Variant(string label, double overhang)
        {
            var task = new CastTask(overhang);
            return new(label, overhang, spec, task, draw => (spec with { Hands = spec.Hands with { Effort = efforts[draw] } }, task));
        }
    }

    [Fact]
    public void A_set_up_that_cannot_be_cast_keeps_its_reason()
    {
        Setup spec = MadeUp.Caster(), low = spec with { Angler = spec.Angler with { HandHeightM = 0.3 } };
        CastCase c = Assert.Single(CastAcrossStudy.Run([new("wet", 1.0, low, new CastTask(3.0), _ => null)], 1, 1, null, default));
        Assert.Null(c.Cast);
        Assert.Contains("hangs in the water", c.Failure, StringComparison.Ordinal);
        Assert.True(double.IsNaN(c.DrawsM[0]));
        Assert.Null(CastStep.Between(c, c));
    }
}
