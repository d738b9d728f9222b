using LureSim.Scenarios.Measured;

namespace LureSim.Scenarios.Tests;

/// <summary>Measurements of a lure as people write them.</summary>
public sealed class FitFileTests : IDisposable
{
    private const string Good = """
        # from a phone
        scenario, walker.toml
        mass, 21.5 g
        angle error, 2 deg
        test, tow
        hooks, off
        line, 10 ft
        speed, sheer, swing
        0.3 m/s, 34
        0.5 m/s, straight
        1 ft/s, , 44 deg
        test, push
        speed, 0.5 m/s
        drift, way
        3, 12 in
        4 deg, never
        test, coast
        hooks, on
        0, 0 cm
        0.1 s, 4.8 cm
        0.2, 1.5 in
        run, 2
        0, 0 cm
        test, track
        time (s), nose x (in), nose y (in), tail x (in), tail y (in)
        0, 1, 2, 3, 4
        0.1, , , 3, 4
        test, swings
        heel, 25 deg
        roll, 0.48 s, 37 %
        bob, 0.34
        test, float
        angle, 3.2
        nose height, 7 mm
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("fit").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Tests_settings_rows_runs_and_gaps()
    {
        FitFile file = Read(Good);
        Assert.Equal(Path.Combine(_folder, "walker.toml"), file.Scenario);
        Assert.Equal(0.0215, file.MassKg!.Value, 1e-12);
        Assert.Equal([FitKind.Tow, FitKind.Push, FitKind.Coast, FitKind.Track, FitKind.Swing, FitKind.Bowl], file.Blocks.Select(b => b.Kind));
        FitBlock tow = file.Blocks[0], push = file.Blocks[1], coast = file.Blocks[2], track = file.Blocks[3], swing = file.Blocks[4];
        Assert.Equal([false, true, true, true, true, true], file.Blocks.Select(b => b.HooksOn));
        Assert.Equal(3.048, tow.Of(FitWord.Line)!.Value, 1e-12);
        Assert.All(file.Blocks, b => Assert.Equal(2.0 * Math.PI / 180.0, b.Of(FitWord.AngleError)!.Value, 1e-12));
        Assert.Equal(34.0 * Math.PI / 180.0, tow.Rows[0].Of(FitWord.Sheer)!.Value, 1e-12);
        Assert.True(double.IsNaN(tow.Rows[1].Of(FitWord.Sheer)!.Value));
        Assert.Null(tow.Rows[2].Of(FitWord.Sheer));
        Assert.Equal(0.3048, tow.Rows[2].Of(FitWord.Speed)!.Value, 1e-12);
        Assert.Equal(0.5, push.Of(push.Rows[0], FitWord.Speed)!.Value, 1e-12);
        Assert.Equal(0.3048, push.Rows[0].Of(FitWord.Way)!.Value, 1e-12);
        Assert.Equal(double.PositiveInfinity, push.Rows[1].Of(FitWord.Way)!.Value);
        Assert.Equal([1, 1, 1, 2], coast.Rows.Select(r => r.Run));
        Assert.Equal(0.0381, coast.Rows[2].Of(FitWord.Distance)!.Value, 1e-12);
        Assert.Equal(0.0254, track.Rows[0].Of(FitWord.NoseX)!.Value, 1e-12);
        Assert.Null(track.Rows[1].Of(FitWord.NoseX));
        Assert.Equal([0.0, 1.0], swing.Rows.Select(r => r.Of(FitWord.What)!.Value));
        Assert.Equal(0.37, swing.Rows[0].Of(FitWord.Loss)!.Value, 1e-12);
        Assert.Equal(2, file.Blocks[5].Rows.Count);
        Assert.EndsWith("m.csv(10)", tow.Rows[1].Place, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("scenario;w.toml\ntest;tow\nspeed;sheer\n0,3 m/s;34,5 deg\n")]
    [InlineData("scenario\tw.toml\r\ntest\ttow\r\n0.3 m/s\t34.5\r\n")]
    [InlineData("Scenario,w.toml\nTest,tow\nSpeed (m/s),Sheer (deg)\n0.3,34.5\n,\n")]
    [InlineData("scenario,\"w.toml\"\ntest,tow\nsheer_deg,speed_m/s\n34.5,0.3\n")]
    public void Other_ways_to_write_the_same(string text)
    {
        FitRow row = Assert.Single(Assert.Single(Read(text).Blocks).Rows);
        Assert.Equal(0.3, row.Of(FitWord.Speed)!.Value, 1e-12);
        Assert.Equal(34.5 * Math.PI / 180.0, row.Of(FitWord.Sheer)!.Value, 1e-12);
    }

    [Theory]
    [InlineData("test, tow", "test, towing", "m.csv(5): test: \"towing\" is not known; due: tow, push, coast, track, swings, float")]
    [InlineData("hooks, off", "hooks, maybe", "m.csv(6): hooks: \"maybe\" is not known; on or off is due")]
    [InlineData("hooks, off", "hoks, off", "m.csv(6): \"hoks\" is not known at the start of a line; nearest: hooks")]
    [InlineData("0.3 m/s, 34", "0.3, 34", "m.csv(9): speed: \"0.3\": it has no unit")]
    [InlineData("0.3 m/s, 34", "0,3 m/s, 34", "m.csv(9): speed: \"0\": it has no unit")]
    [InlineData("0.3 m/s, 34", "0.3 m/s, 1, 2, 3", "m.csv(9): 4 cells in a row of 3 columns (the decimal mark is a point where commas stand between cells)")]
    [InlineData("0.3 m/s, 34", "0.3 m/s, sideways", "m.csv(9): sheer: \"sideways\": it does not start with a number")]
    [InlineData("0.3 m/s, 34", "9 m/s, 34", "m.csv(9): speed: \"9 m/s\" is out of range; allowed: 0.05 to 2 m/s")]
    [InlineData("0.3 m/s, 34", "0.3 m/s", "m.csv(9): sheer: missing in this row; an angle, the word straight, or a swing is due")]
    [InlineData("line, 10 ft", "line, 10 ft, 3", "m.csv(7): line: more than one value; \"line, 3 m\" is due")]
    [InlineData("line, 10 ft", "loss, 30 %", "m.csv(7): loss: not a word of the test tow; it belongs to swings")]
    [InlineData("line, 10 ft", "line", "m.csv(7): line: the value is missing; for example \"line, 3 m\"")]
    [InlineData("line, 10 ft", "hand, 4 m", "m.csv(5): hand: the hand is higher over the water than the line is long")]
    [InlineData("3, 12 in", ", 12 in", "m.csv(15): drift: missing in this row; without the angle between push and axis the way tells nothing")]
    [InlineData("0.2, 1.5 in", "0.1, 1.5 in", "m.csv(21): time: 0.1 s after 0.1 s; times rise, and a line \"run, 2\" is due before another run")]
    [InlineData("0.1, , , 3, 4", "0.1, 1, , 3, 4", "m.csv(27): nose x: x and y are due together; leave both empty where the point cannot be seen")]
    [InlineData("bob, 0.34", "bob", "m.csv(31): period: missing in this row; a period, a loss or both are due")]
    [InlineData("scenario, walker.toml", "", "m.csv: scenario: missing; a line such as \"scenario, my-lure.toml\" is due")]
    public void Faults_are_told_in_one_line_with_their_place(string line, string by, string fault)
    {
        string[] all = Faults(Good.Replace(line, by, StringComparison.Ordinal));
        Assert.True(Array.Exists(all, f => f.StartsWith(fault, StringComparison.Ordinal)), string.Join('\n', all));
        Assert.All(all, f => Assert.DoesNotContain('\n', f));
    }

    [Fact]
    public void Rows_before_a_test_and_tests_without_rows_are_none()
    {
        Assert.StartsWith("m.csv(2): a row of numbers before the first test", Faults("scenario, w.toml\n0.3 m/s, 34")[0], StringComparison.Ordinal);
        Assert.StartsWith("m.csv(2): test: the test tow holds no rows", Assert.Single(Faults("scenario, w.toml\ntest, tow\n")), StringComparison.Ordinal);
        Assert.StartsWith("m.csv: test: it holds no test", Assert.Single(Faults("scenario, w.toml\n")), StringComparison.Ordinal);
        Assert.StartsWith("m.csv(2): speed: it stands before the first test", Faults("scenario, w.toml\nspeed, 0.3 m/s\ntest, tow\n0.3 m/s, 3")[0], StringComparison.Ordinal);
    }

    private const string Walks = """
        scenario, w.toml
        test, walk
        distance, 40 ft
        twitches, 12
        time (s), nose x (in), nose y (in), tail x (in), tail y (in)
        0, 1, 2, 3, 4
        0.1, , , 3, 4
        test, walk
        cadence, 90 /min
        advance, 25 cm
        width, 6 in
        heading swing, 150
        test, walk
        advance (cm), width (cm), heading swing
        25, , 140
        """;

    [Fact]
    public void Walks_filmed_and_counted_by_eye()
    {
        FitFile file = Read(Walks);
        FitBlock film = file.Blocks[0], lines = file.Blocks[1], rows = file.Blocks[2];
        Assert.All(file.Blocks, b => Assert.Equal(FitKind.Walk, b.Kind));
        Assert.Equal((12.192, 12.0), (Math.Round(film.Of(FitWord.Distance)!.Value, 9), film.Of(FitWord.Twitches)!.Value));
        Assert.Equal((2, null, 0.1016), (film.Rows.Count, film.Rows[1].Of(FitWord.NoseX), Math.Round(film.Rows[1].Of(FitWord.TailY)!.Value, 9)));
        Assert.Equal(1.5, lines.Of(FitWord.Cadence)!.Value, 1e-12);
        Assert.Equal([25.0, 15.24, Math.Round(15000.0 * Math.PI / 180.0, 6)], lines.Rows.Select(r => Math.Round(100.0 * r.Values.Values.Single(), 6)));
        Assert.Equal((0.25, null), (rows.Rows[0].Of(FitWord.Advance), rows.Rows[0].Of(FitWord.Width)));
    }

    [Theory]
    [InlineData("distance, 40 ft", "distance, 400 ft", "m.csv(2): distance: 2 to 80 m from rod tip to lure are allowed")]
    [InlineData("cadence, 90 /min", "cadence, 900 /min", "m.csv(9): cadence: \"900 /min\" is out of range; allowed: 0.3 to 6 twitches a second")]
    [InlineData("cadence, 90 /min", "twitches, 12", "m.csv(8): twitches: counted on one film")]
    [InlineData("0.1, , , 3, 4", "0.1, 1, , 3, 4", "m.csv(7): nose x: x and y are due together; leave both empty where the point cannot be seen")]
    [InlineData("0.1, , , 3, 4", ", 1, 2, 3, 4", "m.csv(7): time: missing in this row; a time with places is due, or what was counted by eye: advance, width, heading swing")]
    [InlineData("advance, 25 cm", "sheer, 25", "m.csv(10): sheer: not a word of the test walk; it belongs to tow")]
    public void Faults_of_a_walk_are_told_in_one_line(string line, string by, string fault)
    {
        string[] all = Faults(Walks.Replace(line, by, StringComparison.Ordinal));
        Assert.True(Array.Exists(all, f => f.StartsWith(fault, StringComparison.Ordinal)), string.Join('\n', all));
    }

    [Fact]
    public void Another_scenario_may_be_asked_for()
    {
        var faults = new List<ScenarioFault>();
        Assert.Equal("other.toml", Read(Good, "other.toml", faults)!.Scenario);
        Assert.Equal("other.toml", Read(Good.Replace("scenario, walker.toml", "", StringComparison.Ordinal), "other.toml", faults)!.Scenario);
        Assert.Empty(faults);
    }

    private FitFile Read(string text)
    {
        var faults = new List<ScenarioFault>();
        FitFile? file = Read(text, null, faults);
        Assert.True(file is not null && faults.Count == 0, string.Join('\n', faults));
        return file;
    }

    private string[] Faults(string text)
    {
        var faults = new List<ScenarioFault>();
        Assert.Null(Read(text, null, faults));
        return [.. faults.Select(f => f.ToString().Replace(_folder + Path.DirectorySeparatorChar, "", StringComparison.Ordinal))];
    }

    private FitFile? Read(string text, string? scenario, List<ScenarioFault> faults)
    {
        string path = Path.Combine(_folder, "m.csv");
        File.WriteAllText(path, text);
        return FitFile.Read(path, scenario, faults);
    }
}
