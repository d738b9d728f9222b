using LureSim.Model.Assembly;
using LureSim.Model.Cover;
using LureSim.Model.Crawl;
using LureSim.Model.Hands;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;

namespace LureSim.Model.Tests.Crawl;

/// <summary>Pulls and strokes of statics against closed forms, and against a steady tow over plants.</summary>
public sealed class CrawlStaticsTests
{
    // T2/T1 = e^(mu theta) of a rope about a post: mu 0.2, 180 deg: 1.87446 (classical).
    [Fact]
    public void Line_about_stems_grows_as_a_rope_about_a_post()
    {
        (double tension, double area) = CrawlStatics.OverPlants(2.0, 0.0, 0.2 * Math.PI, 1.0);
        Assert.Equal(2.0 * 1.87446, tension, 2e-5);
        Assert.Equal(2.0 * (1.87446 - 1.0) / (0.2 * Math.PI), area, 2e-5);
    }

    [Fact]
    public void Line_that_only_clings_grows_by_its_length()
    {
        Assert.Equal((2.0 + (0.5 * 6.0), 6.0 * (2.0 + (0.25 * 6.0))), CrawlStatics.OverPlants(2.0, 0.5, 0.0, 6.0));

        // A little turn is the same but for its own part, b L (T + f L/2): no step where one formula takes over.
        (double tension, double area) = CrawlStatics.OverPlants(2.0, 0.5, 1e-6, 6.0);
        Assert.Equal(5.0 + (1e-6 * 6.0 * 3.5), tension, 1e-9);
        Assert.Equal(21.0, area, 1e-3);
    }

    // Statics of a block drawn at an angle: least pull at tan a = mu.
    [Fact]
    public void A_block_is_drawn_most_easily_at_the_angle_of_friction()
    {
        var contact = new SlidingContact(0.02, 0.5, 60.0, 0.5, 0.01);
        double best = Math.Atan(0.5), least = CrawlStatics.PullAt(contact, best);
        Assert.Equal(0.02 * Physics.GravityMS2 * Math.Sin(best), least, 1e-12);
        Assert.True(CrawlStatics.PullAt(contact, best - 0.1) > least && CrawlStatics.PullAt(contact, best + 0.1) > least);
    }

    [Fact]
    public void Wound_in_steadily_over_plants_lure_and_tip_feel_what_statics_say()
    {
        // High plants: all line over them lies on them, whatever it sags.
        CoverSpec mat = CrawlCases.Mat with { HeightM = 1.0, LineOverM = 6.0, DragNM = 0.3, TurnRadM = 0.3 };
        var parts = new CrawlParts(CrawlCases.Setup(mat), new CrawlTask(10.0, 4.0));
        CrawlStatics statics = CrawlStatics.Of(parts);
        // The same at rest, wound in at 0.2 m/s.
        var still = new WristSwing(parts.Setup.Angler, parts.Setup.Rod.FreeLengthM, 0.0, parts.Twitch);
        var tow = new TwitchedLine(parts.Setup, WaterModel.Evaluate(parts.Setup.Water), still, 10.0, 40, parts.Lure);
        double nose = 0.0, tip = 0.0, span = 0.0;
        var loop = new LineLoop(tow, new HandleTakeUp(new TakeUpSpec(TakeUpMode.Steady, SpeedMS: 0.2), parts.Twitch, 0.0, 0.0), 5e-4, false, default);
        for (int n = 0; n < 12000; n++)
        {
            Assert.Null(loop.BaseStep(n * 5e-4));
            if (n >= 6000)
            {
                (nose, tip, span) = (nose + tow.Step.TieForce.Length, tip + tow.Step.TipForce.Length, span + 1.0);
            }
        }

        // The held speed of 0.2 m/s is ten times the creep of line on plants: F/sqrt(1 + 0.1^2), 0.5 % low; the lure comes nearer and the line steeper, 1 %.
        Assert.Equal(statics.PullN, nose / span, 0.03 * statics.PullN);
        Assert.Equal(statics.TipPullN, tip / span, 0.03 * statics.TipPullN);
        Assert.Null(loop.OpenAccount());
    }

    [Fact]
    public void Stretch_and_give_are_those_of_a_spring_of_line_and_of_the_rod_s_tip()
    {
        // Nothing held by plants: one tension all along.
        Setup setup = CrawlCases.Setup(CrawlCases.Mat with { LineOverM = 0.0 });
        CrawlStatics s = CrawlStatics.Of(setup, CrawlCases.Task);
        Assert.Equal(s.PullN, s.TipPullN);
        Assert.Equal(s.PullN * CrawlCases.Task.DistanceM / CrawlCases.Braid.AxialStiffnessN, s.StretchM, 1e-12);
        Assert.True(s.LeastStrokeM > s.StretchM + s.RodGiveM);
        CrawlStatics nylon = CrawlStatics.Of(setup with { Line = CrawlCases.Braid with { AxialStiffnessN = 250.0 } }, CrawlCases.Task);
        Assert.Equal(20.0 * s.StretchM, nylon.StretchM, 1e-12);
        Assert.Equal(s.RodGiveM, nylon.RodGiveM);
    }
}
