using CsCheck;
using LureSim.Model;
using LureSim.Model.Cast;
using LureSim.Scenarios;
using Xunit.Abstractions;

namespace LureSim.Validation.Invariants;

/// <summary>
/// Random casts: faults in words, or a cast whose figures and series are finite and whose energy account closes, or a reason why the model
/// stops. LURESIM_RANDOM_CASTS sets the number; how many were run by hand: docs/limits.md.
/// </summary>
public sealed class RandomCastTests(ITestOutputHelper output)
{
    private int _valid, _stopped, _refused, _refined;

    [Fact]
    public void Every_random_cast_ends_in_a_cast_or_in_words()
    {
        RandomScenario.Sample(RandomScenario.AnyCast, "LURESIM_RANDOM_CASTS", 60, () => _valid + _stopped, Check);
        output.WriteLine($"{_valid} casts, {_stopped} stopped with a reason, {_refused} refused with faults, {_refined} energy accounts that needed a finer step");
    }

    private void Check(RandomScenario scenario)
    {
        ScenarioResult result = scenario.Resolve();
        if (result.Scenario is not Scenario spec)
        {
            Interlocked.Increment(ref _refused);
            Assert.NotEmpty(result.Errors);
            return;
        }

        CastResult cast;
        try
        {
            Outcome<CastResult> outcome = CastRunner.Run(spec.Setup, spec.Cast!);
            if (!outcome.IsWhole)
            {
                Stopped(outcome.Failure.Reason);
                return;
            }

            cast = outcome.Result;
        }
        catch (ArgumentException e)
        {
            Stopped(e.Message);
            return;
        }

        Interlocked.Increment(ref _valid);
        double[] figures =
        [
            cast.DistanceM, cast.DistanceP10M, cast.DistanceP90M, cast.LineOutM, cast.LaunchSpeedMS, cast.FlightTimeS, cast.ApexM, cast.PeakBendEnergyJ, cast.PeakTensionN,
            cast.SpoolPeakRpm, cast.LoopsThrown, cast.Energy.HandsJ, cast.Energy.LureAirJ, cast.Energy.LineAirJ, cast.Energy.BrakesJ, cast.Energy.Residual,
        ];
        CastSeries s = cast.Series;
        Assert.All((IReadOnlyList<double>[])[figures, s.LureXM, s.LureZM, s.LureSpeedMS, s.SpoolSpeedMS, s.TensionN, s.LooseM], v => Assert.True(v.All(double.IsFinite), scenario.ToString()));

        double gap = Math.Abs(cast.Energy.Residual);
        if (gap > 1e-3)
        {
            // One in a thousand, with lines near 2 mm; what the steps leave out must vanish with them.
            Interlocked.Increment(ref _refined);
            gap = Math.Abs(CastRunner.Run(spec.Setup, Finer(spec.Cast!, cast.ReleaseTimeS)).Demand().Energy.Residual);
        }

        Assert.True(gap < 1e-3, $"{gap:E1} of the work is not accounted for: {scenario}");
        Assert.True(cast.DistanceP10M <= cast.DistanceP90M, scenario.ToString());
        (double shortest, double longest) = Extremes(cast);
        Assert.All((double[])[cast.DistanceP10M, cast.DistanceMeanM, cast.DistanceP90M], d => Assert.InRange(d, shortest, longest));
    }

    // Releases between those tried lie between them, and the scatter multiplies by at most 2.3 of its standard deviations (41 levels: 2.25). A mean may well lie
    // outside the middle eight of ten casts, where a few early releases fly a hundred times as far as the rest.
    private static (double Shortest, double Longest) Extremes(CastResult cast)
    {
        double[] ends = [.. cast.ReleaseCurve.SelectMany(p => new[] { -2.3, 2.3 }.Select(z => (cast.DistanceM + p.ChangeM) * (1.0 + (z * cast.Setup.Hands.Scatter))))];
        return (ends.Min(), ends.Max());
    }

    private void Stopped(string reason)
    {
        Interlocked.Increment(ref _stopped);
        Assert.NotEmpty(reason);
    }

    private static CastTask Finer(CastTask task, double release) => task with
    {
        Release = new ReleaseSpec(ReleaseMode.AtTime, release),
        Solver = task.Solver with { SwingStepS = task.Solver.SwingStepS / 8.0, FlightStepS = task.Solver.FlightStepS / 8.0 },
    };
}
