namespace LureSim.Model.Lures;

/// <summary>
/// The nose as one oscillator, seen at the line tie. A vertical force F at the tie, d ahead of the centre of
/// flotation, sinks the hull by F/k_h and trims it by F d/k_t, so 1/k = 1/k_h + d^2/k_t. The mass is that of the same
/// shape of motion (Rayleigh), with heave and pitch added mass at high frequency.
/// </summary>
/// <param name="MassKg">Effective mass, kg.</param>
/// <param name="StiffnessNM">k, N/m.</param>
/// <param name="DampingNsM">2 zeta sqrt(k m), N s/m.</param>
internal sealed record NoseBob(double MassKg, double StiffnessNM, double DampingNsM)
{
    /// <summary>Reduces a floating lure.</summary>
    public static NoseBob Of(FloatingLure f, HullAddedMass added, double tieArmM)
    {
        double arm = tieArmM - f.FlotationXM;
        double sink = 1.0 / f.HeaveStiffnessNM;
        double turn = arm / f.TrimStiffnessNMRad;
        double atTie = sink + (arm * turn);
        double atG = sink - (f.FlotationXM * turn);
        double mass = f.Mass.MassKg + added.HeaveKg;
        double inertia = f.Mass.PitchInertiaKgM2 + added.PitchKgM2;
        double effective = ((mass * atG * atG) + (inertia * turn * turn)) / (atTie * atTie);
        return new NoseBob(effective, 1.0 / atTie, 2.0 * f.Spec.NoseDamping * Math.Sqrt(effective / atTie));
    }
}
