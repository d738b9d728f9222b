using LureSim.Model.Rods;
using MathNet.Numerics.LinearAlgebra;

namespace LureSim.Model.Bend;

/// <summary>A rod from a bend test.</summary>
public static class BendFitter
{
    /// <summary>Standard deviations from the middle to the ends of a band from 10 to 90 %.</summary>
    internal const double Band = 1.2815515655446004;

    private const int CurvePoints = 41;

    /// <summary>Fits the rod. It fails where no rod bends like this.</summary>
    /// <param name="test">The test.</param>
    /// <param name="guesses">What is known of rods before.</param>
    /// <param name="stop">Stops the fit.</param>
    /// <exception cref="ArgumentException">A value is out of range, or there is no drop under a weight.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<BendFit> Fit(BendTest test, BendGuesses guesses, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(test);
        ArgumentNullException.ThrowIfNull(guesses);
        Check(test);
        return Outcome.Of(() => Run(test, guesses, stop));
    }

    /// <summary>Angle of the tip in the test that drops it by a third, for a rod without weight, rad: where along a rod it bends, a matter of its
    /// taper alone.</summary>
    /// <param name="tipRadiusRatio">rho, 0.001 to 1.</param>
    /// <param name="stiffnessExponent">p, 0 to 6.</param>
    /// <exception cref="ArgumentException">A number is out of range.</exception>
    public static double PlainActionRad(double tipRadiusRatio, double stiffnessExponent) => RodPower.PlainActionRad(tipRadiusRatio, stiffnessExponent);

    private static BendFit Run(BendTest test, BendGuesses guesses, CancellationToken stop)
    {
        var model = new BendModel(test, guesses);
        var squares = new LeastSquares(model, stop);
        Solution first = squares.Solve(1.0, new double[BendModel.Count]);
        double scale = Scatter(model, squares, first);
        Solution best = scale > 1.0 ? squares.Solve(scale, first.Z) : first;
        BendState rod = model.At(best.Z);
        var bands = new Bands(model, squares, best);
        double power = RodPower.ThirdLoad(rod.Chain);
        return new(
            test,
            new(test.LengthM, test.ClampedM, power, rod.FreeMassKg, rod[BendModel.Ratio], rod[BendModel.Exponent], rod[BendModel.MassExponent]),
            rod[BendModel.Stiffness],
            [bands.Positive(s => RodPower.ThirdLoad(s.Chain)), .. Enumerable.Range(BendModel.Ratio, BendModel.MassExponent).Select(n => bands.Of(n, guesses))],
            bands.Held(BendModel.Ratio, BendModel.Exponent, guesses),
            bands.Positive(s => RodPower.ActionRad(s.Chain, RodPower.ThirdLoad(s.Chain))),
            RodPower.PlainActionRad(rod[BendModel.Ratio], rod[BendModel.Exponent]),
            bands.Positive(s => s.Predict(ReadingKind.Bounce, 0.0)),
            -RodStatics.Solve(rod.Chain, 0.0, 0.0, 0.0, RodPower.GravityMS2).TipYM,
            Rows(model, squares, first, rod),
            scale,
            NextReading.Of(model, squares, best, power),
            Curve(test, bands, power),
            [.. test.Rows.Select(r => r.LoadN).Append(0.0).Distinct().Order().Select(rod.Corners)]);
    }

    // What is read on the bent rod and scatters more than said, beyond chance, is taken as that much less sure; never as surer.
    private static double Scatter(BendModel model, LeastSquares squares, Solution at)
    {
        double[] leverage = Leverage(at);
        Vector<double> misses = squares.Misses(at.Z, 1.0);
        double free = 0.0, square = 0.0;
        for (int i = 0; i < misses.Count; i++)
        {
            bool bent = LeastSquares.IsOfBend(model.Readings[i].Kind);
            (free, square) = bent ? (free + 1.0 - leverage[i], square + (misses[i] * misses[i])) : (free, square);
        }

        double mean = free > 0.5 ? square / free : 1.0;
        return mean > 1.0 + (2.0 * Math.Sqrt(2.0 / Math.Max(free, 0.5))) ? Math.Sqrt(mean) : 1.0;
    }

    private static double[] Leverage(Solution at) => [.. (at.Slopes * at.Covariance * at.Slopes.Transpose()).Diagonal()];

    private static ValueList<BendRow> Rows(BendModel model, LeastSquares squares, Solution first, BendState rod)
    {
        // A reading that alone tells something has nothing to be compared with.
        const double least = 0.02;
        double[] leverage = Leverage(first);
        Vector<double> misses = squares.Misses(first.Z, 1.0);
        return [.. model.Readings.Select((r, i) =>
        {
            double open = 1.0 - leverage[i], computed = rod.Predict(r.Kind, r.LoadN);
            return open < least
                ? new BendRow(r.Kind, r.Index, r.LoadN, r.Value, computed, r.Value, 0.0)
                : new BendRow(r.Kind, r.Index, r.LoadN, r.Value, computed, r.Value - (misses[i] * r.Sigma / open), Math.Abs(misses[i]) / Math.Sqrt(open));
        })];
    }

    private static ValueList<BendPoint> Curve(BendTest test, Bands bands, double power)
    {
        double most = 1.1 * Math.Max(power, test.Rows.Max(r => r.LoadN));
        double[] loads = [.. Enumerable.Range(0, CurvePoints).Select(i => most * i / (CurvePoints - 1))];
        return [.. bands.Drops(loads)];
    }

    private static void Check(BendTest test)
    {
        Require.InRange(test.FreeLengthM, RodSpec.LeastFreeLengthM, 10.0);
        Require.InRange(test.ClampedM, 0.0, 10.0);
        foreach (BendReading row in test.Rows)
        {
            Require.InRange(row.LoadN, 0.0, 100.0);
            Require.InRange(row.DropM ?? 0.0, -test.FreeLengthM, test.FreeLengthM);
            Require.InRange(row.MiddleDropM ?? 0.0, -test.FreeLengthM, test.FreeLengthM);
            Require.InRange(row.TipAngleRad ?? 0.0, -Math.PI, Math.PI);
        }

        foreach (BounceReading bounce in test.Bounces)
        {
            Require.Positive(bounce.FrequencyHz);
            Require.InRange(bounce.TipMassKg, 0.0, 10.0);
        }

        BendErrors e = test.Errors;
        foreach (double error in (double[])[e.DropM, e.AngleRad, e.WeightShare, e.BounceHz, e.BalanceM, e.MassKg, e.LevelRad])
        {
            Require.Positive(error);
        }
    }
}
