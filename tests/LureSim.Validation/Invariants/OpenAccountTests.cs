using LureSim.Model;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;

namespace LureSim.Validation.Invariants;

/// <summary>A retrieve whose energy account stays open is a failure with its reason, and whole with a smaller step.</summary>
public sealed class OpenAccountTests
{
    // A line that damps nothing, wound in jumps: 1.2 % at 1 ms. The error is the line's; either hull will do.
    [Fact]
    public void An_open_account_is_a_failure_that_a_smaller_step_mends()
    {
        Outcome<RetrieveResult> coarse = Run("1 ms"), fine = Run("0.125 ms");
        Assert.Contains("the energy account stays open by 1.", coarse.Failure?.Reason, StringComparison.Ordinal);
        Assert.Contains("use a smaller step", coarse.Failure?.Reason, StringComparison.Ordinal);
        Assert.Null(fine.Failure);
        Assert.True(fine.Result!.Counters.EnergyOpenShare < 0.5 * coarse.Result!.Counters.EnergyOpenShare);
    }

    private static Outcome<RetrieveResult> Run(string step)
    {
        Scenario scenario = Shipped.Read(
            Shipped.Default, "retrieve.take_up=per_twitch", "line.damping_time=0 ms", "retrieve.duration=8 s", "retrieve.hull=planar", $"solver.step={step}");
        return RetrieveRun.Run(scenario.Setup, scenario.Retrieve!);
    }
}
