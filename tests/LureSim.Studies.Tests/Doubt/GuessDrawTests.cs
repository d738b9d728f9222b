using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Doubt;
using LureSim.Studies.Figures;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Doubt;

/// <summary>What belongs together is drawn together: no draw of a shipped set-up is refused.</summary>
public sealed class GuessDrawTests
{
    private const int Draws = 200;

    public static TheoryData<string> Files => [.. Shipped.Files];

    [Theory]
    [MemberData(nameof(Files))]
    public void No_draw_of_a_cast_is_refused(string file)
    {
        var source = ScenarioSource.Load(Shipped.File(file), Activities.Cast);
        GuessedKey[] guesses = GuessDesign.Of(source.Resolve(), new CastSource());
        var design = new GuessDesign(Draws, source.Resolve().Setup!.Seed);
        Assert.All(Enumerable.Range(0, Draws), i =>
            Assert.Empty(GuessDraw.Make(source, [], guesses, g => design.Share(g, i)).Scenario.Errors.Select(e => $"{e.Key}: {e.Message}")));
    }

    // Some of them as far as the splash.
    [Theory]
    [MemberData(nameof(Files))]
    public void No_draw_of_a_cast_fails(string file)
    {
        var cast = new CastSource();
        var source = ScenarioSource.Load(Shipped.File(file), Activities.Cast);
        GuessedKey[] guesses = GuessDesign.Of(source.Resolve(), cast);
        var design = new GuessDesign(8, source.Resolve().Setup!.Seed);
        Assert.All(Enumerable.Range(0, design.Samples), i =>
            Assert.Null(FigureRow.Of(cast, GuessDraw.Make(source, [], guesses, g => design.Share(g, i)).Scenario, CancellationToken.None).Failure));
    }

    // Every corner that a line and a spool can make of their guesses, the length on the spool at either end as well.
    [Theory]
    [MemberData(nameof(Files))]
    public void No_corner_of_line_and_spool_is_refused(string file)
    {
        var source = ScenarioSource.Load(Shipped.File(file), Activities.Cast);
        string[] revolving = ["reel.kind=revolving"];
        GuessedKey[] guesses = [.. GuessDesign.Of(source.Resolve(revolving), new CastSource()).Where(g => g.Key.Table is "line" or "reel")];
        Assert.Contains(guesses, g => g.Key == SpoolKeys.LineOnSpool);
        Assert.All(Enumerable.Range(0, 1 << guesses.Length), corner =>
            Assert.Empty(GuessDraw.Make(source, revolving, guesses, g => (corner >> Array.IndexOf(guesses, g)) & 1).Scenario.Errors.Select(e => $"{e.Key}: {e.Message}")));
    }

    // A braid of twice the number is a line of twice the mass and the square root of two of the diameter: the same spool holds half of it.
    [Fact]
    public void A_thicker_line_leaves_fewer_metres_on_the_same_spool()
    {
        ScenarioSource source = Thick();
        GuessedKey[] guesses = GuessDesign.Of(source.Resolve(), new CastSource());
        GuessedKey number = guesses.Single(g => g.Key == LineKeys.Set.Number);
        GuessDraw middle = GuessDraw.Make(source, [], guesses, _ => 0.5), thick = GuessDraw.Make(source, [], guesses, g => g == number ? 1.0 : 0.5);
        Assert.Equal(source.Resolve().Setup!.Reel.Spool.LineM, middle.Scenario.Setup!.Reel.Spool.LineM, 1e-9);
        double wider = thick.Values[Array.IndexOf(guesses, number)] / number.Value;
        Assert.Equal(middle.Scenario.Setup.Reel.Spool.LineM / wider, thick.Scenario.Setup!.Reel.Spool.LineM, 1e-9);
        Assert.Equal(middle.Scenario.Setup.Reel.SpoolDiameterM, thick.Scenario.Setup.Reel.SpoolDiameterM);
    }

    // A length that was given stays what it is; a draw of the line that contradicts it is refused and counted.
    [Fact]
    public void A_length_that_was_given_is_kept()
    {
        ScenarioSource source = Thick();
        string[] given = ["reel.line_on_spool=40 m"];
        GuessedKey[] guesses = GuessDesign.Of(source.Resolve(given), new CastSource());
        Assert.DoesNotContain(guesses, g => g.Key == SpoolKeys.LineOnSpool);
        Assert.Equal(40.0, GuessDraw.Make(source, given, guesses, _ => 0.9).Scenario.Setup!.Reel.Spool.LineM);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void The_draw_in_the_middle_is_the_set_up_as_it_stands(string file)
    {
        var source = ScenarioSource.Load(Shipped.File(file), Activities.All);
        ScenarioResult plain = source.Resolve();
        GuessedKey[] guesses = [.. plain.Effective().Guesses.Where(g => g.High > g.Low)];
        EffectiveScenario drawn = GuessDraw.Make(source, [], guesses, _ => 0.5).Scenario.Effective();

        // Conversions there and back cost a last digit or two.
        Assert.All(guesses, g => Assert.Equal(g.Value, drawn.Values.Single(v => v.Key == g.Key).Si, 1e-12 * Math.Abs(g.Value)));
    }

    // A braid thick enough that the spool, not the habit, decides how much is wound on.
    private static ScenarioSource Thick() => ScenarioSource.FromText(
        """
        [rod]
        length = "7 ft"
        power = "medium"
        [line]
        material = "braid"
        label = "120 lb"
        [lure]
        shape = "cigar"
        length = "115 mm"
        diameter = "21 mm"
        mass = "18 g"
        """,
        asked: Activities.Cast);
}
