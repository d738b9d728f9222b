using MathNet.Numerics.LinearAlgebra;

namespace LureSim.Model.Rods;

/// <summary>Solves for the modes of the straight chain, clamped at the hand.</summary>
public static class RodModes
{
    /// <summary>All modes of a rod, slowest first.</summary>
    /// <param name="spec">The rod.</param>
    /// <exception cref="ArgumentException">A number of the rod is out of range.</exception>
    /// <exception cref="ModelException">No stiffness fulfils the bend test.</exception>
    public static RodModeSet Compute(RodSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        return Compute(RodChain.Build(spec), spec.DampingRatio);
    }

    /// <summary>All modes of a chain, slowest first.</summary>
    /// <param name="chain">The rod.</param>
    /// <param name="dampingRatio">zeta of every mode, 0 to 1.</param>
    /// <exception cref="ArgumentException">The damping ratio is out of range.</exception>
    public static RodModeSet Compute(RodChain chain, double dampingRatio)
    {
        ArgumentNullException.ThrowIfNull(chain);
        if (!(dampingRatio >= 0.0 && dampingRatio <= 1.0))
        {
            throw new ArgumentOutOfRangeException(nameof(dampingRatio), dampingRatio, "must be from 0 to 1");
        }

        int n = chain.Links;
        Matrix<double> inertia = Matrix<double>.Build.Dense(n, n, (i, j) => chain.InertiaKgM2[i + 1, j + 1]);

        // The inverse problem (compliance times inertia) keeps the digits of the slow modes, which matter most.
        Matrix<double> lower = inertia.Cholesky().Factor;
        Matrix<double> reduced = lower.Transpose() * SpringInverse(chain) * lower;
        var evd = ((reduced + reduced.Transpose()) * 0.5).Evd(Symmetricity.Symmetric);
        Matrix<double> shapes = lower.Transpose().Solve(evd.EigenVectors);
        double[] mass = new double[n], stiffness = new double[n], damping = new double[n], driven = new double[n];
        for (int k = 0; k < n; k++)
        {
            int column = n - 1 - k;
            double tip = 0.0, moment = 0.0;
            for (int i = 1; i <= n; i++)
            {
                tip += chain.LengthM[i] * shapes[i - 1, column];
                moment += RigidMoment(chain, i) * shapes[i - 1, column];
            }

            double omega = 1.0 / Math.Sqrt(evd.EigenValues[column].Real);
            mass[k] = 1.0 / (tip * tip);
            stiffness[k] = mass[k] * omega * omega;
            damping[k] = 2.0 * dampingRatio * omega * mass[k];
            driven[k] = moment / (tip * chain.FreeLengthM);
        }

        return new RodModeSet(chain.FreeLengthM, mass, stiffness, damping, driven, RigidInertia(chain));
    }

    // The moment integral of m s c_i ds: what a unit rotation of the straight rod puts into link i.
    private static double RigidMoment(RodChain chain, int i)
    {
        double sum = 0.0;
        for (int j = 0; j <= chain.Links; j++)
        {
            sum += chain.InertiaKgM2[i, j];
        }

        return sum;
    }

    private static double RigidInertia(RodChain chain)
    {
        double sum = 0.0;
        for (int i = 0; i <= chain.Links; i++)
        {
            sum += RigidMoment(chain, i);
        }

        return sum;
    }

    // Angle of link i under a unit torque on link j: the springs that both share.
    private static Matrix<double> SpringInverse(RodChain chain)
    {
        double[] shared = new double[chain.Links];
        double sum = 0.0;
        for (int j = 0; j < chain.Links; j++)
        {
            sum += 1.0 / chain.SpringNm[j];
            shared[j] = sum;
        }

        return Matrix<double>.Build.Dense(chain.Links, chain.Links, (i, j) => shared[Math.Min(i, j)]);
    }
}
