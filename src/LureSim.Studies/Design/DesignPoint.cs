using LureSim.Model;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Trim;

namespace LureSim.Studies.Design;

/// <summary>What becomes of a lure that is laid on the water.</summary>
public enum FloatWord
{
    /// <summary>It floats and stands up by itself.</summary>
    Floats,

    /// <summary>It floats, but lies over.</summary>
    LiesOver,

    /// <summary>It is heavier than the water that it can displace.</summary>
    Sinks,

    /// <summary>No such lure can be made, or no attitude was found; the reason says which.</summary>
    Refused,
}

/// <summary>One lure of a design: how it floats, and how a straight tow of it goes.</summary>
/// <param name="Lure">Lure.</param>
/// <param name="Trim">How it floats; null where it does not.</param>
/// <param name="Tow">Leading root of the straight tow; null where it was not asked for or does not exist.</param>
/// <param name="Word">What becomes of it.</param>
/// <param name="Reason">Why it is refused or sinks; null where it floats.</param>
public sealed record DesignPoint(LureSpec Lure, TrimPoint? Trim, TowLead? Tow, FloatWord Word, string? Reason = null)
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>Trim, nose up positive, deg; null where it does not float.</summary>
    public double? TrimDeg => Trim?.Rest.TrimRad / Degree;

    /// <summary>Back amidships over the water, m.</summary>
    public double? FreeboardM => Trim?.FreeboardM;

    /// <summary>GM across, m: above 0 it stands up by itself.</summary>
    public double? GmM => Trim?.Rest.GmTransverseM;

    /// <summary>Growth of the leading root of the straight tow, 1/s: above 0 it leaves the straight tow.</summary>
    public double? GrowthPerS => Tow?.GrowthPerS;

    /// <summary>Lays a lure on the water.</summary>
    /// <param name="lure">Lure; one that no model takes is refused with the reason.</param>
    /// <param name="water">Water.</param>
    /// <param name="tow">Looks at the straight tow; null: not asked for.</param>
    public static DesignPoint Of(LureSpec lure, WaterState water, TowLook? tow = null)
    {
        ArgumentNullException.ThrowIfNull(lure);
        ArgumentNullException.ThrowIfNull(water);
        try
        {
            TrimPoint trim = Trimming.Point(lure, water);
            return new(lure, trim, tow?.Invoke(lure, water), trim.IsUpright ? FloatWord.Floats : FloatWord.LiesOver);
        }
        catch (Exception e) when (e is ArgumentException or ModelException)
        {
            return new(lure, null, null, Sinks(lure, water) ? FloatWord.Sinks : FloatWord.Refused, e.Message.Split('\n')[0]);
        }
    }

    // A lure out of its ranges has no hull to ask.
    private static bool Sinks(LureSpec lure, WaterState water)
    {
        try
        {
            double most = water.DensityKgM3 * (HullShape.Create(lure).VolumeM3() + lure.Hooks.Sum(h => h.SteelVolumeM3));
            return lure.MassKg + lure.Hooks.Sum(h => h.MassKg) >= most;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }
}

/// <summary>Leading root of a straight tow.</summary>
/// <param name="GrowthPerS">Growth, 1/s: above 0 the lure leaves the straight tow, below 0 it comes back to it.</param>
/// <param name="SwingRadS">Swing, rad/s: 0 it goes off to one side, else it fishtails.</param>
public sealed record TowLead(double GrowthPerS, double SwingRadS);

/// <summary>Looks at the straight tow of a lure; null where it has none (it does not float, or the tow has no answer).</summary>
/// <param name="lure">Lure.</param>
/// <param name="water">Water.</param>
public delegate TowLead? TowLook(LureSpec lure, WaterState water);
