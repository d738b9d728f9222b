using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Reels;
using LureSim.Model.Retrieve;
using LureSim.Model.Tests.Cast;
using LureSimExamples;

namespace LureSim.Model.Tests.Library;

/// <summary>Observers see every step and change nothing.</summary>
public sealed class ObserverTests
{
    private static readonly RetrieveTask Short = new(DurationS: 3.0, HoldDistance: true);

    [Fact]
    public void A_watched_retrieve_gives_the_bits_of_an_unwatched_one()
    {
        RetrieveResult alone = RetrieveRun.Run(Tackle.Walker(), Short).Demand();
        int steps = 0;
        RetrieveResult watched = RetrieveRun.Run(Tackle.Walker(), Short, observer: _ => steps++).Demand();
        Assert.Equal(watched.Counters.Steps, steps);
        Assert.Equal(alone.Counters, watched.Counters);
        Assert.Equal(alone.Summary, watched.Summary);
        foreach ((Channel a, Channel b) in alone.Series.Channels.Zip(watched.Series.Channels))
        {
            Assert.Equal(a.Values.Select(BitConverter.DoubleToInt64Bits), b.Values.Select(BitConverter.DoubleToInt64Bits));
        }
    }

    // Steps join without a gap; at the output times they show what the channels hold, and forces have the channels' means.
    [Fact]
    public void What_a_retrieve_shows_is_what_it_records()
    {
        var times = new List<double>();
        var rows = new List<(double Time, double X, double Heading, double Surge, double Slack, double TipX, double LineOut)>();
        double sum = 0.0, pull = 0.0, tip = 0.0;
        int points = 0;
        void See(RetrieveView s)
        {
            Assert.Equal(times.Count == 0 ? s.StepS : times[^1] + s.StepS, s.TimeS, 1e-9);
            times.Add(s.TimeS);
            rows.Add((s.TimeS, s.LureXM, s.HeadingRad, s.SurgeMS, s.SlackM, s.LineXM[0], s.LineOutM));
            (sum, pull, tip) = (sum + s.StepS, pull + (s.StepS * s.NosePullN), tip + (s.StepS * s.TipPullN));
            points = s.LineXM.Length;
            Assert.Equal((points, points, points - 1), (s.LineYM.Length, s.LineZM.Length, s.TensionN.Length));
            Assert.Equal(s.SpeedMS, Math.Sqrt((s.SurgeMS * s.SurgeMS) + (s.SwayMS * s.SwayMS)));
        }

        Series series = RetrieveRun.Run(Tackle.Walker(), Short, observer: See).Demand().Series;
        Assert.True(points > 40);
        Assert.Equal(Short.DurationS, sum, 1e-9);
        Assert.Equal(series["nose_tension_N"].Skip(1).Average(), pull / sum, 1e-9);
        Assert.Equal(series["tip_tension_N"].Skip(1).Average(), tip / sum, 1e-9);
        for (int i = 1; i < series.Count; i++)
        {
            var row = rows[times.FindIndex(t => Math.Abs(t - series["time_s"][i]) < 1e-9)];
            Assert.Equal(series["lure_x_m"][i], row.X);
            Assert.Equal(series["heading_deg"][i], (row.Heading - Math.PI) * 180.0 / Math.PI, 1e-9);
            Assert.Equal(series["surge_m_s"][i], row.Surge);
            Assert.Equal(series["slack_m"][i], row.Slack);
            Assert.Equal(series["tip_x_m"][i], row.TipX);
            Assert.Equal(series["line_out_m"][i], row.LineOut);
        }
    }

    [Theory]
    [InlineData(ReelKind.Fixed)]
    [InlineData(ReelKind.Revolving)]
    public void A_watched_cast_shows_swing_and_flight_and_gives_the_bits_of_an_unwatched_one(ReelKind kind)
    {
        CastCase spec = CastCases.Default(kind).At(0.26);
        CastResult alone = spec.Run();
        double before = 0.0, released = double.NaN, tension = 0.0, apex = 0.0, fastest = 0.0, lowest = 0.0;
        int flight = 0, points = 0;
        CastResult watched = CastRunner.Run(spec.Setup, spec.Task, observer: s =>
        {
            Assert.Equal(before + s.StepS, s.TimeS, 1e-12);
            (before, tension, apex, lowest) = (s.TimeS, Math.Max(tension, s.TipPullN), Math.Max(apex, s.LureZM), s.LureZM);
            Assert.True(s.IsFlight || flight == 0);
            flight += s.IsFlight ? 1 : 0;
            (released, points) = (s.ReleasedS, s.LineXM.Length);
            fastest = s.IsFlight && s.TimeS <= s.ReleasedS + 0.1 ? Math.Max(fastest, s.SpeedMS) : fastest;
            Assert.Equal((s.LureXM, s.LureZM), (s.LineXM[0], s.LineZM[0]));
        }).Demand();
        Assert.Equal(alone.DistanceM, watched.DistanceM);
        Assert.Equal(alone.Series.TensionN, watched.Series.TensionN);
        Assert.Equal(watched.ReleaseTimeS, released);
        Assert.Equal(watched.PeakTensionN, tension);
        Assert.Equal(watched.ApexM, apex);
        Assert.Equal(watched.LaunchSpeedMS, fastest);
        Assert.True(lowest <= 0.0 && flight > 500 && points > 5);
    }

    [Fact]
    public void What_an_observer_throws_ends_the_run()
    {
        Setup setup = CastCases.Default().Setup;
        Assert.Throws<InvalidOperationException>(() => RetrieveRun.Run(setup, Short, observer: _ => throw new InvalidOperationException()));
        Assert.Throws<InvalidOperationException>(() => CastRunner.Run(setup, new CastTask(), observer: _ => throw new InvalidOperationException()));
    }
}
