using System.Globalization;
using CsCheck;
using LureSim.Model;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using Xunit.Abstractions;

namespace LureSim.Validation.Invariants;

/// <summary>
/// Random scenarios: faults in words, or a run whose channels are finite and whose energy does not grow, or a reason why the model
/// stops. LURESIM_RANDOM_RUNS sets the number; 20,000 were run by hand (docs/limits.md).
/// </summary>
public sealed class RandomScenarioTests(ITestOutputHelper output)
{
    private int _valid, _stopped, _refused, _refined, _open;

    [Fact]
    public void Every_random_scenario_ends_in_a_run_or_in_words()
    {
        RandomScenario.Sample(RandomScenario.Any, "LURESIM_RANDOM_RUNS", 300, () => _valid + _stopped, Check);
        output.WriteLine($"{_valid} runs, {_stopped} stopped with a reason ({_open} of them with an open account), {_refused} refused with faults, {_refined} energy accounts that needed a finer step");
    }

    private void Check(RandomScenario scenario)
    {
        ScenarioResult result = scenario.Resolve();
        if (result.Scenario is not Scenario spec)
        {
            Interlocked.Increment(ref _refused);
            Assert.NotEmpty(result.Errors);
            Assert.All(result.Errors, e => Assert.DoesNotContain('\n', e.ToString()));
            return;
        }

        Outcome<RetrieveResult> outcome = RetrieveRun.Run(spec.Setup, spec.Retrieve!);
        Assert.NotEqual("", outcome.Failure?.Reason);
        if (outcome.Result is not RetrieveResult run)
        {
            Interlocked.Increment(ref _stopped);
            return;
        }

        Interlocked.Increment(ref run.Failure is null ? ref _valid : ref _stopped);
        Assert.All(run.Series.Channels, c => Assert.True(c.Values.All(double.IsFinite), $"{c.Name} of {scenario}"));
        Assert.NotEqual("", run.Failure);
        bool open = !(run.Counters.EnergyOpenShare <= 0.01);
        Assert.True(!open || run.Failure is not null, $"whole with an account open by {run.Counters.EnergyOpenShare:P1}: {scenario}");
        _ = run.Failure?.StartsWith("the energy account", StringComparison.Ordinal) == true ? Interlocked.Increment(ref _open) : 0;
        if (run.Failure is null)
        {
            NoEnergyFromNothing(spec, scenario);
        }
    }

    /// <summary>
    /// The account's own error, which the snaps make, falls with the step; a scheme that makes energy makes joules. So a gain over
    /// 1e-3 at the step of shown runs must be gone at an eighth of it. The account of the product must agree with the one written for the checks, other
    /// formulas on the same steps, to 2e-3; where snaps part them, they must meet at an eighth of the step too.
    /// </summary>
    private void NoEnergyFromNothing(Scenario spec, RandomScenario scenario)
    {
        (double gain, double apart) = Accounts(spec);
        if (gain > 1e-3 || apart > 2e-3)
        {
            Interlocked.Increment(ref _refined);
            Assert.True(gain < 0.1 && apart < 0.1, $"gains {gain:P1} of the work, accounts {apart:P1} apart: {scenario}");
            (gain, apart) = Accounts(spec with { Retrieve = spec.Retrieve! with { Solver = spec.Retrieve.Solver with { StepS = spec.Retrieve.Solver.StepS / 8.0 } } });
        }

        Assert.True(gain <= 1e-3 && apart <= 2e-3, string.Create(CultureInfo.InvariantCulture, $"gains {gain:E2} of the work, accounts {apart:E2} apart: {scenario}"));
    }

    private static (double Gain, double Apart) Accounts(Scenario spec)
    {
        var bench = new WalkBench(spec);
        var audit = new EnergyAudit(bench);
        bench.Run(2.0, audit.Step);
        return (audit.HighestResidualJ / audit.EffortJ, Math.Abs(audit.ResidualJ - bench.Account.ResidualJ) / bench.Account.EffortJ);
    }
}
