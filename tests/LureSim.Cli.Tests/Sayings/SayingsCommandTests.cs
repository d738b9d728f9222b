using System.Text.Json;
using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Sayings;

public sealed class SayingsCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("luresim-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    // Ballast moved aft stands the hull up: moments of weights alone say so, whatever the guesses.
    private string Own(string claim = "more is higher", string command = "trim", string name = "weight-aft.toml")
    {
        string file = Path.Combine(_folder, name);
        File.WriteAllText(file, $"""
            says = "Weight in the tail stands it up."
            why = "The centre of gravity goes aft of the centre of buoyancy."
            told = "common practice, no source"
            base = "{Session.Scenario("slanted-walker").Replace('\\', '/')}"
            [[test]]
            command = "{command}"
            figure = "trim_deg"
            less = {"{"} name = "middle", set = ["lure.ballast[1].x=-5 mm"] {"}"}
            more = {"{"} name = "tail", set = ["lure.ballast[1].x=-30 mm"] {"}"}
            claim = "{claim}"
            """);
        return file;
    }

    [Fact]
    public void A_file_of_ones_own_is_run_and_written()
    {
        string results = Path.Combine(_folder, "results");
        Session session = Session.Run("sayings", Own(), "--draws", "2", "--json", "--out", results, "--plots", "svg");
        Assert.Equal((ExitCode.Done, ""), (session.Exit, session.Error));
        JsonElement saying = JsonDocument.Parse(session.Out).RootElement.GetProperty("sayings")[0];
        Assert.Equal("holds", saying.GetProperty("verdict").GetString());
        JsonElement place = saying.GetProperty("places")[0];
        Assert.InRange(place.GetProperty("number").GetDouble(), place.GetProperty("low").GetDouble(), place.GetProperty("high").GetDouble());
        Assert.Equal(["luresim.sha256", "saying_weight-aft.svg", "sayings.csv", "sayings.json", "sayings.svg"], Directory.GetFiles(results).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_list_runs_nothing()
    {
        Session session = Session.Run("sayings", "--list");
        Assert.Equal((ExitCode.Done, ""), (session.Exit, session.Error));
        Assert.Contains("slack-is-needed", session.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("does not hold", session.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_wrong_is_one_line_and_nothing_is_written()
    {
        (string[] Args, string Told)[] wrong =
        [
            (["slack-is-neded"], "slack-is-neded: no saying of that name; did you mean slack-is-needed?"),
            ([Own("is better", name: "better.toml")], "test.claim: \"is better\" is none; due: more is higher"),
            ([Own(command: "trimm")], "weight-aft.toml(6,11): test.command: \"trimm\" has no summary; did you mean trim?"),
            (["--draws", "1"], "--draws: \"1\" is no count; allowed: 2 to 1000"),
        ];
        foreach ((string[] args, string told) in wrong)
        {
            Session session = Session.Run(["sayings", .. args, "--out", Path.Combine(_folder, "results")]);
            Assert.Equal((ExitCode.BadInput, ""), (session.Exit, session.Out));
            Assert.Contains(told, Assert.Single(session.Error.Trim().Split('\n')), StringComparison.Ordinal);
            Assert.False(Directory.Exists(Path.Combine(_folder, "results")));
        }
    }

    [Fact]
    public void A_stop_before_anything_is_finished_leaves_nothing()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Session session = Session.Run(stop.Token, "sayings", Own(), "--out", Path.Combine(_folder, "results"));
        Assert.Equal(ExitCode.Stopped, session.Exit);
        Assert.False(Directory.Exists(Path.Combine(_folder, "results")) && Directory.GetFiles(Path.Combine(_folder, "results")).Length > 0);
    }
}
