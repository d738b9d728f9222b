using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Numerics;

namespace LureSim.Model.Trim;

/// <summary>How a lure floats, without its righting arms and its picture: one point of a search or of a map.</summary>
/// <param name="Lure">Lure.</param>
/// <param name="Rest">Attitude, drafts, centres, metacentric heights.</param>
/// <param name="DraftM">Deepest point of the hull under the water, m.</param>
/// <param name="FreeboardM">Back amidships over the water, m; negative when it is awash.</param>
public sealed record TrimPoint(LureSpec Lure, FloatReport Rest, double DraftM, double FreeboardM)
{
    private const int Places = 61;

    /// <summary>True when it stands up by itself.</summary>
    public bool IsUpright => Rest.HeelRad == 0.0;

    /// <summary>Floats a lure.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="water">Water.</param>
    /// <exception cref="ArgumentException">A value is out of range, or the lure is heavier than its water (it sinks).</exception>
    /// <exception cref="ModelException">No stable attitude was found.</exception>
    public static TrimPoint Of(LureSpec lure, WaterState water) => Of(lure, Trimming.Rest(lure, water));

    /// <summary>Of a lure that floats already: how deep, and how high its back stands.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="rest">How it lies.</param>
    public static TrimPoint Of(LureSpec lure, FloatReport rest)
    {
        ArgumentNullException.ThrowIfNull(rest);
        HullForm hull = HullShape.Create(lure);
        var level = new Attitude(0.0, rest.TrimRad, rest.HeelRad);
        Attitude a = level with { HeightM = rest.NoseHeightM - level.HeightOf(new Vec3(0.5 * hull.LengthM, 0.0, 0.0)) };
        double lowest = 0.0;
        for (int i = 0; i < Places; i++)
        {
            double x = -0.5 * hull.LengthM * Math.Cos(Math.PI * i / (Places - 1));
            HullSection s = hull.SectionAt(x);
            lowest = Math.Min(lowest, a.HeightOf(new Vec3(x, 0.0, s.CentreZM - s.HalfHeightM)));
        }

        return new(lure, rest, -lowest, a.HeightOf(HeldTrim.BackAmidships(hull)));
    }
}
