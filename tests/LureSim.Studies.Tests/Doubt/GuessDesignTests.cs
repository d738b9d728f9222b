using System.Reflection;
using LureSim.Model;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Studies.Doubt;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Doubt;

/// <summary>The default is the median of its guess, for every guess there is: those of the model by reflection, those of the schema, those that
/// follow from a shipped scenario.</summary>
public sealed class GuessDesignTests
{
    private const int Draws = 64;

    public static TheoryData<string> Files => [.. Shipped.Files];

    [Fact]
    public void The_median_of_the_draws_of_every_guess_of_the_model_is_its_default()
    {
        Parameter[] guesses = [.. Parameters().Where(p => !double.IsNaN(p.GuessLow) && !double.IsNaN(p.Default))];
        Assert.InRange(guesses.Length, 40, 200);
        Assert.All(guesses, p => TheValueInUseIsTheMedian(new(Key(p.Name), p.Default, p.GuessLow, p.GuessHigh)));
    }

    [Fact]
    public void Every_guess_of_the_model_lies_inside_what_is_allowed()
    {
        Assert.All(Parameters().Where(p => !double.IsNaN(p.GuessLow)), p =>
        {
            Assert.True(p.Low <= p.GuessLow && p.GuessLow < p.GuessHigh && p.GuessHigh <= p.High, $"{p.Name}: guess {p.GuessLow} to {p.GuessHigh} in {p.Low} to {p.High}");
            Assert.False(p.Default < p.GuessLow || p.Default > p.GuessHigh, $"{p.Name}: default {p.Default} outside its guess");
        });
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void The_median_of_the_draws_of_every_guess_of_a_file_is_its_value(string file)
    {
        EffectiveScenario effective = ScenarioSource.Read(Shipped.File(file)).Effective();
        foreach (GuessedKey guess in effective.Guesses)
        {
            TheValueInUseIsTheMedian(guess);
            Assert.True(guess.Low >= guess.Key.Low && guess.High <= guess.Key.High, $"{guess}: outside what the key allows");
        }
    }

    // A guess that begins at its value: a wet strand weighs at least what a dry one does.
    [Fact]
    public void A_one_sided_guess_is_its_value_in_half_of_the_draws()
    {
        var guess = new GuessedKey(Key("wet"), 1.0, 1.0, 1.1);
        Assert.Equal(1.0, GuessDesign.At(guess, 0.2));
        Assert.Equal(1.0, GuessDesign.At(guess, 0.5));
        Assert.Equal(1.05, GuessDesign.At(guess, 0.75), 1e-15);
        Assert.Equal(1.1, GuessDesign.At(guess, 1.0), 1e-15);
    }

    // In the middle of its range one straight line from end to end, off the middle a line on each side.
    [Theory]
    [InlineData(5.0, 0.1, 1.0)]
    [InlineData(5.0, 0.9, 9.0)]
    [InlineData(2.0, 0.25, 1.0)]
    [InlineData(2.0, 0.75, 6.0)]
    public void Each_side_is_drawn_uniformly(double value, double share, double expected) =>
        Assert.Equal(expected, GuessDesign.At(new(Key("x"), value, 0.0, 10.0), share), 1e-12);

    private static void TheValueInUseIsTheMedian(GuessedKey guess)
    {
        Assert.Equal(guess.Value, GuessDesign.At(guess, 0.5));
        var design = new GuessDesign(Draws, 7);
        double[] values = [.. Enumerable.Range(0, Draws).Select(i => design.Value(guess, i))];
        Assert.All(values, v => Assert.InRange(v, guess.Low, guess.High));
        Assert.True(values.Count(v => v <= guess.Value) >= Draws / 2, guess.ToString());
        Assert.True(values.Count(v => v >= guess.Value) >= Draws / 2, guess.ToString());
    }

    private static IEnumerable<Parameter> Parameters()
    {
        MethodInfo of = typeof(Parameter).GetMethod(nameof(Parameter.Of))!;
        return
            from type in typeof(Parameter).Assembly.GetTypes()
            where !type.IsAbstract && !type.ContainsGenericParameters
            from property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            where property.IsDefined(typeof(ParameterAttribute), inherit: false)
            select (Parameter)of.MakeGenericMethod(type).Invoke(null, [property.Name])!;
    }

    private static KeySpec Key(string name) => new($"made.{name}", QuantityKind.Ratio, "", "Made up.");
}
