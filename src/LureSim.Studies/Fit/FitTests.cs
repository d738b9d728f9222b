using LureSim.Model.Pool;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Measured;
using LureSim.Scenarios.Quantities;

namespace LureSim.Studies.Fit;

/// <summary>The tests of a file, with the errors that people make (guesses; nobody has tried it with many people).</summary>
internal static class FitTests
{
    /// <summary>Errors at home, one standard deviation, where a file says none: angle of a tow and of a film's heading, of a bowl, rad; drift of a push, rad.</summary>
    public const double AngleErrorRad = 3.0 * Degree, BowlAngleErrorRad = Degree, DriftErrorRad = Degree;

    /// <summary>The same of a place on a film or a coast-down, of a way until it has turned, of a height over the water, m.</summary>
    public const double PlaceErrorM = 0.003, WayErrorM = 0.01, HeightErrorM = 0.001;

    /// <summary>The same of a loss, in shares.</summary>
    public const double LossErrorShare = 0.05;

    // Below this angle an eye from above calls a tow straight; pushes that turn less than this are seen not to turn.
    private const double StraightRad = 3.0 * Degree, TurnedRad = 45.0 * Degree, TurnedErrorRad = 10.0 * Degree, Degree = Math.PI / 180.0;

    // How a run was let go, where the film alone tells it: guesses so wide that they hardly matter.
    private const double SpeedFactor = 0.3, DriftRad = 10.0 * Degree, YawRadS = 1.0;

    /// <summary>The same of a period, as a share of it. A roll is seen over three swings; a bob or a nod over little more than one, a third of a second in which one
    /// of sixty pictures a second is a twentieth, and a finger that presses not quite level tilts it.</summary>
    /// <param name="period">Which.</param>
    public static double PeriodErrorShare(FitQuantity period) => period == FitQuantity.RollPeriod ? 0.02 : 0.05;

    /// <summary>Angle between push and axis: a key for words and unit, no guess of the scenario.</summary>
    private static KeySpec Drift => PoolKeys.PushDrift;

    /// <summary>All tests of a file.</summary>
    /// <param name="file">Measurements.</param>
    /// <param name="scenario">Steps and what the file does not say.</param>
    public static IReadOnlyList<FitTest> Of(FitFile file, ScenarioResult scenario) =>
        [.. file.Blocks.SelectMany(b => b.Kind == FitKind.Walk ? [.. new[] { WalkReader.Read(b, scenario) }.OfType<FitTest>()] : Of(b, scenario.Pool!))];

    private static IEnumerable<FitTest> Of(FitBlock block, PoolTask task) => block.Kind switch
    {
        FitKind.Tow => Tows(block, task),
        FitKind.Push => block.Rows.Select(r => Push(block, r, task)),
        FitKind.Coast => Runs(block).Select(r => Coast(block, r, task.StepS)).OfType<FitTest>(),
        FitKind.Track => Runs(block).Select(r => TrackReader.Read(block, r, task.StepS)).OfType<FitTest>(),
        FitKind.Swing => Swings(block, task),
        _ => Bowl(block),
    };

    /// <summary>Unknowns of how a run was let go: its speed, to a factor about what the film shows.</summary>
    /// <param name="speedMS">What it shows, m/s.</param>
    public static FitUnknown Speed(double speedMS) => new(
        PoolKeys.PushSpeed.Path, PoolKeys.PushSpeed.Words, QuantityKind.Speed, "m/s", true, Math.Log(Math.Clamp(speedMS, 0.02, 2.5)), SpeedFactor, 0.01, 3.0);

    /// <summary>Drift and turning rate at the start of a film.</summary>
    public static IReadOnlyList<FitUnknown> Turning { get; } =
    [
        new(Drift.Path, Drift.Words, QuantityKind.Angle, "deg", false, 0.0, DriftRad, -3.0, 3.0),
        new("turning rate", "turning rate as it was let go", QuantityKind.AngularSpeed, "rad/s", false, 0.0, YawRadS, -20.0, 20.0),
    ];

    private static IEnumerable<IReadOnlyList<FitRow>> Runs(FitBlock block) => block.Rows.GroupBy(r => r.Run).Select(g => g.ToList());

    private static IEnumerable<FitTest> Tows(FitBlock block, PoolTask task)
    {
        PoolTask towed = task with
        {
            TowLineM = block.Of(FitWord.Line) ?? task.TowLineM,
            HandHeightM = block.Of(FitWord.Hand) ?? task.HandHeightM,
            TowDistanceM = block.Of(FitWord.TowDistance) ?? task.TowDistanceM,
        };
        double sigma = block.Of(FitWord.AngleError) ?? AngleErrorRad;
        foreach (IGrouping<double, FitRow> rows in block.Rows.GroupBy(r => block.Of(r, FitWord.Speed)!.Value))
        {
            yield return new TowReadings(block.HooksOn, towed, rows.Key) { Readings = [.. rows.SelectMany(r => Tow(block, r, rows.Key, sigma))] };
        }
    }

    // A swing is the difference of two angles.
    private static IEnumerable<FitReading> Tow(FitBlock block, FitRow row, double speed, double sigma)
    {
        if (row.Of(FitWord.Sheer) is double sheer)
        {
            bool straight = double.IsNaN(sheer);
            yield return new(FitKind.Tow, FitQuantity.Sheer, row.Place, block.HooksOn, speed, straight ? StraightRad : Math.Abs(sheer), sigma, straight);
        }

        if (row.Of(FitWord.Swing) is double swing)
        {
            yield return new(FitKind.Tow, FitQuantity.Swing, row.Place, block.HooksOn, speed, swing, Math.Sqrt(2.0) * sigma);
        }
    }

    private static PushReading Push(FitBlock block, FitRow row, PoolTask task)
    {
        double speed = block.Of(row, FitWord.Speed)!.Value, way = row.Of(FitWord.Way)!.Value;
        bool never = double.IsInfinity(way);
        var drift = new FitUnknown(
            Drift.Path, Drift.Words, QuantityKind.Angle, "deg", false, Math.Abs(block.Of(row, FitWord.Drift)!.Value), block.Of(FitWord.DriftError) ?? DriftErrorRad, 0.1 * Degree, 0.8);
        return new(block.HooksOn, task with { PushSpeedMS = speed })
        {
            Readings =
            [
                never
                    ? new(FitKind.Push, FitQuantity.Turned, row.Place, block.HooksOn, speed, TurnedRad, TurnedErrorRad, true)
                    : new(FitKind.Push, FitQuantity.TurnWay, row.Place, block.HooksOn, speed, way, block.Of(FitWord.PlaceError) ?? WayErrorM),
            ],
            Own = [drift],
            OwnStart = [0.0],
        };
    }

    // Rows without a distance are gaps. Two of them tell a speed and nothing of how it slows.
    private static CoastRun? Coast(FitBlock block, IReadOnlyList<FitRow> rows, double step)
    {
        FitRow[] seen = [.. rows.Where(r => r.Of(FitWord.Distance) is not null)];
        if (seen.Length < 3)
        {
            return null;
        }

        double[] t = [.. seen.Select(r => r.Of(FitWord.Time)!.Value)], s = [.. seen.Select(r => r.Of(FitWord.Distance)!.Value)];
        double way = Math.Sign(s[^1] - s[0]), sigma = block.Of(FitWord.PlaceError) ?? PlaceErrorM;
        int early = Math.Max(1, seen.Length / 4);
        return new(block.HooksOn, t, step)
        {
            Readings = [.. seen.Select((r, i) => new FitReading(FitKind.Coast, FitQuantity.Way, r.Place, block.HooksOn, t[i] - t[0], (way < 0.0 ? -1.0 : 1.0) * s[i], sigma))],
            Own = [Speed(Math.Abs(s[early] - s[0]) / (t[early] - t[0]))],
            OwnStart = [0.0],
        };
    }

    private static IEnumerable<FitTest> Swings(FitBlock block, PoolTask task)
    {
        (FitQuantity Period, FitQuantity Loss, Func<PoolTrial, PoolTask, CancellationToken, SwingResult> Run)[] kinds =
        [
            (FitQuantity.RollPeriod, FitQuantity.RollLoss, static (p, t, s) => p.Roll(t, s)),
            (FitQuantity.BobPeriod, FitQuantity.BobLoss, static (p, t, s) => p.Bob(t, s)),
            (FitQuantity.NodPeriod, FitQuantity.NodLoss, static (p, t, s) => p.Nod(t, s)),
        ];
        double lossError = block.Of(FitWord.LossError) ?? LossErrorShare;
        foreach (IGrouping<(double What, double Heel, double Press), FitRow> rows in block.Rows.GroupBy(
            r => (block.Of(r, FitWord.What)!.Value, block.Of(r, FitWord.Heel) ?? task.HeelRad, block.Of(r, FitWord.Press) ?? task.PressM)))
        {
            (FitQuantity period, FitQuantity loss, var run) = kinds[(int)rows.Key.What];
            double share = block.Of(FitWord.PeriodError) ?? PeriodErrorShare(period);
            yield return new SwingReadings(block.HooksOn, task with { HeelRad = rows.Key.Heel, PressM = rows.Key.Press }, run)
            {
                Readings =
                [
                    .. rows.Where(r => r.Of(FitWord.Period) is not null).Select(r => Reading(r, FitWord.Period, period, share * r.Of(FitWord.Period)!.Value)),
                    .. rows.Where(r => r.Of(FitWord.Loss) is not null).Select(r => Reading(r, FitWord.Loss, loss, lossError)),
                ],
            };
        }

        FitReading Reading(FitRow row, FitWord word, FitQuantity quantity, double sigma) => new(FitKind.Swing, quantity, row.Place, block.HooksOn, 0.0, row.Of(word)!.Value, sigma);
    }

    private static IEnumerable<FitTest> Bowl(FitBlock block)
    {
        (FitWord Word, FitQuantity Quantity, double Sigma)[] kinds =
        [
            (FitWord.Angle, FitQuantity.FloatAngle, block.Of(FitWord.AngleError) ?? BowlAngleErrorRad),
            (FitWord.NoseHeight, FitQuantity.NoseHeight, block.Of(FitWord.PlaceError) ?? HeightErrorM),
            (FitWord.TailHeight, FitQuantity.TailHeight, block.Of(FitWord.PlaceError) ?? HeightErrorM),
            (FitWord.Draft, FitQuantity.Draft, block.Of(FitWord.PlaceError) ?? HeightErrorM),
        ];
        FitReading[] all =
        [
            .. block.Rows.SelectMany(r => kinds.Where(k => r.Of(k.Word) is not null)
                .Select(k => new FitReading(FitKind.Bowl, k.Quantity, r.Place, true, 0.0, r.Of(k.Word)!.Value, k.Sigma))),
        ];
        return all.Length == 0 ? [] : [new FloatReadings { Readings = all }];
    }
}
