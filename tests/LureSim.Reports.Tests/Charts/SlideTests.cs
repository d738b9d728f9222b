using LureSim.Model.Reels;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Slides;
using LureSim.Reports.Tests.Support;
using LureSim.Studies.Strike;
using SkiaSharp;

namespace LureSim.Reports.Tests.Charts;

/// <summary>Every slide: 16 to 9, no word cut off or covered, none smaller than a thirtieth of the height, each with words for the speaker.</summary>
public sealed class SlideTests
{
    private const double SmallestShare = 1.0 / 30.0;

    public static TheoryData<UnitChoice, bool, ReelKind> Talks
    {
        get
        {
            var data = new TheoryData<UnitChoice, bool, ReelKind>();
            foreach (UnitChoice choice in Enum.GetValues<UnitChoice>())
            {
                data.Add(choice, false, ReelKind.Revolving);
                data.Add(choice, true, ReelKind.Fixed);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Talks))]
    public void No_word_of_a_slide_is_cut_off_covered_or_small(UnitChoice choice, bool longNames, ReelKind reel)
    {
        foreach (Slide slide in Talk(new Shown(choice), longNames, reel).Where(s => s.Picture is not null))
        {
            Chart chart = slide.Picture!;
            Pictures.Keep(chart with { Name = $"slide {slide.Name}, {choice}, {(longNames ? "long" : "short")}" });
            Assert.Equal(16.0 / 9.0, (double)chart.Width / chart.Height, 1e-12);
            (IReadOnlyList<PlacedText> texts, IReadOnlyList<string> cutOff) = SvgTexts.Read(ChartRenderer.Svg(chart));
            Assert.True(texts.Count > 3, "no words found");
            Assert.True(cutOff.Count == 0, $"{slide.Name}, cut off: {string.Join("; ", cutOff)}");
            for (int i = 0; i < texts.Count; i++)
            {
                Assert.True(texts[i].Size >= SmallestShare * chart.Height, $"{slide.Name}, too small: {texts[i]}, {texts[i].Size} px");
                PlacedText? covered = texts.Skip(i + 1).FirstOrDefault(texts[i].Overlaps);
                Assert.True(covered is null, $"{slide.Name}: {texts[i]} lies on {covered}");
            }
        }
    }

    [Fact]
    public void A_talk_has_every_picture_of_its_commands_once_in_the_order_of_telling()
    {
        string[] names = [.. Talk(Shown.Both, longNames: false, ReelKind.Revolving).Select(s => s.Name)];
        Assert.Equal(
            [
                "walk", "path_top", "pull_slack_turn_1", "pull_slack_turn_2", "side_view", "attitude_side_1", "attitude_side_2", "attitude_time_1", "attitude_time_2", "cadence_1", "cadence_2",
                "loads", "trim_side", "trim_righting", "cast_swing", "cast_path", "cast_speeds", "cast_release", "cast_energy", "cast_brake", "drag_window",
                "strike_distance",
            ],
            names);
    }

    // Panels that are shared out between slides: nothing is drawn twice, and nothing is lost.
    [Fact]
    public void Parts_hold_every_series_of_the_whole_once()
    {
        Chart Whole() => LureSim.Reports.Retrieve.PullSlackTurn.Build(MadeUpRetrieve.Result(), Shown.Both);
        IReadOnlyList<Chart> parts = SlideFit.InParts(Whole);
        Assert.Equal(2, parts.Count);
        Assert.Equal(Whole().Model.Series.Count, parts.Sum(p => p.Model.Series.Count));
        Assert.Equal(Whole().Model.Annotations.Count, parts.Sum(p => p.Model.Annotations.Count));
        Assert.All(parts, p => Assert.Equal(3, p.Model.Axes.Count));
    }

    [Fact]
    public void A_slide_as_a_pixel_picture_is_1920_by_1080()
    {
        Chart slide = Talk(Shown.Both, longNames: false, ReelKind.Fixed).First(s => s.Picture is not null).Picture!;
        using SKBitmap bitmap = SKBitmap.Decode(ChartRenderer.Png(slide, SlideFit.PixelWidth));
        Assert.Equal((1920, 1080), (bitmap.Width, bitmap.Height));
    }

    // Markdown, HTML and whatever steers a terminal: shown as text.
    [Fact]
    public void Notes_show_text_of_the_user_as_text()
    {
        const string hostile = "<script>alert(1)</script> **loud** \u202Eback\u0007 [x](y)";
        string notes = SlideNotes.Markdown(new(hostile, "a`b.toml", Talk(Shown.Both, longNames: false, ReelKind.Fixed), 3));
        Assert.DoesNotContain("<script>", notes, StringComparison.Ordinal);
        Assert.Contains(@"\<script\>", notes, StringComparison.Ordinal);
        Assert.Contains(@"\*\*loud\*\*", notes, StringComparison.Ordinal);
        Assert.DoesNotContain('\u202E', notes);
        Assert.DoesNotContain('\u0007', notes);
        Assert.Contains("`` luresim check a`b.toml ``", notes, StringComparison.Ordinal);
        Assert.Equal(20 - 1 + 2, notes.Split('\n').Count(l => l.Length > 0 && char.IsAsciiDigit(l[0]) && l.Contains(". **", StringComparison.Ordinal)));
    }

    private static IReadOnlyList<Slide> Talk(Shown shown, bool longNames, ReelKind reel)
    {
        string title = longNames ? HardCharts.Title : "Made up";
        var talk = new SlideTalk("lure.toml", shown);
        var retrieve = MadeUpRetrieve.Result();
        talk.AddRetrieve(retrieve with { Setup = retrieve.Setup with { Title = title } }, MadeUpCadence.TwoWindows() with { Setup = retrieve.Setup with { Title = title } });
        talk.AddTrim(title, MadeUpTrim.Result());
        var cast = MadeUpCast.Result(reel);
        talk.AddCast(new(cast with { Setup = cast.Setup with { Title = title } }, reel == ReelKind.Revolving ? MadeUpCast.Brakes : []));
        StrikeReport strike = MadeUpStrike.Report();
        talk.AddStrike(strike with { Strike = strike.Strike with { Setup = strike.Strike.Setup with { Title = title } } });
        return talk.Slides;
    }
}
