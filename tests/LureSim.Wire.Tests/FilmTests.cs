using System.Buffers.Binary;
using System.Text.Json.Nodes;
using LureSim.Model;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Validation.Invariants;

namespace LureSim.Wire.Tests;

/// <summary>A film keeps what it says: decoded the way a page does it, nothing is farther off than its stated error.</summary>
public sealed class FilmTests
{
    public static TheoryData<string> Files => [.. Shipped.Files];

    [Theory]
    [MemberData(nameof(Files))]
    public void Nothing_is_farther_off_than_the_stated_error(string file)
    {
        (RetrieveResult result, JsonNode film, List<double[]> seen) = Make(file, "retrieve.duration=4 s");
        double step = film["step_s"]!.GetValue<double>();
        Assert.Equal(0.01, step, 12);
        Assert.Equal(Film.Names, film["channels"]!.AsObject().Select(c => c.Key));
        foreach ((string name, string series, double scale, double shift) in Meaning)
        {
            JsonNode channel = film["channels"]![name]!;
            double[] frames = Decode(channel, i => channel["offset"]!.GetValue<double>());
            double own = channel["step_s"]?.GetValue<double>() ?? step;
            Assert.Equal(name == "nose_pull" ? 0.005 : 0.01, own, 12);
            Assert.Equal((film["count"]!.GetValue<int>() - 1) * step, (frames.Length - 1) * own, 9);
            double worst = Worst(result.Series["time_s"], t => (scale * result.Series[series][t]) + shift, frames, own);
            double stated = channel["error"]!.GetValue<double>();
            Assert.InRange(worst, stated * 0.999999, (stated * 1.000001) + 1e-12);
        }

        Assert.True(seen.Count > 700);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void The_line_is_where_the_solver_had_it(string file)
    {
        (RetrieveResult result, JsonNode film, List<double[]> seen) = Make(file, "retrieve.duration=4 s");
        JsonNode line = film["line"]!;
        int points = line["points"]!.GetValue<int>(), count = line["count"]!.GetValue<int>(), nodes = seen[0].Length / 3;
        double[] offset = [.. line["offset"]!.AsArray().Select(o => o!.GetValue<double>())];
        double[] values = Decode(line, i => offset[i % 3]);
        double step = line["step_s"]!.GetValue<double>(), stated = line["error"]!.GetValue<double>();
        Assert.Equal(count * points * 3, values.Length);
        Assert.Equal(0.02, step, 12);
        int[] kept = LineKeeper.Nodes(nodes - 1);
        Assert.Equal(points, kept.Length);
        double worst = 0.0;
        for (int row = 1; row < seen.Count; row++)
        {
            int f = Math.Min(row / 4, count - 2);
            double share = (row / 4.0) - f;
            for (int p = 0; p < points; p++)
            {
                double Off(int axis) => ((1.0 - share) * values[(((f * points) + p) * 3) + axis])
                    + (share * values[((((f + 1) * points) + p) * 3) + axis]) - seen[row][(3 * kept[p]) + axis];
                worst = Math.Max(worst, Math.Sqrt((Off(0) * Off(0)) + (Off(1) * Off(1)) + (Off(2) * Off(2))));
            }
        }

        Assert.InRange(worst, 0.0, (stated * 1.000001) + 1e-12);
        Assert.True(worst > 0.99 * stated, $"{worst} m off, {stated} m stated");

        // Both ends are those of the channels.
        Assert.Equal(result.Series["tip_x_m"][^1], values[^(3 * points)], stated);
        Assert.Equal(result.Series["nose_height_m"][^1], values[^1], stated);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void The_peak_of_the_pull_is_the_one_of_the_summary(string file)
    {
        (RetrieveResult result, JsonNode film, _) = Make(file, "retrieve.duration=12 s");
        JsonNode pull = film["channels"]!["nose_pull"]!;
        double[] frames = Decode(pull, _ => pull["offset"]!.GetValue<double>());
        double from = result.Twitches[result.WarmUpTwitches].StartS, to = result.Twitches[^1].StartS + (1.0 / result.Task.CadencePerS);
        double peak = frames.Where((_, i) => (0.005 * i) > from + 1e-9 && (0.005 * i) <= to + 1e-9).Max();
        Assert.Equal(result.Summary.NoseTensionPeakN, peak, 1e-3 * result.Summary.NoseTensionPeakN);
    }

    [Fact]
    public void A_film_of_fifteen_seconds_is_small()
    {
        (_, JsonNode film, _) = Make(Shipped.Default);
        Assert.InRange(film.ToJsonString().Length, 100_000, 300_000);
    }

    [Fact]
    public void A_long_run_is_shown_from_its_start()
    {
        (_, JsonNode film, _) = Make(Shipped.Default, "retrieve.duration=24 s", "retrieve.hold_distance=true", "solver.nodes=8");
        Assert.Equal(2001, film["count"]!.GetValue<int>());
        Assert.Equal(1001, film["line"]!["count"]!.GetValue<int>());
    }

    [Fact]
    public void Turning_over_goes_on_instead_of_jumping_back()
    {
        double[] rows = [.. Enumerable.Range(0, 21).Select(i => Math.IEEERemainder(0.5 * i, 2.0 * Math.PI))];
        Film.Unwrap(rows);
        Assert.Equal(10.0, rows[^1], 12);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(2)]
    public void A_series_of_few_rows_has_a_film_too(int rows)
    {
        double[] values = [1.0, 2.0, 4.0];
        FilmTrack track = FilmTrack.Of("x", values.AsSpan(0, rows), 1.0, Math.Max(1, rows - 1));
        Assert.Equal(values[rows - 1], track.At(track.Grains.Length - 1), 12);
        Assert.Equal(rows == 3 ? 0.5 : 0.0, track.Error, 4);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(23)]
    [InlineData(24)]
    [InlineData(60)]
    [InlineData(400)]
    public void Points_run_from_the_tip_to_the_tie_and_close_up_toward_the_lure(int last)
    {
        int[] nodes = LineKeeper.Nodes(last);
        Assert.Equal((0, last), (nodes[0], nodes[^1]));
        Assert.Equal(Math.Min(last + 1, LineKeeper.MostPoints), nodes.Length);
        Assert.Equal(nodes.Order(), nodes);
        Assert.True(nodes[^1] - nodes[^2] <= Math.Max(1, last / 100));
        Assert.True(nodes[1] - nodes[0] >= nodes[^1] - nodes[^2]);
    }

    private static readonly (string Name, string Series, double Scale, double Shift)[] Meaning =
    [
        ("tip_x", "tip_x_m", 1.0, 0.0), ("lure_x", "lure_x_m", 1.0, 0.0), ("lure_y", "lure_y_m", 1.0, 0.0), ("nose_z", "nose_z_m", 1.0, 0.0),
        ("heading", "heading_deg", Math.PI / 180.0, Math.PI), ("pitch", "pitch_deg", Math.PI / 180.0, 0.0), ("tie_z", "nose_height_m", 1.0, 0.0),
        ("hand", "rigid_stroke_m", 1.0, 0.0), ("slack", "slack_m", 1.0, 0.0), ("nose_pull", "nose_tension_N", 1.0, 0.0), ("wet_line", "wetted_line_m", 1.0, 0.0),
    ];

    private static (RetrieveResult Result, JsonNode Film, List<double[]> Seen) Make(string file, params string[] overrides)
    {
        Scenario s = Shipped.Read(file, overrides);
        var keeper = new LineKeeper(s.Retrieve!.Solver.OutputStepS);
        List<double[]> seen = [[]];
        RetrieveResult result = RetrieveRun.Run(s.Setup, s.Retrieve, default, view =>
        {
            keeper.See(view);
            if (view.TimeS > (seen.Count * 0.005) - 1e-8)
            {
                seen.Add(All(view));
            }
        }).DemandAny();
        seen[0] = seen[1];
        JsonNode film = JsonNode.Parse(new RunAnswer(result, Film.Of(result, keeper), null, []).ToJson())!["film"]!;
        return (result, film, seen);
    }

    private static double[] All(RetrieveView view)
    {
        double[] row = new double[3 * view.LineXM.Length];
        for (int i = 0; i < view.LineXM.Length; i++)
        {
            (row[3 * i], row[(3 * i) + 1], row[(3 * i) + 2]) = (view.LineXM[i], view.LineYM[i], view.LineZM[i]);
        }

        return row;
    }

    private static double[] Decode(JsonNode node, Func<int, double> offset)
    {
        byte[] bytes = Convert.FromBase64String(node["i16"]!.GetValue<string>());
        double unit = node["unit"]!.GetValue<double>();
        return [.. Enumerable.Range(0, bytes.Length / 2).Select(i => offset(i) + (unit * BinaryPrimitives.ReadInt16LittleEndian(bytes.AsSpan(2 * i))))];
    }

    private static double Worst(ValueList<double> times, Func<int, double> truth, double[] frames, double step)
    {
        double worst = 0.0;
        for (int row = 0; row < times.Count; row++)
        {
            double at = times[row] / step;
            int f = Math.Min((int)(at + 1e-9), frames.Length - 2);
            worst = Math.Max(worst, Math.Abs(frames[f] + ((at - f) * (frames[f + 1] - frames[f])) - truth(row)));
        }

        return worst;
    }
}
