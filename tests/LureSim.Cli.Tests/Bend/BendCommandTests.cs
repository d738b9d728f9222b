using System.Globalization;
using System.Text.Json;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Bend;

/// <summary>The command <c>bend</c> as a person types it.</summary>
public sealed class BendCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("bend").FullName;

    private static string Sample => Path.ChangeExtension(Session.Scenario("bend-test"), ".csv");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_sample_becomes_a_part_with_its_ranges_that_scenarios_and_doubt_take()
    {
        Session bend = Session.Run("bend", Sample, "--out", _folder, "--plots", "svg");
        Assert.Equal((ExitCode.Done, ""), (bend.Exit, bend.Error));
        Assert.Contains("bring it down by a third", bend.Out, StringComparison.Ordinal);
        Assert.All(bend.Out.Split('\n'), line => Assert.True(line.Length <= 100 || line.Contains(_folder, StringComparison.Ordinal), line));
        Assert.All((string[])["bend.json", "bend.csv", "bend_curve.svg", "bend_shapes.svg"], f => Assert.True(File.Exists(Path.Combine(_folder, f)), f));

        string part = Path.Combine(_folder, "rod-bend-test.toml");
        double load = JsonDocument.Parse(File.ReadAllText(Path.Combine(_folder, "bend.json"))).RootElement.GetProperty("bend_load_N").GetDouble();
        Session check = Session.Run("check", Session.Scenario("small-walker"), "--set", $"rod={part}");
        Assert.Equal(ExitCode.Done, check.Exit);
        string ounces = (load / (9.80665 * 0.028349523125)).ToString("G4", CultureInfo.InvariantCulture);
        Assert.Contains($"rod.bend_load = {ounces} oz (", check.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("rod.stiffness_exponent", check.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_is_si_and_says_what_stays_open()
    {
        Session session = Session.Run("bend", Sample, "--json");
        JsonElement json = JsonDocument.Parse(session.Out).RootElement;
        Assert.True(json.GetProperty("bend_load_low_N").GetDouble() < json.GetProperty("bend_load_N").GetDouble());
        Assert.Contains("mass_exponent", json.GetProperty("open").EnumerateArray().Select(e => e.GetString()));
        Assert.Equal(11, json.GetProperty("readings").GetArrayLength());
        Assert.Equal(0, json.GetProperty("warnings").GetArrayLength());
    }

    [Fact]
    public void A_wrong_reading_is_named_and_what_is_missing_is_said()
    {
        string file = Path.Combine(_folder, "b.csv");
        File.WriteAllText(file, "length, 7 ft\nclamped, 12 in\n50 g, 9 cm\n100 g, 18 cm\n150 g, 35 cm\n200 g, 35.5 cm\n250 g, 43 cm\n");
        Session session = Session.Run("bend", file, "--out", Path.Combine(_folder, "o"), "--plots", "none", "--units", "metric");
        Assert.Equal(ExitCode.Done, session.Exit);
        string words = session.Out.ReplaceLineEndings(" ");
        Assert.Contains("b.csv(5): the drop of 35.0 cm does not fit the others, which make it 2", words, StringComparison.Ordinal);
        Assert.Contains("Not measured: tip angle, mass, balance point, bounces.", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("length, 7 ft\n100 g, 20\n", "b.csv(2): drop: \"20\": it has no unit")]
    [InlineData("", "it is empty")]
    public void Bad_tests_are_refused_in_one_line(string text, string fault)
    {
        string file = Path.Combine(_folder, "b.csv");
        File.WriteAllText(file, text);
        Session session = Session.Run("bend", file, "--out", Path.Combine(_folder, "o"));
        Assert.Equal((ExitCode.BadInput, ""), (session.Exit, session.Out));
        Assert.Contains(fault, Assert.Single(session.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(_folder, "o")));
    }
}
