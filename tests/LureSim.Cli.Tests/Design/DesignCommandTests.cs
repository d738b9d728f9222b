using System.Text.Json;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Design;

/// <summary>The command <c>design</c> as a person types it.</summary>
public sealed class DesignCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("design").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("small-walker")]
    [InlineData("hollow-weedless")]
    public void A_wish_is_answered_with_tables_files_and_lines_that_float_as_wished(string name)
    {
        Session session = Session.Run("design", Session.Scenario(name), "--angle", "9 deg", "--keep", "total", "--out", _folder, "--plots", "none");
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains("Into the table [lure]", session.Out, StringComparison.Ordinal);
        Assert.Contains("Hooks that it carries", session.Out, StringComparison.Ordinal);
        Assert.All(session.Out.Split('\n'), line => Assert.True(line.Length <= 100 || line.StartsWith("Files:", StringComparison.Ordinal), line));
        Assert.All(
            (string[])["design.json", "design_hooks.csv", "design_changes.csv", "design_tolerance.csv", "design_places.csv", "lure-lines.toml", "effective.toml"],
            f => Assert.True(File.Exists(Path.Combine(_folder, f)), f));

        // The lines as a person pastes them.
        string[] ballast = File.ReadAllText(Path.Combine(_folder, "lure-lines.toml")).Split('"');
        string Set(string key, string value) => $"lure.ballast[1].{key}={value}";
        JsonElement trim = JsonDocument.Parse(Session.Run(
            "trim", Session.Scenario(name), "--set", Set("mass", ballast[1]), "--set", Set("x", ballast[3]), "--set", Set("z", ballast[5]), "--json").Out).RootElement;
        Assert.Equal(9.0, trim.GetProperty("trim_deg").GetDouble(), 0.06);
    }

    [Fact]
    public void A_map_is_a_table_of_cells()
    {
        Session session = Session.Run("design", Session.Scenario("small-walker"), "--map", "height", "--out", _folder, "--plots", "none");
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Equal(1601, File.ReadAllLines(Path.Combine(_folder, "design_map.csv")).Length);
        Assert.Contains("40 x 40 lures", session.Out, StringComparison.Ordinal);
        Assert.Contains("come straight on a tight line", session.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void A_map_over_any_two_axes_is_a_table_of_cells()
    {
        Session session = Session.Run("design", Session.Scenario("large-walker"), "--map", "hooks,tie-along", "--out", _folder, "--plots", "none");
        Assert.Equal(ExitCode.Done, session.Exit);
        string[] lines = File.ReadAllLines(Path.Combine(_folder, "design_map.csv"));
        Assert.Equal(441, lines.Length);
        Assert.StartsWith("hook_steps,hooks,tie_x_m,", lines[0], StringComparison.Ordinal);
        Assert.Contains("11 x 40 lures", session.Out, StringComparison.Ordinal);
        Assert.Contains("(now no. 2)", session.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--angle: \"12 apples\"", "--angle", "12 apples")]
    [InlineData("--freeboard: \"2 m\" is out of range; allowed:", "--freeboard", "2 m")]
    [InlineData("--keep: \"half\" is none of its words; allowed: total or body", "--angle", "5 deg", "--keep", "half")]
    [InlineData("--map and --walk exclude each other", "--map", "mass", "--walk", "10 cm")]
    [InlineData("--map: \"weight\" is none of its axes; allowed: two of length, section, hooks, tie, tie-along, place, height, mass with a comma", "--map", "weight")]
    [InlineData("--map: \"tie,tie\" is one axis twice", "--map", "tie,tie")]
    [InlineData("--map: \"place\" is one axis twice", "--map", "place")]
    [InlineData("--map: \"tie,mass,hooks\" is more than two axes", "--map", "tie,mass,hooks")]
    [InlineData("--keep: the mass of the weight is no axis of this map", "--map", "tie,hooks", "--keep", "body")]
    [InlineData("--height: neither place nor mass of the weight is an axis of this map", "--map", "tie,hooks", "--height", "lowest")]
    [InlineData("the height of the weight is an axis of the map", "--map", "height", "--height", "lowest")]
    [InlineData("the lure has no weight (lure.ballast)", "--set", "lure.ballast=[]", "--map", "height,tie")]
    [InlineData("--windows and --step go with --map alone", "--windows")]
    [InlineData("--tries: \"3\" is no count; allowed: 8 to 2000", "--walk", "10 cm", "--tries", "3")]
    [InlineData("it would sink", "--set", "lure.mass=60 g")]
    public void Nonsense_is_one_line(string told, params string[] given)
    {
        Session session = Session.Run(["design", Session.Scenario("small-walker"), .. given, "--out", _folder, "--plots", "none"]);
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.Contains(told, session.Error, StringComparison.Ordinal);
        Assert.Empty(session.Out);
        Assert.Empty(Directory.GetFiles(_folder));
    }
}
