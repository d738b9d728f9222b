using System.Text.Json;
using LureSim.Model.Pool;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Pool;
using LureSim.Reports.Tests.Support;

namespace LureSim.Reports.Tests.Text;

/// <summary>A pool test in words and as JSON.</summary>
public sealed class PoolTextTests
{
    private static string Words(PoolResult pool)
    {
        string text = PoolText.Build("Made up", pool, RunNotes.None);
        Assert.All(text.Split('\n'), line => Assert.True(line.Length <= 100 && !line.EndsWith(' '), line));
        Assert.True(text.All(char.IsAscii));
        return text.ReplaceLineEndings(" ");
    }

    [Fact]
    public void Every_measurement_is_told_with_what_it_tells()
    {
        string text = Words(MadeUpPool.Result());
        Assert.Contains("sheers to one side at 0.5, 1.0 ft/s (0.15, 0.30 m/s), up to 18 deg off its line; comes straight at 2.6 ft/s (0.80 m/s)", text, StringComparison.Ordinal);
        Assert.Contains("would settle lure.stern_shedding", text, StringComparison.Ordinal);
        Assert.Contains("has turned 45 deg after 9.4 in (24 cm) and ends 7.5 in (19 cm) beside the line of the push", text, StringComparison.Ordinal);
        Assert.Contains("Kept straight it loses half of its speed in 6.3 in (16 cm)", text, StringComparison.Ordinal);
        Assert.Contains("Let go at 20 deg of heel it rolls to and fro in 0.50 s and loses 45 %", text, StringComparison.Ordinal);
        Assert.Contains("Pressed down by 0.16 in (4.0 mm) and let go it bobs to and fro in 0.36 s", text, StringComparison.Ordinal);
        Assert.Contains("sheers, not settled", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" -0 ", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_does_not_turn_swing_or_slow_is_said_in_words()
    {
        string text = Words(MadeUpPool.Stiff());
        Assert.Contains("is pulled under from 0.5 to 2.6 ft/s (0.15 to 0.80 m/s)", text, StringComparison.Ordinal);
        Assert.Contains("never turns 45 deg: it ends 6 deg from where it pointed, on the line of the push. With less side force", text, StringComparison.Ordinal);
        Assert.Contains("does not lose half of its speed", text, StringComparison.Ordinal);
        Assert.Contains("stands too steep for a roll", text, StringComparison.Ordinal);
        Assert.Contains("let go it comes back without swinging", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_has_the_tows_as_a_list_and_null_for_what_does_not_exist()
    {
        JsonElement json = Json(MadeUpPool.Result()), stiff = Json(MadeUpPool.Stiff());
        JsonElement first = json.GetProperty("tow")[0];
        Assert.Equal((0.15, 18.2, 3.1), (first.GetProperty("speed_m_s").GetDouble(), first.GetProperty("sheer_deg").GetDouble(), first.GetProperty("trim_deg").GetDouble()));
        Assert.Equal(("sheers", 3), (json.GetProperty("course").GetString(), json.GetProperty("tow").GetArrayLength()));
        Assert.Equal(0.24, json.GetProperty("push_turn_m").GetDouble());
        Assert.All((string[])["push_turn_m", "coast_per_m", "roll_period_s", "heave_period_s"], key => Assert.Equal(JsonValueKind.Null, stiff.GetProperty(key).ValueKind));
        Assert.Equal(0.33, stiff.GetProperty("pitch_period_s").GetDouble());
    }

    [Fact]
    public void A_slanted_lure_is_not_said_to_tell_what_only_a_level_one_tells()
    {
        string text = Words(MadeUpPool.Result() with { RestTrimDeg = 25.0 });
        Assert.DoesNotContain("would settle lure.stern_shedding", text, StringComparison.Ordinal);
        Assert.DoesNotContain("The way hardly depends", text, StringComparison.Ordinal);
    }

    private static JsonElement Json(PoolResult pool)
    {
        using var stream = new MemoryStream();
        PoolFiles.WriteJson(stream, "Made up", pool, RunNotes.None);
        return JsonDocument.Parse(stream.ToArray()).RootElement;
    }
}
