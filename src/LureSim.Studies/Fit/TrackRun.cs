using LureSim.Model.Pool;
using LureSim.Scenarios.Measured;

namespace LureSim.Studies.Fit;

/// <summary>What is seen on a film: a point of the lure along one axis of the picture, or its heading.</summary>
/// <param name="TimeS">Time since the run's first, s.</param>
/// <param name="Ahead">Its place: 1 the nose, -1 the tail, 0 the middle; of a heading NaN.</param>
/// <param name="IsY">Whether it is the second axis.</param>
internal sealed record TrackMark(double TimeS, double Ahead, bool IsY);

/// <summary>A film of a lure that swims by itself: how it was let go is unknown, and so is how the axes of the film lie, which are laid so that it fits best.</summary>
internal sealed class TrackRun(bool hooksOn, TrackMark[] marks, double stepS) : PoolTest(FitKind.Track, hooksOn)
{
    private const int Turns = 12;

    /// <inheritdoc/>
    public override int Laid => 3;

    /// <inheritdoc/>
    public override double[] Compute(PoolTrial trial, double[] own, CancellationToken stop)
    {
        (double[] x, double[] y, double[] heading) = Swum(trial, own, stop);
        return Lay(x, y, heading);
    }

    /// <summary>The readings in axes that begin where it was let go, the first along its way.</summary>
    /// <param name="trial">Lure.</param>
    /// <param name="own">How it was let go.</param>
    /// <param name="stop">Stops it.</param>
    public double[] Unlaid(PoolTrial trial, double[] own, CancellationToken stop)
    {
        (double[] x, double[] y, double[] heading) = Swum(trial, own, stop);
        return [.. marks.Select((m, i) => double.IsNaN(m.Ahead) ? heading[i] : m.IsY ? y[i] : x[i])];
    }

    private (double[] X, double[] Y, double[] Heading) Swum(PoolTrial trial, double[] own, CancellationToken stop)
    {
        SwimResult swim = trial.Swim(new(own[0], own[1], own[2], marks[^1].TimeS), stepS, stop);
        RestResult rest = trial.Rest();
        double[] x = new double[marks.Length], y = new double[marks.Length], heading = new double[marks.Length];
        for (int i = 0; i < marks.Length; i++)
        {
            TrackMark mark = marks[i];
            double ahead = mark.Ahead > 0.0 ? rest.NoseAheadM : mark.Ahead < 0.0 ? rest.TailAheadM : 0.5 * (rest.NoseAheadM + rest.TailAheadM);
            heading[i] = SwimTrace.At(swim.TimeS, swim.HeadingRad, mark.TimeS);
            if (!double.IsNaN(mark.Ahead))
            {
                x[i] = SwimTrace.At(swim.TimeS, swim.XM, mark.TimeS) + (ahead * Math.Cos(heading[i]));
                y[i] = SwimTrace.At(swim.TimeS, swim.YM, mark.TimeS) + (ahead * Math.Sin(heading[i]));
            }
        }

        return (x, y, heading);
    }

    // Shift and turn of the picture by least squares: for a turn the best shift is that of the means, and the best turn is where the slope is nothing
    // (Newton, a few steps from the direction that places alone or headings alone would give).
    private double[] Lay(double[] x, double[] y, double[] heading)
    {
        double turn = FirstTurn(x, y, heading);
        for (int k = 0; k < Turns; k++)
        {
            (double slope, double curve) = Slope(x, y, heading, turn);
            double move = Math.Clamp(-slope / Math.Max(curve, 1e-12), -0.3, 0.3);
            turn += move;
            if (Math.Abs(move) < 1e-10)
            {
                break;
            }
        }

        (double sin, double cos) = Math.SinCos(turn);
        (double shiftX, double shiftY) = Shift(x, y, sin, cos);
        return
        [
            .. marks.Select((m, i) => double.IsNaN(m.Ahead) ? heading[i] + turn + Whole(Readings[i].Measured - heading[i] - turn)
                : m.IsY ? (sin * x[i]) + (cos * y[i]) + shiftY
                : (cos * x[i]) - (sin * y[i]) + shiftX),
        ];
    }

    // Headings are the same after whole turns.
    private static double Whole(double rad) => 2.0 * Math.PI * Math.Round(rad / (2.0 * Math.PI));

    private (double X, double Y) Shift(double[] x, double[] y, double sin, double cos)
    {
        double wx = 0.0, wy = 0.0, sx = 0.0, sy = 0.0;
        for (int i = 0; i < marks.Length; i++)
        {
            if (double.IsNaN(marks[i].Ahead))
            {
                continue;
            }

            double w = 1.0 / (Readings[i].Sigma * Readings[i].Sigma);
            if (marks[i].IsY)
            {
                (wy, sy) = (wy + w, sy + (w * (Readings[i].Measured - (sin * x[i]) - (cos * y[i]))));
            }
            else
            {
                (wx, sx) = (wx + w, sx + (w * (Readings[i].Measured - (cos * x[i]) + (sin * y[i]))));
            }
        }

        return (wx > 0.0 ? sx / wx : 0.0, wy > 0.0 ? sy / wy : 0.0);
    }

    // Half the sum of squares over the turn: its slope, and its curvature without the part that vanishes with the misses.
    private (double Slope, double Curve) Slope(double[] x, double[] y, double[] heading, double turn)
    {
        (double sin, double cos) = Math.SinCos(turn);
        (double shiftX, double shiftY) = Shift(x, y, sin, cos);
        (double meanX, double meanY) = (Mean(i => (-sin * x[i]) - (cos * y[i]), false), Mean(i => (cos * x[i]) - (sin * y[i]), true));
        double slope = 0.0, curve = 0.0;
        for (int i = 0; i < marks.Length; i++)
        {
            double w = 1.0 / (Readings[i].Sigma * Readings[i].Sigma), measured = Readings[i].Measured, miss, per;
            if (double.IsNaN(marks[i].Ahead))
            {
                (miss, per) = (Math.IEEERemainder(measured - heading[i] - turn, 2.0 * Math.PI), 1.0);
            }
            else if (marks[i].IsY)
            {
                (miss, per) = (measured - (sin * x[i]) - (cos * y[i]) - shiftY, (cos * x[i]) - (sin * y[i]) - meanY);
            }
            else
            {
                (miss, per) = (measured - (cos * x[i]) + (sin * y[i]) - shiftX, (-sin * x[i]) - (cos * y[i]) - meanX);
            }

            slope -= w * miss * per;
            curve += w * per * per;
        }

        return (slope, curve);
    }

    private double Mean(Func<int, double> of, bool isY)
    {
        double w = 0.0, sum = 0.0;
        for (int i = 0; i < marks.Length; i++)
        {
            if (!double.IsNaN(marks[i].Ahead) && marks[i].IsY == isY)
            {
                double one = 1.0 / (Readings[i].Sigma * Readings[i].Sigma);
                (w, sum) = (w + one, sum + (one * of(i)));
            }
        }

        return w > 0.0 ? sum / w : 0.0;
    }

    // Places: the angle of the sum of conj(model) times measured, about their means (the closed form of two sets of points); without places the headings.
    private double FirstTurn(double[] x, double[] y, double[] heading)
    {
        double mx = Mean(i => Readings[i].Measured, false), my = Mean(i => Readings[i].Measured, true);
        double ax = Mean(i => x[i], false), ay = Mean(i => y[i], true), re = 0.0, im = 0.0;
        for (int i = 0; i + 1 < marks.Length; i++)
        {
            if (!double.IsNaN(marks[i].Ahead) && !marks[i].IsY && marks[i + 1].IsY)
            {
                double px = x[i] - ax, py = y[i] - ay, qx = Readings[i].Measured - mx, qy = Readings[i + 1].Measured - my;
                (re, im) = (re + (px * qx) + (py * qy), im + (px * qy) - (py * qx));
            }
        }

        if (re != 0.0 || im != 0.0)
        {
            return Math.Atan2(im, re);
        }

        int first = Array.FindIndex(marks, m => double.IsNaN(m.Ahead));
        return first < 0 ? 0.0 : Readings[first].Measured - heading[first];
    }
}
