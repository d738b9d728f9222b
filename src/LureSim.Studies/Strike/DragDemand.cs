using LureSim.Model.Assembly;
using LureSim.Model.Strike;

namespace LureSim.Studies.Strike;

/// <summary>What a drag must do with one reading of the thresholds: set all points, and let nothing give in the strike or at the boat.</summary>
internal sealed class DragDemand
{
    private readonly Setup _setup;
    private readonly StrikeTask _task;
    private readonly (double DragN, WeakPlace Place) _boat;

    /// <summary>Takes the thresholds of a set-up.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Strike.</param>
    public DragDemand(Setup setup, StrikeTask task)
    {
        (_setup, _task) = (setup, task);
        _boat = BoatPull.Limit(setup, task);
    }

    /// <summary>Largest pull on the hook over the one that sets all points.</summary>
    /// <param name="p">Strike.</param>
    public double SetShare(DragPoint p) => p.HookForceN / _setup.Hook.SettingN;

    /// <summary>Load over strength of the place with the least margin.</summary>
    /// <param name="p">Strike.</param>
    public double HarmShare(DragPoint p) => 1.0 / Weakest(p).Ratio;

    /// <summary>The window between strikes, straight lines between them.</summary>
    /// <param name="points">Strikes, rising drag, at least one; the last one with the drag shut.</param>
    public DragRange Range(IReadOnlyList<DragPoint> points)
    {
        double locked = points[^1].DragN;
        double? low = Crossing(points, SetShare)?.DragN;
        (double DragN, DragPoint Above)? strike = Crossing(points, HarmShare);
        if (strike is not null && strike.Value.DragN <= _boat.DragN)
        {
            bool always = strike.Value.Above == points[0];
            return new(low, always ? null : strike.Value.DragN, Weakest(strike.Value.Above).Place, DragCase.Strike);
        }

        return _boat.DragN < locked ? new(low, _boat.DragN, _boat.Place, DragCase.Boat) : new(low, locked, null, DragCase.Strike);
    }

    // Where a share first comes to 1, and the strike above it.
    internal static (double DragN, DragPoint Above)? Crossing(IReadOnlyList<DragPoint> points, Func<DragPoint, double> share)
    {
        int i = Bracket(points, share);
        if (i < 0)
        {
            return null;
        }

        if (i == 0)
        {
            return (points[0].DragN, points[0]);
        }

        double below = share(points[i - 1]), above = share(points[i]), part = (1.0 - below) / (above - below);
        return (points[i - 1].DragN + (part * (points[i].DragN - points[i - 1].DragN)), points[i]);
    }

    /// <summary>First strike whose share is at least 1; -1 where none is.</summary>
    /// <param name="points">Strikes, rising drag.</param>
    /// <param name="share">Share.</param>
    public static int Bracket(IReadOnlyList<DragPoint> points, Func<DragPoint, double> share) => points.ToList().FindIndex(p => share(p) >= 1.0);

    private Margin Weakest(DragPoint p) => WeakPlaces.Margins(_setup, _task, new(p.HookForceN, p.TipForceN, p.RodUse))[0];
}
