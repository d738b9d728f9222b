namespace LureSim.Model.Lures.Free;

/// <summary>
/// Sections of a hull at nodes along its axis, bunched toward the ends (x = -(L/2) cos theta), and the strips between them. Added mass and drag
/// are sums over nodes. A strip counts for the volume as an elliptic cylinder with the volume and centre of its piece of hull. Body axes of
/// <see cref="IHull"/>.
/// </summary>
internal sealed class HullNodes
{
    /// <summary>Nodes: a multiple of the lanes of every vector there is.</summary>
    public const int Count = 40;

    private const int QuadraturePoints = 9;

    /// <summary>Cuts a hull.</summary>
    /// <param name="hull">Hull.</param>
    public HullNodes(HullForm hull)
    {
        ArgumentNullException.ThrowIfNull(hull);
        for (int j = 0; j < Count; j++)
        {
            double x = -0.5 * hull.LengthM * Math.Cos(Math.PI * j / (Count - 1));
            HullSection s = hull.SectionAt(x);
            X[j] = x;
            Breadth2[j] = s.HalfBreadthM * s.HalfBreadthM;
            Height2[j] = s.HalfHeightM * s.HalfHeightM;
            Size[j] = Math.Sqrt(Breadth2[j] * Height2[j]);
            Centre[j] = s.CentreZM;
        }

        for (int j = 0; j < Count; j++)
        {
            Width[j] = 0.5 * hull.LengthM * Weight(j);
        }

        for (int j = 0; j + 1 < Count; j++)
        {
            SetStrip(hull, j);
        }

        IsRound = !Array.Exists(Centre, z => z != 0.0) && Breadth2.AsSpan().SequenceEqual(Height2);
    }

    /// <summary>Positions along the axis, tail to nose, m.</summary>
    public double[] X { get; } = new double[Count];

    /// <summary>b^2, m2.</summary>
    public double[] Breadth2 { get; } = new double[Count];

    /// <summary>c^2, m2.</summary>
    public double[] Height2 { get; } = new double[Count];

    /// <summary>b c, m2: the area over pi.</summary>
    public double[] Size { get; } = new double[Count];

    /// <summary>Height of the section's centre over the axis, m.</summary>
    public double[] Centre { get; } = new double[Count];

    /// <summary>Length of axis that a node stands for, m: Clenshaw and Curtis 1960, so that a sum is exact where a section is a polynomial of x.</summary>
    public double[] Width { get; } = new double[Count];

    /// <summary>Strip j lies between nodes j and j + 1: integral of b c, m3.</summary>
    public double[] StripSize { get; } = new double[Count];

    /// <summary>Centre of its volume, m.</summary>
    public double[] StripX { get; } = new double[Count];

    /// <summary>Length of the strip, m.</summary>
    public double[] StripWidth { get; } = new double[Count];

    /// <summary>b^2 for which the strip on its side has the waterplane of its piece: integrals of b c over c, squared, m2.</summary>
    public double[] StripBreadth2 { get; } = new double[Count];

    /// <summary>c^2 for which it has it on its belly: integrals of b c over b, squared, m2.</summary>
    public double[] StripHeight2 { get; } = new double[Count];

    /// <summary>Mean of the section's centre weighted by b c, m.</summary>
    public double[] StripCentre { get; } = new double[Count];

    /// <summary>True when all sections are circles about the axis: rolling changes nothing.</summary>
    public bool IsRound { get; }

    // On -1 to 1, at x = -cos theta, an odd number of intervals (Waldvogel 2006, BIT 46:195).
    private static double Weight(int j)
    {
        const int intervals = Count - 1;
        double sum = 0.0;
        for (int k = 1; k <= intervals / 2; k++)
        {
            sum += 2.0 / ((4.0 * k * k) - 1.0) * Math.Cos(2.0 * k * j * Math.PI / intervals);
        }

        return (j == 0 || j == intervals ? 1.0 : 2.0) / intervals * (1.0 - sum);
    }

    private void SetStrip(HullForm hull, int j)
    {
        double width = X[j + 1] - X[j], middle = 0.5 * (X[j] + X[j + 1]);
        StripRule rule = StripRule.Of(QuadraturePoints);
        double size = 0.0, moment = 0.0, breadth = 0.0, height = 0.0, centre = 0.0;
        for (int i = 0; i < QuadraturePoints; i++)
        {
            double off = 0.5 * width * rule.Node[i];
            HullSection s = hull.SectionAt(middle + off);
            double length = 0.5 * width * rule.Weight[i], w = length * s.HalfBreadthM * s.HalfHeightM;
            size += w;
            moment += w * off;
            breadth += length * s.HalfBreadthM;
            height += length * s.HalfHeightM;
            centre += w * s.CentreZM;
        }

        double per = size > 0.0 ? 1.0 / size : 0.0;
        (StripX[j], StripWidth[j], StripSize[j], StripCentre[j]) = (middle + (per * moment), width, size, per * centre);
        (StripBreadth2[j], StripHeight2[j]) = (Squared(size, height), Squared(size, breadth));
    }

    private static double Squared(double size, double width) => width > 0.0 ? size * size / (width * width) : 0.0;
}
