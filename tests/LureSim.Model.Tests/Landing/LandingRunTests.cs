using LureSim.Model.Assembly;
using LureSim.Model.Cover;
using LureSim.Model.Fish;
using LureSim.Model.Landing;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using static LureSim.Model.Tests.Landing.LandingCases;

namespace LureSim.Model.Tests.Landing;

/// <summary>The whole of holding and landing.</summary>
public sealed class LandingRunTests
{
    [Fact]
    public void Every_figure_is_there_once_and_finite()
    {
        LandingResult result = Run();
        Assert.All(LandingFigures.All, f => Assert.True(double.IsFinite(f.Of(result)), f.Key));
        Assert.Equal(LandingFigures.All.Count, LandingFigures.All.Select(f => f.Key).Distinct().Count());
        Assert.Contains("lift_limit_kg", LandingFigures.All.Select(f => f.Key));
    }

    [Fact]
    public void Every_limit_has_a_name_of_its_own() =>
        Assert.Equal(Enum.GetValues<LandingLimit>().Length, Enum.GetValues<LandingLimit>().Select(LandingFigures.Name).Distinct().Count());

    [Fact]
    public void The_best_lift_hangs_the_fish_clear_of_the_water()
    {
        LandingResult result = Run();
        RodLoad best = result.BestLift;
        Assert.True(1.2 + best.TipRiseM >= FishBody.LengthM(best.MassKg));
        Assert.All(result.Lift.Where(l => l.LoadN > best.LoadN), l => Assert.True(1.2 + l.TipRiseM < FishBody.LengthM(l.MassKg)));

        // From a hand at the water no angle clears; the highest one is told.
        LandingResult low = Run(Usual with { Angler = Usual.Angler with { HandHeightM = 0.3 } });
        Assert.Equal(low.Lift.Max(l => l.TipRiseM), low.BestLift.TipRiseM);
    }

    [Fact]
    public void Held_for_long_is_less_than_for_a_moment()
    {
        LandingResult result = Run();
        Assert.All(result.Lift.Zip(result.Hold), p => Assert.True(p.Second.LoadN < p.First.LoadN));
        Assert.All(result.Heave.Zip(result.Pull), p => Assert.True(p.Second.LoadN < p.First.LoadN));
        Assert.True(result.Lever.LongN < result.Lever.ShortN);
    }

    [Theory]
    [InlineData(20.0, 45.0, 45.0, LandingLimit.Knot, 15.0)]
    [InlineData(350.0, 20.0, 45.0, LandingLimit.HookHold, 40.0)]
    [InlineData(350.0, 45.0, 15.0, LandingLimit.HookWire, 30.0)]
    public void The_weakest_part_is_found(double breakN, double holdN, double wireN, LandingLimit limit, double loadN)
    {
        Setup setup = Usual with { Line = Braid with { BreakN = breakN }, Hook = new HookHold(2, 10.0, holdN, wireN) };
        Assert.Equal(new TackleStrength(limit, loadN), Run(setup).Weakest);
    }

    [Fact]
    public void A_thin_leader_is_found() =>
        Assert.Equal(LandingLimit.Leader, Run(Usual with { Leader = new LeaderSpec(Nylon with { BreakN = 50.0 }, 0.6) }).Weakest.Limit);

    [Fact]
    public void The_same_question_has_the_same_answer() =>
        Assert.Equal(LandingFigures.All.Select(f => f.Of(Run())), LandingFigures.All.Select(f => f.Of(Run())));

    [Fact]
    public void A_task_out_of_range_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => LandingRun.Run(Usual, new LandingTask(TorqueNm: double.NaN)));
        Assert.Throws<ArgumentOutOfRangeException>(() => LandingRun.Run(Usual, new LandingTask(DistanceM: 0.0)));
        Assert.ThrowsAny<ArgumentException>(() => LandingRun.Run(Usual with { Rod = SevenFoot with { LengthM = 9.0 } }, new LandingTask()));
    }

    // Whatever is allowed gives finite numbers or says why not.
    [Fact]
    public void Anything_allowed_gives_finite_numbers()
    {
        var random = new Random(7);
        double Between(double low, double high) => low * Math.Pow(high / low, random.NextDouble());
        int whole = 0;
        for (int i = 0; i < 100; i++)
        {
            Setup setup = Usual with
            {
                Rod = SevenFoot with { LengthM = Between(1.6, 4.5), ThirdLoadN = Between(0.3, 40.0), MassKg = Between(0.01, 0.4), TipRadiusRatio = Between(0.1, 0.9) },
                Line = Braid with { AxialStiffnessN = Between(10.0, 1e7), BreakN = Between(0.5, 1e4) },
                Fish = new FishSpec(Between(0.05, 40.0), Between(1e-5, 0.5), 0.1, 0.1, Between(0.1, 500.0), Between(0.1, 10.0)),
                Cover = new CoverSpec(Between(0.1, 60.0), Between(0.01, 50.0), Between(0.01, 3.0), Between(0.01, 1.5), Between(0.01, 1.0), Between(0.1, 1000.0)),
                Reel = Usual.Reel with { DragN = Between(0.1, 300.0) },
            };
            var task = new LandingTask(
                Between(1.0, 60.0), Between(1.0, 120.0), Between(1.0, 500.0), RodFactor: Between(1.0, 50.0), BoatAngleRad: Between(0.05, 1.8) - 0.5, BurstTurnsS: Between(0.1, 10.0));
            Outcome<LandingResult> outcome = LandingRun.Run(setup, task);
            whole += outcome.IsWhole ? 1 : 0;
            Assert.True(outcome.IsWhole ? LandingFigures.All.All(f => double.IsFinite(f.Of(outcome.Result))) : outcome.Failure.Reason.Length > 0);
        }

        Assert.True(whole > 75, $"{whole}");
    }
}
