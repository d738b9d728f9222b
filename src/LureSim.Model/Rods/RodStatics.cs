namespace LureSim.Model.Rods;

/// <summary>Static shape of a rod bent by a load at its tip and, if wanted, by its own weight. Large deflections.</summary>
/// <param name="AngleRad">theta_i, absolute link angles, rad, i = 0..n; link 0 is the butt.</param>
/// <param name="TipXM">Tip from the hand along x, m.</param>
/// <param name="TipYM">Tip from the hand along y (up), m.</param>
/// <param name="ButtMomentNm">Moment that the hand must hold, counter-clockwise positive, N m.</param>
internal sealed record RodShape(ValueList<double> AngleRad, double TipXM, double TipYM, double ButtMomentNm)
{
    /// <summary>Angle of the last link against the butt, rad.</summary>
    public double TipAngleRad => AngleRad[^1] - AngleRad[0];

    /// <summary>The same link angles from the y axis, toward x positive, as <see cref="ChainMotion"/> counts them, rad.</summary>
    public double[] FromUpright() => [.. AngleRad.Select(angle => (0.5 * Math.PI) - angle)];

    /// <summary>The moment that holds it, turning toward x positive, N m.</summary>
    public double HoldingNm => -ButtMomentNm;
}

/// <summary>
/// Equilibrium of the rod chain: Newton's method on the potential, whose Hessian is tridiagonal in the link angles.
/// </summary>
internal static class RodStatics
{
    private const int MaxIterations = 200;

    // Newton converges quadratically: after a step this small the shape is right to round-off.
    private const double StepToleranceRad = 1e-10;

    /// <summary>Finds the shape under a dead load (its direction stays fixed in space).</summary>
    /// <param name="chain">The rod.</param>
    /// <param name="buttAngleRad">Angle of the butt over the x axis, rad.</param>
    /// <param name="forceXN">Tip load along x, N.</param>
    /// <param name="forceYN">Tip load along y (up), N.</param>
    /// <param name="gravityMS2">g acting along -y on the rod's own mass, m/s2; 0 leaves the weight out.</param>
    /// <exception cref="ArgumentException">A load is not finite.</exception>
    /// <exception cref="ModelException">Newton's method found no stable shape.</exception>
    public static RodShape Solve(
        RodChain chain, double buttAngleRad, double forceXN, double forceYN, double gravityMS2 = 0.0)
    {
        ArgumentNullException.ThrowIfNull(chain);
        if (!double.IsFinite(buttAngleRad + forceXN + forceYN + gravityMS2))
        {
            throw new ArgumentOutOfRangeException(nameof(forceXN), "angle, load and gravity must be finite");
        }

        double[] angle = new double[chain.Links + 1];
        Array.Fill(angle, buttAngleRad);
        var newton = new Newton(chain, forceXN, forceYN, gravityMS2);
        for (int i = 0; i < MaxIterations; i++)
        {
            if (newton.Step(angle) <= StepToleranceRad)
            {
                return Shape(chain, angle, newton.LinkTorque(angle, 0));
            }
        }

        throw new ModelException("The rod's static shape did not converge: the load is at or beyond buckling.", 0.0);
    }

    private static RodShape Shape(RodChain chain, double[] angle, double loadOnLink0)
    {
        (double x, double y) = chain.Tip(angle);
        return new RodShape(ValueList.Own(angle), x, y, -loadOnLink0 - (chain.SpringNm[0] * (angle[1] - angle[0])));
    }

    /// <summary>Damped Newton steps with the Hessian pushed positive where the load makes it indefinite.</summary>
    private sealed class Newton(RodChain chain, double forceX, double forceY, double gravity)
    {
        private readonly double[] _diagonal = new double[chain.Links + 1];
        private readonly double[] _step = new double[chain.Links + 1];
        private readonly double[] _trial = new double[chain.Links + 1];

        /// <summary>Torque of load and weight on link i, N m.</summary>
        public double LinkTorque(double[] angle, int i)
        {
            (double sin, double cos) = Math.SinCos(angle[i]);
            double up = (chain.LengthM[i] * forceY) - (gravity * chain.FirstMomentKgM[i]);
            return (up * cos) - (chain.LengthM[i] * forceX * sin);
        }

        /// <summary>Moves the angles one step; returns the largest change, rad.</summary>
        public double Step(double[] angle)
        {
            double shift = 0.0;
            while (!Direction(angle, shift))
            {
                shift = Math.Max(4.0 * shift, 1e-8 * chain.SpringNm[^1]);
            }

            double energy = Energy(angle), largest = 0.0;
            for (int i = 1; i <= chain.Links; i++)
            {
                largest = Math.Max(largest, Math.Abs(_step[i]));
            }

            // No link may turn by more than half a radian at once, or the search jumps to another branch.
            double factor = Math.Min(1.0, 0.5 / Math.Max(largest, 1e-300));
            Try(angle, factor);

            // Below a microradian the energy's round-off hides the descent; there the plain step is safe.
            while (factor * largest > 1e-6 && !(Energy(_trial) <= energy))
            {
                factor *= 0.5;
                Try(angle, factor);
            }

            _trial.CopyTo(angle, 0);
            return factor * largest;
        }

        private void Try(double[] angle, double factor)
        {
            for (int i = 0; i <= chain.Links; i++)
            {
                _trial[i] = angle[i] + (factor * _step[i]);
            }
        }

        private double Energy(double[] angle)
        {
            double sum = chain.SpringEnergyJ(angle);
            for (int i = 1; i <= chain.Links; i++)
            {
                (double sin, double cos) = Math.SinCos(angle[i]);
                sum -= chain.LengthM[i] * ((forceX * cos) + (forceY * sin));
                sum += gravity * chain.FirstMomentKgM[i] * sin;
            }

            return sum;
        }

        // Thomas elimination of Hessian * step = torque; false when a pivot is not positive.
        private bool Direction(double[] angle, double shift)
        {
            int n = chain.Links;
            _step[0] = 0.0;
            for (int i = 1; i <= n; i++)
            {
                double outer = i < n ? chain.SpringNm[i] : 0.0;
                (double sin, double cos) = Math.SinCos(angle[i]);
                double up = (chain.LengthM[i] * forceY) - (gravity * chain.FirstMomentKgM[i]);
                double inner = chain.SpringNm[i - 1];
                _diagonal[i] = inner + outer + (up * sin) + (chain.LengthM[i] * forceX * cos) + shift;
                _step[i] = (up * cos) - (chain.LengthM[i] * forceX * sin) - (inner * (angle[i] - angle[i - 1]));
                _step[i] += outer > 0.0 ? outer * (angle[i + 1] - angle[i]) : 0.0;
                if (i > 1)
                {
                    double ratio = inner / _diagonal[i - 1];
                    _diagonal[i] -= ratio * inner;
                    _step[i] += ratio * _step[i - 1];
                }

                if (!(_diagonal[i] > 0.0))
                {
                    return false;
                }
            }

            _step[n] /= _diagonal[n];
            for (int i = n - 1; i >= 1; i--)
            {
                _step[i] = (_step[i] + (chain.SpringNm[i] * _step[i + 1])) / _diagonal[i];
            }

            return true;
        }
    }
}
