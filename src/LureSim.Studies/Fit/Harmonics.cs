using MathNet.Numerics.LinearAlgebra;

namespace LureSim.Studies.Fit;

/// <summary>A level, a steady drift and three harmonics of one period, laid through samples by least squares: gaps and uneven times do not matter.</summary>
internal sealed class Harmonics
{
    /// <summary>Harmonics that are taken: a walk's glide and its arc show in the third, noise in those above.</summary>
    public const int Count = 3;

    // A turning point falls between two of these places: its height is missed by under (pi k/places)^2/2, 2e-3 of the third harmonic.
    private const int Places = 144;

    private readonly double _fromS, _periodS;
    private readonly Matrix<double> _basis;

    /// <summary>Prepares samples.</summary>
    /// <param name="timeS">Their times, s, more of them than unknowns.</param>
    /// <param name="periodS">Period of the first harmonic, s.</param>
    public Harmonics(double[] timeS, double periodS)
    {
        (_fromS, _periodS) = (0.5 * (timeS[0] + timeS[^1]), periodS);
        _basis = Matrix<double>.Build.Dense(timeS.Length, 2 + (2 * Count), (i, j) => Term(timeS[i], j));
    }

    /// <summary>Coefficients: level, drift per period, then a cosine and a sine of each harmonic.</summary>
    /// <param name="values">Values at the times.</param>
    public Vector<double> Of(double[] values) => _basis.QR().Solve(Vector<double>.Build.Dense(values));

    /// <summary>Variance of a coefficient for samples of variance 1.</summary>
    /// <param name="coefficient">Which.</param>
    public double Variance(int coefficient) => _basis.TransposeThisAndMultiply(_basis).Inverse()[coefficient, coefficient];

    /// <summary>Share of the scatter about the drift that the harmonics hold, 0 to 1.</summary>
    /// <param name="values">Values at the times.</param>
    public double Share(double[] values)
    {
        Vector<double> all = Of(values), measured = Vector<double>.Build.Dense(values);
        Matrix<double> straight = _basis.SubMatrix(0, _basis.RowCount, 0, 2);
        double Left(Vector<double> computed) => (measured - computed).DotProduct(measured - computed);
        double without = Left(straight * straight.QR().Solve(measured));
        return without > 0.0 ? 1.0 - (Left(_basis * all) / without) : 0.0;
    }

    /// <summary>Highest less lowest value of the harmonics over a period.</summary>
    /// <param name="coefficients">Coefficients.</param>
    public static double Range(Vector<double> coefficients)
    {
        double[] curve = [.. Enumerable.Range(0, Places).Select(i => At(coefficients, 2.0 * Math.PI * i / Places))];
        return curve.Max() - curve.Min();
    }

    /// <summary>Size of a harmonic.</summary>
    /// <param name="coefficients">Coefficients.</param>
    /// <param name="harmonic">Which, from 1.</param>
    public static double Size(Vector<double> coefficients, int harmonic)
    {
        double cos = coefficients[2 * harmonic], sin = coefficients[(2 * harmonic) + 1];
        return Math.Sqrt((cos * cos) + (sin * sin));
    }

    private static double At(Vector<double> coefficients, double phase)
    {
        double sum = 0.0;
        for (int k = 1; k <= Count; k++)
        {
            (double sin, double cos) = Math.SinCos(k * phase);
            sum += (coefficients[2 * k] * cos) + (coefficients[(2 * k) + 1] * sin);
        }

        return sum;
    }

    private double Term(double timeS, int column)
    {
        double periods = (timeS - _fromS) / _periodS, phase = 2.0 * Math.PI * (column / 2) * periods;
        return column == 0 ? 1.0 : column == 1 ? periods : column % 2 == 0 ? Math.Cos(phase) : Math.Sin(phase);
    }
}
