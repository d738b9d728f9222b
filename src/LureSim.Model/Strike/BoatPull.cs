using LureSim.Model.Assembly;
using LureSim.Model.Reels;
using LureSim.Model.Rods;

namespace LureSim.Model.Strike;

/// <summary>
/// A fish that surges at the boat: the line is too short to stretch and the spool is full, so nothing but the drag spares it. Before the drag slips it lets
/// through, at the tip and the hook, T = r F_slide e^(mu theta) with F_slide the drag's setting and theta the turn of the line along a rod held 45 deg over the
/// level above a line straight down, 135 deg. An upper bound: a fish need not have that pull, and hands that yield spare it more.
/// </summary>
public static class BoatPull
{
    private const double TurnRad = 0.75 * Math.PI;

    /// <summary>Pull over the drag's setting, r e^(mu theta).</summary>
    /// <param name="clutch">Drag.</param>
    public static double Factor(ClutchSpec clutch)
    {
        ArgumentNullException.ThrowIfNull(clutch);
        return clutch.StaticRatio * Math.Exp(clutch.RingFriction * TurnRad);
    }

    /// <summary>The loads when the drag is about to slip. The rod never gets more than the hands hold at full strength: they let it be drawn down first.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Strike: whose hands they are, and what the rod bears.</param>
    /// <exception cref="ArgumentException">A number of the rod is out of range.</exception>
    public static StrikeLoads Loads(Setup setup, StrikeTask task)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(task);
        double pull = Factor(setup.Reel.Clutch) * setup.Reel.DragN;
        return new(pull, pull, Math.Min(pull, HandsHoldN(setup, task)) / WeakPlaces.RodBearsN(setup, task));
    }

    /// <summary>The drag setting above which something gives, N, infinite where nothing does, and what.</summary>
    /// <param name="setup">Set-up; its drag is not read.</param>
    /// <param name="task">Strike.</param>
    /// <exception cref="ArgumentException">A number of the rod is out of range.</exception>
    public static (double DragN, WeakPlace Place) Limit(Setup setup, StrikeTask task)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(task);
        bool spared = HandsHoldN(setup, task) < WeakPlaces.RodBearsN(setup, task);
        Margin least = WeakPlaces.Margins(setup, task, new(1.0, 1.0, spared ? 0.0 : 1.0 / WeakPlaces.RodBearsN(setup, task)))[0];
        return (least.Ratio / Factor(setup.Reel.Clutch), least.Place);
    }

    // Pull straight down on the rod at 45 deg that all of the hands' torque holds.
    private static double HandsHoldN(Setup setup, StrikeTask task) =>
        RodHold.PullN(RodChain.Build(setup.Rod), 0.25 * Math.PI, 0.0, -1.0, task.Stroke.TorqueNm, Physics.GravityMS2);
}
