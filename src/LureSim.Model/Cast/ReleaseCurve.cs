using MathNet.Numerics.Interpolation;

namespace LureSim.Model.Cast;

/// <summary>Releases between those that were tried: a cubic that rises and falls only where the points do (Fritsch and Carlson 1980, SIAM J. Numer. Anal.
/// 17:238, from memory), since straight lines cut the top off; loops by straight lines. Beyond the points their ends hold.</summary>
internal sealed class ReleaseCurve
{
    // The cubic needs this many points.
    private const int Fewest = 3;

    private readonly ReleasePoint[] _points;
    private readonly CubicSpline? _change;

    /// <summary>Through points, sorted by time, at least one.</summary>
    public ReleaseCurve(IReadOnlyList<ReleasePoint> points)
    {
        _points = [.. points];
        _change = _points.Length < Fewest ? null : CubicSpline.InterpolatePchipSorted([.. _points.Select(p => p.DelayS)], [.. _points.Select(p => p.ChangeM)]);
    }

    /// <summary>The release so much later, s.</summary>
    public ReleasePoint At(double delayS)
    {
        double inside = Math.Clamp(delayS, _points[0].DelayS, _points[^1].DelayS);
        int to = Math.Min(Array.FindIndex(_points, p => p.DelayS >= inside), _points.Length - 1), from = Math.Max(0, to - 1);
        double width = _points[to].DelayS - _points[from].DelayS, share = width > 0.0 ? (inside - _points[from].DelayS) / width : 0.0;
        double Straight(double a, double b) => a + (share * (b - a));
        return new(
            delayS, _change?.Interpolate(inside) ?? Straight(_points[from].ChangeM, _points[to].ChangeM), Straight(_points[from].Loops, _points[to].Loops));
    }
}
