using LureSim.Model.Hands;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Doubt;
using LureSim.Studies.Sweep;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Doubt;

/// <summary>A study of doubt over a made-up command: bands of physics and of hands apart, failures counted, the same bits for any threads.</summary>
public sealed class DoubtRunsTests
{
    private const int Draws = 40;

    private static readonly ScenarioSource Source = ScenarioSource.Load(Shipped.File("small-walker.toml"), Activities.Cast);

    private static MadeUpFigures Sum => new(
        s => (100.0 * s.Lure.Flight.SideFactor) + s.Hands.TorqueNm, FlightKeys.SideFactor, FlightKeys.FrontCd, HandsKeys.Torque);

    [Fact]
    public void The_hands_have_a_band_of_their_own()
    {
        DoubtStudy study = Run(Sum);
        Band physics = study.Report["y_m"], hands = study.Hands!["y_m"];
        KeySpec side = FlightKeys.SideFactor, torque = HandsKeys.Torque;
        double stands = (100.0 * side.Parameter!.Default) + torque.Parameter!.Default;
        Assert.Equal(stands, physics.Given, 1e-9);
        Assert.Equal(stands, hands.Given, 1e-9);

        // Nothing but its own part moves: P10 and P90 of a two-piece uniform law, within two slices of 1/40.
        double slice = 2.0 / Draws;
        Assert.Equal(stands - (0.8 * 100.0 * (side.Parameter.Default - side.GuessLow)), physics.P10, 2.0 * slice * 100.0 * (side.Parameter.Default - side.GuessLow));
        Assert.Equal(stands + (0.8 * (CastingStyles.TwoHanded.TorqueNm.High - torque.Parameter.Default)), hands.P90, 2.0 * slice * (CastingStyles.TwoHanded.TorqueNm.High - torque.Parameter.Default));
        Assert.Equal(stands, physics.P50, 2.0 * slice * 100.0 * (side.GuessHigh - side.GuessLow));
    }

    [Fact]
    public void Which_guess_matters_is_told_of_the_physics_alone()
    {
        DoubtStudy study = Run(Sum);
        Assert.Equal(["lure.front_cd", "lure.side_factor"], study.Guesses.Select(g => g.Key).Order(StringComparer.Ordinal));
        RankedGuess[] ranked = [.. study.Screen!.Ranking("y_m")];
        Assert.Equal("lure.side_factor", study.Guesses[ranked[0].Index].Key);
        KeySpec side = FlightKeys.SideFactor;
        Assert.Equal(80.0 * (side.GuessHigh - side.GuessLow), ranked[0].Effect.Alone, 1e-9);
        Assert.Equal(0.0, ranked[1].Effect.Size, 1e-9);
    }

    [Fact]
    public void Draws_that_fail_are_counted_with_their_reason()
    {
        double middle = FlightKeys.SideFactor.Parameter!.Default;
        DoubtStudy study = Run(new(s => s.Lure.Flight.SideFactor > middle ? throw new InvalidOperationException("it spins") : 1.0, FlightKeys.SideFactor));
        Assert.Equal((Draws, Draws / 2, "it spins"), (study.Report.Runs, study.Report.Failed, study.Report.Reason));
        Assert.Null(study.Hands);
        Assert.True(study.Screen!.Failed > 0);
    }

    [Fact]
    public void A_study_of_studies_looks_for_the_guess_that_matters_only_from_many_draws_on()
    {
        Assert.Null(Run(new(s => s.Lure.Flight.SideFactor, FlightKeys.SideFactor) { IsStudy = true }).Screen);
        Assert.NotNull(Run(new(s => s.Lure.Flight.SideFactor, FlightKeys.SideFactor) { IsStudy = true }, DoubtRuns.FewestDrawsOfStudies).Screen);
    }

    [Fact]
    public void The_same_bits_for_any_number_of_threads()
    {
        DoubtStudy one = Run(Sum, threads: 1), four = Run(Sum, threads: 4);
        Assert.Equal(one.Report.Bands, four.Report.Bands);
        Assert.Equal(one.Hands!.Bands, four.Hands!.Bands);
        Assert.Equal(one.Screen!.Effects.SelectMany(e => e), four.Screen!.Effects.SelectMany(e => e));
    }

    [Fact]
    public void Nothing_guessed_is_nothing_to_draw() => Assert.Throws<SweepException>(() => Run(new(_ => 1.0)));

    private static DoubtStudy Run(MadeUpFigures figures, int draws = Draws, int threads = 2) =>
        DoubtRuns.Run(Source, [], figures, draws, threads, _ => { }, CancellationToken.None);
}
