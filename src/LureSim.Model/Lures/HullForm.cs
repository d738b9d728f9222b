namespace LureSim.Model.Lures;

/// <summary>A hull of elliptic sections along a straight axis; see <see cref="IHull"/> for the axes.</summary>
public abstract class HullForm : IHull
{
    /// <summary>Panels along the hull for surface and solid volume.</summary>
    internal const int Panels = 201;

    private NodeTable? _nodes;

    /// <summary>Creates the form.</summary>
    /// <param name="lengthM">L, m, above 0.</param>
    protected HullForm(double lengthM) => LengthM = Require.Positive(lengthM);

    /// <inheritdoc/>
    public double LengthM { get; }

    /// <summary>The section at x.</summary>
    /// <param name="x">Position along the axis, m; outside the hull the end section is returned.</param>
    public abstract HullSection SectionAt(double x);

    double[] IHull.PieceNodes => Nodes.XM;

    // Sections at fixed places, asked for thousands of times in one search for an attitude.
    private NodeTable Nodes => _nodes ??= MakeNodes();

    /// <inheritdoc/>
    public SectionCut Cut(double x, double ny, double nz, double d) => SectionAt(x).Cut(ny, nz, d);

    /// <inheritdoc/>
    public Wetting WettingAt(double x, double ny, double nz, double d) => Wetted(SectionAt(x), ny, nz, d);

    Wetting IHull.WettingAtNode(int node, double ny, double nz, double d) => Wetted(Nodes.Sections[node], ny, nz, d);

    /// <summary>Volume of the whole body, m3.</summary>
    /// <param name="strips">Strips along the hull.</param>
    public double VolumeM3(int strips = Panels)
    {
        StripRule rule = StripRule.Of(strips);
        double sum = 0.0;
        for (int i = 0; i < strips; i++)
        {
            sum += SectionAt(0.5 * LengthM * rule.Node[i]).AreaM2 * rule.Weight[i];
        }

        return 0.5 * LengthM * sum;
    }

    /// <summary>Area of the whole surface with flat ends, m2.</summary>
    /// <param name="panels">Panels along the hull.</param>
    public double SurfaceM2(int panels = Panels)
    {
        double sum = SectionAt(-0.5 * LengthM).AreaM2 + SectionAt(0.5 * LengthM).AreaM2;
        for (int i = 0; i < panels; i++)
        {
            HullPanel p = Panel(i, panels);
            sum += p.Section.PerimeterM * p.SlantM;
        }

        return sum;
    }

    /// <summary>
    /// Panel i of n. Panels are bunched toward the ends (x = -(L/2) cos theta) because blunt ends have a radius that
    /// grows with the root of the distance; in theta everything is smooth.
    /// </summary>
    /// <param name="i">0 (tail) to n - 1 (nose).</param>
    /// <param name="n">Number of panels.</param>
    internal HullPanel Panel(int i, int n)
    {
        double step = Math.PI / n;
        double half = 0.5 * LengthM;
        double x = -half * Math.Cos((i + 0.5) * step);
        double tailward = -half * Math.Cos(i * step);
        double noseward = -half * Math.Cos((i + 1) * step);
        double width = noseward - tailward;
        double rise = MeanRadius(noseward) - MeanRadius(tailward);
        return new HullPanel(x, width, Math.Sqrt((width * width) + (rise * rise)), SectionAt(x));
    }

    private static Wetting Wetted(HullSection section, double ny, double nz, double d)
    {
        double t = section.RelativeLevel(ny, nz, d);
        return t <= -1.0 ? Wetting.Dry : t >= 1.0 ? Wetting.Wet : Wetting.Partial;
    }

    private NodeTable MakeNodes()
    {
        double[] x = HullPieces.NodesOf(LengthM);
        return new(x, Array.ConvertAll(x, SectionAt));
    }

    private double MeanRadius(double x) => SectionAt(x).PerimeterM / (2.0 * Math.PI);

    private sealed record NodeTable(double[] XM, HullSection[] Sections);
}

/// <summary>A slice of the hull.</summary>
/// <param name="XM">Position of its middle, m.</param>
/// <param name="WidthM">Length along the axis, m.</param>
/// <param name="SlantM">Length along the surface, from the change of perimeter / 2 pi, m.</param>
/// <param name="Section">Section at the middle.</param>
internal readonly record struct HullPanel(double XM, double WidthM, double SlantM, HullSection Section);
