using System.Diagnostics;
using LureSim.Model.Bend;
using Xunit.Abstractions;

namespace LureSim.Model.Tests.Bend;

public sealed class BendFitTests(ITestOutputHelper output)
{
    private static readonly double[] Shares = [0.2, 0.4, 0.6, 0.8, 1.0];

    [Theory]
    [InlineData("drops")]
    [InlineData("angle")]
    [InlineData("all")]
    public void Explore(string kind)
    {
        ReadingKind[] what = kind switch { "drops" => [], "angle" => [ReadingKind.Angle], _ => [ReadingKind.Angle, ReadingKind.Bounce, ReadingKind.Balance, ReadingKind.Mass] };
        var random = new Random(7);
        int[] inside = new int[8];
        double[] left = new double[8];
        int n = 60, scaled = 0, odd = 0;
        var clock = Stopwatch.StartNew();
        for (int i = 0; i < n; i++)
        {
            MadeUpRod rod = MadeUpRod.Draw(random);
            BendFit fit = BendFitter.Fit(rod.Test(Shares, what, new BendErrors(), random), MadeUpRod.Guesses).Demand();
            double[] truth = [rod.Rod.ThirdLoadN, rod.Rod.TipRadiusRatio, rod.Rod.StiffnessExponent, rod.MassKg, rod.Rod.MassKg / rod.MassKg, rod.Rod.MassExponent];
            for (int k = 0; k < 6; k++)
            {
                BendEstimate e = fit.Values[k];
                inside[k] += truth[k] >= e.Low && truth[k] <= e.High ? 1 : 0;
                left[k] += e.LeftShare / n;
            }

            left[0] += (fit[BendValue.BendLoad].High / fit[BendValue.BendLoad].Low - 1) / n;
            left[6] += (fit.ActionRad.High - fit.ActionRad.Low) * 57.3 / n;
            scaled += fit.ErrorScale > 1 ? 1 : 0;
            odd += fit.Odd is null ? 0 : 1;
            if (i < 3)
            {
                output.WriteLine($"P {fit[BendValue.BendLoad]} true {truth[0]} open {string.Join("; ", fit.Open.Select(o => o.ToString()))} rms {fit.RmsMissM} f {fit.FrequencyHz.Value} sag {fit.SagM}");
            }
        }

        output.WriteLine($"{kind} ms/fit {clock.ElapsedMilliseconds / (double)n} scaled {scaled} odd {odd} inside {string.Join(" ", inside)} left {string.Join(" ", left.Select(l => l.ToString("F3")))}");
    }
}
