using MathNet.Numerics.LinearAlgebra;

namespace LureSim.Model.Bend;

/// <summary>Bands of numbers and of what follows from them, from the covariance of the fit and the slopes at its end.</summary>
internal sealed class Bands(BendModel model, LeastSquares squares, Solution at)
{
    // An even range of the same standard deviation reaches root 3 of it to each side.
    private static readonly double Even = Math.Sqrt(3.0);

    private readonly BendState _rod = model.At(at.Z);

    /// <summary>A number of the fit.</summary>
    public BendEstimate Of(int number, BendGuesses guesses) => Of(number, Math.Sqrt(at.Covariance[number, number]), guesses);

    /// <summary>The same while another number is held at its best value.</summary>
    public BendEstimate Held(int number, int other, BendGuesses guesses)
    {
        double shared = at.Covariance[number, other], left = at.Covariance[number, number] - (shared * shared / at.Covariance[other, other]);
        return Of(number, Math.Sqrt(Math.Max(left, 0.0)), guesses);
    }

    /// <summary>Anything positive that follows from the rod, by its logarithm.</summary>
    public BendEstimate Positive(Func<BendState, double> value)
    {
        double best = value(_rod), sigma = Sigma(squares.Slope(at.Z, s => Math.Log(value(s))));
        double Off(double sigmas) => best * Math.Exp(sigmas * sigma);
        return new(best, Off(-BendFitter.Band), Off(BendFitter.Band), Off(-Even), Off(Even), 0.0);
    }

    /// <summary>Drops over weights.</summary>
    public IEnumerable<BendPoint> Drops(double[] loads)
    {
        double Drop(BendState s, int i) => s.Predict(ReadingKind.Drop, loads[i]);
        Vector<double>[] slopes = squares.Slopes(at.Z, loads.Length, Drop);
        for (int i = 0; i < loads.Length; i++)
        {
            double drop = Drop(_rod, i), half = BendFitter.Band * Sigma(slopes[i]);
            yield return new(loads[i], drop, drop - half, drop + half);
        }
    }

    private BendEstimate Of(int number, double sigma, BendGuesses guesses)
    {
        double z = at.Z[number];
        Coordinate c = model[number];
        BendGuess guess = number switch
        {
            BendModel.Ratio => guesses.TipRadiusRatio,
            BendModel.Exponent => guesses.StiffnessExponent,
            BendModel.Mass => guesses.MassKg,
            BendModel.Share => guesses.FreeMassShare,
            _ => guesses.MassExponent,
        };
        return new(
            c.At(z), c.At(z - (BendFitter.Band * sigma)), c.At(z + (BendFitter.Band * sigma)), c.At(z - (Even * sigma)), c.At(z + (Even * sigma)), sigma, guess);
    }

    private double Sigma(Vector<double> slope) => Math.Sqrt(slope.DotProduct(at.Covariance * slope));
}
