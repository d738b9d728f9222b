using MathNet.Numerics.LinearAlgebra;

namespace LureSim.Model.Lures.Free;

/// <summary>
/// The end corrections of the equal spheroid (k2 moving across, J turning, exact over strip theory) put into the sections: a factor
/// k(x) = k0 + k1 s + k2 s^2, s = 2x/L, so that with all sections in the water alike mass, coupling and inertia are k2, k2 and J times those of the
/// strips. It belongs to the hull, not to the place where the hull floats: a tail-down hull keeps its nose when it is towed flat. Held at 0 or more,
/// which only touches the last few per cent of the length of very stubby hulls.
/// </summary>
internal static class EndCorrection
{
    /// <summary>k, node by node.</summary>
    /// <param name="nodes">Sections.</param>
    /// <param name="lengthM">L, m.</param>
    /// <param name="slenderness">Of the equal spheroid, see <see cref="WettedForm.SlendernessAcross"/>.</param>
    public static double[] Of(HullNodes nodes, double lengthM, double slenderness)
    {
        ArgumentNullException.ThrowIfNull(nodes);
        var m = new double[5];
        for (int j = 0; j < HullNodes.Count; j++)
        {
            double part = nodes.Size[j] * nodes.Width[j], s = 2.0 * nodes.X[j] / lengthM;
            for (int power = 0; power < m.Length; power++)
            {
                m[power] += part * Math.Pow(s, power);
            }
        }

        // J belongs to turning about the centre of the sections; the way of that centre is moving across, with k2.
        double k2 = Spheroid.Sway(slenderness), turning = Spheroid.YawOverStrips(slenderness), centre = m[1] * m[1] / m[0];
        Vector<double> k = Matrix<double>.Build.DenseOfArray(new[,] { { m[0], m[1], m[2] }, { m[1], m[2], m[3] }, { m[2], m[3], m[4] } })
            .Solve(Vector<double>.Build.Dense([k2 * m[0], k2 * m[1], (turning * (m[2] - centre)) + (k2 * centre)]));
        return Array.ConvertAll(nodes.X, x =>
        {
            double s = 2.0 * x / lengthM;
            return Math.Max(0.0, k[0] + (s * (k[1] + (s * k[2]))));
        });
    }
}
