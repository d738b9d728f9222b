using System.Text.Json;
using LureSim.Model;
using LureSim.Model.Cover;
using LureSim.Model.Hands;
using LureSim.Model.Strike;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Strike;
using LureSim.Reports.Tests.Support;
using LureSim.Studies.Strike;

namespace LureSim.Reports.Tests.Text;

/// <summary>A strike in words and as JSON.</summary>
public sealed class StrikeTextTests
{
    private static string Words(StrikeReport report)
    {
        string text = StrikeText.Build(report, RunNotes.None);
        Assert.All(text.Split('\n'), line => Assert.True(line.Length <= 100 && !line.EndsWith(' '), line));
        Assert.True(text.All(char.IsAscii));
        return text.ReplaceLineEndings(" ");
    }

    private static StrikeReport With(StrikeReport report, Func<StrikeResult, StrikeResult> change) => report with { Strike = change(report.Strike) };

    private static string Of(Func<StrikeSummary, StrikeSummary> change) => Words(With(MadeUpStrike.Report(), s => s with { Summary = change(s.Summary) }));

    [Fact]
    public void What_happens_is_told_in_order_with_what_limits_it_and_what_gives_first()
    {
        string text = Words(MadeUpStrike.Report());
        string[] order =
        [
            "A snap of the wrists at 75 % of full effort, 49 ft (15 m) from rod tip to hook", "the slack is gone after 0.07 s", "both points are in after 0.18 s", "largest after 0.20 s, 5.8 lb (2.7 kg)",
            "the line has stretched by 3.3 in (8.5 cm); the drag does not slip", "What limits it: the hands", "Nearest to giving is the rod: it bears 2.1 times its load",
            "From 3.1 lb (1.4 kg) of drag on", "Recommended: 5.3 lb (2.4 kg), 11 % of the label", "common practice, no source", "Those forces are guesses", "Shut, this drag holds", "a loose drag",
            "Swing in no more than", "nobody has published", "never take a turn of it around a hand", "flies back at the rod", "follow local rules",
        ];
        int[] places = Array.ConvertAll(order, o => text.IndexOf(o, StringComparison.Ordinal));
        Assert.All(places, (p, i) => Assert.True(p >= 0, order[i]));
        Assert.Equal(places.Order(), places);
    }

    [Fact]
    public void Each_limit_has_its_sentence()
    {
        Assert.Contains("What limits it: the stroke. The rod is at its end", Of(s => s with { Limit = StrikeLimit.Stroke }), StringComparison.Ordinal);
        string slips = Of(s => s with { Limit = StrikeLimit.Clutch, DragSlipM = 0.12 });
        Assert.Contains("the drag lets out 4.7 in (12 cm) until the hands only hold", slips, StringComparison.Ordinal);
        Assert.Contains("What limits it: the drag. It starts to slip at 8.4 lb (3.8 kg) off the reel", slips, StringComparison.Ordinal);
        Assert.DoesNotContain("times that of it", Of(s => s with { HookForceStaticN = 40.0 }), StringComparison.Ordinal);
    }

    [Fact]
    public void What_gives_what_never_comes_tight_and_what_is_not_set_is_said()
    {
        Assert.Contains("The knot breaks: it bears 0.80 times its load", Of(s => s with { Margins = [new(WeakPlace.Knot, 50.0, 40.0), .. s.Margins] }), StringComparison.Ordinal);
        Assert.Contains("never comes tight. Less slack is due", Of(s => s with { TimeToTightS = null, TimeToForceS = null, HookForcePeakN = 0.0, Margins = [new(WeakPlace.Knot, 0.0, 40.0)] }), StringComparison.Ordinal);
        Assert.Contains("That does not set both points: 5.4 lb (2.4 kg) would be due", Of(s => s with { TimeToForceS = null }), StringComparison.Ordinal);
        Assert.Contains("for 30 % of the time after the largest pull the line is slack", Of(s => s with { SlackAfterShare = 0.3 }), StringComparison.Ordinal);
    }

    [Fact]
    public void One_point_is_told_as_one_and_a_tight_line_has_no_slack_to_lose()
    {
        StrikeReport one = With(MadeUpStrike.Report(), s => s with
        {
            Setup = s.Setup with { Hook = s.Setup.Hook with { Points = 1 } },
            Task = s.Task with { SlackM = 0.0, Stroke = StrikeStroke.Of(StrikeStyle.Sweep) },
        });
        string text = Words(one);
        Assert.Contains("A sweep to the side", text, StringComparison.Ordinal);
        Assert.Contains("the line pulls at the hook after 0.07 s, the point is in after 0.18 s", text, StringComparison.Ordinal);
        Assert.Contains("the point goes in if it needs no more than 8.9 lb", text, StringComparison.Ordinal);
        Assert.DoesNotContain("each ", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_window_that_is_empty_or_has_no_low_end_says_what_to_do()
    {
        string empty = Words(MadeUpStrike.Empty()), unset = Words(MadeUpStrike.TooWeak());
        Assert.Contains("So no one drag does both", empty, StringComparison.Ordinal);
        Assert.Contains("the least that sets the hook; ease it to 3.4 lb (1.5 kg) or less once the fish is at the boat", empty, StringComparison.Ordinal);
        Assert.Contains("No drag sets both points", unset, StringComparison.Ordinal);
        Assert.Contains("a haul with arms and back, 30 lb (13 kg); 33 ft (10 m) of distance", unset, StringComparison.Ordinal);
        Assert.DoesNotContain("Recommended", unset, StringComparison.Ordinal);
        StrikeReport none = MadeUpStrike.TooWeak();
        Assert.Contains("Neither full strength, a haul", Words(none with { Remedies = [.. none.Remedies.Select(r => r with { Sets = false })] }), StringComparison.Ordinal);
    }

    [Fact]
    public void Something_that_gives_at_any_drag_is_said()
    {
        StrikeReport report = MadeUpStrike.Report();
        var range = new DragRange(14.0, null, WeakPlace.Rod, DragCase.Strike);
        string text = Words(report with { Window = report.Window with { Range = range, InStrike = range, Advice = new(DragAdviceReason.TooWeak, null) } });
        Assert.Contains("but the rod gives first, in the strike at any drag", text, StringComparison.Ordinal);
        Assert.Contains("Nothing to recommend: other tackle is due", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Plants_have_their_sentences()
    {
        StrikeReport mat = With(MadeUpStrike.Strong(), s => s with { Setup = s.Setup with { Cover = CoverSpec.Of(CoverKind.Mat) } });
        string text = Words(mat with { Landing = LandingOfStrike.Run(mat.Strike.Setup, mat.Strike.Task).Demand() });
        Assert.Contains("On its way through plants and water", text, StringComparison.Ordinal);
        Assert.Contains("every bit of line that slips lets the fish deeper into the plants", text, StringComparison.Ordinal);
        Assert.Contains("Through the plants it takes", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_has_the_figures_the_window_and_null_for_what_does_not_exist()
    {
        JsonElement json = Json(MadeUpStrike.Report()), unset = Json(MadeUpStrike.TooWeak());
        Assert.Equal((26.0, 13.0, "hands", "rod"), (Number(json, "hook_force_peak_N"), Number(json, "force_per_point_N"), json.GetProperty("limit").GetString(), json.GetProperty("first_to_give").GetString()));
        Assert.Equal((14.0, 39.0, "hook-hold", "boat"), (Number(json, "drag_window_low_N"), Number(json, "drag_window_high_N"), json.GetProperty("drag_window_gives").GetString(), json.GetProperty("drag_window_case").GetString()));
        Assert.Equal(("middle", 23.4), (json.GetProperty("drag_advice").GetString(), Number(json, "drag_advice_N")));
        Assert.Equal("sets-easily", json.GetProperty("drag_bands")[0].GetProperty("if").GetString());
        Assert.Equal((7, "soaked-nylon"), (json.GetProperty("curves").GetArrayLength(), json.GetProperty("curves")[2].GetProperty("line").GetString()));
        Assert.Equal(JsonValueKind.Null, json.GetProperty("curves")[3].GetProperty("hook_force_peak_N")[6].ValueKind);
        Assert.Equal(DragStudy.LooseN, Number(json.GetProperty("loose"), "drag_N"));
        Assert.All((string[])["time_to_force_s", "line_stretch_m", "drag_slip_m", "lift_limit_kg", "boat_safe_drag_N", "margin_knot"], key => Assert.True(Number(json, key) >= 0.0, key));
        Assert.All((string[])["drag_window_low_N", "drag_advice_N"], key => Assert.Equal(JsonValueKind.Null, unset.GetProperty(key).ValueKind));
        Assert.Equal(("cannot-set", "full-effort"), (unset.GetProperty("drag_advice").GetString(), unset.GetProperty("remedies")[0].GetProperty("change").GetString()));
    }

    [Fact]
    public void A_strike_that_could_not_be_finished_is_null()
    {
        JsonElement json = Json(MadeUpStrike.Report() with { Locked = null, Loose = null });
        Assert.All((string[])["locked", "loose"], key => Assert.Equal(JsonValueKind.Null, json.GetProperty(key).ValueKind));
        Assert.DoesNotContain("Shut, this drag", Words(MadeUpStrike.Report() with { Locked = null }), StringComparison.Ordinal);
    }

    private static double Number(JsonElement json, string key) => json.GetProperty(key).GetDouble();

    private static JsonElement Json(StrikeReport report)
    {
        using var stream = new MemoryStream();
        StrikeJson.Write(stream, report, RunNotes.None);
        return JsonDocument.Parse(stream.ToArray()).RootElement;
    }
}
