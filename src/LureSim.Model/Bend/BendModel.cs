using LureSim.Model.Rods;

namespace LureSim.Model.Bend;

/// <summary>A reading as the fit uses it.</summary>
/// <param name="Kind">Kind.</param>
/// <param name="Index">Its row, or count of swings.</param>
/// <param name="LoadN">Pull of the weight at the tip, as said on it, N.</param>
/// <param name="Value">Measured, SI.</param>
/// <param name="Sigma">One standard deviation of its error.</param>
internal sealed record Reading(ReadingKind Kind, int Index, double LoadN, double Value, double Sigma);

/// <summary>What a bend test is fitted with: nine numbers of rod and test, and the rod that they make.</summary>
/// <remarks>
/// Rod: EI_0, rho, p, mass, share of it beyond the hand, q. Test: where the weight of the handle sits, how level "level" was, how true the
/// weights are. The last three are never told, but they blur what is told of the rod.
/// </remarks>
internal sealed class BendModel
{
    /// <summary>Numbers of the fit.</summary>
    public const int Count = 9;

    /// <summary>Stiffness at the hand, the only number about which nothing is assumed.</summary>
    public const int Stiffness = 0;

    /// <summary>The others, in the order of <see cref="BendValue"/> from its second one, then those of the test.</summary>
    public const int Ratio = 1, Exponent = 2, Mass = 3, Share = 4, MassExponent = 5, Handle = 6, Level = 7, Weights = 8;

    // Where the weight of grip, reel seat and butt sits between butt end and hand: a guess, even between 0.35 and 0.65 of that length.
    private static readonly BendGuess HandleGuess = new(0.35, 0.65, 0.0, 1.0);

    // A fit may go so far from its first guess of the stiffness, as a factor.
    private const double Farthest = 1000.0;

    private readonly BendTest _test;
    private readonly Coordinate[] _coordinates;

    public BendModel(BendTest test, BendGuesses guesses)
    {
        _test = test;
        _coordinates =
        [
            new(0.0, 1.0, true, 1.0 / Farthest, Farthest, IsFree: true),
            Coordinate.Of(guesses.TipRadiusRatio, isLog: true),
            Coordinate.Of(guesses.StiffnessExponent, isLog: false),
            Coordinate.Of(guesses.MassKg, isLog: true),
            Coordinate.Of(guesses.FreeMassShare, isLog: false),
            Coordinate.Of(guesses.MassExponent, isLog: false),
            Coordinate.Of(HandleGuess, isLog: false),
            new(0.0, test.Errors.LevelRad, false, -0.5, 0.5),
            new(1.0, test.Errors.WeightShare, false, 0.5, 2.0),
        ];
        double first = FirstStiffness();
        _coordinates[Stiffness] = new(Math.Log(first), 1.0, true, first / Farthest, first * Farthest, IsFree: true);
        Readings = [.. All()];
    }

    /// <summary>What was measured.</summary>
    public IReadOnlyList<Reading> Readings { get; }

    /// <summary>How well they are read.</summary>
    public BendErrors Errors => _test.Errors;

    /// <summary>A number of the fit.</summary>
    public Coordinate this[int number] => _coordinates[number];

    /// <summary>The rod for a set of numbers.</summary>
    public BendState At(ReadOnlySpan<double> z)
    {
        double[] x = new double[Count];
        for (int i = 0; i < Count; i++)
        {
            x[i] = _coordinates[i].At(z[i]);
        }

        return new(_test, x);
    }

    // Small bends about the middle of the guesses: from there least squares find their way.
    private double FirstStiffness()
    {
        double[] z = new double[Count];
        BendReading row = _test.Rows.Where(r => r is { LoadN: > 0.0, DropM: > 0.0 }).MinBy(r => r.DropM)
            ?? throw new ArgumentException("needs at least one drop of the tip under a weight", nameof(_test));
        return row.LoadN * RodPower.Flexibility(At(z).Chain) / row.DropM!.Value;
    }

    private IEnumerable<Reading> All()
    {
        BendErrors errors = _test.Errors;
        for (int i = 0; i < _test.Rows.Count; i++)
        {
            BendReading row = _test.Rows[i];

            // Without a weight a drop from the tip's own place is nothing: it says nothing.
            if (row.DropM is double drop && (row.LoadN > 0.0 || _test.IsFromLevel))
            {
                yield return new(ReadingKind.Drop, i, row.LoadN, drop, errors.DropM);
            }

            if (row.MiddleDropM is double middle && (row.LoadN > 0.0 || _test.IsFromLevel))
            {
                yield return new(ReadingKind.MiddleDrop, i, row.LoadN, middle, errors.DropM);
            }

            if (row.TipAngleRad is double angle)
            {
                yield return new(ReadingKind.Angle, i, row.LoadN, angle, errors.AngleRad);
            }
        }

        for (int i = 0; i < _test.Bounces.Count; i++)
        {
            yield return new(ReadingKind.Bounce, i, _test.Bounces[i].TipMassKg * Physics.GravityMS2, _test.Bounces[i].FrequencyHz, errors.BounceHz);
        }

        if (_test.BalanceM is double balance)
        {
            yield return new(ReadingKind.Balance, 0, 0.0, balance, errors.BalanceM);
        }

        if (_test.MassKg is double mass)
        {
            yield return new(ReadingKind.Mass, 0, 0.0, mass, errors.MassKg);
        }
    }
}
