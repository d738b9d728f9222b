using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Measured;
using LureSim.Studies.Doubt;
using LureSim.Studies.Fit;
using LureSim.Studies.Pool;

namespace LureSim.Reports.Tests.Support;

/// <summary>A fit drawn by hand: five numbers told, one hardly, the rest not; tows, a coast-down, a film, pushes, swings and a bowl.</summary>
internal static class MadeUpFit
{
    private const double Degree = Math.PI / 180.0;
    internal const string Lure = """
        [lure]
        shape = "cigar"
        length = "100 mm"
        diameter = "20 mm"
        mass = "15 g"
        tie = "nose"
        ballast = [{ mass = "2 g", x = "-10 mm", z = "-5 mm" }]
        hooks = [{ type = "treble", size = "no. 4", x = "20 mm", z = "-8 mm" }]
        """;

    public static FitReport Report(bool odd = false)
    {
        ScenarioResult scenario = ScenarioSource.FromText("title = \"Made-up lure\"\n" + Lure, asked: Activities.Pool).Resolve();
        FitUnknown[] unknowns = [.. GuessDesign.Of(scenario, new PoolSource()).Where(g => g.Key.Table == LureKeys.Length.Table).Select(FitUnknown.Of)];
        FitEstimate[] values = [.. unknowns.Select(Estimate)];
        FitRowResult[] rows = [.. Rows(odd).Select(r => new FitRowResult(r.Reading, 0.8 * r.Computed, r.Computed, Math.Abs(r.Reading.Miss(r.Computed)), r.Test))];
        return new(
            new FitFile("Made-up pool", "lure.toml", 0.0185, [], UnitFamily.Metric), scenario, values, [unknowns[3]], rows, rows.Length - 8, 61.0, 55.0, odd ? 1.3 : 1.0,
            [new(unknowns[0], unknowns[4], -0.8)],
            [new(unknowns[^1], FitAdvice.TowOff, 0.4, 0.8, 1.3), new(unknowns[^2], null, 0.98, 0.8, 1.3)]);
    }

    /// <summary>The same with a walk besides: its three figures, a stroke that is told and a slack that is not.</summary>
    public static FitReport Walk()
    {
        FitReport pool = Report();
        FitUnknown stroke = FitUnknown.OfHand(RetrieveKeys.Stroke, "stroke of the hand", 0.2, null, 1.3, 0.03), slack = FitUnknown.OfHand(RetrieveKeys.Slack, "slack that the hand keeps", 0.14, null, 1.5, 0.01);
        FitRowResult Row(FitQuantity quantity, double measured, double sigma, double computed)
        {
            var reading = new FitReading(FitKind.Walk, quantity, "m.csv(70)", true, 1.5, measured, sigma) { IsOfMany = true };
            return new(reading, 0.8 * computed, computed, Math.Abs(reading.Miss(computed)), 99);
        }

        return pool with
        {
            Values = [.. pool.Values, new(stroke, 0.6, 0.1, 1.1, 0.39, FitVerdict.Told), new(slack, -0.2, -1.3, 0.9, 0.86, FitVerdict.Not)],
            Rows =
            [
                .. pool.Rows, Row(FitQuantity.Advance, 0.285, 0.008, 0.279), Row(FitQuantity.PathWidth, 0.18, 0.007, 0.191), Row(FitQuantity.HeadingSwing, 168.0 * Degree, 6.0 * Degree, 165.0 * Degree),
            ],
            Next = [.. pool.Next, new(slack, null, 0.86, 0.09, 0.2)],
            Walks = new([new("m.csv(70)", 1.5, 6.2)], ["rod.bend_load", "angler.pull_time"]),
        };
    }

    private static FitEstimate Estimate(FitUnknown unknown, int i)
    {
        double z = (0.7 * (i % 4)) - 1.0, sigma = i < 5 ? 0.15 + (0.05 * i) : i == 5 ? 0.6 : 0.95;
        return new(unknown, z, z - (FitUnknown.Band * sigma), z + (FitUnknown.Band * sigma), sigma, i < 5 ? FitVerdict.Told : i == 5 ? FitVerdict.Hardly : i == 6 ? FitVerdict.OneReading : FitVerdict.Not);
    }

    private static IEnumerable<(FitReading Reading, double Computed, int Test)> Rows(bool odd)
    {
        int test = 0;
        FitReading Of(FitKind kind, FitQuantity quantity, bool on, double at, double measured, double sigma, bool atMost = false) => new(kind, quantity, "m.csv(9)", on, at, measured, sigma, atMost);
        foreach (double speed in (double[])[0.15, 0.3, 0.5, 0.8])
        {
            for (int i = -1; i < 2; i++)
            {
                yield return (Of(FitKind.Tow, FitQuantity.Sheer, true, speed, 3.0 * Degree, 3.0 * Degree, true), Degree, test);
                yield return (Of(FitKind.Tow, FitQuantity.Sheer, false, speed, (34.0 - (10.0 * speed) + (2.5 * i)) * Degree, 3.0 * Degree), (33.0 - (8.0 * speed)) * Degree, test + 1);
            }

            test += 2;
        }

        yield return (Of(FitKind.Tow, FitQuantity.Swing, false, 0.8, 44.0 * Degree, 4.0 * Degree), 41.0 * Degree, test++);
        foreach (bool on in (bool[])[true, false])
        {
            for (int i = 0; i < 12; i++)
            {
                double t = i / 15.0, k = on ? 5.0 : 2.0, way = Math.Log(1.0 + (0.5 * k * t)) / k;
                yield return (Of(FitKind.Coast, FitQuantity.Way, on, t, way + (0.003 * Math.Sin(5.0 * i)), 0.003), way, test);
                yield return (Of(FitKind.Track, FitQuantity.Place, on, t, way + (0.004 * Math.Cos(3.0 * i)), 0.003), way, test + 1);
            }

            test += 2;
        }

        for (int i = 0; i < 4; i++)
        {
            yield return (Of(FitKind.Push, FitQuantity.TurnWay, false, 0.5, 0.32 + (0.012 * i), 0.01), 0.335, test++);
        }

        foreach ((FitQuantity quantity, double value, double sigma) in ((FitQuantity, double, double)[])[(FitQuantity.RollPeriod, 0.48, 0.01), (FitQuantity.RollLoss, 0.37, 0.05), (FitQuantity.BobPeriod, 0.34, 0.007)])
        {
            for (int i = -1; i < 2; i++)
            {
                yield return (Of(FitKind.Swing, quantity, true, 0.0, value + (0.8 * i * sigma) + (odd && i == 1 && quantity == FitQuantity.BobPeriod ? 0.05 : 0.0), sigma), value, test);
            }

            test++;
        }

        yield return (Of(FitKind.Bowl, FitQuantity.FloatAngle, true, 0.0, 3.2 * Degree, Degree), 2.9 * Degree, test);
        yield return (Of(FitKind.Bowl, FitQuantity.NoseHeight, true, 0.0, 0.007, 0.001), 0.0062, test);
    }
}
