using System.Text.Json;
using LureSim.Cli.Commands;
using LureSim.Cli.Tests.Support;
using LureSim.Studies.Across;
using LureSim.Studies.Figures;

namespace LureSim.Cli.Tests.Commands;

public sealed class CadenceCommandTests
{
    private static readonly string Small = Session.Scenario("small-walker");

    private static readonly string[] Quick = ["cadence", Small, "--from", "1.9 /s", "--to", "1.95 /s", "--starts", "1", "--nodes", "10", "--warm-up", "8 s", "--plots", "none"];

    [Fact]
    public void Json_goes_to_stdout_with_the_keys_that_scripts_rely_on()
    {
        Session session = Session.Run([.. Quick, "--json"]);
        Assert.Equal(ExitCode.Done, session.Exit);
        JsonElement json = JsonDocument.Parse(session.Out).RootElement;
        foreach (string key in new[] { "windows", "best_per_s", "widest_glide_m", "sustainable_to_per_s", "lock_share" })
        {
            Assert.True(json.TryGetProperty(key, out _), key);
        }

        Assert.Equal(1.9, json.GetProperty("windows")[0].GetProperty("from_per_s").GetDouble());
    }

    [Fact]
    public void Text_and_files_are_written_and_the_wrist_guess_gives_way_to_a_measurement()
    {
        string folder = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        try
        {
            Session session = Session.Run([.. Quick, "--out", folder, "--set", "angler.sustained_torque=0.1 N m"]);
            Assert.Equal(ExitCode.Done, session.Exit);
            Assert.Contains("It walks from 1.9 or less to at least 1.95 twitches a second.", session.Out, StringComparison.Ordinal);
            Assert.Contains("holds not even 1.9 a second for long.", session.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
            Assert.True(File.Exists(Path.Combine(folder, "cadence.csv")));
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    [Theory]
    [InlineData("--from", "0,5 /s")]
    [InlineData("--from", "2")]
    [InlineData("--from", "0.1 /s")]
    [InlineData("--to", "0.5 /s")]
    [InlineData("--to", "9 /s")]
    [InlineData("--starts", "0")]
    [InlineData("--starts", "1e1")]
    [InlineData("--threads", "-1")]
    [InlineData("--warm-up", "18")]
    [InlineData("--twitches", "3")]
    [InlineData("--nodes", "401")]
    [InlineData("--step", "2 ms")]
    [InlineData("--set", "rod.lenght=7 ft")]
    [InlineData("--across", "lines")]
    [InlineData("--across", "rod.lenght=6 ft,7 ft")]
    [InlineData("--across", "rod.length=6 ft:7 ft")]
    [InlineData("--across", "retrieve.cadence=1 /s,2 /s")]
    [InlineData("--across", "retrieve.distance=5 m:40 m:201")]
    [InlineData("--across", "retrieve.distance=5 m,500 m")]
    [InlineData("--map", "retrieve.stroke")]
    [InlineData("--map", "retrieve.stroke,line.material")]
    [InlineData("--map", "retrieve.stroke,retrieve.strok")]
    [InlineData("--map", "retrieve.stroke,retrieve.slack=2 cm,5 cm")]
    [InlineData("--map", "retrieve.stroke,retrieve.stroke")]
    [InlineData("--map", "retrieve.cadence,retrieve.slack=2 cm:900 m")]
    public void Bad_arguments_end_in_one_line_each(string option, string value)
    {
        Session session = Session.Run("cadence", Small, option, value);
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.Empty(session.Out);
        string line = Assert.Single(session.Error.TrimEnd().Split('\n'));
        Assert.StartsWith(option, line, StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_that_breaks_the_scenario_is_named_with_its_place()
    {
        Session session = Session.Run([.. Quick, "--across", "leader.length=10 in,4.5 m", "--set", "retrieve.distance=4 m"]);
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.StartsWith("--across 4.5 m: ", session.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Map_and_across_exclude_each_other() =>
        Assert.Equal(ExitCode.BadInput, Session.Run("cadence", Small, "--map", "--across", "line").Exit);

    [Fact]
    public void Every_ready_made_comparison_suits_the_shipped_scenarios()
    {
        foreach (string scenario in new[] { "small-walker", "large-walker", "hollow-weedless", "small-walker-nylon" })
        {
            var source = Scenarios.ScenarioSource.Load(Session.Scenario(scenario));
            Scenarios.ScenarioResult own = source.Resolve();
            foreach (string name in ReadyComparison.Names)
            {
                var faults = new List<Scenarios.ScenarioFault>();
                var combinations = AcrossAxis.Combine(new AcrossReader(new Anything(), own, faults).Read([name])).ToArray();
                Assert.Empty(faults);
                Assert.True(combinations.Length >= 3, name);
                Assert.All(combinations, c => Assert.Empty(source.Resolve(c.Overrides).Errors));
            }
        }
    }

    /// <summary>A command that reads every key.</summary>
    private sealed class Anything() : FigureSource<int>("anything", Scenarios.Activities.Retrieve, ["word"], [])
    {
        public override bool Reads(Scenarios.Keys.KeySpec key, Scenarios.ScenarioResult scenario) => true;

        public override FigureRow Run(Scenarios.ScenarioResult scenario, CancellationToken stop) => Row([""], 0);
    }

    [Fact]
    public void Two_keys_give_every_combination_in_json()
    {
        Session session = Session.Run([.. Quick, "--json", "--across", "retrieve.slack=10 cm,12 cm", "--across", "leader-material"]);
        Assert.Equal(ExitCode.Done, session.Exit);
        JsonElement[] cases = [.. JsonDocument.Parse(session.Out).RootElement.GetProperty("cases").EnumerateArray()];
        Assert.Equal(10, cases.Length);
        Assert.Equal("12 cm", cases[5].GetProperty("values").GetProperty("retrieve.slack").GetString());
        Assert.Equal("none", cases[5].GetProperty("values").GetProperty("leader-material").GetString());
    }

    [Fact]
    public void Faults_of_arguments_and_of_the_scenario_come_together()
    {
        Session session = Session.Run("cadence", Small, "--starts", "x", "--set", "rod.mass=1");
        Assert.Equal(2, session.Error.TrimEnd().Split('\n').Length);
    }

    [Fact]
    public void A_stop_ends_with_its_own_code()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Equal(ExitCode.Stopped, Session.Run(stop.Token, Quick).Exit);
    }
}
