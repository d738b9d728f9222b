using System.Text.Json;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Fit;

/// <summary>The command <c>fit</c> as a person types it.</summary>
public sealed class FitCommandTests : IDisposable
{
    private const string Swings = """
        test, swings
        roll, 0.47 s, 30 %
        roll, 0.48 s, 33 %
        roll, 0.475 s, 31 %
        bob, 0.34 s, 80 %
        bob, 0.342 s, 78 %
        bob, 0.338 s, 82 %
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("fit").FullName;

    private static string Lure => Session.Scenario("large-walker");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Measurements_become_a_part_with_ranges_that_scenarios_and_doubt_take()
    {
        Session fit = Session.Run("fit", Write($"scenario, {Lure}\nmass, 22 g\n{Swings}"), "--out", Out, "--plots", "svg");
        Assert.Equal((ExitCode.Done, ""), (fit.Exit, fit.Error));
        Assert.Contains("told by your data", fit.Out, StringComparison.Ordinal);
        Assert.Contains("Your data cannot tell", fit.Out, StringComparison.Ordinal);
        Assert.All((string[])["fit.json", "fit_measured.csv", "fit_bands.svg", "fit_rest.svg", "lure-m.toml"], f => Assert.True(File.Exists(Path.Combine(Out, f)), f));
        Assert.False(File.Exists(Path.Combine(Out, "fit_tow.svg")));

        string part = Path.Combine(Out, "lure-m.toml"), text = File.ReadAllText(part);
        Assert.Contains("roll_damping = ", text, StringComparison.Ordinal);
        Assert.Contains("# lure.stern_shedding: not told; the guess stays", text, StringComparison.Ordinal);
        Assert.DoesNotContain("\nstern_shedding", text, StringComparison.Ordinal);
        Session check = Session.Run("check", Lure, "--set", $"lure={part}");
        Assert.Equal(ExitCode.Done, check.Exit);
        Assert.Contains("lure.roll_damping = ", check.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_is_si_and_says_what_is_told()
    {
        Session session = Session.Run("fit", Write(Swings), "--scenario", Lure, "--json", "--threads", "1");
        Assert.Equal(ExitCode.Done, session.Exit);
        JsonElement json = JsonDocument.Parse(session.Out).RootElement;
        JsonElement[] values = [.. json.GetProperty("values").EnumerateArray()];
        JsonElement damping = values.Single(v => v.GetProperty("key").GetString() == "lure.roll_damping");
        Assert.True(damping.GetProperty("low").GetDouble() < damping.GetProperty("best").GetDouble());
        Assert.Equal("told", damping.GetProperty("verdict").GetString());
        JsonElement chi = values.Single(v => v.GetProperty("key").GetString() == "lure.stern_shedding");
        Assert.Equal((JsonValueKind.Null, "not-told"), (chi.GetProperty("best").ValueKind, chi.GetProperty("verdict").GetString()));
        Assert.Equal(12, json.GetProperty("readings").GetInt32());
    }

    [Theory]
    [InlineData("", "it is empty")]
    [InlineData("test, tow\n0.3 m/s, 20\n", "m.csv: scenario: missing")]
    [InlineData("scenario, none.toml\ntest, tow\n0.3 m/s, 20\n", "none.toml")]
    [InlineData("scenario, LURE\ntest, tow\n0.3 m/s, 20\n0.3 m/s, 21\n0.5 m/s, straight\n", "m.csv: 3 readings, of which 3 say something of the lure")]
    [InlineData("scenario, LURE\ntest, coast\n0, 0 cm\n0.1, 4 cm\n0.2, 7 cm\n", "m.csv: 3 readings, of which 1 say something of the lure")]
    [InlineData("scenario, LURE\ntest, tow\n0.3, 20\n", "m.csv(3): speed: \"0.3\": it has no unit")]
    public void Bad_files_are_refused_in_one_line(string text, string fault)
    {
        Session session = Session.Run("fit", Write(text.Replace("LURE", Lure, StringComparison.Ordinal)), "--out", Out);
        Assert.Equal((ExitCode.BadInput, ""), (session.Exit, session.Out));
        Assert.Contains(fault, Assert.Single(session.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        Assert.False(Directory.Exists(Out));
    }

    // Repeated angles of a bowl so badly read that they tell nothing.
    [Fact]
    public void Readings_that_tell_nothing_end_in_one_line_that_says_what_would()
    {
        string text = $"scenario, {Lure}\nangle error, 40 deg\ntest, float\n" + string.Concat(Enumerable.Repeat("angle, 3 deg\n", 7));
        Session session = Session.Run("fit", Write(text), "--out", Out);
        Assert.Equal((ExitCode.BadInput, ""), (session.Exit, session.Out));
        Assert.Contains("tell nothing of this lure that was not known before; what would: ", Assert.Single(session.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        Assert.False(Directory.Exists(Out));
    }

    private string Out => Path.Combine(_folder, "o");

    private string Write(string text)
    {
        string file = Path.Combine(_folder, "m.csv");
        File.WriteAllText(file, text);
        return file;
    }
}
