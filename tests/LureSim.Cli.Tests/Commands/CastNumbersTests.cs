using System.Text.Json;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Commands;

/// <summary>Values that once made a cast explode, or were refused for no reason: docs/limits.md.</summary>
public sealed class CastNumbersTests
{
    private static string Shipped(string name) => Session.Scenario(Path.GetFileNameWithoutExtension(name));

    [Theory]
    [InlineData("large-walker.toml", "line.damping_time=0 ms")]
    [InlineData("large-walker.toml", "line.damping_time=0 ms", "cast.effort=full")]
    [InlineData("small-walker.toml", "cast.wet_line=1", "cast.effort=3", "air.wind=8 m/s")]
    [InlineData("small-walker.toml", "line.modulus=0.1 GPa")]
    [InlineData("small-walker.toml", "reel.kind=fixed", "cast.rest_tension=0.15 N")]
    public void No_allowed_value_makes_a_cast_explode(string file, params string[] sets)
    {
        JsonElement cast = Cast(file, sets);
        Assert.InRange(cast.GetProperty("distance_mean_m").GetDouble(), 5.0, 60.0);
        Assert.InRange(cast.GetProperty("tension_peak_N").GetDouble(), 0.1, 500.0);
        Assert.InRange(Math.Abs(cast.GetProperty("energy_residual").GetDouble()), 0.0, 1e-2);
    }

    [Theory]
    [InlineData("cast.wet_line=0")]
    [InlineData("line.modulus=0.01 GPa")]
    public void What_has_no_meaning_is_refused(string set)
    {
        Session session = Session.Run("cast", Shipped("small-walker.toml"), "--json", "--set", set);
        Assert.Equal((ExitCode.BadInput, ""), (session.Exit, session.Out));
        Assert.Contains("out of range", Assert.Single(session.Error.TrimEnd().Split('\n')), StringComparison.Ordinal);
    }

    // Jigs and spoons from 0.2 g to 80 g: they sink, and only what floats a lure minds.
    [Theory]
    [InlineData("0.2 g", "8 mm", "3 mm")]
    [InlineData("0.5 g", "12 mm", "4 mm")]
    [InlineData("28 g", "70 mm", "18 mm")]
    [InlineData("80 g", "90 mm", "22 mm")]
    public void Lures_that_sink_are_cast_and_not_retrieved(string mass, string length, string diameter)
    {
        string[] sets =
        [
            $"lure.mass={mass}", $"lure.length={length}", $"lure.diameter={diameter}", "lure.hooks=[]", "lure.ballast=[]", "lure.tumbling=0.1", "reel.kind=fixed", "line.label=8 lb",
        ];
        Assert.InRange(Cast("small-walker.toml", sets).GetProperty("distance_mean_m").GetDouble(), 5.0, 60.0);
        Session retrieve = Session.Run(["retrieve", Shipped("small-walker.toml"), "--json", "--plots", "none", .. sets.SelectMany(s => new[] { "--set", s })]);
        Assert.Equal(ExitCode.BadInput, retrieve.Exit);
        Assert.Contains("it would sink", retrieve.Error, StringComparison.Ordinal);
    }

    // The two halves of one question: the same style, effort and brake in words and in numbers.
    [Fact]
    public void The_result_says_who_casts_and_what_brakes_do()
    {
        JsonElement cast = Cast("small-walker.toml", ["cast.style=one-handed", "cast.effort=full"]);
        Assert.Equal(("one-handed", 1.0), (cast.GetProperty("style").GetString(), cast.GetProperty("effort").GetDouble()));
        JsonElement[] brakes = [.. cast.GetProperty("brakes").EnumerateArray()];
        Assert.Equal([0.0, 0.5, 1.0, 2.0, 4.0, 8.0], brakes.Select(b => b.GetProperty("strength").GetDouble()));
        Assert.Equal(cast.GetProperty("distance_mean_m").GetDouble(), brakes[2].GetProperty("distance_mean_m").GetDouble());
    }

    [Fact]
    public void Rod_power_names_the_best_class_of_each_mass()
    {
        Session session = Session.Run("cast", Shipped("large-walker.toml"), "--rod-power", "--json");
        Assert.Equal(ExitCode.Done, session.Exit);
        JsonElement[] lures = [.. JsonDocument.Parse(session.Out).RootElement.GetProperty("lures").EnumerateArray()];
        Assert.Equal([0.007, 0.010, 0.014, 0.020, 0.028, 0.040], lures.Select(l => l.GetProperty("lure_kg").GetDouble()));
        Assert.All(lures, l => Assert.DoesNotContain(
            l.GetProperty("powers").EnumerateArray(), p => p.GetProperty("bends_too_far").GetBoolean() && p.GetProperty("power").GetString() == l.GetProperty("best").GetString()));
        Assert.Equal(ExitCode.BadInput, Session.Run("cast", Shipped("large-walker.toml"), "--rod-power", "--doubt", "10").Exit);
    }

    private static JsonElement Cast(string file, string[] sets)
    {
        Session session = Session.Run(["cast", Shipped(file), "--json", .. sets.SelectMany(s => new[] { "--set", s })]);
        Assert.Equal((ExitCode.Done, ""), (session.Exit, session.Error));
        return JsonDocument.Parse(session.Out).RootElement;
    }
}
