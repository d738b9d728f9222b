using LureSim.Model.Pool;
using LureSim.Scenarios.Measured;
using MathNet.Numerics.LinearAlgebra;

namespace LureSim.Studies.Fit;

/// <summary>For every number that stays open: which test of the protocol, done as it says, would tell most of it.</summary>
internal static class NextTest
{
    // As the protocol has it: three tows at two speeds, three pushes at half a metre a second filmed for a second, three swings each.
    private const double Repeats = 3.0, PushMS = 0.5, DriftRad = 0.05, FilmS = 1.0, Width = 0.1, Useful = 0.8;
    private const int Pictures = 16;
    private static readonly double[] TowsMS = [0.3, 0.6];

    /// <summary>The open numbers.</summary>
    /// <param name="model">Lure.</param>
    /// <param name="system">What was measured.</param>
    /// <param name="at">Numbers of the lure in z.</param>
    /// <param name="covariance">Their covariance.</param>
    /// <param name="open">Which of them stay open.</param>
    /// <param name="threads">Most threads.</param>
    /// <param name="stop">Stops it.</param>
    public static IReadOnlyList<FitNext> Of(
        FitModel model, FitSystem system, double[] at, Matrix<double> covariance, int[] open, int threads, CancellationToken stop)
    {
        if (open.Length == 0 || model.Candidate(at) is not { } lures)
        {
            return [];
        }

        (FitAdvice Advice, FitTest Test)[] further = [.. Further(model, lures, stop).Where(f => !Has(system, f.Test))];
        Matrix<double> before = covariance.Inverse();
        var after = new List<(FitAdvice Advice, Matrix<double> Covariance)>();
        if (further.Length > 0)
        {
            var next = new FitSystem(model, [.. further.Select(f => f.Test)], threads, stop);
            double[] z = [.. at, .. next.Start.Skip(model.Unknowns.Count)];
            Matrix<double> slopes = next.Slopes(z, next.Compute([z])[0], Width, true, 1.0);
            foreach (FitAdvice advice in further.Select(f => f.Advice).Distinct())
            {
                after.Add((advice, (before + Information(next, slopes, [.. further.Select(f => f.Advice == advice)])).Inverse()));
            }
        }

        return [.. open.Select(n => Best(model.Unknowns[n], at[n], n, covariance, after))];
    }

    private static FitNext Best(FitUnknown unknown, double z, int n, Matrix<double> covariance, List<(FitAdvice Advice, Matrix<double> Covariance)> after)
    {
        double now = Math.Sqrt(covariance[n, n]), least = now;
        FitAdvice? best = null;
        foreach ((FitAdvice advice, Matrix<double> then) in after)
        {
            double sigma = Math.Sqrt(then[n, n]);
            (least, best) = sigma < least ? (sigma, advice) : (least, best);
        }

        bool helps = least <= Useful;
        double half = FitUnknown.Band * (helps ? least : now);
        return new(unknown, helps ? best : null, helps ? least : now, unknown.At(z - half), unknown.At(z + half));
    }

    // What tests say of the lure once they have told what is unknown of themselves.
    private static Matrix<double> Information(FitSystem system, Matrix<double> slopes, bool[] takes)
    {
        int lure = system.OfLure, reading = 0, own = lure;
        Matrix<double> sum = Matrix<double>.Build.Dense(lure, lure);
        for (int t = 0; t < system.Tests.Count; t++)
        {
            FitTest test = system.Tests[t];
            Matrix<double> rows = slopes.SubMatrix(reading, test.Readings.Count, 0, lure);
            if (takes[t] && test.Own.Count == 0)
            {
                sum += rows.TransposeThisAndMultiply(rows);
            }
            else if (takes[t])
            {
                Matrix<double> mine = slopes.SubMatrix(reading, test.Readings.Count, own, test.Own.Count), cross = mine.TransposeThisAndMultiply(rows);
                sum += rows.TransposeThisAndMultiply(rows) - cross.TransposeThisAndMultiply(FitSolver.Normal(mine).Cholesky().Solve(cross));
            }

            (reading, own) = (reading + test.Readings.Count, own + test.Own.Count);
        }

        return sum;
    }

    private static bool Has(FitSystem system, FitTest test) => system.Tests.Any(
        t => t.Kind == test.Kind && t.HooksOn == test.HooksOn && (t.Kind != FitKind.Swing || t.Readings[0].Quantity == test.Readings[0].Quantity));

    private static IEnumerable<(FitAdvice Advice, FitTest Test)> Further(FitModel model, FitCandidate lures, CancellationToken stop)
    {
        PoolTask task = model.Task;
        double few = Math.Sqrt(Repeats);
        foreach (bool on in (bool[])[true, false])
        {
            foreach (double speed in TowsMS)
            {
                yield return (on ? FitAdvice.TowOn : FitAdvice.TowOff, new TowReadings(on, task, speed)
                {
                    Readings =
                    [
                        new(FitKind.Tow, FitQuantity.Sheer, "", on, speed, 0.0, FitTests.AngleErrorRad / few),
                        new(FitKind.Tow, FitQuantity.Swing, "", on, speed, 0.0, Math.Sqrt(2.0) * FitTests.AngleErrorRad / few),
                    ],
                });
            }

            yield return (on ? FitAdvice.FilmOn : FitAdvice.FilmOff, Film(on, task, lures.Trial(on), FitTests.PlaceErrorM / few, stop));
        }

        FitReading Swing(FitQuantity q, double sigma) => new(FitKind.Swing, q, "", true, 0.0, 0.5, sigma / few);
        FitReading Period(FitQuantity q) => Swing(q, FitTests.PeriodErrorShare(q) * 0.4);
        yield return (FitAdvice.Roll, new SwingReadings(true, task, static (p, t, s) => p.Roll(t, s))
        {
            Readings = [Period(FitQuantity.RollPeriod), Swing(FitQuantity.RollLoss, FitTests.LossErrorShare)],
        });
        yield return (FitAdvice.Bob, new SwingReadings(true, task, static (p, t, s) => p.Bob(t, s))
        {
            Readings = [Period(FitQuantity.BobPeriod), Swing(FitQuantity.BobLoss, FitTests.LossErrorShare)],
        });
        yield return (FitAdvice.Nod, new SwingReadings(true, task, static (p, t, s) => p.Nod(t, s))
        {
            Readings = [Period(FitQuantity.NodPeriod), Swing(FitQuantity.NodLoss, FitTests.LossErrorShare)],
        });
        yield return (FitAdvice.Bowl, new FloatReadings
        {
            Readings =
            [
                new(FitKind.Bowl, FitQuantity.FloatAngle, "", true, 0.0, 0.0, FitTests.BowlAngleErrorRad),
                new(FitKind.Bowl, FitQuantity.NoseHeight, "", true, 0.0, 0.0, FitTests.HeightErrorM),
            ],
        });
    }

    // Measured is what the lure as it now stands would show, since axes are laid by what is measured.
    private static TrackRun Film(bool on, PoolTask task, PoolTrial lure, double sigma, CancellationToken stop)
    {
        TrackMark[] marks =
        [
            .. Enumerable.Range(0, Pictures).Select(i => FilmS * i / (Pictures - 1))
                .SelectMany(t => (TrackMark[])[new(t, 1.0, false), new(t, 1.0, true), new(t, -1.0, false), new(t, -1.0, true)]),
        ];
        FitUnknown speed = FitTests.Speed(PushMS), drift = FitTests.Turning[0];
        double[] shown = new TrackRun(on, marks, task.StepS) { Readings = [] }.Unlaid(lure, [PushMS, DriftRad, 0.0], stop);
        return new(on, marks, task.StepS)
        {
            Readings = [.. marks.Select((m, i) => new FitReading(FitKind.Track, FitQuantity.Place, "", on, m.TimeS, shown[i], sigma))],
            Own = [speed, .. FitTests.Turning],
            OwnStart = [0.0, drift.ZOf(DriftRad), 0.0],
        };
    }
}
