using MathNet.Numerics.LinearAlgebra;

namespace LureSim.Model.Bend;

/// <summary>For every number that stays open: which further reading would tell most of it.</summary>
internal static class NextReading
{
    // A weight for counting swings: it slows them to what an eye can count.
    private const double BounceLoadN = 0.05 * Physics.GravityMS2;

    /// <summary>The open numbers.</summary>
    /// <param name="model">Test.</param>
    /// <param name="squares">Its least squares.</param>
    /// <param name="at">Where they ended.</param>
    /// <param name="powerN">Load that drops the tip by a third, N: the weight of the reading that is proposed.</param>
    public static ValueList<OpenValue> Of(BendModel model, LeastSquares squares, Solution at, double powerN)
    {
        int[] open = [.. Enumerable.Range(BendModel.Ratio, BendModel.MassExponent).Where(n => Math.Sqrt(at.Covariance[n, n]) > BendEstimate.Untold)];
        Reading[] further = open.Length == 0 ? [] : [.. Further(model, powerN)];
        Vector<double>[] slopes = squares.Slopes(at.Z, further.Length, (s, i) => s.Predict(further[i].Kind, further[i].LoadN) / further[i].Sigma);
        return [.. open.Select(n => Best(model, at, n, further, slopes))];
    }

    private static OpenValue Best(BendModel model, Solution at, int number, Reading[] further, Vector<double>[] slopes)
    {
        double now = at.Covariance[number, number], least = now;
        Reading? best = null;
        for (int i = 0; i < further.Length; i++)
        {
            Vector<double> shared = at.Covariance * slopes[i];
            double then = now - (shared[number] * shared[number] / (1.0 + slopes[i].DotProduct(shared)));
            (least, best) = then < least ? (then, further[i]) : (least, best);
        }

        bool helps = Math.Sqrt(least) <= BendEstimate.Untold;
        double half = BendFitter.Band * Math.Sqrt(helps ? least : now), z = at.Z[number];
        return new((BendValue)number, helps ? best?.Kind : null, best?.LoadN ?? 0.0, model[number].At(z - half), model[number].At(z + half));
    }

    // Readings of a kind that the test does not hold.
    private static IEnumerable<Reading> Further(BendModel model, double powerN)
    {
        BendErrors errors = model.Errors;
        bool Has(ReadingKind kind, Func<Reading, bool>? where = null) => model.Readings.Any(r => r.Kind == kind && (where?.Invoke(r) ?? true));
        (ReadingKind Kind, double LoadN, double Sigma, bool Known)[] all =
        [
            (ReadingKind.Angle, powerN, errors.AngleRad, Has(ReadingKind.Angle)),
            (ReadingKind.MiddleDrop, powerN, errors.DropM, Has(ReadingKind.MiddleDrop)),
            (ReadingKind.Balance, 0.0, errors.BalanceM, Has(ReadingKind.Balance)),
            (ReadingKind.Mass, 0.0, errors.MassKg, Has(ReadingKind.Mass)),
            (ReadingKind.Bounce, BounceLoadN, errors.BounceHz, Has(ReadingKind.Bounce, r => r.LoadN > 0.0)),
            (ReadingKind.Bounce, 0.0, errors.BounceHz, Has(ReadingKind.Bounce, r => r.LoadN == 0.0)),
        ];
        return all.Where(r => !r.Known).Select(r => new Reading(r.Kind, 0, r.LoadN, double.NaN, r.Sigma));
    }
}
