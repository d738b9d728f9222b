using LureSim.Model.Lures;

namespace LureSim.Model.Margin;

/// <summary>One way in which a straight tow is left or kept, from a root s = growth + i swing of its small motions.</summary>
/// <param name="GrowthPerS">Real part, 1/s: above 0 a small error grows e-fold in one over it, below 0 it dies so.</param>
/// <param name="SwingRadS">Imaginary part, rad/s: 0 to one side, else from side to side at that rate.</param>
public sealed record TowMode(double GrowthPerS, double SwingRadS)
{
    /// <summary>True when an error grows.</summary>
    public bool Leaves => GrowthPerS > 0.0;
}

/// <summary>The straight tow.</summary>
/// <param name="TrimRad">Trim at which the lure is towed, nose up positive, rad.</param>
/// <param name="NoseHeightM">Foremost point of the axis over the water, m.</param>
/// <param name="PullN">Tension of the line, N.</param>
/// <param name="Modes">All roots of the sideways motion (sway, roll, yaw), the least steady first; one of each conjugate pair.</param>
public sealed record TowBalance(double TrimRad, double NoseHeightM, double PullN, ValueList<TowMode> Modes);

/// <summary>What one pull does to a lure that lies at an angle to its line.</summary>
/// <param name="TurnDeg">How far the heading turns at most, toward the line and past it, deg.</param>
/// <param name="PastDeg">How far it points past the line to the other side, deg; negative where it falls short of it.</param>
/// <param name="TurnTimeS">When it points along the line, s from the start of the pull; null where it never does.</param>
/// <param name="GlideM">Way of the centre of gravity across the line within the time watched, m.</param>
/// <param name="AdvanceM">Way of it along the line, m.</param>
/// <param name="RollDeg">Largest roll from rest, deg.</param>
/// <param name="LowestNoseM">Lowest height of the foremost point of the axis over the water, m; negative under it.</param>
/// <param name="TimeS">Times of the trace, s.</param>
/// <param name="HeadingDeg">Heading off the line, deg.</param>
/// <param name="XM">Centre of gravity along the line, m.</param>
/// <param name="YM">Centre of gravity across it, m.</param>
public sealed record PullResponse(
    double TurnDeg, double PastDeg, double? TurnTimeS, double GlideM, double AdvanceM, double RollDeg, double LowestNoseM,
    ValueList<double> TimeS, ValueList<double> HeadingDeg, ValueList<double> XM, ValueList<double> YM);

/// <summary>How far a lure is from coming straight, and how it answers a pull.</summary>
/// <param name="Lure">Lure.</param>
/// <param name="Task">What was asked.</param>
/// <param name="RestTrimRad">Trim at rest, nose up positive, rad.</param>
/// <param name="Tow">Straight tow; null where there is none: towed so fast the lure finds no attitude on the water.</param>
/// <param name="CriticalShedding">Least chi (<see cref="LureSpec.SternShedding"/>) from which the straight tow is kept; 0 where it is kept without; null where it is left up to <see cref="MarginRun.MostShedding"/>.</param>
/// <param name="Pull">Answer to one pull.</param>
public sealed record MarginResult(LureSpec Lure, MarginTask Task, double RestTrimRad, TowBalance? Tow, double? CriticalShedding, PullResponse Pull)
{
    /// <summary>chi less its critical value: above 0 it comes straight on a tight line, below 0 it does not; null without a critical value.</summary>
    public double? SheddingMargin => CriticalShedding is double critical ? Lure.SternShedding - critical : null;

    /// <summary>Largest growth, 1/s; null without a straight tow.</summary>
    public double? GrowthPerS => Tow?.Modes[0].GrowthPerS;
}
