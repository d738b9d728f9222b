using LureSim.References.Ode;

namespace LureSim.Numerics.Tests.Ode;

/// <summary>Memory is taken per run, never per step: long runs allocate as much as short ones.</summary>
public sealed class AllocationTests
{
    private static readonly OdeEvent Never = new((_, y) => y[0] + 100.0);

    [Fact]
    public void Adaptive_steps_allocate_nothing() =>
        Assert.Equal(Adaptive(10.0), Adaptive(1000.0));

    [Fact]
    public void Fixed_steps_allocate_nothing() =>
        Assert.Equal(Fixed(1.0), Fixed(100.0));

    [Fact]
    public void Steps_by_hand_allocate_nothing()
    {
        var rk4 = new ClassicalRk4(Problems.Driven);
        double[] y = [1.0, 1.0];
        rk4.Step(0.0, 0.01, y);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 1; i < 1000; i++)
        {
            rk4.Step(0.01 * i, 0.01, y);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static long Adaptive(double end)
    {
        var problem = new OdeProblem(Problems.Oscillator, 0, end, [1.0, 0.0]) { Events = [Never], SaveAt = Problems.Even(0, end, 20) };
        return Measured(() => DormandPrince54.Solve(problem, new AdaptiveSteps(1e-6, 1e-6)));
    }

    private static long Fixed(double end)
    {
        var problem = new OdeProblem(Problems.Oscillator, 0, end, [1.0, 0.0]) { Events = [Never] };
        return Measured(() => ClassicalRk4.Solve(problem, new FixedSteps(0.01)));
    }

    private static long Measured(Func<OdeSolution> run)
    {
        run();
        long before = GC.GetAllocatedBytesForCurrentThread();
        OdeSolution s = run();
        long used = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.Equal(OdeStatus.Success, s.Status);
        return used;
    }
}
