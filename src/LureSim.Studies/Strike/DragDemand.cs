using LureSim.Model.Assembly;
using LureSim.Model.Landing;
using LureSim.Model.Strike;

namespace LureSim.Studies.Strike;

/// <summary>What a drag must do with one reading of the thresholds: set all points and let nothing give, in the strike and at the boat.</summary>
internal sealed class DragDemand
{
    private readonly Setup _setup;
    private readonly StrikeTask _task;
    private readonly LandingResult _landing;

    /// <summary>Takes the thresholds of a set-up.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Strike.</param>
    /// <param name="landing">Holding and landing with the same.</param>
    public DragDemand(Setup setup, StrikeTask task, LandingResult landing) => (_setup, _task, _landing) = (setup, task, landing);

    /// <summary>Pull at the boat that starts the drag over its setting.</summary>
    public double BoatFactor => _landing.Boat.Weakest.LoadN / BoatDragN;

    /// <summary>Largest pull on the hook over the one that sets all points.</summary>
    /// <param name="p">Strike.</param>
    public double SetShare(DragPoint p) => p.HookForceN / _setup.Hook.SettingN;

    /// <summary>Load over strength of the weakest place.</summary>
    /// <param name="p">Strike.</param>
    public double HarmShare(DragPoint p) => 1.0 / Weakest(p).Ratio;

    /// <summary>The window between strikes, straight lines between them, of the strike alone.</summary>
    /// <param name="points">Strikes, rising drag, at least one; the last one with the drag shut.</param>
    public DragRange InStrike(IReadOnlyList<DragPoint> points)
    {
        double? low = Crossing(points, SetShare)?.DragN;
        return Crossing(points, HarmShare) is (double at, DragPoint above)
            ? new(low, above == points[0] ? null : at, Weakest(above).Place, DragCase.Strike)
            : new(low, points[^1].DragN, null, DragCase.Strike);
    }

    /// <summary>The window of strike and boat.</summary>
    /// <param name="points">Strikes, rising drag, at least one; the last one with the drag shut.</param>
    public DragRange Range(IReadOnlyList<DragPoint> points)
    {
        DragRange strike = InStrike(points);
        return BoatDragN < strike.HighN ? new(strike.LowN, BoatDragN, PlaceOf(_landing.Boat.Weakest.Limit), DragCase.Boat) : strike;
    }

    /// <summary>First strike whose share is at least 1; -1 where none is.</summary>
    /// <param name="points">Strikes, rising drag.</param>
    /// <param name="share">Share.</param>
    public static int Bracket(IReadOnlyList<DragPoint> points, Func<DragPoint, double> share) => points.ToList().FindIndex(p => share(p) >= 1.0);

    // The drag that starts at the boat just as something gives; landing itself wants a margin.
    private double BoatDragN => _landing.Task.Margin * _landing.Boat.SafeDragN;

    // Where a share first comes to 1, and the strike above it.
    private static (double DragN, DragPoint Above)? Crossing(IReadOnlyList<DragPoint> points, Func<DragPoint, double> share)
    {
        int i = Bracket(points, share);
        if (i <= 0)
        {
            return i < 0 ? null : (points[0].DragN, points[0]);
        }

        double below = share(points[i - 1]), above = share(points[i]), part = (1.0 - below) / (above - below);
        return (points[i - 1].DragN + (part * (points[i].DragN - points[i - 1].DragN)), points[i]);
    }

    private static WeakPlace PlaceOf(LandingLimit limit) => limit switch
    {
        LandingLimit.Knot => WeakPlace.Knot,
        LandingLimit.Leader => WeakPlace.Leader,
        LandingLimit.HookWire => WeakPlace.HookWire,
        LandingLimit.HookHold => WeakPlace.HookHold,
        _ => WeakPlace.Rod,
    };

    private Margin Weakest(DragPoint p) => WeakPlaces.Margins(_setup, _task, new(p.HookForceN, p.TipForceN, p.RodUse))[0];
}
