namespace LureSim.Model.Lures;

/// <summary>A body that can be cut by the water surface, section by section.</summary>
/// <remarks>
/// Body axes: origin at the middle of the length on the axis, x toward the nose, y to the left, z toward the back.
/// Sections stand perpendicular to x.
/// </remarks>
public interface IHull
{
    /// <summary>L, m; sections run from -L/2 (tail) to +L/2 (nose).</summary>
    public double LengthM { get; }

    /// <summary>The part of the section at x that lies under water: all points with ny y + nz z &lt; d.</summary>
    /// <param name="x">Position along the axis, m, -L/2 to L/2.</param>
    /// <param name="ny">y of the unit normal that points out of the water.</param>
    /// <param name="nz">z of the same normal.</param>
    /// <param name="d">Distance of the water line from the axis along that normal, m.</param>
    public SectionCut Cut(double x, double ny, double nz, double d);

    /// <summary>How the section at x meets the water; cheaper than <see cref="Cut"/>.</summary>
    /// <param name="x">Position along the axis, m, -L/2 to L/2.</param>
    /// <param name="ny">y of the unit normal that points out of the water.</param>
    /// <param name="nz">z of the same normal.</param>
    /// <param name="d">Distance of the water line from the axis along that normal, m.</param>
    public Wetting WettingAt(double x, double ny, double nz, double d) => Cut(x, ny, nz, d).Wetting;

    /// <summary>Where the state of the sections is looked at first, tail to nose.</summary>
    internal double[] PieceNodes => HullPieces.NodesOf(LengthM);

    /// <summary><see cref="WettingAt"/> at one of <see cref="PieceNodes"/>.</summary>
    internal Wetting WettingAtNode(int node, double ny, double nz, double d) => WettingAt(PieceNodes[node], ny, nz, d);
}
