namespace LureSim.Model.Rods;

/// <summary>
/// Linear modes of the straight rod clamped in the hand, each with its displacement at the tip as coordinate q_k:
/// M_k q_k'' + C_k q_k' + K_k q_k = F - G_k L theta''. The tip stands at L theta + sum of q_k from the butt's rest line.
/// </summary>
/// <remarks>F is the force on the tip across the rod, theta the butt's angle, both positive to the same side.</remarks>
/// <param name="FreeLengthM">L, m.</param>
/// <param name="MassKg">M_k, modal mass seen at the tip, kg.</param>
/// <param name="StiffnessNM">K_k, N/m.</param>
/// <param name="DampingNsM">C_k = 2 zeta omega_k M_k, N s/m.</param>
/// <param name="BaseParticipationKg">G_k: turning the butt drives the mode with the force -G_k L theta'', kg.</param>
/// <param name="RigidInertiaKgM2">J, inertia of the straight free length about the hand, kg m2.</param>
public sealed record RodModeSet(
    double FreeLengthM,
    double[] MassKg,
    double[] StiffnessNM,
    double[] DampingNsM,
    double[] BaseParticipationKg,
    double RigidInertiaKgM2)
{
    /// <summary>Number of modes.</summary>
    public int Count => MassKg.Length;

    /// <summary>R_k = K_k G_k L / M_k, moment at the hand per tip displacement in mode k, N m/m.</summary>
    public double[] RootMomentPerTipDisplacementN { get; } = Enumerable.Range(0, MassKg.Length)
        .Select(k => StiffnessNM[k] * BaseParticipationKg[k] * FreeLengthM / MassKg[k]).ToArray();

    /// <summary>omega_k, rad/s.</summary>
    /// <param name="mode">k from 0.</param>
    public double AngularFrequency(int mode) => Math.Sqrt(StiffnessNM[mode] / MassKg[mode]);

    /// <summary>
    /// Torque the hand puts into the butt, N m, with the first modes given:
    /// tau = (J - sum (G_k L)^2/M_k) theta'' - sum R_k (q_k + (C_k/K_k) q_k') + F L (sum G_k/M_k - 1).
    /// </summary>
    /// <remarks>
    /// Derived: angular momentum about the hand with the modal equations put in for q_k''. The inertia of modes left out is
    /// kept as rigid; with every mode it falls toward nothing and the torque is the spring moment at the hand.
    /// </remarks>
    /// <param name="buttAcceleration">theta'', rad/s2.</param>
    /// <param name="q">q_k of the modes kept, m.</param>
    /// <param name="velocity">q_k', m/s, as many.</param>
    /// <param name="tipForceN">F, N.</param>
    public double HandTorque(double buttAcceleration, ReadOnlySpan<double> q, ReadOnlySpan<double> velocity, double tipForceN)
    {
        double inertia = RigidInertiaKgM2, lever = -FreeLengthM, moment = 0.0;
        for (int k = 0; k < q.Length; k++)
        {
            double share = BaseParticipationKg[k] * FreeLengthM / MassKg[k];
            inertia -= share * BaseParticipationKg[k] * FreeLengthM;
            lever += share;
            moment += share * ((StiffnessNM[k] * q[k]) + (DampingNsM[k] * velocity[k]));
        }

        return (inertia * buttAcceleration) - moment + (tipForceN * lever);
    }
}
