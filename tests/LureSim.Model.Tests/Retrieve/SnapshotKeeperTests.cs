using LureSim.Model.Hands;
using LureSim.Model.Lures;
using LureSim.Model.Retrieve;
using LureSim.Numerics;

namespace LureSim.Model.Tests.Retrieve;

/// <summary>Which instants are kept for a picture, and the rod as it is drawn.</summary>
public sealed class SnapshotKeeperTests
{
    private const double Every = 0.1;

    // Period 0.5 s, warm-up 1.2 s: the twitch from 1.5 to 2.0 s. Within it the tip pulls hardest at 1.8 s and most line is loose at 1.6 s; the last
    // instant but the one that begins the next pull is 1.9 s. Higher values outside it, and at 2.0 s itself, do not count.
    [Fact]
    public void The_hardest_pull_the_most_slack_and_the_end_of_the_first_twitch_after_warm_up_in_order_of_time()
    {
        IReadOnlyList<Snapshot> shots = Shots(Spec(4.0, 1.2), pull: 1.8, slack: 1.6);
        Assert.Equal([1.6, 1.8, 1.9], shots.Select(s => Math.Round(s.TimeS, 9)));
        Assert.Equal(["most slack", "hardest pull", "just before the next pull"], shots.Select(s => s.Label));
        Assert.Equal([16.0, 18.0, 19.0], shots.Select(s => Math.Round(s.LureXM, 9)));
        Assert.All(shots, s => Assert.Equal((-s.LureXM, 2.0 * s.LureXM), (s.LureYM, s.HeadingRad)));
    }

    // 1 s with a warm-up of two thirds of it, rounded up to a whole twitch, leaves no twitch: the last complete one, from 0.5 s, is taken.
    [Fact]
    public void A_short_run_shows_its_last_complete_twitch() =>
        Assert.Equal([0.6, 0.8, 0.9], Shots(Spec(1.0, 6.0), pull: 0.6, slack: 0.8).Select(s => Math.Round(s.TimeS, 9)));

    [Fact]
    public void Two_instants_make_no_picture()
    {
        RetrieveParts parts = RetrieveCases.Parts(Spec(4.0, 1.2));
        var keeper = new SnapshotKeeper(parts);
        keeper.Keep(1.5, default);
        keeper.Keep(1.6, default);
        Assert.Empty(keeper.Choose(Series(pull: 1.8, slack: 1.6)));
    }

    // A cantilever loaded at its tip bends as s^2 (3 - s)/2: half way out by 5/16 of the tip. Hand and tip have gone back together by 0.3 m.
    [Fact]
    public void The_rod_is_drawn_from_the_hand_to_the_tip_as_a_cantilever()
    {
        const double bend = 0.2, side = -0.1;
        RetrieveParts parts = RetrieveCases.Parts(Spec(4.0, 1.2));
        TipFrame rigid = parts.Swing.At(1.5);
        Vec3 off = (bend * rigid.Stroke) + (side * rigid.Side), moved = new(-0.3, 0.0, 0.0), tip = rigid.Position + off + moved;
        parts.Rod.Now.Q[0] = bend;
        parts.Rod.Now.Q[parts.Rod.Modes.Count] = side;
        (parts.Step.Now.X[0], parts.Step.Now.Y[0], parts.Step.Now.Z[0]) = (tip.X, tip.Y, tip.Z);
        var keeper = new SnapshotKeeper(parts);
        foreach (double time in new[] { 1.5, 1.6, 1.7 })
        {
            keeper.Keep(time, default);
        }

        // The pull is hardest at once, so the first instant is the first picture.
        Snapshot shot = keeper.Choose(Series(pull: 1.5, slack: 1.6))[0];
        Assert.Equal(1.5, shot.TimeS);
        int last = shot.Rod[0].Count - 1;
        Vec3 Point(int i) => new(shot.Rod[0][i], shot.Rod[1][i], shot.Rod[2][i]);
        Vec3 hand = parts.Swing.Hand + moved;
        Assert.Equal(0.0, (Point(0) - hand).Length, 1e-12);
        Assert.Equal(0.0, (Point(last) - tip).Length, 1e-12);
        Assert.Equal(0.0, (Point(last / 2) - (hand + (0.5 * (rigid.Position - parts.Swing.Hand)) + (0.3125 * off))).Length, 1e-12);
        Assert.Equal(parts.Mesh.Segments + 1, shot.Line[0].Count);
        Assert.Equal(tip.Z, shot.Line[2][0]);
    }

    private static RetrieveTask Spec(double duration, double warmUp) => new(CadencePerS: 2.0, DurationS: duration, WarmUpS: warmUp);

    private static IReadOnlyList<Snapshot> Shots(RetrieveTask spec, double pull, double slack)
    {
        var keeper = new SnapshotKeeper(RetrieveCases.Parts(spec));
        for (int i = 0; i <= 25; i++)
        {
            double x = i;
            keeper.Keep(i * Every, new HullPose(new Vec3(x, -x, 0.0), 2.0 * x, 0.0, 0.0, 0.0, 0.0, 0.0, default, default, default, 1.0));
        }

        return keeper.Choose(Series(pull, slack));
    }

    // 1 where nothing is, 5 at the instant, 9 outside the twitch of that instant and where the next pull begins.
    private static Series Series(double pull, double slack)
    {
        double start = Math.Floor((pull + 1e-9) / 0.5) * 0.5;
        ValueList<double> time = [.. Enumerable.Range(0, 26).Select(i => i * Every)];
        ValueList<double> Peak(double at) => [.. time.Select(t => t < start - 1e-9 || t > start + 0.5 - 1e-9 ? 9.0 : Math.Abs(t - at) < 1e-9 ? 5.0 : 1.0)];
        return new([new("time_s", "", "", time), new("tip_tension_N", "", "", Peak(pull)), new("slack_m", "", "", Peak(slack))]);
    }
}
