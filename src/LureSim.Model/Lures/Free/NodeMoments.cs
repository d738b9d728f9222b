namespace LureSim.Model.Lures.Free;

/// <summary>Sums over the nodes of a coefficient per metre: with x along the hull and s, the roll arm, about the axis.</summary>
/// <param name="S">Sum.</param>
/// <param name="X">Sum of x.</param>
/// <param name="XX">Sum of x^2.</param>
/// <param name="A">Sum of s.</param>
/// <param name="XA">Sum of x s.</param>
/// <param name="AA">Sum of s^2.</param>
internal readonly record struct NodeMoments(double S, double X, double XX, double A, double XA, double AA)
{
    /// <summary>The same with all arms times a factor.</summary>
    /// <param name="f">Factor.</param>
    public NodeMoments Scaled(double f) => this with { A = f * A, XA = f * XA, AA = f * f * AA };

    /// <summary>Difference.</summary>
    public static NodeMoments operator -(in NodeMoments a, in NodeMoments b) =>
        new(a.S - b.S, a.X - b.X, a.XX - b.XX, a.A - b.A, a.XA - b.XA, a.AA - b.AA);

    /// <summary>Adds sum of c g g' to the upper half of a matrix, six a row; g = (0, ey, ez, -s, -x ez, x ey).</summary>
    /// <param name="m">Matrix.</param>
    /// <param name="ey">y of the direction.</param>
    /// <param name="ez">z of the direction.</param>
    public void AddTo(double[] m, double ey, double ez)
    {
        double yy = ey * ey, yz = ey * ez, zz = ez * ez;
        m[7] += yy * S;
        m[8] += yz * S;
        m[9] -= ey * A;
        m[10] -= yz * X;
        m[11] += yy * X;
        m[14] += zz * S;
        m[15] -= ez * A;
        m[16] -= zz * X;
        m[17] += yz * X;
        m[21] += AA;
        m[22] += ez * XA;
        m[23] -= ey * XA;
        m[28] += zz * XX;
        m[29] -= yz * XX;
        m[35] += yy * XX;
    }
}
