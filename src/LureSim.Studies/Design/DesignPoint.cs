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
/// <param name="Margin">Walk margin; null where it was not asked for or does not exist.</param>
/// <param name="Word">What becomes of it.</param>
/// <param name="Reason">Why it is refused or sinks; null where it floats.</param>
public sealed record DesignPoint(LureSpec Lure, TrimPoint? Trim, TowBalance? Tow, MarginResult? Margin, FloatWord Word, string? Reason = null)
{
    private const double Degree = Math.PI / 180.0;

    // Behind its hand a lure swings in at U / l, whatever its hull: within this share of it a root is that one.
    private const double SwingInShare = 0.2;

    /// <summary>Trim, nose up positive, deg; null where it does not float.</summary>
    public double? TrimDeg => Trim?.Rest.TrimRad / Degree;

    /// <summary>Back amidships over the water, m.</summary>
    public double? FreeboardM => Trim?.FreeboardM;

    /// <summary>GM across, m: above 0 it stands up by itself.</summary>
    public double? GmM => Trim?.Rest.GmTransverseM;

    /// <summary>
    /// Growth of an error of heading in the straight tow, 1/s: above 0 the tow is left, below 0 it is kept. The least steady root but the one in which every lure swings
    /// in behind its hand, -U / l.
    /// </summary>
    public double? SheerPerS => SheerRoot?.GrowthPerS;

    /// <summary>The root of <see cref="SheerPerS"/>.</summary>
    public TowMode? SheerRoot { get; private init; }

    /// <summary>chi less its critical value: above 0 it comes straight on a tight line. Where no value up to the largest tried keeps the tow, chi less that largest one.</summary>
    public double? SheddingMargin => Margin is null ? null : Margin.SheddingMargin ?? (Lure.SternShedding - MarginRun.MostShedding);

    /// <summary>Turn of the heading at one pull, deg.</summary>
    public double? PullTurnDeg => Margin?.Pull.TurnDeg;

    /// <summary>Glide across the line at one pull, m.</summary>
    public double? PullGlideM => Margin?.Pull.GlideM;

    /// <summary>Lays a lure on the water, and tows it if asked to.</summary>
    /// <param name="lure">Lure; one that no model takes is refused with the reason.</param>
    /// <param name="water">Water.</param>
    /// <param name="tow">Straight tow to look at; null: none.</param>
    public static DesignPoint Of(LureSpec lure, WaterState water, MarginTask? tow = null) =>
        Guarded(lure, water, () => tow is null ? (Trimming.Rest(lure, water), null, null) : Towed(MarginRun.Towed(lure, water, tow)), tow);

    /// <summary>The same with the whole walk margin, ten times as dear.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="water">Water.</param>
    /// <param name="task">Tow and pull.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static DesignPoint Whole(LureSpec lure, WaterState water, MarginTask task, CancellationToken stop) => Guarded(
        lure,
        water,
        () =>
        {
            FloatReport rest = Trimming.Rest(lure, water);
            MarginResult? margin = MarginRun.Run(lure, water, task, stop).Result;
            return (rest, margin?.Tow, margin);
        },
        task);

    private static (FloatReport, TowBalance?, MarginResult?) Towed(RestAndTow found) => (found.Rest, found.Tow, null);

    private static DesignPoint Guarded(LureSpec lure, WaterState water, Func<(FloatReport Float, TowBalance? Tow, MarginResult? Margin)> run, MarginTask? task)
    {
        ArgumentNullException.ThrowIfNull(lure);
        ArgumentNullException.ThrowIfNull(water);
        try
        {
            (FloatReport rest, TowBalance? tow, MarginResult? margin) = run();
            var trim = TrimPoint.Of(lure, rest);
            return new(lure, trim, tow, margin, trim.IsUpright ? FloatWord.Floats : FloatWord.LiesOver) { SheerRoot = Sheer(tow, task) };
        }
        catch (Exception e) when (e is ArgumentException or ModelException)
        {
            return new(lure, null, null, null, Sinks(lure, water) ? FloatWord.Sinks : FloatWord.Refused, e.Message.Split('\n')[0]);
        }
    }

    private static TowMode? Sheer(TowBalance? tow, MarginTask? task)
    {
        if (tow is null || task is null)
        {
            return null;
        }

        double swingIn = task.SpeedMS / task.LineM;
        return tow.Modes.FirstOrDefault(m => m.SwingRadS != 0.0 || Math.Abs(m.GrowthPerS + swingIn) > SwingInShare * swingIn);
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
