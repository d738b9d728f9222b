using LureSim.References.Ode;

namespace LureSim.Numerics.Tests.Ode;

/// <summary>Measured orders. The band of 0.1 holds once the next term of the error series, O(h) relative, is below 0.1 ln 2,
/// and the error still stands clear of rounding.</summary>
public sealed class OrderTests
{
    private const double End = 4.0;

    private delegate OdeSolution Solver(OdeProblem problem, FixedSteps steps);

    [Fact]
    public void Classical_method_has_order_four() => AssertOrder(4.0, [160, 320, 640, 1280], (p, s) => ClassicalRk4.Solve(p, s), false);

    [Fact]
    public void Dormand_prince_has_order_five() => AssertOrder(5.0, [90, 180], (p, s) => DormandPrince54.Solve(p, s), false);

    [Fact]
    public void Stepping_by_hand_has_order_four()
    {
        double[] errors = [.. new[] { 160, 320, 640 }.Select(n => ByHand(n))];
        Assert.All(Problems.Orders(errors), p => Assert.InRange(p, 3.9, 4.1));
    }

    // An interpolant of order q has a local error h^(q+1) that does not add up, so its largest error falls as h^(q+1).
    [Fact]
    public void Cubic_interpolant_keeps_the_order_of_the_classical_method() =>
        AssertOrder(4.0, [80, 160, 320, 640], (p, s) => ClassicalRk4.Solve(p, s), true);

    [Fact]
    public void Fourth_order_interpolant_keeps_the_order_of_dormand_prince() =>
        AssertOrder(5.0, [80, 160, 320], (p, s) => DormandPrince54.Solve(p, s), true);

    // PI control: error per step = tol, so steps go as tol^(1/5) and the global error as tol.
    [Fact]
    public void Adaptive_error_follows_the_tolerance()
    {
        double[] errors = [.. new[] { 1e-4, 1e-6, 1e-8, 1e-10 }.Select(tol =>
            Problems.DrivenError(End, DormandPrince54.Solve(Problems.DrivenTo(End), new AdaptiveSteps(tol, tol)).State))];
        for (int i = 0; i < errors.Length; i++)
        {
            double tol = Math.Pow(10.0, -4 - (2 * i));
            Assert.InRange(errors[i], 0.0, 10.0 * tol);
        }

        Assert.True(errors[3] < 1e-4 * errors[0]);
    }

    [Fact]
    public void Weights_of_the_embedded_method_satisfy_the_conditions_to_order_four()
    {
        double[] c = [0, DormandPrinceTableau.C2, DormandPrinceTableau.C3, DormandPrinceTableau.C4, DormandPrinceTableau.C5, 1, 1];
        double[] e = [DormandPrinceTableau.E1, 0, DormandPrinceTableau.E3, DormandPrinceTableau.E4, DormandPrinceTableau.E5,
            DormandPrinceTableau.E6, DormandPrinceTableau.E7];
        for (int k = 0; k < 4; k++)
        {
            Assert.Equal(0.0, e.Select((w, i) => w * Math.Pow(c[i], k)).Sum(), 1e-15);
        }

        Assert.True(Math.Abs(e.Select((w, i) => w * Math.Pow(c[i], 4)).Sum()) > 1e-4);
    }

    private static double ByHand(int steps)
    {
        var rk4 = new ClassicalRk4(Problems.Driven);
        double[] y = [1.0, 1.0];
        double h = End / steps;
        for (int i = 0; i < steps; i++)
        {
            rk4.Step(i * h, h, y);
        }

        return Problems.DrivenError(End, y);
    }

    private static void AssertOrder(double order, int[] counts, Solver solve, bool dense)
    {
        var errors = new List<double>();
        foreach (int n in counts)
        {
            // 7 points per step of the finest ladder rung, so that every step is sampled inside.
            double[] at = dense ? Problems.Even(0.0, End, 7 * counts[^1]) : [End];
            var problem = new OdeProblem(Problems.Driven, 0.0, End, [1.0, 1.0]) { SaveAt = at };
            OdeSolution s = solve(problem, new FixedSteps(End / n));
            Assert.Equal(n, s.Counters.Accepted);
            Assert.Equal(at.Length, s.SavedTimes.Length);
            errors.Add(s.SavedTimes.Select((t, i) => Problems.DrivenError(t, s.SavedStates[i])).Max());
        }

        Assert.All(Problems.Orders(errors), p => Assert.InRange(p, order - 0.1, order + 0.1));
    }
}
