using CsCheck;
using LureSim.Model.Bend;
using LureSim.Model.Rods;

namespace LureSim.Model.Tests.Bend;

public sealed class BendFitTests
{
    private static readonly double[] Shares = [0.2, 0.4, 0.6, 0.8, 1.0];
    private static readonly ReadingKind[] Everything = [ReadingKind.Angle, ReadingKind.Bounce, ReadingKind.Balance, ReadingKind.Mass];
    private static readonly BendErrors Exact = new(2e-4, 1e-3, 1e-4, 1e-3, 1e-4, 1e-4, 1e-4);
    private static readonly MadeUpRod Usual = new(new(2.1, 0.3, 4.3, 0.052, 0.24, 3.0, 1.5), 0.118);

    // What 80 of 100 means: of n rods the truth lies in the band of so many, within four standard deviations of the binomial law. Rods and errors
    // are drawn from the seed; nothing of the fit enters them but the equations of the rod, and those with another number of links.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Bands_hold_the_truth_as_often_as_they_say(int seed)
    {
        const int rods = 120;
        const double said = 0.8;
        var random = new Random(seed);
        int[] inside = new int[6];
        double wide = 0.0;
        for (int i = 0; i < rods; i++)
        {
            MadeUpRod rod = MadeUpRod.Draw(random);
            BendFit fit = Fit(rod.Test(Shares, Everything, new BendErrors(), random));
            double[] truth = [rod.Rod.ThirdLoadN, rod.Rod.TipRadiusRatio, rod.Rod.StiffnessExponent, rod.MassKg, rod.Rod.MassKg / rod.MassKg, rod.Rod.MassExponent];
            for (int k = 0; k < inside.Length; k++)
            {
                inside[k] += truth[k] >= fit.Values[k].Low && truth[k] <= fit.Values[k].High ? 1 : 0;
            }

            wide += Math.Log(fit[BendValue.BendLoad].High / fit[BendValue.BendLoad].Low) / rods;
        }

        double spread = 4.0 * Math.Sqrt(rods * said * (1.0 - said));
        Assert.All(inside, n => Assert.InRange(n, (rods * said) - spread, (rods * said) + spread));
        Assert.InRange(wide, 0.04, 0.12);
    }

    // Without errors, and told so, it finds any rod of its own links. What is left is the pull of the guesses: the true rod misses nothing and lies at most
    // 1.28 standard deviations off each of six guesses, 3.2 together; so the least sum of squares is at most 3.2^2, no drop misses by more than 3.2 of
    // the errors that are told, and the load lies within 3.2 of its own standard deviations (the same inequality for a linear model; 4 for one that bends).
    // Without a bounce: the made-up one swings about the straight rod.
    [Fact]
    public void It_finds_any_rod_from_exact_readings() =>
        Gen.Int[0, 1_000_000].Sample(
            seed =>
            {
                MadeUpRod rod = MadeUpRod.Draw(new Random(seed));
                BendFit fit = Fit(rod.Test([0.1, .. Shares], [ReadingKind.Angle, ReadingKind.Mass, ReadingKind.Balance], Exact, null, links: 40));
                BendEstimate load = fit[BendValue.BendLoad];
                double deviation = Math.Log(load.High / load.Low) / (2.0 * 1.2816);
                Assert.InRange(deviation, 0.0, 0.005);
                Assert.InRange(Math.Log(load.Value / rod.Rod.ThirdLoadN) / deviation, -4.0, 4.0);
                Assert.Equal(rod.MassKg, fit[BendValue.Mass].Value, 4.0 * Exact.MassKg);
                Assert.True(fit.LargestMissM < 3.2 * Exact.DropM, $"{fit.LargestMissM} m");
            },
            iter: 60, threads: 1);

    [Fact]
    public void Three_small_drops_do_not_pretend()
    {
        BendFit few = Fit(Usual.Test([0.15, 0.3, 0.45], [], new BendErrors(), null)), all = Fit(Usual.Test(Shares, Everything, new BendErrors(), null));
        Assert.Equal([BendValue.StiffnessExponent, BendValue.Mass, BendValue.FreeMassShare, BendValue.MassExponent], few.Open.Select(o => o.Value).Intersect([BendValue.StiffnessExponent, BendValue.Mass, BendValue.FreeMassShare, BendValue.MassExponent]));
        Assert.Equal(ReadingKind.Mass, few.Open.Single(o => o.Value == BendValue.Mass).Reading);
        Assert.Equal(ReadingKind.Balance, few.Open.Single(o => o.Value == BendValue.FreeMassShare).Reading);
        Assert.DoesNotContain(all.Open, o => o.Value is BendValue.Mass or BendValue.FreeMassShare or BendValue.TipRadiusRatio);
        Assert.True(Wide(few) > 1.5 * Wide(all), $"{Wide(few)} against {Wide(all)}");
    }

    [Fact]
    public void One_drop_gives_the_load_and_nothing_else()
    {
        BendFit fit = Fit(Usual.Test([0.9], [], new BendErrors(), null));
        Assert.InRange(Usual.Rod.ThirdLoadN, fit[BendValue.BendLoad].Low, fit[BendValue.BendLoad].High);
        Assert.All(Enum.GetValues<BendValue>().Where(v => v != BendValue.BendLoad), v => Assert.True(fit[v].IsGuess, $"{v} {fit[v].LeftShare}"));
        Assert.Null(fit.Odd);
        Assert.Equal(1.0, fit.ErrorScale);
    }

    [Fact]
    public void A_reading_that_does_not_fit_is_named_with_what_the_others_make_it()
    {
        BendTest good = Usual.Test(Shares, Everything, new BendErrors(), new Random(5));
        BendReading third = good.Rows[2];
        BendFit fit = Fit(good with { Rows = [.. good.Rows.Select(r => r == third ? r with { DropM = r.DropM + 0.07 } : r)] });
        Assert.Equal((ReadingKind.Drop, 2), (fit.Odd!.Kind, fit.Odd.Index));
        Assert.Equal(third.DropM!.Value, fit.Odd.Expected, 0.02);
        Assert.True(fit.ErrorScale > 1.5);
        Assert.Null(Fit(good).Odd);
    }

    [Fact]
    public void Drops_from_the_level_tell_the_same_rod()
    {
        BendFit tip = Fit(Usual.Test(Shares, Everything, Exact, null)), level = Fit(Usual.Test([0.0, .. Shares], Everything, Exact, null, fromLevel: true));
        Assert.Equal(tip[BendValue.BendLoad].Value, level[BendValue.BendLoad].Value, 2e-3);
        Assert.True(level.Rows[0].Measured > 0.005);
        Assert.Equal(level.Rows[0].Measured, level.SagM, 1e-3);
    }

    [Fact]
    public void The_fitted_rod_passes_the_test_that_it_was_fitted_to()
    {
        BendFit fit = Fit(Usual.Test(Shares, Everything, new BendErrors(), new Random(11)));
        RodChain chain = RodChain.Build(fit.Rod);
        foreach (BendRow row in fit.Rows.Where(r => r.Kind == ReadingKind.Drop))
        {
            // As a cast uses it, with 10 links; level and weights as said, which the fit was free to doubt.
            Assert.Equal(row.Measured, RodPower.DropShare(chain, row.LoadN) * chain.FreeLengthM, 0.02);
        }

        Assert.Equal(fit.Curve[^1].LoadN, 1.1 * Math.Max(fit.Rod.ThirdLoadN, Usual.Rod.ThirdLoadN), 1e-9);
        Assert.All(fit.Curve.Skip(1), c => Assert.True(c.Low < c.DropM && c.DropM < c.High));
        Assert.Equal(6, fit.Shapes.Count);
    }

    [Fact]
    public void The_frequency_of_a_bent_rod_without_weight_is_that_of_the_straight_one()
    {
        RodChain chain = RodChain.Build(Usual.Rod with { Links = 20 });
        double straight = RodModes.Compute(chain, 0.0).AngularFrequency(0) / (2.0 * Math.PI);
        Assert.Equal(straight, BentFrequency.FirstHz(chain, RodStatics.Solve(chain, 0.0, 0.0, 0.0), 0.0), 1e-9);
    }

    [Fact]
    public void Bad_tests_are_refused_by_name()
    {
        BendTest good = Usual.Test(Shares, [], new BendErrors(), null);
        Assert.ThrowsAny<ArgumentException>(() => Fit(good with { Rows = [] }));
        Assert.ThrowsAny<ArgumentException>(() => Fit(good with { ClampedM = 1.9 }));
        Assert.ThrowsAny<ArgumentException>(() => Fit(good with { Errors = new BendErrors(DropM: 0.0) }));
        Assert.ThrowsAny<ArgumentException>(() => Fit(good with { Rows = [new(double.NaN, 0.1)] }));
        Assert.ThrowsAny<ArgumentException>(() => Fit(good with { Bounces = [new(-1.0, 0.05)] }));
        Assert.Throws<OperationCanceledException>(() => BendFitter.Fit(good, MadeUpRod.Guesses, new CancellationToken(true)));
    }

    private static BendFit Fit(BendTest test) => BendFitter.Fit(test, MadeUpRod.Guesses).Demand();

    private static double Wide(BendFit fit) => Math.Log(fit[BendValue.BendLoad].High / fit[BendValue.BendLoad].Low);
}
