using System.Text;
using System.Text.Json;
using LureSim.Reports.Cadence;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Retrieve;
using LureSim.Reports.Tests.Support;
using LureSim.Studies.Cadence;
using LureSim.Studies.Maps;

namespace LureSim.Reports.Tests.Files.Cadence;

public sealed class CadenceFileTests
{
    private static JsonElement Json(CadenceResult result)
    {
        using var stream = new MemoryStream();
        CadenceJson.Write(stream, result, new RunNotes(["note"], ["guess"]));
        return JsonDocument.Parse(Encoding.UTF8.GetString(stream.ToArray())).RootElement;
    }

    [Fact]
    public void Json_holds_the_windows_and_what_scripts_rely_on()
    {
        CadenceResult result = MadeUpCadence.TwoWindows();
        JsonElement json = Json(result);
        JsonElement[] windows = [.. json.GetProperty("windows").EnumerateArray()];
        Assert.Equal(2, windows.Length);
        Assert.Equal(0.8, windows[0].GetProperty("from_per_s").GetDouble(), 0.011);
        Assert.Equal(1.5, windows[0].GetProperty("to_per_s").GetDouble(), 0.011);
        Assert.Equal("one-sided", windows[0].GetProperty("above").GetString());
        Assert.Equal(result.Best!.PerS, json.GetProperty("best_per_s").GetDouble());
        Assert.Equal(result.Widest!.Median(o => o.GlideWidthM), json.GetProperty("widest_glide_m").GetDouble());
        Assert.Equal(Math.Sqrt(10.0), json.GetProperty("sustainable_to_per_s").GetDouble(), 0.02);
        Assert.Equal(1.0, json.GetProperty("lock_share").GetDouble());
        Assert.Equal("note", json.GetProperty("warnings")[0].GetString());
    }

    // In the upper window four of six starts walk, and just below both the lure swings on one side.
    [Fact]
    public void Json_lists_the_rhythms_whose_answer_may_be_another()
    {
        JsonElement json = Json(MadeUpCadence.TwoWindows());
        double[] start = Rhythms(json, "depends_on_start_per_s"), hand = Rhythms(json, "may_hang_on_hand_per_s");
        Assert.NotEmpty(start);
        Assert.All(start, f => Assert.InRange(f, 2.5, 3.2));
        Assert.Contains(hand, f => f < 1.0);
        Assert.Contains(hand, f => f > 2.5);
        Assert.All(hand, f => Assert.True(f is (> 0.8 and < 0.98) or (> 2.5 and < 3.02), $"{f}"));
        Assert.Empty(Rhythms(Json(MadeUpCadence.Window(0, 9)), "may_hang_on_hand_per_s"));
    }

    private static double[] Rhythms(JsonElement json, string key) => [.. json.GetProperty(key).EnumerateArray().Select(f => f.GetDouble())];

    [Fact]
    public void What_does_not_exist_is_null()
    {
        JsonElement json = Json(MadeUpCadence.Window(9, 9, new SustainedTorque(0.01, 0.01, 0.01)));
        Assert.Equal(0, json.GetProperty("windows").GetArrayLength());
        foreach (string key in new[] { "best_per_s", "widest_glide_m", "sustainable_to_per_s" })
        {
            Assert.Equal(JsonValueKind.Null, json.GetProperty(key).ValueKind);
        }
    }

    [Fact]
    public void Failures_are_among_the_warnings() =>
        Assert.Contains("the line went stiff", Json(MadeUpCadence.HalfFailed()).GetProperty("warnings")[0].GetString(), StringComparison.Ordinal);

    [Fact]
    public void The_table_has_a_row_per_rhythm_and_no_word_for_a_missing_number()
    {
        CadenceResult result = MadeUpCadence.HalfFailed();
        using var stream = new MemoryStream();
        CadenceCsv.Write(stream, ["line.material", "say"], [(["braid", "one, two"], result)]);
        string[] lines = Encoding.UTF8.GetString(stream.ToArray()).TrimEnd('\n').Split('\n');
        Assert.Equal(result.Points.Count + 1, lines.Length);
        Assert.StartsWith("line.material,say,rhythm_per_s,pattern,lock_share,starts,glide_width_m,", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("braid,\"one, two\",0.6,skipping,0,1,", lines[1], StringComparison.Ordinal);
        Assert.EndsWith(",4,failed,0,1" + new string(',', 42), lines[^1], StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", string.Concat(lines), StringComparison.Ordinal);
    }

    [Fact]
    public void Json_of_many_set_ups_has_one_object_each_and_the_reason_of_a_failure()
    {
        using var stream = new MemoryStream();
        AcrossJson.Write(stream, MadeUpCadence.Across(true, true), RunNotes.None);
        JsonElement json = JsonDocument.Parse(Encoding.UTF8.GetString(stream.ToArray())).RootElement;
        JsonElement[] cases = [.. json.GetProperty("cases").EnumerateArray()];
        Assert.Equal(8, cases.Length);
        Assert.Equal("none", cases[1].GetProperty("values").GetProperty("leader.material").GetString());
        Assert.Equal("the lure sinks", cases[4].GetProperty("failure").GetString());
        Assert.False(cases[4].TryGetProperty("windows", out _));
        Assert.Equal(1, cases[7].GetProperty("windows").GetArrayLength());
    }

    [Fact]
    public void A_map_tells_its_shares_and_its_samples()
    {
        using MemoryStream json = new(), csv = new();
        MapResult map = MadeUpCadence.Map();
        MapFiles.WriteJson(json, map, RunNotes.None);
        JsonElement root = JsonDocument.Parse(Encoding.UTF8.GetString(json.ToArray())).RootElement;
        double sum = root.GetProperty("share_of_area").EnumerateObject().Sum(p => p.Value.GetDouble());
        Assert.InRange(sum, 0.9, 0.999);
        Assert.Equal(map.Widest!.Point!.Median(o => o.GlideWidthM), root.GetProperty("widest_glide_m").GetDouble());
        MapFiles.WriteCsv(csv, map);
        string[] lines = Encoding.UTF8.GetString(csv.ToArray()).TrimEnd('\n').Split('\n');
        Assert.StartsWith("rhythm_twitches per second,retrieve.stroke_cm,rhythm_per_s,pattern,", lines[0], StringComparison.Ordinal);
        Assert.Equal(map.Grid.Samples.Count(s => s.Point is not null) + 1, lines.Length);
    }

    [Fact]
    public void The_set_of_files_is_complete()
    {
        string folder = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        try
        {
            using var output = new OutputFolder(folder, "cadence");
            CadenceFiles.Write(output, MadeUpCadence.Window(0.9, 3), "x = 1\n", RunNotes.None, PlotFormat.Both);
            Assert.Equal(
                ["cadence.csv", "cadence.png", "cadence.svg", "effective.toml", "luresim.sha256", "summary.json"],
                Directory.GetFiles(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }
}
