using LureSim.Model;
using LureSim.Model.Lures;
using LureSim.Model.Margin;
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

/// <summary>One lure of a design: how it floats, how a straight tow of it goes, how it answers a pull.</summary>
/// <param name="Lure">Lure.</param>
/// <param name="Trim">How it floats; null where it does not.</param>
/// <param name="Tow">Straight tow; null where it was not asked for or does not exist.</param>
/// <param name="CriticalShedding">Least chi from which the straight tow is kept; null where it is left whatever chi, or was not asked for.</param>
/// <param name="Margin">Walk margin; null where it was not asked for or does not exist.</param>
/// <param name="Word">What becomes of it.</param>
/// <param name="Reason">Why it is refused or sinks; null where it floats.</param>
public sealed record DesignPoint(LureSpec Lure, TrimPoint? Trim, TowBalance? Tow, double? CriticalShedding, MarginResult? Margin, FloatWord Word, string? Reason = null)
{
    private const double Degree = Math.PI / 180.0;

    // In a map the critical side force is known to 0.125 / 8.
    private const int MapHalvings = 3;

    /// <summary>Trim, nose up positive, deg; null where it does not float.</summary>
    public double? TrimDeg => Trim?.Rest.TrimRad / Degree;

    /// <summary>Back amidships over the water, m.</summary>
    public double? FreeboardM => Trim?.FreeboardM;

    /// <summary>GM across, m: above 0 it stands up by itself.</summary>
    public double? GmM => Trim?.Rest.GmTransverseM;

    /// <summary>Growth of the leading root of the straight tow, 1/s: above 0 the tow is left; a lure that keeps it comes in behind its hand at no more than -U / l.</summary>
    public double? GrowthPerS => Tow?.Modes[0].GrowthPerS;

    /// <summary>chi less its critical value: above 0 it comes straight on a tight line. Where no value up to the largest tried keeps the tow, chi less that largest one; null without a tow.</summary>
    public double? SheddingMargin => Tow is null ? null : Lure.SternShedding - (CriticalShedding ?? MarginRun.MostShedding);

    /// <summary>Turn of the heading at one pull, deg.</summary>
    public double? PullTurnDeg => Margin?.Pull.TurnDeg;

    /// <summary>Glide across the line at one pull, m.</summary>
    public double? PullGlideM => Margin?.Pull.GlideM;

    /// <summary>Lays a lure on the water, and tows it if asked to.</summary>
    /// <param name="lure">Lure; one that no model takes is refused with the reason.</param>
    /// <param name="water">Water.</param>
    /// <param name="tow">Straight tow to look at; null: none.</param>
    public static DesignPoint Of(LureSpec lure, WaterState water, MarginTask? tow = null) =>
        Guarded(lure, water, () => tow is null ? new(Trimming.Rest(lure, water), null) : MarginRun.Towed(lure, water, tow, MapHalvings));

    /// <summary>The same with the whole walk margin, ten times as dear.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="water">Water.</param>
    /// <param name="task">Tow and pull.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static DesignPoint Whole(LureSpec lure, WaterState water, MarginTask task, CancellationToken stop)
    {
        DesignPoint point = Of(lure, water);
        return point.Trim is null || MarginRun.Run(lure, water, task, stop).Result is not MarginResult margin
            ? point
            : point with { Tow = margin.Tow, CriticalShedding = margin.CriticalShedding, Margin = margin };
    }

    private static DesignPoint Guarded(LureSpec lure, WaterState water, Func<RestAndTow> run)
    {
        ArgumentNullException.ThrowIfNull(lure);
        ArgumentNullException.ThrowIfNull(water);
        try
        {
            RestAndTow found = run();
            var trim = TrimPoint.Of(lure, found.Rest);
            return new(lure, trim, found.Tow, found.CriticalShedding, null, trim.IsUpright ? FloatWord.Floats : FloatWord.LiesOver);
        }
        catch (Exception e) when (e is ArgumentException or ModelException)
        {
            return new(lure, null, null, null, null, Sinks(lure, water) ? FloatWord.Sinks : FloatWord.Refused, e.Message.Split('\n')[0]);
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
