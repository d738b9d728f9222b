using System.Globalization;
using LureSim.Model.Retrieve;
using LureSim.Model.Tests.Data;
using Xunit.Abstractions;

namespace LureSim.Model.Tests.Retrieve;

public sealed class CaseWTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(1e-3)]
    [InlineData(5e-4)]
    [InlineData(2.5e-4)]
    public void Probe(double dt)
    {
        Trace trace = Trace.Read("case_W_rk4.csv");
        double[] x = trace["lure_x_m"], y = trace["lure_y_m"], psi = trace["heading_rad"];
        CoupledStep step = CaseW.Build();
        var sum = new double[5];
        var turn = new double[5];
        var count = new int[5];
        double impulse = 0, mean = 0, peak = 0;
        int n = 0;
        var watch = System.Diagnostics.Stopwatch.StartNew();
        CaseW.Run(step, dt, 4.0, t =>
        {
            impulse += dt * step.TieForce.Length;
            mean += step.TieForce.Length;
            n++;
            double k = t / 0.005;
            int i = (int)Math.Round(k);
            if (Math.Abs(k - i) > 1e-6)
            {
                return;
            }

            peak = Math.Max(peak, mean / n);
            (mean, n) = (0, 0);
            HullState h = step.HullNow;
            for (int w = 1; w <= 4; w++)
            {
                if (t <= w + 1e-9)
                {
                    sum[w] += Math.Pow(h.X - x[i], 2) + Math.Pow(h.Y - y[i], 2);
                    turn[w] += Math.Pow(h.Psi - psi[i], 2);
                    count[w]++;
                }
            }
        });
        string F(double v) => v.ToString("F2", CultureInfo.InvariantCulture);
        output.WriteLine($"case_W dt {dt}: path mm {F(1e3 * Math.Sqrt(sum[1] / count[1]))} {F(1e3 * Math.Sqrt(sum[2] / count[2]))} {F(1e3 * Math.Sqrt(sum[4] / count[4]))} heading deg {F(57.3 * Math.Sqrt(turn[2] / count[2]))} {F(57.3 * Math.Sqrt(turn[4] / count[4]))} impulse {F(100 * (impulse / 0.4392 - 1))}% peak {F(peak)} hits {step.Pass.Solver.LimitHits} ms {watch.ElapsedMilliseconds}");
    }
}
