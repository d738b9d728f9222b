using System.Globalization;
using LureSim.Model.Lures;

namespace LureSim.Scenarios.Outlines;

/// <summary>A body drawn from the side, and from above unless it is round.</summary>
/// <param name="side">From the side, nose to the right.</param>
/// <param name="top">From above, nose to the right; null for sections whose breadth follows their height.</param>
/// <param name="metresPerUnit">Scale of the drawing where it says its size; else null.</param>
internal sealed class DrawnBody(Contour side, Contour? top, double? metresPerUnit)
{
    /// <summary>Sections along the body; the error of the volume goes with their square.</summary>
    public const int Sections = 81;

    private const double MostUnlike = 0.02, MostBent = 0.1;

    /// <summary>Length that the drawing says, m, or null.</summary>
    public double? LengthM => metresPerUnit * side.Length;

    /// <summary>True when its breadth is drawn.</summary>
    public bool HasTop => top is not null;

    /// <summary>Whether the two views fit together: null, or why not.</summary>
    public string? Wrong()
    {
        if (top is null)
        {
            return null;
        }

        if (Math.Abs((top.Length / side.Length) - 1.0) > MostUnlike)
        {
            return string.Create(CultureInfo.InvariantCulture, $"\"top\" is {top.Length:G4} units long, \"side\" {side.Length:G4}; both show the same body");
        }

        double breadth = Places(Sections).Max(s => Height(top, s)), middle = Middle(top, 0.5);
        double bent = Places(Sections).Max(s => Math.Abs(Middle(top, s) - middle));
        return bent > MostBent * breadth ? "\"top\" is bent: left and right of a body are alike here" : null;
    }

    /// <summary>Stations from tail to nose; the axis runs through the tip of the nose.</summary>
    /// <param name="lengthM">Length, m.</param>
    /// <param name="breadthM">Largest breadth, m, where none is drawn; null: round.</param>
    /// <param name="count">Sections.</param>
    public List<HullStation> Stations(double lengthM, double? breadthM = null, int count = Sections)
    {
        double scale = lengthM / side.Length, nose = Middle(side, 1.0);
        double highest = Places(count).Max(s => Height(side, s));
        var stations = new List<HullStation>();
        foreach (double share in Places(count))
        {
            double height = Height(side, share);
            double breadth = top is not null ? scale * Height(top, share) : breadthM is double widest ? widest * height / highest : scale * height;
            stations.Add(new((share - 0.5) * lengthM, 0.5 * breadth, 0.5 * scale * height, scale * (Middle(side, share) - nose)));
        }

        return stations;
    }

    // Bunched toward the ends, where outlines are round; symmetric to the last bit.
    private static IEnumerable<double> Places(int count) => Enumerable.Range(0, count).Select(i => 0.5 - (0.5 * Math.Sin(0.5 * Math.PI * (count - 1 - (2 * i)) / (count - 1))));

    private static double Height(Contour view, double share)
    {
        (double low, double high) = view.Cut(share);
        return high - low;
    }

    private static double Middle(Contour view, double share)
    {
        (double low, double high) = view.Cut(share);
        return 0.5 * (low + high);
    }
}
