using LureSim.Model.Tests.Data;
using Xunit.Abstractions;

namespace LureSim.Model.Tests.Lines.Chain;

public sealed class LineCaseTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData("case_R_rk4.csv", 0.30, 1e-3)]
    [InlineData("case_R_rk4.csv", 0.30, 5e-4)]
    [InlineData("case_S_rk4.csv", 0.80, 1e-3)]
    [InlineData("case_S_rk4.csv", 0.80, 5e-4)]
    [InlineData("case_S_rk4.csv", 0.80, 2.5e-4)]
    public void Probe(string file, double retreat, double dt)
    {
        Trace trace = Trace.Read(file);
        double[] x = trace["far_end_x_m"], y = trace["far_end_y_m"], z = trace["far_end_z_m"];
        {
            var run = new PointBodyCase(retreat, 40);
            double[] sum = new double[5];
            int[] count = new int[5];
            double peak = 0;
            run.Run(dt, 4.0, (t, s, solver) =>
            {
                peak = Math.Max(peak, solver.Tension[0]);
                double k = t / 0.005;
                int i = (int)Math.Round(k);
                if (Math.Abs(k - i) > 1e-6)
                {
                    return;
                }

                double e = Math.Pow(s.X[40] - x[i], 2) + Math.Pow(s.Y[40] - y[i], 2) + Math.Pow(s.Z[40] - z[i], 2);
                for (int w = 1; w <= 4; w++)
                {
                    if (t <= w + 1e-9)
                    {
                        sum[w] += e;
                        count[w]++;
                    }
                }
            });
            output.WriteLine($"{file} dt {dt}: rms mm {string.Join(" ", Enumerable.Range(1, 4).Select(w => (1e3 * Math.Sqrt(sum[w] / count[w])).ToString("F2", System.Globalization.CultureInfo.InvariantCulture)))} peak {peak:F3} passes {run.Solver.Passes} hits {run.Solver.LimitHits}");
        }
    }
}
