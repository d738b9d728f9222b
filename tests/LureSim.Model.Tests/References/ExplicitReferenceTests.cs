using LureSim.Model.Tests.Data;
using LureSim.References.Ode;

namespace LureSim.Model.Tests.References;

/// <summary>
/// Our own explicit equations against the stored traces. A fifth of a second holds the first snap; LURESIM_FULL_REFERENCE=1 runs all
/// four seconds (a few minutes).
/// </summary>
public sealed class ExplicitReferenceTests
{
    private const double StepS = 1e-6, OutputS = 0.005;

    private static bool IsFull => Environment.GetEnvironmentVariable("LURESIM_FULL_REFERENCE") == "1";

    // The traces carry six digits after the point; steps of 5e-7 and 1e-6 s agree to 0.01 mm over 4 s.
    [Theory]
    [InlineData("case_R_rk4.csv", 0.30)]
    [InlineData("case_S_rk4.csv", 0.80)]
    public void Point_body_follows_the_stored_trace(string file, double retreat)
    {
        Trace trace = Trace.Read(file);
        Follow(new ExplicitPointBody(retreat), ExplicitPointBody.Start(), trace, ["far_end_x_m", "far_end_y_m", "far_end_z_m"], 3 * 39, 2e-5, StepS);
    }

    [Fact]
    public void Walking_hull_follows_the_stored_trace() =>
        Follow(new ExplicitWalk(), ExplicitWalk.Start(), Trace.Read("case_W_rk4.csv"), ["lure_x_m", "lure_y_m", "heading_rad"], ExplicitWalk.HullAt, 5e-5, IsFull ? 2.5e-7 : StepS);

    private static void Follow(IOdeSystem system, double[] y, Trace trace, string[] columns, int first, double tolerance, double step)
    {
        double[][] expected = [.. columns.Select(c => trace[c])];
        var rk4 = new ClassicalRk4(system);
        int perOutput = (int)Math.Round(OutputS / step), outputs = (int)Math.Round((IsFull ? 4.0 : 0.2) / OutputS);
        for (int k = 1; k <= outputs; k++)
        {
            for (int i = 0; i < perOutput; i++)
            {
                rk4.Step((((k - 1) * perOutput) + i) * step, step, y);
            }

            for (int c = 0; c < columns.Length; c++)
            {
                Assert.Equal(expected[c][k], y[first + c], tolerance);
            }
        }
    }
}
