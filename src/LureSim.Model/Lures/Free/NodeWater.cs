namespace LureSim.Model.Lures.Free;

/// <summary>What the sections of a hull are for the water: constants of <see cref="NodeCut"/>.</summary>
/// <param name="Nodes">Sections.</param>
/// <param name="DensityKgM3">rho, kg/m3.</param>
/// <param name="GravityMS2">g, m/s2.</param>
/// <param name="LidFactor">Surface added mass in sway over its rigid-lid value; fades to 1 with depth.</param>
/// <param name="SurgeShare">k1: added mass of a section in surge over its displaced mass.</param>
/// <param name="DragKgM3">1/2 rho Cd eta, kg/m3: times speed and projected width.</param>
/// <param name="WaveDamping">zeta, damping ratio of heave by waves.</param>
internal sealed record NodeWater(
    HullNodes Nodes, double DensityKgM3, double GravityMS2, double LidFactor, double SurgeShare, double DragKgM3, double WaveDamping)
{
    /// <summary>rho times end correction of the added mass, node by node, kg/m3.</summary>
    public double[] AddedKgM3 { get; init; } = Filled(DensityKgM3);

    /// <summary>Added mass of a section moving across (k2 everywhere, as on a spheroid) over that with its end correction, node by node.</summary>
    public double[] EvenShare { get; init; } = Filled(1.0);

    private static double[] Filled(double value)
    {
        var values = new double[HullNodes.Count];
        Array.Fill(values, value);
        return values;
    }
}
