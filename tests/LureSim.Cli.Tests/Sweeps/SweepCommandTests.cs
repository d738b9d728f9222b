using System.Globalization;
using System.Text.Json;
using LureSim.Cli.Sweeps;
using LureSim.Cli.Tests.Support;
using LureSim.Reports.Sweep;
using LureSim.Scenarios;
using LureSim.Studies.Cadence;
using LureSim.Studies.Figures;
using LureSim.Studies.Runs;
using LureSim.Studies.Sweep;

namespace LureSim.Cli.Tests.Sweeps;

public sealed class SweepCommandTests : IDisposable
{
    private static readonly string Small = Session.Scenario("small-walker");
    private static readonly string[] Coarse = ["--set", "retrieve.duration=3 s", "--set", "solver.nodes=6", "--set", "solver.step=1 ms"];

    private readonly DirectoryInfo _root = Directory.CreateTempSubdirectory("luresim-");

    private string Folder => Path.Combine(_root.FullName, "out");

    private string Table => File.ReadAllText(Path.Combine(Folder, "sweep.csv"));

    public void Dispose() => _root.Delete(recursive: true);

    [Fact]
    public void A_row_is_the_summary_of_the_same_single_run()
    {
        Session session = Session.Run(["sweep", Small, .. Coarse, "--vary", "retrieve.cadence=1.5 /s,2.5 /s", "--vary", "line.material=nylon", "--out", Folder]);
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains("2 runs, 2 with a result", session.Out, StringComparison.Ordinal);
        List<string>[] rows = [.. Table.TrimEnd('\n').Split('\n').Select(CsvLine.Split)];
        Assert.Equal(["index", "retrieve.cadence_per_s", "line.material", "status", "reason", "pattern", "flip_share"], rows[0][..7]);
        Assert.Equal(["1", "2.5", "nylon", "done", ""], rows[2][..5]);

        Session single = Session.Run(["retrieve", Small, .. Coarse, "--set", "retrieve.cadence=2.5 /s", "--set", "line.material=nylon", "--json"]);
        JsonElement json = JsonDocument.Parse(single.Out).RootElement;
        Assert.Equal(json.GetProperty("pattern").GetString(), rows[2][5]);
        for (int c = 6; c < rows[0].Count; c++)
        {
            Assert.Equal(json.GetProperty(rows[0][c]).GetRawText(), rows[2][c]);
        }
    }

    [Fact]
    public void Threads_leave_no_trace()
    {
        var tables = new List<string>();
        foreach (string threads in new[] { "1", "2", "7" })
        {
            Session.Run(["sweep", Small, .. Coarse, "--vary", "retrieve.cadence=1 /s:3 /s:8", "--doubt", "10", "--threads", threads, "--out", Folder, "--plots", "none"]);
            tables.Add(Table + File.ReadAllText(Path.Combine(Folder, "bands.csv")) + File.ReadAllText(Path.Combine(Folder, "guesses.csv")));
        }

        Assert.Equal(tables[0], tables[1]);
        Assert.Equal(tables[0], tables[2]);
        Assert.Equal(81, Table.Count(c => c == '\n'));
    }

    [Fact]
    public void Failed_and_refused_runs_are_rows_with_their_reason()
    {
        // The lure reaches the rod from 3 m; a lure of 30 g sinks and is refused.
        Session session = Session.Run(
            ["sweep", Small, .. Coarse, "--vary", "retrieve.distance=3 m,12 m", "--vary", "lure.mass=10 g,30 g", "--set", "retrieve.duration=20 s", "--out", Folder]);
        Assert.Equal(ExitCode.Done, session.Exit);
        List<string>[] rows = [.. Table.TrimEnd('\n').Split('\n').Skip(1).Select(CsvLine.Split)];
        Assert.Equal(["failed", "refused", "done", "refused"], rows.Select(r => r[3]));
        Assert.Contains("the lure reached the rod", rows[0][4], StringComparison.Ordinal);
        Assert.Contains("lure.mass: ", rows[1][4], StringComparison.Ordinal);
        Assert.All(rows[0][5..], cell => Assert.Equal("", cell));
        Assert.Contains("First reason: run 0: the lure reached the rod", session.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void When_no_run_has_a_result_the_exit_says_so() => Assert.Equal(
        ExitCode.NotFinished,
        Session.Run(["sweep", Small, .. Coarse, "--vary", "retrieve.distance=2 m", "--out", Folder]).Exit);

    [Fact]
    public void Samples_are_drawn_from_ranges_and_lists()
    {
        Session session = Session.Run(
            ["sweep", Small, .. Coarse, "--vary", "retrieve.cadence=1 /s:3 /s", "--vary", "line.material=braid,nylon", "--sample", "8", "--out", Folder, "--json"]);
        JsonElement json = JsonDocument.Parse(session.Out).RootElement;
        Assert.Equal(8, json.GetProperty("done").GetInt32());
        List<string>[] rows = [.. Table.TrimEnd('\n').Split('\n').Skip(1).Select(CsvLine.Split)];
        Assert.Equal(4, rows.Count(r => r[2] == "braid"));
        Assert.Equal(Enumerable.Range(0, 8), rows.Select(r => (int)((double.Parse(r[1], CultureInfo.InvariantCulture) - 1.0) * 4.0)).Order());
    }

    [Fact]
    public void A_sweep_may_give_the_key_that_the_file_lacks()
    {
        string file = Path.Combine(_root.FullName, "s.toml");
        File.WriteAllText(file, File.ReadAllText(Small).Replace("mass = \"10 g\"", "", StringComparison.Ordinal));
        Assert.Equal(ExitCode.Done, Session.Run(["sweep", file, .. Coarse, "--vary", "lure.mass=9 g,10 g", "--out", Folder]).Exit);
        Session lacking = Session.Run(["sweep", file, .. Coarse, "--vary", "retrieve.cadence=1 /s,2 /s", "--out", Folder]);
        Assert.Equal(ExitCode.BadInput, lacking.Exit);
        Assert.Contains("lure.mass: missing", lacking.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Doubt_beside_a_retrieve_is_told_in_text_files_and_json()
    {
        Session session = Session.Run(["retrieve", Small, .. Coarse, "--doubt", "12", "--out", Folder, "--plots", "svg"]);
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains("Doubt: 12 runs, every guess drawn from its range", session.Out, StringComparison.Ordinal);
        foreach (string file in new[] { "doubt_bands.csv", "doubt_guesses.csv", "doubt_glide_width.svg", "doubt_advance_per_twitch.svg" })
        {
            Assert.True(File.Exists(Path.Combine(Folder, file)), file);
        }

        JsonElement doubt = JsonDocument.Parse(File.ReadAllText(Path.Combine(Folder, "summary.json"))).RootElement.GetProperty("doubt");
        JsonElement band = doubt.GetProperty("bands").GetProperty("glide_width_m");
        Assert.InRange(band.GetProperty("p50").GetDouble(), band.GetProperty("p10").GetDouble(), band.GetProperty("p90").GetDouble());
        Assert.True(band.TryGetProperty("given", out _));
        Assert.Contains(doubt.GetProperty("guesses").GetProperty("glide_width_m").GetProperty("ranked").EnumerateArray(), g => g.GetProperty("key").GetString() == "rod.damping");
        Assert.Equal(1.0, doubt.GetProperty("shares").EnumerateObject().Sum(s => s.Value.GetDouble()), 1e-12);
    }

    [Fact]
    public void Doubt_beside_a_cast_keeps_the_hands_apart()
    {
        Session session = Session.Run(["cast", Small, "--set", "cast.release=0.24 s", "--doubt", "10", "--out", Folder, "--plots", "svg"]);
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains("Distance, mean of many casts: ", session.Out, StringComparison.Ordinal);
        Assert.Contains(" as it stands; median of the draws ", session.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Contains("If your hands are other than guessed", session.Out, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(Folder, "doubt_hands.csv")));
        JsonElement doubt = JsonDocument.Parse(File.ReadAllText(Path.Combine(Folder, "cast.json"))).RootElement.GetProperty("doubt");
        Assert.Equal((0, 0), (doubt.GetProperty("failed").GetInt32(), doubt.GetProperty("hands").GetProperty("failed").GetInt32()));
        Assert.DoesNotContain(
            doubt.GetProperty("guesses").GetProperty("distance_mean_m").GetProperty("ranked").EnumerateArray(),
            g => g.GetProperty("key").GetString()!.StartsWith("hands.", StringComparison.Ordinal));
    }

    [Fact]
    public void Doubt_beside_a_cadence_is_told()
    {
        string[] search = ["--starts", "1", "--warm-up", "1 s", "--twitches", "4", "--nodes", "4", "--from", "1 /s", "--to", "2 /s"];
        Session session = Session.Run(["cadence", Small, .. search, "--doubt", "10", "--out", Folder, "--plots", "svg"]);
        Assert.Equal(ExitCode.Done, session.Exit);
        Assert.Contains("Doubt: 10 runs", session.Out, StringComparison.Ordinal);
        JsonElement doubt = JsonDocument.Parse(File.ReadAllText(Path.Combine(Folder, "summary.json"))).RootElement.GetProperty("doubt");
        Assert.Equal(10, doubt.GetProperty("bands").GetProperty("tip_frequency_Hz").GetProperty("runs").GetInt32());
        Assert.Equal(ExitCode.BadInput, Session.Run(["cadence", Small, .. search, "--doubt", "10", "--across", "rod.length=7 ft", "--out", Folder]).Exit);
    }

    [Fact]
    public void A_cadence_as_a_row_is_the_cadence_alone()
    {
        var plan = new CadencePlan(1.0, 2.0, ScanPoints: 3, Starts: 1, Run: new StationaryPlan(1.0, 4, 4));
        ScenarioResult scenario = ScenarioSource.Read(Small);
        FigureRow row = new CadenceSource(plan).Run(scenario, CancellationToken.None);
        CadenceResult alone = CadenceStudy.Run(scenario.Setup!, scenario.Retrieve!, plan, new SustainedTorque(3.0, 2.0, 5.0)).Demand();
        Assert.Equal(alone.TipFrequencyHz, row.Numbers[^1]);
        Assert.Equal(alone.Windows.Count, row.Numbers[2]);
        Assert.Equal(alone.BestPoint?.PerS ?? double.NaN, row.Numbers[3]);
        Assert.Equal(new CadenceSource(plan).Numbers.Count, row.Numbers.Count);
    }

    [Theory]
    [InlineData("nothing varies")]
    [InlineData("unknown key; did you mean retrieve.cadence?", "--vary", "retrieve.cadense=1 /s")]
    [InlineData("a range needs a step or a count, or --sample", "--vary", "retrieve.cadence=1 /s:2 /s")]
    [InlineData("with --sample a range is from:to", "--vary", "retrieve.cadence=1 /s:2 /s:3", "--sample", "5")]
    [InlineData("varied twice", "--vary", "retrieve.cadence=1 /s,2 /s", "--vary", "retrieve.cadence=3 /s")]
    [InlineData("--sample: \"0\" is no count; allowed: 1 to 10000000", "--vary", "retrieve.cadence=1 /s:2 /s", "--sample", "0")]
    [InlineData("--doubt: \"1,000\" is no count", "--doubt", "1,000")]
    [InlineData("--doubt: \"5\" is no count; allowed: 10", "--doubt", "5")]
    [InlineData("--threads: \"two\" is no count", "--vary", "retrieve.cadence=1 /s", "--threads", "two")]
    [InlineData("--shard: \"4/3\" is no part", "--vary", "retrieve.cadence=1 /s", "--shard", "4/3")]
    [InlineData("runs are too many", "--vary", "retrieve.cadence=1 /s:3 /s:5000", "--vary", "rod.length=2 m:3 m:5000")]
    [InlineData("cast_off", "--vary", "retrieve.cadence=1 /s", "--command", "cast_off")]
    public void Usage_errors_are_one_clear_line(string part, params string[] arguments)
    {
        Session session = Session.Run(["sweep", Small, .. arguments, "--out", Folder]);
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.Contains(part, session.Error, StringComparison.Ordinal);
        Assert.Empty(session.Out);
        Assert.False(Directory.Exists(Folder));
    }

    [Theory]
    [InlineData("is missing, empty, or no file", "no-such.journal")]
    [InlineData("no parts were given", ".")]
    public void Merge_says_what_it_lacks(string part, string name)
    {
        Session session = Session.Run("sweep", "merge", Path.Combine(_root.FullName, name));
        Assert.Equal(ExitCode.BadInput, session.Exit);
        Assert.Contains(part, session.Error, StringComparison.Ordinal);
    }
}
